/**
 * Joins two changes of one value, made without knowing of each other.
 *
 * Field by field: what one side alone has changed is taken over. Where both have changed the same
 * field differently, this side's stays and the place is reported; a field that one side emptied and
 * the other changed stays filled. Items of a list are told apart by their `id` where all have one,
 * else by their place where no side has added or removed any; else the list is one field.
 */
import { heldUnder, isObject, isSame, namesOf, type Json, type JsonObject, type Maybe } from "./json";
import type { Path } from "./edits";

export interface Merged {
  value: Maybe;
  /** Where both sides had changed the same field. */
  collisions: Path[];
}

/** Joins `mine` and `theirs`, which both came of `base`; `undefined` is a value not there. */
export function merge(base: Maybe, mine: Maybe, theirs: Maybe): Merged {
  const collisions: Path[] = [];
  return { value: join({ base, mine, theirs }, [], collisions), collisions };
}

interface Sides {
  base: Maybe;
  mine: Maybe;
  theirs: Maybe;
}

function join({ base, mine, theirs }: Sides, path: Path, collisions: Path[]): Maybe {
  if (isSame(mine, theirs) || isSame(theirs, base)) return mine;
  if (isSame(mine, base)) return theirs;
  // Of two signatures one stands, whole: strokes of both would be nobody's.
  const isWhole = path.at(-1) === "strokes";
  if (isObject(mine) && isObject(theirs) && areApart(mine, theirs)) {
    return joinObjects({ base, mine, theirs }, path, collisions);
  }
  if (Array.isArray(mine) && Array.isArray(theirs) && !isWhole) {
    const joined = joinLists(Array.isArray(base) ? base : [], mine, theirs, path, collisions);
    if (joined) return joined;
  }
  collisions.push(path);
  return mine === undefined ? theirs : mine;
}

/**
 * Whether the fields of two objects may be mixed.
 *
 * A number without its unit is another number: a typed measure stays with its units, and bare
 * numbers typed in inches never mix with some typed in millimeters, nor names of an older form with
 * those of a newer.
 */
function areApart(mine: JsonObject, theirs: JsonObject): boolean {
  const isMeasure = "text" in mine && "units" in mine;
  const isAlike = (name: string): boolean => isSame(heldUnder(mine, name), heldUnder(theirs, name));
  return !isMeasure && isAlike("typed_in") && isAlike("schema");
}

function joinObjects({ base, mine, theirs }: Sides, path: Path, collisions: Path[]): JsonObject {
  const held = namesOf(mine, theirs).map((name): [string, Maybe] => {
    const sides = {
      base: heldUnder(base, name),
      mine: heldUnder(mine, name),
      theirs: heldUnder(theirs, name),
    };
    return [name, join(sides, [...path, name], collisions)];
  });
  return Object.fromEntries(held.filter((each): each is [string, Json] => each[1] !== undefined));
}

type Named = JsonObject & { id: string };

/** Returns a list by its items' ids, or null where not each has one of its own. */
function byId(list: Json[]): Map<string, Named> | null {
  const isNamed = (item: Json): item is Named => isObject(item) && typeof item["id"] === "string";
  if (!list.every(isNamed)) return null;
  const named = new Map(list.map((item) => [item.id, item]));
  return named.size === list.length ? named : null;
}

function joinLists(
  base: Json[], mine: Json[], theirs: Json[], path: Path, collisions: Path[],
): Json[] | null {
  const [from, here, there] = [byId(base), byId(mine), byId(theirs)];
  if (from && here && there) return joinNamed(from, here, there, path, collisions);
  if (base.length !== mine.length || base.length !== theirs.length) return null;
  return mine.map((item, at) => {
    const sides = { base: base[at], mine: item, theirs: theirs[at] };
    return join(sides, [...path, at], collisions) ?? null;
  });
}

function joinNamed(
  base: Map<string, Named>, mine: Map<string, Named>, theirs: Map<string, Named>,
  path: Path, collisions: Path[],
): Json[] {
  const items: Json[] = [];
  for (const id of orderOf([...base.keys()], [...mine.keys()], [...theirs.keys()])) {
    const sides = { base: base.get(id), mine: mine.get(id), theirs: theirs.get(id) };
    const item = join(sides, [...path, items.length], collisions);
    if (item !== undefined) items.push(item);
  }
  return items;
}

/** The order of the side that has changed it, mine if both; what only the other has, where it was. */
function orderOf(base: string[], mine: string[], theirs: string[]): string[] {
  const isMoved = !isSame(base.filter((id) => mine.includes(id)), mine.filter((id) => base.includes(id)));
  const [order, other] = isMoved ? [[...mine], theirs] : [[...theirs], mine];
  other.forEach((id, at) => {
    if (order.includes(id)) return;
    const before = at > 0 ? order.indexOf(other[at - 1] ?? "") : -1;
    order.splice(before + 1, 0, id);
  });
  return order;
}
