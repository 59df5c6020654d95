/**
 * A job's document as types, and what is done to it: each function returns another document.
 *
 * What a document may hold is declared in the core (`trade/job/document.py`); names not known here stay.
 */
import type { Pattern, Raw, RawInputs, SetAside, Step, Units } from "../contract/contract";
import { isObject, type Json, type JsonObject } from "../store/json";
import type { Quote } from "./quote-body";

/** To a figure or an input of a question, or to the pieces of a stock, a question or an item. */
export interface Tie {
  entry?: string;
  pieces?: string;
  figure?: string;
  input?: string;
  offset?: string;
}

/** One question asked for an item, with what was typed. */
export interface Entry {
  id: string;
  /** Given once in a job and never again: a piece's tag begins with it. */
  letter: string;
  tool: string;
  title?: string;
  version?: number;
  typed_in?: Units;
  inputs: RawInputs;
  aside?: SetAside[];
  ties?: { [input: string]: Tie };
  /** Ids of stock by the role of a piece. */
  stock?: { [role: string]: string };
  note?: string;
}

export interface Photo {
  id: string;
  words?: string;
}

/** Something made or fitted. */
export interface Item {
  id: string;
  title: string;
  /** How many alike. */
  count?: number;
  entries: Entry[];
  note?: string;
  photos?: Photo[];
  /** The kind of item that it began as. */
  pattern?: string;
  /** As quoted, over what is counted; and as worked. */
  hours?: number | string | null;
  actual_hours?: number | string | null;
}

export type Sold = "board" | "stick" | "sheet" | "each" | "volume";

export interface SoldLength {
  length?: Raw;
  price?: number | null;
}

export interface SoldSheet extends SoldLength {
  width?: Raw;
}

export interface OnHand {
  length?: Raw;
  width?: Raw;
  count?: number;
  where?: string;
}

export interface Stock {
  id: string;
  title: string;
  sold: Sold;
  thickness?: Raw;
  width?: Raw;
  lengths?: SoldLength[];
  sheets?: SoldSheet[];
  on_hand?: OnHand[];
  price?: number | null;
  waste?: number | null;
  kerf?: Raw;
  trim?: Raw;
  extra_length?: Raw;
  extra_width?: Raw;
}

/** Something bought that is cut from nothing: hinges, screws. */
export interface Thing {
  id: string;
  title: string;
  count?: number;
  price?: number | null;
  item?: string;
  from?: Tie;
}

export interface Tick {
  id?: string;
  of: string;
  state: string;
  at?: string;
  was?: { length?: number };
  paid?: number | null;
}

export interface Customer {
  name?: string;
  address?: string;
  phone?: string;
  note?: string;
}

export interface JobBody {
  longpoint: "job";
  schema: number;
  id: string;
  title: string;
  customer?: Customer;
  units?: Units;
  step?: Step;
  items: Item[];
  stock?: Stock[];
  things?: Thing[];
  ticks?: Tick[];
  /** The day that each finish plan begins on, by its question: `2026-11-30`. */
  finish?: { starts?: { id: string; begins: string }[] };
  quote?: Quote | null;
  log?: { at?: string; words?: string }[];
}

export const SCHEMA = 1;

/** Returns an id that no other thing has. */
export function newId(): string {
  // A page that is not served safely has no randomUUID.
  if ("randomUUID" in crypto) return crypto.randomUUID();
  const bytes = [...(crypto as Crypto).getRandomValues(new Uint8Array(16))];
  return bytes.map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

export function blankJob(id: string, title: string, units: Units, step: Step): JobBody {
  return { longpoint: "job", schema: SCHEMA, id, title, units, step, items: [] };
}

/** Whether a kept body is a job with the lists that everything goes by. */
export function isJob(body: JsonObject): boolean {
  const items = body["items"];
  const isItem = (item: Json): boolean => isObject(item) && Array.isArray(item["entries"]);
  return body["longpoint"] === "job" && Array.isArray(items) && items.every(isItem);
}

export const entriesOf = (body: JobBody): Entry[] => body.items.flatMap(({ entries }) => entries);

export function itemOf(body: JobBody, id: string): Item | undefined {
  return body.items.find((item) => item.id === id);
}

export function entryOf(body: JobBody, id: string): Entry | undefined {
  return entriesOf(body).find((entry) => entry.id === id);
}

/** Returns the item that a question belongs to. */
export function itemWith(body: JobBody, entry: string): Item | undefined {
  return body.items.find(({ entries }) => entries.some(({ id }) => id === entry));
}

/** Returns what a question's pattern asks first; none for a question that no pattern laid in. */
export function asksOf(body: JobBody, id: string, patterns: readonly Pattern[]): readonly string[] {
  const item = itemWith(body, id);
  const pattern = patterns.find(({ slug }) => slug === item?.pattern);
  const tool = item?.entries.find((entry) => entry.id === id)?.tool;
  const at = item?.entries.filter((entry) => entry.tool === tool).findIndex((entry) => entry.id === id) ?? -1;
  return pattern?.questions.filter((question) => question.tool === tool)[at]?.asks ?? [];
}

export function withItem(body: JobBody, id: string, edit: (item: Item) => Item): JobBody {
  return { ...body, items: body.items.map((item) => (item.id === id ? edit(item) : item)) };
}

export function withEntry(body: JobBody, id: string, edit: (entry: Entry) => Entry): JobBody {
  const edited = (entry: Entry): Entry => (entry.id === id ? edit(entry) : entry);
  return { ...body, items: body.items.map((item) => ({ ...item, entries: item.entries.map(edited) })) };
}

/** Returns a list with the thing named `id` one place further up (-1) or down (1). */
export function moved<Named extends { id: string }>(list: Named[], id: string, by: number): Named[] {
  const at = list.findIndex((each) => each.id === id);
  const others = [...list];
  const [taken] = others.splice(at, 1);
  if (taken && at >= 0) others.splice(Math.max(0, at + by), 0, taken);
  return others;
}
