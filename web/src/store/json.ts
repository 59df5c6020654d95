/** Values as JSON has them, and how they are compared. */
export type Json = null | boolean | number | string | Json[] | JsonObject;
export interface JsonObject {
  [name: string]: Json;
}
/** A value that may not be there. */
export type Maybe = Json | undefined;

/** Whether `value` is an object with names, not a list and not null. */
export function isObject(value: unknown): value is JsonObject {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Returns what an object itself holds under `name`: a name such as "toString" is nothing special. */
export function heldUnder(value: Maybe, name: string): Maybe {
  return isObject(value) && Object.hasOwn(value, name) ? value[name] : undefined;
}

/** Whether two values are the same; the order of an object's names does not matter. */
export function isSame(one: Maybe, other: Maybe): boolean {
  if (one === other) return true;
  if (Array.isArray(one) && Array.isArray(other)) {
    return one.length === other.length && one.every((item, at) => isSame(item, other[at]));
  }
  if (!isObject(one) || !isObject(other)) return false;
  const names = Object.keys(one);
  return (
    names.length === Object.keys(other).length &&
    names.every((name) => Object.hasOwn(other, name) && isSame(one[name], other[name]))
  );
}

/** Returns every name that one of the objects holds, each once. */
export function namesOf(...objects: Maybe[]): string[] {
  return [...new Set(objects.filter(isObject).flatMap((object) => Object.keys(object)))];
}
