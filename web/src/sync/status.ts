/** How things stand with the shop's server: noted by the sync, shown by the screens. */
import type { Key } from "../store/tables";
import { inSentence } from "../text/words";
import type { Left, Who } from "./left";

export interface SyncStatus {
  /** No server that keeps anything; nobody signed in on this device; or somebody. */
  is: "none" | "out" | "in";
  person: string;
  device: string;
  /** Whether the server is not reached now. */
  isWaiting: boolean;
  /** Names of documents that have not gone up yet. */
  toGo: ReadonlySet<string>;
  /** Why documents can't go up, in the server's words, by name. */
  refused: ReadonlyMap<string, string>;
  /** What has not gone up, as it is called, by name. */
  called: ReadonlyMap<string, string>;
  /** What somebody else left here: it waits for a word. */
  left: Left | null;
  /** When the server was heard last by this page. */
  heard: Date | null;
}

const NONE: SyncStatus = {
  is: "none", person: "", device: "", isWaiting: false, toGo: new Set(), refused: new Map(), called: new Map(), left: null,
  heard: null,
};

let status = NONE;
const listeners = new Set<() => void>();

/** Under this name stands who was signed in last on this device, for a start without a network. */
const WHO = "longpoint shop";

export function rememberWho(who: Who): void {
  try {
    localStorage.setItem(WHO, JSON.stringify(who));
  } catch (error) {
    console.warn(error);
  }
}

/** Returns who was signed in here last; null for nobody ever. */
export function whoWas(): Who | null {
  try {
    return JSON.parse(localStorage.getItem(WHO) ?? "null") as Who | null;
  } catch (error) {
    console.warn(error);
    return null;
  }
}

/** Calls `hear` where another page of this browser found somebody else signed in, or this one comes back. */
export function onOtherWho(hear: () => void): void {
  addEventListener("storage", ({ key }) => key === WHO && hear());
  addEventListener("pageshow", ({ persisted }) => persisted && hear());
}

/** Forgets who was signed in, but not whose it is that stays here. */
export function forgetWho(left: Left | null): void {
  if (left) rememberWho({ person: "", device: "", left });
  else localStorage.removeItem(WHO);
  noteStatus({ person: "", device: "", left });
}

let wake: () => void = () => undefined;

/** Lets `look` be called when something is to be done at once. */
export function onWake(look: () => void): void {
  wake = look;
}

/** What somebody else left here goes up in the name of who is signed in. */
export function sendLeft(): void {
  const { person, device } = status;
  rememberWho({ person, device });
  noteStatus({ left: null });
  wake();
}

/** What a document is called on the server. */
export const nameOf = ([kind, id]: Key): string => `${kind}.${id}`;

export function syncStatus(): SyncStatus {
  return status;
}

export function noteStatus(part: Partial<SyncStatus>): void {
  status = { ...status, ...part };
  for (const listener of [...listeners]) listener();
}

/** Calls `listener` when something changes; returns how to stop that. */
export function onSyncStatus(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Returns where a document is kept, in words; empty where there is no server to keep it. `isLong` says why. */
export function keptWords(key: Key, isLong = false): string {
  const { is, toGo, refused, isWaiting, left } = status;
  if (is === "none") return "";
  if (is === "out") return "Kept here";
  const name = nameOf(key);
  const why = refused.get(name);
  if (why) return `Kept here: ${isLong ? inSentence(why) : "the shop's server did not take it"}`;
  if (left?.names.includes(name)) return `Kept here: ${left.by} has not sent it up`;
  if (!toGo.has(name)) return "On the shop's server";
  return isWaiting ? "Kept here, waiting for a network" : "Kept here, on its way up";
}
