/** What the database holds. Its version is a number of its own: each record says its own schema. */
import type { DBSchema } from "idb";
import type { Units } from "../contract/contract";
import type { Edit } from "./edits";
import type { JsonObject } from "./json";

/** The version of the database: which tables there are. */
export const VERSION = 3;

/** What kind of document, and which one of them. */
export type Key = [kind: string, id: string];

/** What a document says at a revision. */
export interface State {
  units: Units;
  /** By which rules of its kind (or, of a form, of its tool) the body is written. */
  schema: number;
  body: JsonObject;
}

/** A document as kept. What a newer version writes beside these stays. */
export interface DocumentRecord extends State {
  kind: string;
  id: string;
  /** Counts its writes. */
  revision: number;
  /** The change in its history up to which it stands; those after it can be done again. */
  step: number;
  /** When it was deleted, in milliseconds since 1970; it can be had back for a while. */
  deleted?: number;
  /** By what it is listed without being read: its kind, when it was written, its title. */
  listed?: [kind: string, at: number, title: string];
}

/** One change of a document, in its history. */
export interface HistoryRecord {
  kind: string;
  id: string;
  step: number;
  /** Which page made it. */
  by: string;
  /** Its number among that page's changes. */
  count: number;
  at: number;
  words: string;
  edits: Edit[];
}

/** What is known of a document on the shop's server. */
export interface SharedRecord {
  kind: string;
  id: string;
  /** The server's revision; null while it is not known to have the document. */
  rev: number | null;
  /** The id of the server's last change that was heard of. */
  changeId: string;
  /** The revision here that says the same as the server's; -1 where none does. */
  revision: number;
  /** Ids of the server's last changes that were heard of, so that an older one is known again. */
  seen: string[];
  /** A change that was sent, and is sent again until it is answered. */
  pending: { changeId: string; rev: number | null; revision: number } | null;
}

/** A state of a document that both here and the server had, or that was sent; null where it is deleted. */
export interface SharedState {
  kind: string;
  id: string;
  role: "base" | "pending";
  state: State | null;
}

/** Up to where the server's changes were heard. */
export interface Heard {
  epoch: string;
  since: number;
  last: string;
}

export interface Tables extends DBSchema {
  documents: {
    key: Key;
    value: DocumentRecord;
    indexes: { deleted: number; listed: [string, number, string]; stands: [string, string, number] };
  };
  history: { key: [...Key, number]; value: HistoryRecord };
  shared: { key: Key; value: SharedRecord };
  sharedStates: { key: [...Key, string]; value: SharedState };
  heard: { key: string; value: Heard };
}
