/**
 * The open job: its document, and what the core makes of it.
 *
 * A change shows at once and is written in turn. What the job comes to is worked out one question
 * at a time, so that the core is free for what is typed; until it is, the last whole reply stays.
 */
import type { Declaration, FieldError, JobEntryReply, JobReply, Laid, Laying, Pattern, Scale } from "../contract/contract";
import type { Core } from "../engine/core";
import { toast } from "../parts/toast";
import type { JsonObject } from "../store/json";
import { openDocument, type DocumentHandle } from "../store/store";
import { asksOf, blankJob, entryOf, isJob, SCHEMA, type JobBody } from "./document";
import { EntryForm } from "./entry-form";
import { KIND } from "./kept-jobs";
import { keepReply, lastReply, type Asked } from "./last-reply";
import { refused, sayCollision, sayWhy } from "./said";
import { noteStanding, standingOf } from "./standing";
import { followShop, KEPT_FOR_SHOP, shopOffcuts } from "./shop";

/** Milliseconds of quiet after a change before it is worked out. */
const QUIET = 80;
/** The same where the last reply stands already: it is drawn before the core is asked again. */
const STANDS = 400;
const TRIES = 2;

type Listener = () => void;

export class Job {
  /** What the core last made of the whole job; null before it has. */
  reply: JobReply | null = null;
  /** How far a newer reply has come: 1 where `reply` is of the document as it stands. */
  progress = 0;
  /** Why this document can't be worked out: each fault with its place. */
  faults: FieldError[] = [];
  /** Why the core can't answer now; empty while it can. */
  fault = "";
  /** Whether the reply is the kept one, of just what the core is at work on now. */
  private isRecalled = false;
  private document: DocumentHandle | null = null;
  private stopHearing: () => void = () => undefined;
  private readonly listeners = new Set<Listener>();
  private newest = 0;
  /** Counts the changes made here. */
  private made = 0;
  private openings = 0;
  private waiting: ((isGone: boolean) => void)[] = [];

  constructor(
    readonly core: Core,
    private scale: Scale,
  ) {}

  /** Whether the storage could not be read when a job was to be opened: it may be there. */
  isUnread = false;

  /** Opens another job in the place of the one that is open; false where there is none of that id. */
  async open(id: string): Promise<boolean> {
    if (id === this.id) return true;
    const opening = (this.openings += 1);
    this.close();
    if (!id) return false;
    const document = await openDocument(KIND, id, { schema: SCHEMA });
    this.isUnread = !document.isRead;
    if (opening !== this.openings || !isJob(document.body)) {
      document.close();
      return opening !== this.openings && id === this.id;
    }
    this.document = document;
    this.stopHearing = document.onChange(({ paths, collision }) => {
      if (collision) sayCollision(collision.isMine, () => collision.takeOther());
      if (!isJob(document.body)) return this.close();
      if (paths.length > 0) this.work();
      this.tell();
    });
    const reply = await this.recalled();
    if (opening !== this.openings) return id === this.id;
    this.work(reply ? STANDS : 0);
    if (reply) Object.assign(this, { reply, isRecalled: true });
    return true;
  }

  /** Lets the open job go; what waits is still written. */
  close(): void {
    this.stopHearing();
    this.document?.close();
    this.document = null;
    this.newest += 1;
    Object.assign(this, { reply: null, progress: 0, faults: [], fault: "" });
    this.letGo();
    this.tell();
  }

  /** Of the open job; empty where none is. */
  get id(): string {
    return this.document?.key[1] ?? "";
  }

  get isOpen(): boolean {
    return this.document !== null;
  }

  /** The document as it stands, what is not written yet included; a blank one where none is open. */
  get body(): JobBody {
    const blank = blankJob("", "", this.scale.units, this.scale.step);
    return this.document ? (this.document.body as unknown as JobBody) : blank;
  }

  /** Returns the slug of the tool that a question is asked of; empty where it is not on the job. */
  toolOf(entry: string): string {
    return entryOf(this.body, entry)?.tool ?? "";
  }

  /** Returns a question as the form of its tool, in the order of its pattern; null where it is not on the job. */
  entryForm(id: string, declaration: Declaration, patterns: readonly Pattern[]): EntryForm | null {
    const entry = entryOf(this.body, id);
    return entry ? new EntryForm(this, entry, declaration, asksOf(this.body, id, patterns)) : null;
  }

  get canUndo(): boolean {
    return this.document?.canUndo ?? false;
  }

  get canRedo(): boolean {
    return this.document?.canRedo ?? false;
  }

  /** What the core last said of each question. */
  get entries(): JobEntryReply[] {
    return this.reply?.items.flatMap(({ entries }) => entries) ?? [];
  }

  /** Whether the reply is of the document as it stands. */
  get isCurrent(): boolean {
    return this.progress === 1;
  }

  /**
   * Changes the document; `words` say what was done, for the history. Returns false, and says why,
   * where it can't be kept.
   */
  change(edit: (body: JobBody) => JobBody, words: string): boolean {
    const { document } = this;
    if (!document) return false;
    const body = edit(this.body) as unknown as JsonObject;
    const isKept = document.change(body, document.units, words);
    if (isKept) this.made += 1;
    if (isKept) this.work();
    this.tell();
    return isKept;
  }

  /**
   * Has the core lay an item or a question into the document, which gives it letters of its own.
   *
   * Returns the ids of the item and of the questions laid; null, with a sentence said, where it can't.
   */
  async lay(request: Laying, words: string): Promise<Laid | null> {
    const { id } = this;
    for (;;) {
      const job = this.body;
      const said = await this.core.lay(request, job).catch((error: Error) => refused(error.message));
      if (id !== this.id) return null;
      // What was changed while the core was at work comes first: it is asked once more.
      if (said.ok && this.body !== job) continue;
      if (!said.ok) return sayWhy(said);
      return this.change(() => said.document as unknown as JobBody, words) ? said : null;
    }
  }

  /** Changes the document; once that is on the disk it is said, and offered to be taken back. */
  changeWithUndo(edit: (body: JobBody) => JobBody, words: string): void {
    const { id, document } = this;
    if (!document || !this.change(edit, words)) return;
    const { made } = this;
    const undo = (): void => {
      if (this.id !== id) return;
      // Words that still stand there must not take back what was done after them.
      if (this.made === made) this.undo();
      else toast("Something was changed after that: undo it step by step on the job's own screen.");
    };
    const say = (): void => toast(`${words}.`, "Undo", undo);
    void document.allWritten().then((isWritten) => isWritten && say());
  }

  undo(): void {
    void this.document?.undo().then(this.followed("Undone"));
  }

  redo(): void {
    void this.document?.redo().then(this.followed("Done again"));
  }

  /** Says what was undone or done again, once it is. */
  private followed(said: string): (words: string | null) => void {
    const before = this.body;
    return (words) => {
      if (words) toast(`${said}: ${words}`);
      if (words === KEPT_FOR_SHOP) void followShop(before, this.body);
    };
  }

  /** Calls `listener` when document or reply change; returns how to stop that. */
  onChange(listener: Listener): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /** Resolves when the reply is of the document as it stands, or none will come. */
  get settled(): Promise<unknown> {
    if (!this.isOpen || this.isCurrent || this.faults.length > 0 || this.fault) return Promise.resolve();
    return new Promise((resolve) => this.waiting.push(resolve));
  }

  /** Shows everything under another scale. */
  rescale(scale: Scale): void {
    this.scale = scale;
    if (this.isOpen) this.work(0);
  }

  /** Works the job out anew, once nothing changed for a moment. */
  work(quiet = QUIET): void {
    const id = (this.newest += 1);
    this.progress = 0;
    this.isRecalled = false;
    setTimeout(() => void this.worked(id), quiet);
  }

  private async worked(id: number): Promise<void> {
    for (let turn = 1; id === this.newest; turn += 1) {
      try {
        return await this.stepped(id);
      } catch (error) {
        if (id !== this.newest) return;
        console.error(error);
        if (turn >= TRIES) return this.end({ fault: error instanceof Error ? error.message : String(error) });
        await this.core.started.catch(() => undefined);
      }
    }
  }

  private async stepped(id: number): Promise<void> {
    const asked = await this.asked();
    let said = id === this.newest ? await this.core.job(asked.body, asked.scale, asked.offcuts) : null;
    while (said && id === this.newest) {
      if (!said.ok) return this.end({ faults: said.errors });
      const { job, work } = said;
      if (work === null) return this.whole(asked, job as JobReply);
      this.progress = Math.min(job.progress ?? 0, 0.99);
      // A whole reply stands while better plans are looked for; none is better than a last one.
      if ("yard" in job && !this.isRecalled) Object.assign(this, { reply: job as JobReply, faults: [], fault: "" });
      if ("yard" in job) this.tell();
      said = await this.core.goOnJob(work);
    }
  }

  private async asked(): Promise<Asked> {
    const offcuts = (await shopOffcuts())?.rows ?? [];
    return { id: this.id, body: this.body, scale: this.scale, offcuts };
  }

  /** Returns what the core said of the job before, where it is still of all that is asked now. */
  private async recalled(): Promise<JobReply | null> {
    const asked = await this.asked();
    const reply = await lastReply(asked);
    return asked.body === this.body && asked.scale === this.scale ? reply : null;
  }

  private whole(asked: Asked, reply: JobReply): void {
    noteStanding(asked.id, standingOf(reply));
    this.end({ reply, progress: 1 });
    keepReply(asked, reply);
  }

  private end(what: Partial<Pick<Job, "reply" | "progress" | "faults" | "fault">>): void {
    Object.assign(this, { faults: [], fault: "", ...what });
    this.letGo();
    this.tell();
  }

  private letGo(): void {
    for (const resolve of this.waiting.splice(0)) resolve(true);
  }

  private tell(): void {
    for (const listener of [...this.listeners]) listener();
  }
}
