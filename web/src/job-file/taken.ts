/** A job from outside, looked at before anything is kept: by shape here, by meaning in the core. */
import type { FieldError } from "../contract/contract";
import type { Core } from "../engine/core";
import { isSame, type JsonObject } from "../store/json";
import { faultOf, isName, MOST, parsed } from "../store/check";
import { listAll, StoreFault } from "../store/store";
import { entriesOf, newId, type JobBody } from "../job/document";
import { split } from "./pictures";


const UNTOUCHED = "What is kept here is untouched.";

/** What came, and whether a job of its id is here already. */
export interface Taken {
  body: JobBody;
  /** Its photos in base 64, by id. */
  pictures: Map<string, string>;
  /** `same` where the one that is here says just the same; `deleted` where it was thrown away. */
  here: "" | "other" | "same" | "deleted";
}

/** A job that can't be taken, each fault in a sentence. */
export class Untakable extends StoreFault {
  constructor(readonly faults: string[]) {
    super(faults[0] ?? "");
  }
}

/** Returns the text of a file; throws a StoreFault for one that no job fills. */
export async function textOf(file: File): Promise<string> {
  if (file.size <= MOST.file) return file.text();
  throw new StoreFault(`This file has ${Math.ceil(file.size / 1_000_000)} MB: no job is that large. ${UNTOUCHED}`);
}

/** Returns the job that a text says; throws an Untakable with every fault of what is none. */
export async function taken(text: string, core: Core): Promise<Taken> {
  const { body, pictures } = split(parsed(text));
  if (body === undefined) throw new Untakable([`This is no job made by Longpoint, or only part of one. ${UNTOUCHED}`]);
  const fault = faultOf(body);
  if (fault) throw new Untakable([`${fault} ${UNTOUCHED}`]);
  const said = await core.checkJob(body);
  if (!said.ok) throw new Untakable([...said.errors.map(inWords), UNTOUCHED]);
  if (!isName((body as JsonObject)["id"])) throw new Untakable([`Its id is a name that can't be used. ${UNTOUCHED}`]);
  return { body: body as unknown as JobBody, pictures, here: await here(body as JsonObject) };
}

async function here(body: JsonObject): Promise<Taken["here"]> {
  const isIt = ({ id }: { id: string }): boolean => id === body["id"];
  const [here, deleted] = await listAll("job");
  const kept = here.find(isIt);
  if (kept) return isSame(kept.body, body) ? "same" : "other";
  return deleted.some(isIt) ? "deleted" : "";
}

/** Returns the job under an id of its own, to stand beside the one that has its id. */
export function beside(body: JobBody, date: string): JobBody {
  return { ...body, id: newId(), title: `${body.title.slice(0, 90)}, taken in ${date}` };
}

const ONE: { [list: string]: string } = {
  items: "item", entries: "question", stock: "stock", things: "thing", ticks: "tick", log: "line of the log",
  lengths: "length", sheets: "sheet", on_hand: "offcut", photos: "photo",
};

/** Returns a fault with its place as a person counts: "Item 1, question 3, title: …". */
export function inWords({ field, message }: FieldError): string {
  if (!field || field === "longpoint" || field === "schema") return message;
  const steps = field.split(".");
  const words = steps.flatMap((step, at) => {
    if (/^\d+$/.test(step)) return [];
    const next = steps[at + 1] ?? "";
    return /^\d+$/.test(next) ? [`${ONE[step] ?? step} ${Number(next) + 1}`] : [step.replaceAll("_", " ")];
  });
  const place = words.join(", ");
  return `${place.charAt(0).toUpperCase()}${place.slice(1)}: ${message}`;
}

const some = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;

/** Returns what a job holds, in a line. */
export function gist(body: JobBody): string {
  const questions = entriesOf(body).length;
  return [
    some(body.items.length, "item"), some(questions, "question"), some(body.stock?.length ?? 0, "kind") + " of stock",
    some(body.ticks?.length ?? 0, "tick"),
  ].join(", ");
}
