/** An answer kept on a job, and a number taken from one question to another. */
import { hashWith, jobHash } from "../address/address";
import type { CatalogTool, Input, RawInputs, Scale } from "../contract/contract";
import type { Session } from "../form/session";
import type { Chosen } from "../parts/chosen";
import { toast } from "../parts/toast";
import { ownInputs } from "../store/lists";
import { itemWith, newId, withEntry, type Entry, type Tie } from "./document";
import { beginItem } from "./edits";
import type { Job } from "./job";
import { newJob } from "./kept-jobs";

/** Puts the open form on an item of the open job; an empty id begins an item. */
export async function keepOn(job: Job, item: string, session: Session): Promise<void> {
  const { declaration, typedIn, version } = session;
  const inputs = ownInputs(declaration.inputs, session.inputs);
  const into = item || (await beginItem(job, "", declaration.title));
  if (!into) return;
  const asked = { tool: declaration.slug, inputs, typed_in: typedIn, version: version || declaration.version };
  const laid = await job.lay({ do: "add entry", id: newId(), item: into, ...asked }, `${declaration.title} kept`);
  const entry = laid?.entries[0];
  if (!entry) return;
  const title = job.body.title || "the job";
  toast(`Kept on ${title}.`, "Go there", () => (location.hash = jobHash(job.id, entry)));
}

/** Begins a job and puts the open form on it. */
export async function keepOnNew(job: Job, session: Session, scale: Scale): Promise<void> {
  const id = await newJob("", scale);
  if (await job.open(id)) await keepOn(job, "", session);
}

/** A field that can take a number. */
export interface Taker {
  tool: CatalogTool;
  input: Input;
}

/**
 * Returns the fields that can take a number, those of its own quantity and the others of its kind.
 *
 * @param quantity which size it is; empty where that is not known
 */
export function takers(tools: CatalogTool[], kind: string, quantity: string): { own: Taker[]; others: Taker[] } {
  const all = tools.flatMap((tool) =>
    tool.declaration.inputs.filter((input) => input.kind === kind).map((input) => ({ tool, input })),
  );
  const isOwn = ({ input }: Taker): boolean => quantity !== "" && input.quantity === quantity;
  return { own: all.filter(isOwn), others: all.filter((each) => !isOwn(each)) };
}

/** Characters after the point that no rule or scale tells apart. */
const FINE = 6;

/** Opens a tool on its own with a number in one of its fields. */
export function useAlone({ tool, input }: Taker, { value }: Chosen): void {
  location.hash = hashWith(tool.declaration, { [input.name]: textOf(value) }, "in");
}

/**
 * Asks a further question for the item of `from`, with its number in one of the fields; where the
 * item asks it already, it takes the number. A figure is tied, so that it moves with its question.
 */
export async function useOnJob(job: Job, from: string, { tool, input }: Taker, chosen: Chosen): Promise<void> {
  const item = itemWith(job.body, from);
  if (!item) return;
  const there = askedAlready(job, from, tool);
  const tie: Tie = { entry: from, figure: chosen.figure };
  const part = chosen.figure ? { ties: { [input.name]: tie } } : { inputs: { [input.name]: textOf(chosen.value) } };
  const words = `${chosen.label} used in ${tool.declaration.title}`;
  if (there) {
    job.change((body) => withEntry(body, there.id, (entry) => taking(entry, input.name, part)), words);
    location.hash = jobHash(job.id, there.id);
    return;
  }
  const asked = { item: item.id, tool: tool.declaration.slug, after: from, typed_in: "in" as const, ...part };
  const laid = await job.lay({ do: "add entry", id: newId(), ...asked }, words);
  if (laid?.entries[0]) location.hash = jobHash(job.id, laid.entries[0]);
}

/** Returns the question of the same item that a tool is asked in already. */
export function askedAlready(job: Job, from: string, { declaration }: CatalogTool): Entry | undefined {
  const entries = itemWith(job.body, from)?.entries ?? [];
  return entries.find(({ id, tool }) => id !== from && tool === declaration.slug);
}

/** What was typed gives way to a tie. */
function taking(entry: Entry, name: string, part: { ties?: { [input: string]: Tie }; inputs?: RawInputs }): Entry {
  const { [name]: _, ...typed } = entry.inputs;
  return { ...entry, inputs: { ...typed, ...part.inputs }, ties: { ...entry.ties, ...part.ties } };
}

function textOf(value: unknown): string {
  return String(Number(Number(value).toFixed(FINE)));
}
