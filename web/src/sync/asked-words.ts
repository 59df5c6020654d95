/** A question to two people in words: what it is about, and what each of them said. */
import type { Units } from "../contract/contract";
import { isObject, isSame, type Json, type JsonObject } from "../store/json";
import { capital, priceText } from "../text/words";
import type { Named } from "./labels";
import { heldAt, placeOf, titleOf, type Asking, type Place, type Question } from "./places";

export interface Asked {
  /** What was said differently, as its field is labeled. */
  what: string;
  /** What that belongs to. */
  within: string[];
  values: [string, string];
  /** Whether there is nothing to choose: it is only to be seen. */
  isNews: boolean;
}

/** Characters of what one said: a button holds no more. */
const MOST = 120;

/** Returns a question as it is asked. */
export function inWords(asking: Asking, question: Question): Asked {
  const place = placeOf(asking, question);
  const within = [...place.within];
  const [one, other] = [question.sides[0].value, question.sides[1].value];
  if (question.path.at(-1) === "letter") {
    // The first side stands: the letter that it has now.
    const what = `${String(other)} is ${String(one)} now, since both of you had given the letter ${String(other)}`;
    return { what, within, values: ["", ""], isNews: true };
  }
  const label = place.isOne ? (within.pop() ?? "") : (place.named.label ?? "");
  const isOrder = isIds(one) && isIds(other);
  return {
    what: question.together ? "The numbers, with their units" : isOrder ? `Order: ${label}` : label,
    within,
    values: [cut(said(asking, place, question, one, other)), cut(said(asking, place, question, other, one))],
    isNews: false,
  };
}

const cut = (words: string): string => (words.length > MOST ? `${words.slice(0, MOST - 1)}…` : words);

function isIds(value: Json): boolean {
  return Array.isArray(value) && value.length > 0 && value.every((each) => typeof each === "string");
}

function said(asking: Asking, place: Place, question: Question, value: Json, other: Json): string {
  const { named, holder, units, isOne } = place;
  if (value === null) return isOne ? "Delete it" : "Nothing";
  if (isOne && other === null) return "Keep it";
  if (question.together) return together(asking, holder, value as JsonObject, other as JsonObject);
  return words(asking, named, value, other, units);
}

/** Numbers, and the units that they are meant in. */
function together(asking: Asking, holder: Named, value: JsonObject, other: JsonObject): string {
  const { typed_in: typed, units: own = typed, version: _, tool: __, ...numbers } = value;
  const units = own === "mm" ? "mm" : "in";
  const lines = Object.entries(numbers).flatMap(([name, held]) => {
    const named = holder.names?.[name] ?? {};
    return held === null ? [] : [words(asking, named, held, other[name] ?? null, units)];
  });
  return [units === "mm" ? "In millimeters" : "In inches", ...lines.filter(Boolean)].join(": ");
}

function words(asking: Asking, named: Named, value: Json, other: Json, units: Units): string {
  if (isObject(value) && typeof value["text"] === "string") return `${value["text"]} ${String(value["units"] ?? "")}`.trim();
  if (Array.isArray(value)) return rows(asking, named, value, Array.isArray(other) ? other : [], units);
  if (!isObject(value)) return single(asking, named, value, units);
  const from = value["entry"] ?? value["pieces"];
  if (typeof from === "string") return `from ${calledAnywhere(asking, from)}`;
  return parts(asking, named, value, isObject(other) ? other : {}, units);
}

/** Names and what is said under them, where the other side says something else. */
function parts(asking: Asking, named: Named, value: JsonObject, other: JsonObject, units: Units): string {
  const differ = Object.entries(value).filter(([name, held]) => name !== "id" && held !== null && !isSame(held, other[name] ?? null));
  const line = ([name, held]: [string, Json]): string => {
    const { label = capital(name.replaceAll("_", " ")), ...inner } = named.names?.[name] ?? named.each ?? {};
    return `${label.replace(/, \$$/, "")} ${words(asking, inner, held, other[name] ?? null, units)}`;
  };
  return differ.map(line).join(", ") || "Without what the other has";
}

/** The rows that the other side has not, each by its place. */
function rows(asking: Asking, named: Named, value: Json[], other: Json[], units: Units): string {
  if (value.some(Array.isArray)) return "As drawn";
  if (isIds(value)) return value.map((id) => calledAnywhere(asking, String(id))).join(", ");
  const own = value.flatMap((row, at) => (other.some((each) => isSame(each, row)) ? [] : [{ row, at }]));
  if (own.length === 0) return value.length === 0 ? "None" : `${value.length} of them`;
  return own.map(({ row, at }) => `${titleOf(asking, named, at, row)}: ${parts(asking, named.one ?? {}, row as JsonObject, {}, units)}`).join("; ");
}

function single(asking: Asking, { choices, refers, unit }: Named, value: Json, units: Units): string {
  if (typeof value === "boolean") return value ? "yes" : "no";
  const text = String(value);
  if (choices?.[text]) return choices[text];
  if (refers) return text === "none" ? "not cut" : calledAnywhere(asking, text);
  if (unit === "length") return /^[\d\s./+-]+$/.test(text) ? `${text} ${units}` : text;
  if (text.trim() === "" || !Number.isFinite(Number(text))) return text;
  return unit === "$" ? `$${priceText(Number(text))}` : unit === "%" ? `${text} %` : unit === "°" ? `${text}°` : text;
}

/** Returns what a job calls what has an id: an item, a question, a stock. */
function calledAnywhere(asking: Asking, id: string): string {
  const lists = [asking.body["items"], asking.body["stock"], asking.body["things"]];
  const items = Array.isArray(lists[0]) ? lists[0] : [];
  const quote = asking.body["quote"];
  const all = [...lists, ...items.map((each) => heldAt(each, "entries")), ...(isObject(quote) ? Object.values(quote) : [])];
  const found = all.map((list) => (Array.isArray(list) ? heldAt(list, id) : undefined)).find(Boolean);
  return titleOf(asking, { row: "one that is gone" }, id, found);
}
