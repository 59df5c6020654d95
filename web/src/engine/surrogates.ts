import type { FieldError, Raw, RawInputs } from "../contract";

/** Half of a character: it cannot be written as UTF-8, so it must not reach the core. */
const HALF = /\p{Surrogate}/u;

export const REFUSED = "There is a broken character in this: clear it and type it again.";

export function isBroken(text: string): boolean {
  return HALF.test(text);
}

function brokenIn(field: string, value: Raw): FieldError[] {
  if (Array.isArray(value)) {
    return value.flatMap((row, index) => brokenFields(row, `${field}.${index}.`));
  }
  const broken = typeof value === "string" && isBroken(value);
  return broken ? [{ field, message: REFUSED, missing: false }] : [];
}

/** Return an error for each value, in rows too, that holds half a character. */
export function brokenFields(inputs: RawInputs, before = ""): FieldError[] {
  return Object.entries(inputs).flatMap(([name, value]) => brokenIn(before + name, value));
}
