/** The documents that are open in this page, each once, however many have it open. */
import { whenOpenedLate } from "./database";
import { DocumentHandle } from "./handle";
import { EMPTY } from "./opened";
import { inTurn } from "./queue";
import type { Key, State } from "./tables";
import { onOthers } from "./tabs";

const open = new Map<string, DocumentHandle>();
const nameOf = (key: Key): string => JSON.stringify(key);

/**
 * Opens a document, a blank one where there is none; the blank's schema is the highest this version
 * knows.
 *
 * Opened twice in a page it is the same. It never fails: what can't be read is said, what is typed
 * meanwhile is joined with it when it can.
 */
export async function openDocument(
  kind: string, id: string, blank: Partial<State> = {},
): Promise<DocumentHandle> {
  const key: Key = [kind, id];
  const name = nameOf(key);
  const found = open.get(name);
  const document = found ?? new DocumentHandle(key, { ...EMPTY, ...blank }, () => open.delete(name));
  document.users += 1;
  open.set(name, document);
  await inTurn(() => (found ? Promise.resolve() : document.read()));
  return document;
}

/** Reads again what is open here of documents that were written past it. */
export function readAgain(keys: Key[], isAsked = false): void {
  for (const key of keys) {
    const document = open.get(nameOf(key));
    if (document) void inTurn(() => document.read(isAsked));
  }
}

/** Returns what is not surely written yet, of every open document. */
export function unwritten(): DocumentHandle["left"][] {
  return [...open.values()].filter((document) => document.hasUnwritten).map(({ left }) => left);
}

/** Writes what is not written, reads what may have changed. */
function catchUp(): void {
  for (const each of open.values()) void inTurn(() => (each.hasUnwritten ? each.write() : each.read()));
}

onOthers((keys) => readAgain(keys));
whenOpenedLate(catchUp);
// A browser may keep a page in the background from hearing of others, and from writing.
document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "visible") catchUp();
});
