/** One document at work within one transaction, with its history. */
import { faultOf, MOST } from "./check";
import { StoreFault, type Reading, type Writing } from "./database";
import { editsBetween, undoing, withEdits } from "./edits";
import { heldUnder, isObject, type JsonObject } from "./json";
import { hasHistory } from "./kinds";
import { isStep, typedOn } from "./steps";
import type { DocumentRecord, HistoryRecord, Key, State } from "./tables";

/** Changes of a document that are kept, to be undone; more are let go a few at a time. */
const KEPT_STEPS = 200;
const SPARE_STEPS = 50;
/** Characters of a document's own name in the name of what is set aside of it. */
const NAME_KEPT = 120;

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

export type Way = "back" | "forward";
export type Keeping = Pick<DocumentRecord, "kind" | "id" | "schema">;
/** What a transaction that reads has, and one that writes too. */
type Tx = Pick<Reading, "objectStore">;

export const EMPTY: State = { units: "in", schema: 1, body: {} };

/** A state as the value that edits and merging go by. */
export const json = (state: State): JsonObject => state as unknown as JsonObject;
export const stateIn = ({ units, schema, body }: DocumentRecord): State => ({ units, schema, body });

/** Whether what stands in the storage can be worked with at all. */
export function isSound(record: DocumentRecord): boolean {
  return isWhole(record) && faultOf(record.body) === "";
}

/** Whether it has the parts of a document, whatever its body holds. */
export function isWhole({ revision, body }: DocumentRecord): boolean {
  return Number.isSafeInteger(revision) && isObject(body);
}

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
  async goStep(way: Way): Promise<string | null> {
    const step = await stepOn(this.tx as unknown as Tx, this.record, way);
    if (!step) return null;
    const state = withEdits(json(this.state), way === "back" ? undoing(step.edits) : step.edits);
    if (!isObject(state) || !isObject(state["body"])) return null;
    const at = way === "back" ? step.step - 1 : step.step;
    this.record = { ...this.record, ...(state as unknown as State), step: at };
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
    this.record = listed({ ...this.record, revision: this.record.revision + 1 });
    await this.tx.objectStore("documents").put(this.record);
    const found = await ways(this.tx as unknown as Tx, this.record);
    return { revision: this.revision, state: this.state, ...found };
  }
}

/** A document with a title is found by it without its body being read. */
function listed({ listed: _, ...record }: DocumentRecord): DocumentRecord {
  const { kind, body, deleted } = record;
  const title = heldUnder(body, "title");
  if (typeof title !== "string" || deleted !== undefined) return record;
  return { ...record, listed: [kind, Date.now(), title.slice(0, MOST.name)] };
}

function stepsFrom(key: Key, step: number): IDBKeyRange {
  return IDBKeyRange.bound([...key, step], [...key, Infinity]);
}

function stepsTo(key: Key, step: number): IDBKeyRange {
  return IDBKeyRange.bound([...key, -Infinity], [...key, step]);
}

async function setAside(tx: Writing, found: DocumentRecord): Promise<void> {
  const id = `${`${found.kind} ${found.id}`.slice(0, NAME_KEPT)} ${Date.now()}`;
  const damaged = { kind: "damaged", id, revision: 1, step: 0 };
  await tx.objectStore("documents").put({ ...EMPTY, ...damaged, body: { kept: found as never } });
}

/** Returns the step of a document's history that leads back, or forward again; null where none does. */
async function stepOn(
  tx: Tx, { kind, id, step }: DocumentRecord, way: Way,
): Promise<HistoryRecord | null> {
  const at = way === "back" ? step : step + 1;
  const found = await tx.objectStore("history").get([kind, id, at]);
  return isStep(found) ? found : null;
}

/** Returns which ways a document can go in its history. */
export async function ways(
  tx: Tx, record: DocumentRecord,
): Promise<Pick<Stored, "canUndo" | "canRedo">> {
  const [back, forward] = [await stepOn(tx, record, "back"), await stepOn(tx, record, "forward")];
  return { canUndo: back !== null, canRedo: forward !== null };
}
