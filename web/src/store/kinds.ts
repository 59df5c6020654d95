/** What differs between kinds of documents. A kind not named here is as most are. */
import { heldUnder, type Json, type JsonObject } from "./json";
import { merge } from "./merge";

interface Kind {
  /** Whether its changes can be undone. */
  hasHistory: boolean;
  /** What it says once one that was saved in a file is brought back over the one that is here. */
  broughtBack(here: JsonObject, saved: JsonObject): JsonObject;
}

const MOST: Kind = { hasHistory: true, broughtBack: (_, saved) => saved };

/** How many answers of one tool are kept. */
export const KEPT_ANSWERS = 20;

const timeOf = (answer: Json): number => Number(heldUnder(answer, "at"));

/** Returns the last answers of a tool, the oldest first. */
export function lastAnswers(answers: Json[]): Json[] {
  return [...answers].sort((one, other) => timeOf(one) - timeOf(other)).slice(-KEPT_ANSWERS);
}

function joinedAnswers(here: JsonObject, saved: JsonObject): JsonObject {
  const joined = merge({}, here, saved).value as JsonObject;
  const answers = heldUnder(joined, "answers");
  return Array.isArray(answers) ? { ...joined, answers: lastAnswers(answers) } : joined;
}

const KINDS = new Map<string, Kind>([
  ["photo", { ...MOST, hasHistory: false }],
  ["settings", { ...MOST, hasHistory: false }],
  ["answers", { hasHistory: false, broughtBack: joinedAnswers }],
]);

const kindOf = (kind: string): Kind => KINDS.get(kind) ?? MOST;

export function hasHistory(kind: string): boolean {
  return kindOf(kind).hasHistory;
}

export function broughtBack(kind: string, here: JsonObject, saved: JsonObject): JsonObject {
  return kindOf(kind).broughtBack(here, saved);
}
