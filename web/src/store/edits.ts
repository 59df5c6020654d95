/**
 * What changed between two values, small enough to keep a hundred of them for each document.
 *
 * An edit can be done to the value before and undone to the value after, and to no other.
 */
import { heldUnder, isObject, isSame, namesOf, type Json, type JsonObject, type Maybe } from "./json";

/** Where in a value: names of objects, places in lists. */
export type Path = (string | number)[];

/** `before` gave way to `after` at `path`; one that is left out was not there. */
export interface Put {
  path: Path;
  before?: Json;
  after?: Json;
}

/** In the list at `path` the items `before` gave way to the items `after`, from place `at` on. */
export interface Splice {
  path: Path;
  at: number;
  before: Json[];
  after: Json[];
}

export type Edit = Put | Splice;

/** Returns the edits that make `after` of `before`, none where they are the same. */
export function editsBetween(before: Maybe, after: Maybe, path: Path = []): Edit[] {
  if (before === after) return [];
  if (isObject(before) && isObject(after)) {
    return namesOf(before, after).flatMap((name) =>
      editsBetween(heldUnder(before, name), heldUnder(after, name), [...path, name]),
    );
  }
  if (Array.isArray(before) && Array.isArray(after)) return editsOfList(before, after, path);
  return [{ path, ...(before !== undefined && { before }), ...(after !== undefined && { after }) }];
}

/** Only what lies between the items that both lists begin and end with has changed. */
function editsOfList(before: Json[], after: Json[], path: Path): Edit[] {
  const most = Math.min(before.length, after.length);
  let start = 0;
  while (start < most && isSame(before[start], after[start])) start += 1;
  let end = 0;
  while (end < most - start && isSame(before.at(-1 - end), after.at(-1 - end))) end += 1;
  const gone = before.slice(start, before.length - end);
  const come = after.slice(start, after.length - end);
  if (gone.length !== come.length) return [{ path, at: start, before: gone, after: come }];
  return gone.flatMap((item, i) => editsBetween(item, come[i], [...path, start + i]));
}

/** Returns `value` with the edits done to it. */
export function withEdits(value: Maybe, edits: Edit[]): Maybe {
  return edits.reduce((changed, edit) => withEdit(changed, edit.path, edit), value);
}

/** Returns the edits that undo these. */
export function undoing(edits: Edit[]): Edit[] {
  return [...edits].reverse().map(turned);
}

function turned(edit: Edit): Edit {
  if ("at" in edit) return { ...edit, before: edit.after, after: edit.before };
  const { path, before, after } = edit;
  return { path, ...(after !== undefined && { before: after }), ...(before !== undefined && { after: before }) };
}

function withEdit(value: Maybe, path: Path, edit: Edit): Maybe {
  const [step, ...rest] = path;
  if (step === undefined) return "at" in edit ? spliced(value, edit) : edit.after;
  if (typeof step === "number") return withItem(value, step, rest, edit);
  const held = withEdit(heldUnder(value, step), rest, edit);
  const { [step]: _, ...others } = isObject(value) ? value : ({} as JsonObject);
  return held === undefined ? others : { ...(isObject(value) ? value : {}), [step]: held };
}

function withItem(value: Maybe, at: number, rest: Path, edit: Edit): Maybe {
  if (!Array.isArray(value)) return value;
  return value.map((item, i) => (i === at ? (withEdit(item, rest, edit) ?? null) : item));
}

function spliced(value: Maybe, { at, before, after }: Splice): Maybe {
  const list = Array.isArray(value) ? value : [];
  return [...list.slice(0, at), ...after, ...list.slice(at + before.length)];
}

/** Whether what is at one path holds, is, or lies within what is at the other. */
export function overlap(one: Path, other: Path): boolean {
  return one.slice(0, other.length).every((step, i) => step === other[i]);
}
