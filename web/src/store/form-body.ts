/** A form's document: what was typed, in which units, and what this version can't use. */
import type { Raw, RawInputs, RawRow, SetAside, Units } from "../contract/contract";
import { isKeepable, isName, isUnits } from "./check";
import { heldUnder, isObject, type Json, type JsonObject } from "./json";

/** A form as it is kept: what was typed, in which units, by which version, and what is set aside. */
export interface KeptForm {
  inputs: RawInputs;
  /** Of bare numbers among the inputs. */
  typedIn: Units;
  version: number;
  /** What this version does not understand: kept, and given back when it is understood. */
  aside: SetAside[];
}

/** Whether an input can be this: a text, a number, yes or no, a measure with its units, or rows. */
function isRaw(value: unknown): value is Raw {
  if (!isKeepable(value)) return false;
  return Array.isArray(value) ? value.every(isRow) : isEntry(value);
}

function isEntry(value: Json): boolean {
  return !isObject(value) || (typeof value["text"] === "string" && isUnits(value["units"]));
}

function isRow(value: Json): value is RawRow {
  return isObject(value) && Object.values(value).every((cell) => !Array.isArray(cell) && isEntry(cell));
}

/** Splits values by name into those that can be inputs and the others. */
export function sorted(values: Record<string, unknown>): { inputs: RawInputs; aside: SetAside[] } {
  const fits = ([name, value]: [string, unknown]): boolean => isName(name) && isRaw(value);
  const all = Object.entries(values);
  return {
    inputs: Object.fromEntries(all.filter(fits)) as RawInputs,
    aside: all.filter((each) => !fits(each)).map(([path, value]) => ({ path, value })),
  };
}

/**
 * Reads a form's body. What can't be an input is set aside; what was set aside comes back under a
 * name that this version `knows`, where nothing else stands under it.
 */
export function readForm(
  body: JsonObject, version: number, knows: (name: string) => boolean,
): KeptForm {
  const kept = heldUnder(body, "inputs");
  const typedIn = heldUnder(body, "typed_in");
  const { inputs, aside } = sorted(isObject(kept) ? kept : {});
  const before = asideIn(body);
  const back = before.filter(({ path }) => knows(path) && !Object.hasOwn(inputs, path));
  const again = sorted(Object.fromEntries(back.map(({ path, value }) => [path, value])));
  const stays = before.filter(({ path }) => !Object.hasOwn(again.inputs, path));
  return {
    inputs: { ...again.inputs, ...inputs },
    typedIn: isUnits(typedIn) ? typedIn : "in",
    version,
    aside: [...stays, ...aside],
  };
}

/** Returns what a body has set aside. */
export function asideIn(body: JsonObject): SetAside[] {
  const aside = heldUnder(body, "aside");
  if (!Array.isArray(aside)) return [];
  return aside.flatMap((each) => {
    const path = heldUnder(each, "path");
    return typeof path === "string" ? [{ path, value: heldUnder(each, "value") ?? null }] : [];
  });
}

/** Returns `body` with the form as it stands now; what else it holds stays. */
export function writtenForm(body: JsonObject, { inputs, typedIn, aside }: KeptForm): JsonObject {
  const { aside: _, ...others } = body;
  const isAside = aside.length > 0;
  return {
    ...others,
    inputs: inputs as JsonObject,
    typed_in: typedIn,
    ...(isAside && { aside: aside as unknown as Json }),
  };
}

/** Returns the rows of a list's body that are rows. */
export function readRows(body: JsonObject): RawRow[] {
  const rows = heldUnder(body, "rows");
  return Array.isArray(rows) ? rows.filter(isRow) : [];
}
