/** Tells the other open pages of this app which documents were written. */
import type { Key } from "./tables";

const NAME = "longpoint documents";
/** A browser without it finds out what changed when the page is looked at again. */
const channel = typeof BroadcastChannel === "undefined" ? null : new BroadcastChannel(NAME);

/** Who this page is, among the pages that write. */
export const PAGE = newId();

/** Returns an id that no other page makes; a page without a secure origin has no maker of its own. */
export function newId(): string {
  return [...crypto.getRandomValues(new Uint8Array(12))]
    .map((byte) => byte.toString(16).padStart(2, "0"))
    .join("");
}

const listeners = new Set<(keys: Key[]) => void>();

/** Tells the other pages that these documents were written, and whoever listens in this one. */
export function tellOthers(keys: Key[]): void {
  channel?.postMessage(keys);
  for (const hear of [...listeners]) hear(keys);
}

/** Calls `hear` with the documents that any page, this one too, has written; returns how to stop that. */
export function onWritten(hear: (keys: Key[]) => void): () => void {
  listeners.add(hear);
  const stop = onOthers(hear);
  return () => {
    listeners.delete(hear);
    stop();
  };
}

/** Calls `hear` with the documents that another page has written; returns how to stop that. */
export function onOthers(hear: (keys: Key[]) => void): () => void {
  const take = ({ data }: MessageEvent<unknown>): void => {
    if (Array.isArray(data)) hear(data.filter(isKey));
  };
  channel?.addEventListener("message", take);
  return () => channel?.removeEventListener("message", take);
}

function isKey(value: unknown): value is Key {
  return Array.isArray(value) && value.length === 2 && value.every((part) => typeof part === "string");
}
