import type { JobReply } from "../contract/contract";

type Numbers<Whole, Name extends keyof Whole> = Omit<Whole, Name> & { [name in Name]: number[] };

/** A job's reply that names its questions, pieces, marked items and lines to buy by number. */
interface Numbered extends Omit<JobReply, "items" | "saw" | "site" | "yard"> {
  items: Numbers<JobReply["items"][number], "entries">[];
  saw: Omit<JobReply["saw"], "groups"> & { groups: Numbers<JobReply["saw"]["groups"][number], "cuts">[] };
  site: { items: number[] };
  yard: Numbers<JobReply["yard"], "lines">;
}

/** What the core says of a job: of its parts the new ones alone. */
export interface JobInParts {
  job: { progress: number } | Numbered;
  parts: { [number: string]: object };
}

export const isInParts = (reply: object): reply is JobInParts => "job" in reply && "parts" in reply;

/** The parts of the last whole reply: what has not changed since is the same object again. */
export class JobParts {
  #known = new Map<number, object>();
  /** The highest number heard, which tells the core what is here. */
  have = 0;

  /** Puts a reply together; one that is not whole yet says its progress alone. */
  whole({ job, parts }: JobInParts): Partial<JobReply> {
    for (const [number, part] of Object.entries(parts)) {
      this.#known.set(Number(number), part);
      this.have = Math.max(this.have, Number(number));
    }
    if (!("yard" in job)) return job;
    const known = this.#known;
    this.#known = new Map();
    const all = <Part>(numbers: number[]): Part[] => numbers.map((number) => this.#part(number, known) as Part);
    return {
      ...job,
      items: job.items.map((item) => ({ ...item, entries: all(item.entries) })),
      saw: { ...job.saw, groups: job.saw.groups.map((group) => ({ ...group, cuts: all(group.cuts) })) },
      site: { items: all(job.site.items) },
      yard: { ...job.yard, lines: all(job.yard.lines) },
    };
  }

  #part(number: number, known: Map<number, object>): object {
    const part = known.get(number);
    if (!part) throw new Error(`The core names part ${number} of a job and never said it.`);
    this.#known.set(number, part);
    return part;
  }
}
