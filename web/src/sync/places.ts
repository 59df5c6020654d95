/** Where two people said something differently, as its screens call it: from the outside in. */
import type { Declaration, Input, Units } from "../contract/contract";
import { isUnits } from "../store/check";
import { isObject, type Json, type JsonObject } from "../store/json";
import { capital } from "../text/words";
import { namedEntry, namedIn, operationNamed, type Named } from "./labels";

export interface Side {
  by: string;
  value: Json;
}

/** As a document holds it; `path` is of names, ids and places of rows. */
export interface Question {
  id: string;
  path: Step[];
  sides: [Side, Side];
  together?: boolean;
}

export type Step = string | number;

/** What is known of the document that asks. */
export interface Asking {
  kind: string;
  id: string;
  body: JsonObject;
  /** Declarations of tools by slug. */
  tools: { [slug: string]: Declaration };
  /** The input that a list is kept for, where it is a tool's. */
  list?: Input | undefined;
}

/** A place of a document. */
export interface Place {
  named: Named;
  /** What it lies in, and what that is called. */
  holder: Named;
  around: Json | undefined;
  value: Json | undefined;
  within: string[];
  /** Of bare numbers there. */
  units: Units;
  /** Whether it is one of a list: an item, a question, a stock. */
  isOne: boolean;
}

/** Returns what is held under a name, an id or a place. */
export function heldAt(value: Json | undefined, step: Step): Json | undefined {
  if (!Array.isArray(value)) return isObject(value) ? value[step] : undefined;
  return typeof step === "number" ? value[step] : value.find((each) => isObject(each) && each["id"] === step);
}

/** Returns the slugs of the tools whose words a document's questions need. */
export function toolsAsked(body: JsonObject, questions: Question[]): string[] {
  const held = questions.flatMap(({ path, sides }) => {
    let at: Json | undefined = body;
    return [...path.map((step) => (at = heldAt(at, step))), ...sides.map(({ value }) => value)];
  });
  const slugs = held.map((each) => (isObject(each) ? each["tool"] : null));
  return [...new Set(slugs.filter((slug) => typeof slug === "string"))];
}

/** Returns the place that a question is about. */
export function placeOf(asking: Asking, { path, sides }: Question): Place {
  const { kind, id, list, body } = asking;
  const typed = body["typed_in"] ?? body["units"];
  const units = isUnits(typed) ? typed : "in";
  const named = namedIn(kind, id, list);
  let place: Place = { named, holder: {}, around: undefined, value: body, within: [], units, isOne: false };
  path.forEach((step, at) => {
    const isLast = at === path.length - 1;
    // What was deleted since is called as the two had it.
    const had = isLast ? sides.map(({ value }) => value).find(isObject) : undefined;
    place = stepped(asking, place, step, heldAt(place.value, step) ?? had, isLast);
  });
  return place;
}

function stepped(asking: Asking, from: Place, step: Step, value: Json | undefined, isLast: boolean): Place {
  const { named, value: around, within } = from;
  const own = heldAt(value, "typed_in");
  const units = isUnits(own) ? own : from.units;
  if (named.one) {
    const declared = asking.tools[String(heldAt(value, "tool"))];
    const one = declared ? namedEntry(declared) : named.one;
    const title = titleOf(asking, named, step, value);
    return { named: one, holder: named, around, value, within: [...within, title], units, isOne: true };
  }
  const next = named.names?.[step] ?? named.each ?? { label: capital(String(step).replaceAll("_", " ")) };
  const beside = next.within && !isLast ? [next.within] : [];
  return { named: next, holder: named, around, value, within: [...within, ...beside], units, isOne: false };
}

/** Returns what one of a list is called: by its title, else by its place. */
export function titleOf({ tools }: Asking, { row = "row" }: Named, step: Step, value: Json | undefined): string {
  const { title, label, name, words, tool, letter } = isObject(value) ? value : ({} as JsonObject);
  if (typeof step === "number") return [`${capital(row)} ${step + 1}`, title ?? label].filter((each) => typeof each === "string").join(", ");
  const own = [title, name, words, tools[String(tool)]?.title].find((each) => typeof each === "string" && each !== "");
  return [letter, own ?? (operationNamed(step) || row)].filter((each) => typeof each === "string").join(" ");
}
