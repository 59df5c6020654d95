/** What is done to a document, each time in one transaction. */
import { reading, StoreFault, writing } from "./database";
import type { Path } from "./edits";
import { merge } from "./merge";
import {
  EMPTY, isSound, json, Opened, stateIn, ways, type Change, type Keeping, type Stored, type Way,
} from "./opened";
import type { Key, State } from "./tables";

export interface Written extends Stored {
  /** Where another page had changed the same field; this page's version stands there. */
  collisions: Path[];
  /** The same state with the other page's version in those places. */
  other: State;
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
    return { revision, state, ...(await ways(tx, record)), isDamaged: false };
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
      if (work.isLeft && (await opened.has(change))) joined.skip(change.state);
      else await opened.goTo(joined.with(change.state, opened.state), change);
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

  /** A change that is written already is what the next one was made to. */
  skip(mine: State): void {
    this.from = mine;
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
  keeping: Keeping, way: Way,
): Promise<(Stored & { words: string }) | null> {
  let done: (Stored & { words: string }) | null = null;
  await writing(["documents", "history"], async (tx) => {
    const opened = await Opened.of(tx, keeping);
    const words = await opened.goStep(way);
    done = words === null ? null : { ...(await opened.put()), words };
  });
  return done;
}
