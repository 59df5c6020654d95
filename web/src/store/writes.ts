/** What is done to a document and its history, each time in one transaction. */
import { faultOf } from "./check";
import { reading, StoreFault, writing, type Reading, type Writing } from "./database";
import { editsBetween, undoing, withEdits, type Edit, type Path } from "./edits";
import { isObject, type Json, type JsonObject } from "./json";
import { hasHistory } from "./kinds";
import { merge } from "./merge";
import type { DocumentRecord, HistoryRecord, Key, State } from "./tables";

/** Changes of a document that are kept, to be undone; more are let go a few at a time. */
export const KEPT_STEPS = 200;
const SPARE_STEPS = 50;
/** Milliseconds in which keys typed into one field are one change. */
const TYPING = 2000;

export const NEWER =
  "A newer Longpoint wrote what is kept here: reload for the update. Until then nothing is written over it.";

/** One change by a page: the whole state after it. */
export interface Change {
  state: State;
  words: string;
  by: string;
  count: number;
  at: number;
}

/** A document as last read or written. */
export interface Stored {
  revision: number;
  state: State;
  canUndo: boolean;
  canRedo: boolean;
}

export interface Written extends Stored {
  /** Where another page had changed the same field; this page's version stands there. */
  collisions: Path[];
  /** The same state with the other page's version in those places. */
  other: State;
}

export const EMPTY: State = { units: "in", schema: 1, body: {} };

const json = (state: State): JsonObject => state as unknown as JsonObject;
const stateIn = ({ units, schema, body }: DocumentRecord): State => ({ units, schema, body });

/** Whether what stands in the storage can be worked with at all. */
export function isSound(record: DocumentRecord): boolean {
  return Number.isSafeInteger(record.revision) && isObject(record.body) && faultOf(record.body) === "";
}

type Keeping = Pick<DocumentRecord, "kind" | "id"> & { schema: number };

/** A document under work within one transaction. */
export class Opened {
  private constructor(
    private readonly tx: Writing,
    readonly key: Key,
    private record: DocumentRecord,
  ) {}

  /** Throws a StoreFault where a newer version wrote it. A record beyond reading is moved aside. */
  static async of(tx: Writing, { kind, id, schema }: Keeping, blank = EMPTY): Promise<Opened> {
    const found = await tx.objectStore("documents").get([kind, id]);
    if (found && isSound(found)) {
      if (found.schema > schema) throw new StoreFault(NEWER);
      return new Opened(tx, [kind, id], { ...found, step: found.step || 0 });
    }
    if (found) await setAside(tx, found);
    const record = { ...blank, kind, id, revision: 0, step: 0 };
    return new Opened(tx, [kind, id], record);
  }

  get state(): State {
    return stateIn(this.record);
  }

  get revision(): number {
    return this.record.revision;
  }

  get isDeleted(): boolean {
    return this.record.deleted !== undefined;
  }

  /** Whether this change is in the history already: its page left it behind after it was written. */
  async has({ by, count }: Change): Promise<boolean> {
    const steps = await this.tx.objectStore("history").getAll(stepsFrom(this.key, 0));
    return steps.some((step) => step.by === by && step.count >= count);
  }

  /** Goes on to `state`; what was undone before can't be done again after it. */
  async goTo(state: State, { words, by, count, at }: Omit<Change, "state">): Promise<void> {
    const edits = editsBetween(json(this.state), json(state));
    if (edits.length === 0) return;
    const [kind, id] = this.key;
    if (hasHistory(kind)) {
      await this.keep({ kind, id, step: this.record.step + 1, by, count, at, words, edits });
    }
    this.record = { ...this.record, ...state };
  }

  private async keep(step: HistoryRecord): Promise<void> {
    const history = this.tx.objectStore("history");
    const last = await history.get([...this.key, this.record.step]);
    const kept = (last && typedOn(last, step)) ?? step;
    await history.delete(stepsFrom(this.key, kept.step));
    await history.put(kept);
    if (kept.step % SPARE_STEPS === 0) await history.delete(stepsTo(this.key, kept.step - KEPT_STEPS));
    this.record = { ...this.record, step: kept.step };
  }

  /** Goes back one change, or forward again; returns its words, or null where there is none. */
  async goStep(way: "back" | "forward"): Promise<string | null> {
    const at = this.record.step + (way === "back" ? 0 : 1);
    const step = await this.tx.objectStore("history").get([...this.key, at]);
    if (!step || !areEdits(step.edits)) return null;
    const edits = way === "back" ? undoing(step.edits) : step.edits;
    const state = withEdits(json(this.state), edits) as unknown as State;
    if (!isObject(state.body)) return null;
    this.record = { ...this.record, ...state, step: way === "back" ? at - 1 : at };
    return step.words;
  }

  /** What stands beside the state in a record: taken over as it is. */
  add(others: JsonObject): void {
    this.record = { ...others, ...this.record };
  }

  /** Deletes it as of a time, or has it back. */
  setDeleted(deleted: number | null): void {
    const { deleted: _, ...record } = this.record;
    this.record = deleted === null ? record : { ...record, deleted };
  }

  async put(): Promise<Stored> {
    const record = { ...this.record, revision: this.record.revision + 1 };
    this.record = record;
    await this.tx.objectStore("documents").put(record);
    const found = await ways(this.tx as unknown as Tx, record);
    return { revision: record.revision, state: this.state, ...found };
  }
}

function stepsFrom(key: Key, step: number): IDBKeyRange {
  return IDBKeyRange.bound([...key, step], [...key, Infinity]);
}

function stepsTo(key: Key, step: number): IDBKeyRange {
  return IDBKeyRange.bound([...key, -Infinity], [...key, step]);
}

/** A history that is damaged has no step to go. */
function areEdits(edits: unknown): boolean {
  return Array.isArray(edits) && edits.every((edit) => isObject(edit) && Array.isArray(edit["path"]));
}

/** Returns both as one change where keys went on into the same field, else null. */
function typedOn(last: HistoryRecord, next: HistoryRecord): HistoryRecord | null {
  const [one, other] = [onlyField(last.edits), onlyField(next.edits)];
  const isOne = one && other && JSON.stringify(one.path) === JSON.stringify(other.path);
  const isQuick = next.at - last.at < TYPING && next.at >= last.at;
  if (!isOne || !isQuick || last.by !== next.by || last.words !== next.words) return null;
  return { ...next, step: last.step, edits: [fromTo(one, other)] };
}

type Field = { path: Path; before?: Json; after?: Json };

function onlyField(edits: Edit[]): Field | null {
  const [edit, ...more] = edits;
  return edit && more.length === 0 && !("at" in edit) ? edit : null;
}

function fromTo({ path, before }: Field, { after }: Field): Field {
  return { path, ...(before !== undefined && { before }), ...(after !== undefined && { after }) };
}

async function setAside(tx: Writing, found: DocumentRecord): Promise<void> {
  const { kind, id } = found;
  const damaged = { kind: "damaged", id: `${kind} ${id} ${Date.now()}`, revision: 1, step: 0 };
  await tx.objectStore("documents").put({ ...EMPTY, ...damaged, body: { kept: found as never } });
}

type Tx = Pick<Reading, "objectStore">;

async function ways(
  tx: Tx, { kind, id, step }: DocumentRecord,
): Promise<Pick<Stored, "canUndo" | "canRedo">> {
  const history = tx.objectStore("history");
  const [back, forward] = await Promise.all([
    history.getKey([kind, id, step]), history.getKey([kind, id, step + 1]),
  ]);
  return { canUndo: back !== undefined, canRedo: forward !== undefined };
}

/** Returns a document as it is kept: blank where it was deleted, or can't be read. */
export function readStored(key: Key, blank: State): Promise<Stored & { isDamaged: boolean }> {
  const none = { revision: 0, state: blank, canUndo: false, canRedo: false };
  return reading(["documents", "history"], async (tx) => {
    const record = await tx.objectStore("documents").get(key);
    if (!record) return { ...none, isDamaged: false };
    if (!isSound(record)) return { ...none, isDamaged: true };
    const { revision } = record;
    const state = record.deleted === undefined ? stateIn(record) : blank;
    return { revision, state, ...(await ways(tx as Tx, record)), isDamaged: false };
  });
}

export interface Work extends Keeping {
  /** What the changes were made to; null where that could not be read. */
  base: Pick<Stored, "revision" | "state"> | null;
  changes: Change[];
  /** Whether they may have been written before, by a page that did not live to see it. */
  isLeft: boolean;
}

/**
 * Writes changes, each a step of the history. Where the document has moved on from what they were
 * made to, they are joined with what it says now.
 */
export async function writeChanges(work: Work): Promise<Written> {
  let written: Written | undefined;
  await writing(["documents", "history"], async (tx) => {
    const opened = await Opened.of(tx, work, work.base?.state);
    const joined = new Joined(work.base, opened.revision);
    for (const change of work.changes) {
      if (work.isLeft && (await opened.has(change))) continue;
      await opened.goTo(joined.with(change.state, opened.state), change);
    }
    // Deleted in one page and typed on in another: what is typed stays.
    opened.setDeleted(null);
    written = { ...(await opened.put()), ...joined.result(opened.state) };
  });
  if (!written) throw new StoreFault("What was typed could not be kept.");
  return written;
}

/** Joins one change after the other with a document that another page has changed. */
class Joined {
  private readonly isMoved: boolean;
  private readonly base: State;
  private from: State;
  private theirs: State | null = null;
  private collisions: Path[] = [];

  constructor(base: Work["base"], revision: number) {
    this.isMoved = base?.revision !== revision;
    this.base = this.from = base?.state ?? EMPTY;
  }

  with(mine: State, stands: State): State {
    if (!this.isMoved) return mine;
    this.theirs ??= stands;
    const { value, collisions } = merge(json(this.from), json(mine), json(stands));
    this.from = mine;
    this.collisions.push(...collisions);
    return value as unknown as State;
  }

  result(stands: State): { collisions: Path[]; other: State } {
    const { collisions, theirs } = this;
    if (!theirs || collisions.length === 0) return { collisions, other: stands };
    const other = merge(json(this.base), json(theirs), json(this.from)).value;
    return { collisions, other: other as unknown as State };
  }
}

/** Undoes the last change of a document, or does it again; null where there is none. */
export async function goStep(
  keeping: Keeping, way: "back" | "forward",
): Promise<(Stored & { words: string }) | null> {
  let done: (Stored & { words: string }) | null = null;
  await writing(["documents", "history"], async (tx) => {
    const opened = await Opened.of(tx, keeping);
    const words = await opened.goStep(way);
    done = words === null ? null : { ...(await opened.put()), words };
  });
  return done;
}
