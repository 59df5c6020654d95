/** What is said of documents that have not gone up, and of one that was deleted and stays. */
import type { Key, State } from "../store/tables";
import type { SyncStatus } from "./status";

const CALLED: { [kind: string]: string } = { photo: "a photo", list: "a list", settings: "the shop's rates" };
const NO_NAME = "Job without a name";

/** Returns what documents are called; a job that is not listed is deleted here. */
export function calledIn(keys: Key[], titles: { id: string; title: string }[]): string[] {
  const named = new Map(titles.map(({ id, title }) => [id, title || NO_NAME]));
  return keys.map(([kind, id]) => (kind === "job" ? (named.get(id) ?? "a deleted job") : (CALLED[kind] ?? kind)));
}

/** Says what the server does not take, by its reasons. */
export function refusals({ refused, called }: SyncStatus): string[] {
  const reasons = new Map<string, string[]>();
  for (const [name, why] of refused) reasons.set(why, [...(reasons.get(why) ?? []), called.get(name) ?? ""]);
  return [...reasons].map(([why, names]) => [inOneLine(names.filter(Boolean)), why].filter(Boolean).join(": "));
}

export function titleOf(job: State | null): string {
  return String(job?.body["title"] || NO_NAME);
}

/** Says that a job stays that one deleted while another changed it. */
export function keptAgainst(document: State | null, isDeletedHere: boolean, by: string): string {
  const title = titleOf(document);
  return isDeletedHere
    ? `${title} was deleted here, but ${by} has changed it: it is back.`
    : `${title} was deleted by ${by}, but was changed here: it stays.`;
}

/** As many are named; the others are counted. */
const NAMED = 5;

/** Returns names in a sentence's end, each once: "Porch, a photo (3), and 2 more". */
export function inOneLine(names: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  const said = [...counts].map(([name, count]) => (count > 1 ? `${name} (${count})` : name));
  const more = said.length - NAMED;
  return [...said.slice(0, NAMED), ...(more > 0 ? [`and ${more} more`] : [])].join(", ");
}
