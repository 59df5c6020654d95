/** A question of a job, kept as a tool's form is: what was typed stands in the job's document. */
import type { CarriedNumber, Declaration, RawInputs, SetAside, Units } from "../contract/contract";
import { editsBetween } from "../store/edits";
import type { DocumentChange } from "../store/handle";
import { heldUnder, type Json, type JsonObject } from "../store/json";
import type { FormDocument } from "../store/store";
import { entryOf, itemWith, withEntry, type Entry } from "./document";
import type { Job } from "./job";

export class EntryForm implements FormDocument {
  /** A question stands in its job: it was never kept without. */
  readonly revision = 1;
  private entry: Entry;
  private readonly stops: (() => void)[] = [];

  constructor(
    readonly job: Job,
    entry: Entry,
    private readonly declaration: Declaration,
    /** What its pattern asks first: what a tape or a catalog says. */
    readonly asks: readonly string[] = [],
  ) {
    this.entry = entry;
  }

  get id(): string {
    return this.entry.id;
  }

  get body(): JsonObject {
    const { inputs, typed_in, aside } = this.entry;
    const body = { inputs, ...(typed_in && { typed_in }), ...(aside && { aside }) };
    return body as unknown as JsonObject;
  }

  get bodySchema(): number {
    return this.entry.version ?? this.declaration.version;
  }

  get canUndo(): boolean {
    return this.job.canUndo;
  }

  get canRedo(): boolean {
    return this.job.canRedo;
  }

  change(body: JsonObject, units: Units, _: string, schema = this.declaration.version): boolean {
    const inputs = heldUnder(body, "inputs") as RawInputs;
    const aside = heldUnder(body, "aside") as unknown as SetAside[] | undefined;
    const { aside: __, ...entry } = { ...this.entry, inputs, typed_in: units, version: schema };
    const written = { ...entry, ...(aside && { aside }) };
    const before = this.entry;
    this.entry = written;
    const isKept = this.job.change((job) => withEntry(job, this.id, () => written), `${this.title} changed`);
    if (!isKept) this.entry = before;
    return isKept;
  }

  undo(): Promise<null> {
    this.job.undo();
    return Promise.resolve(null);
  }

  redo(): Promise<null> {
    this.job.redo();
    return Promise.resolve(null);
  }

  onChange(listener: (change: DocumentChange) => void): () => void {
    const stop = this.job.onChange(() => listener({ paths: this.changed(), collision: null }));
    this.stops.push(stop);
    return stop;
  }

  close(): void {
    for (const stop of this.stops.splice(0)) stop();
  }

  /** What the question is called. */
  get title(): string {
    return this.entry.title || this.declaration.title;
  }

  /** Whether it is still on its job. */
  get isThere(): boolean {
    return entryOf(this.job.body, this.id) !== undefined;
  }

  /** Which job and which item it belongs to, in words. */
  get belongs(): string {
    const { body } = this.job;
    return `${body.title || "Job"} › ${itemWith(body, this.id)?.title ?? ""}`;
  }

  /** What other questions give, by input; those that were typed over too. */
  get carried(): CarriedNumber[] {
    return this.job.entries.find(({ id }) => id === this.id)?.carried ?? [];
  }

  /** Takes over what another page, or undo, has made of it; returns where it changed. */
  private changed(): (string | number)[][] {
    const before = this.body;
    this.entry = entryOf(this.job.body, this.id) ?? this.entry;
    return editsBetween(before as Json, this.body as Json).map(({ path }) => ["body", ...path]);
  }
}
