/**
 * A document as the screens have it: read once, changed at once, written in turn.
 *
 * A change shows before it is written. Another page's change of the same document comes in by
 * itself, and where both changed the same field the person is told, with a way to take the other.
 */
import type { Units } from "../contract/contract";
import { faultOf } from "./check";
import { StoreFault } from "./database";
import { editsBetween, overlap, undoing, withEdits, type Edit, type Path } from "./edits";
import type { JsonObject } from "./json";
import { merge } from "./merge";
import { flushed, inTurn, storageFault, writeInTurn } from "./queue";
import type { Key, State } from "./tables";
import { PAGE, tellOthers } from "./tabs";
import { json, NEWER, type Change, type Stored, type Way } from "./opened";
import { goStep, readStored, writeChanges, type Written } from "./writes";

/** What a listener hears when a document says something else than its page put there. */
export interface DocumentChange {
  /** Where it changed, within `{units, schema, body}`; none where only undo or redo came or went. */
  paths: Path[];
  /** What was typed here and in another page at once; null where nothing was. */
  collision: Collision | null;
}

export interface Collision {
  paths: Path[];
  /** Whether what was typed here stands now, not what came from the other page. */
  isMine: boolean;
  /** Puts the other of the two in its place. */
  takeOther(): void;
}

type Listener = (change: DocumentChange) => void;

const DAMAGED =
  "What was kept for this can't be read. It is set aside and goes with a saved file; this begins anew.";

const merged = (base: State, mine: State, theirs: State): State =>
  merge(json(base), json(mine), json(theirs)).value as unknown as State;

/** Changes that wait while none can be written; older ones are joined with the next. */
const MOST_WAITING = 20;

let count = 0;

export class DocumentHandle {
  /** Whether a newer version wrote it: nothing typed here is written over it. */
  isNewer = false;
  canUndo = false;
  canRedo = false;
  /** Counts who has it open. */
  users = 0;
  private stored: Stored | null = null;
  private state: State;
  /** Changed here and not surely written yet. */
  private changes: Change[] = [];
  /** What this page has changed since it opened the document. */
  private touched: Path[] = [];
  private readonly listeners = new Set<Listener>();

  /**
   * @param blank what it says where nothing is kept
   * @param forget told when nobody has it open and nothing of it waits
   */
  constructor(
    readonly key: Key,
    private readonly blank: State,
    private readonly forget: () => void,
  ) {
    this.state = blank;
  }

  /** The highest schema that this version knows. */
  get schema(): number {
    return this.blank.schema;
  }

  get body(): JsonObject {
    return this.state.body;
  }

  get units(): Units {
    return this.state.units;
  }

  /** By which rules the body is written; lower than the schema it was opened for in an old one. */
  get bodySchema(): number {
    return this.state.schema;
  }

  get revision(): number {
    return this.stored?.revision ?? 0;
  }

  /** Whether the storage has said what is kept; else it could not be read, and that was said. */
  get isRead(): boolean {
    return this.stored !== null;
  }

  get hasUnwritten(): boolean {
    return this.changes.length > 0;
  }

  /**
   * Puts another body in the place of the one it has; `words` say what was done, for the history.
   *
   * Keys typed one after the other into one field, with the same words, are one change. Returns
   * false, and says why, where the body can't be kept; it then stays as it was. A body that is not
   * brought up to this version's rules yet says its own `schema`.
   */
  change(body: JsonObject, units: Units, words = "", schema = this.schema): boolean {
    const fault = faultOf(body);
    if (fault) storageFault(new StoreFault(fault));
    else this.go({ units, schema, body }, words);
    return fault === "";
  }

  /** Changes the body past all who have it open: each of them is told. */
  changeForAll(body: JsonObject, words: string): void {
    const before = this.state;
    if (this.change(body, this.units, words)) this.tell(before, null, false);
  }

  /** Resolves when all changes so far are on the disk; false where one could not be kept. */
  async allWritten(): Promise<boolean> {
    await flushed();
    return this.changes.length === 0;
  }

  private go(state: State, words: string): void {
    const edits = editsBetween(json(this.state), json(state));
    if (edits.length === 0) return;
    this.touched.push(...edits.map(({ path }) => path).filter((path) => !this.isTouched(path)));
    this.state = state;
    count += 1;
    this.changes.push({ state, words, by: PAGE, count, at: Date.now() });
    void writeInTurn(() => this.write());
  }

  /** Puts a state that the page does not show yet. */
  private put(state: State): void {
    const before = this.state;
    this.go(state, "The other of two");
    this.tell(before, null, false);
  }

  private isTouched(path: Path): boolean {
    return this.touched.some((mine) => overlap(mine, path));
  }

  /** Takes the last change back; returns its words, or null where there is none. */
  undo(): Promise<string | null> {
    return inTurn(() => this.goStep("back"));
  }

  /** Does again what was taken back; returns its words, or null where there is none. */
  redo(): Promise<string | null> {
    return inTurn(() => this.goStep("forward"));
  }

  /** Calls `listener` when it changes other than by `change`; returns how to stop that. */
  onChange(listener: Listener): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /** Lets it go; what is not written yet still will be. */
  close(): void {
    this.users -= 1;
    this.rest();
  }

  private rest(): void {
    if (this.users <= 0 && !this.hasUnwritten) this.forget();
  }

  /**
   * Reads it; what was typed while that failed is joined with it later. `isAsked` says that the
   * person asked for what comes: it is no other page's.
   */
  async read(isAsked = false): Promise<void> {
    if (this.hasUnwritten) return;
    try {
      const { isDamaged, ...stored } = await readStored(this.key, this.blank);
      if (isDamaged) storageFault(new StoreFault(DAMAGED));
      this.take(stored, isAsked);
    } catch (error) {
      storageFault(error);
    }
  }

  /** Writes what was changed, and takes over what another page has written. */
  async write(): Promise<void> {
    const changes = [...this.changes];
    const last = changes.at(-1);
    if (!last) return;
    const [kind, id] = this.key;
    const { schema, stored: base } = this;
    try {
      const written = await writeChanges({ kind, id, schema, base, changes, isLeft: false });
      this.changes = this.changes.slice(changes.length);
      this.written(last.state, written);
      tellOthers([this.key]);
    } catch (error) {
      this.changes = this.changes.slice(-MOST_WAITING);
      storageFault(error);
    }
    this.rest();
  }

  /** What was typed while it was being written was typed on top of `sent`. */
  private written(sent: State, written: Written): void {
    const { state, collisions } = written;
    const before = this.state;
    this.changes = this.changes.map((change) => ({ ...change, state: merged(sent, change.state, state) }));
    this.state = this.changes.at(-1)?.state ?? state;
    const isOther = this.keep(written);
    const takeOther = (): void => this.put(merged(state, written.other, this.state));
    const collision = { paths: collisions, isMine: true, takeOther };
    this.tell(before, collisions.length > 0 ? collision : null, isOther);
  }

  /** Returns whether undo or redo came or went. */
  private keep({ revision, state, canUndo, canRedo }: Stored): boolean {
    const isOther = canUndo !== this.canUndo || canRedo !== this.canRedo;
    this.stored = { revision, state, canUndo, canRedo };
    this.canUndo = canUndo;
    this.canRedo = canRedo;
    return isOther;
  }

  /** Takes over what another page, or another day, has written. */
  private take(stored: Stored, isAsked: boolean): void {
    const before = this.state;
    const isFirst = this.stored === null;
    const wasNewer = this.isNewer;
    this.isNewer = stored.state.schema > this.schema;
    // What a newer version changed is not for this one to undo.
    const isOther = this.keep(this.isNewer ? { ...stored, canUndo: false, canRedo: false } : stored);
    if (this.isNewer && !wasNewer) storageFault(new StoreFault(NEWER));
    this.state = this.isNewer ? this.blank : stored.state;
    this.tell(before, isFirst || isAsked ? null : this.overruled(before), isOther);
  }

  /** Says what was typed here and is not what stands now. */
  private overruled(before: State): Collision | null {
    const { state } = this;
    const edits = editsBetween(json(before), json(state)).filter(
      (edit) => "before" in edit && this.isTouched(edit.path),
    );
    if (edits.length === 0) return null;
    const paths = edits.map(({ path }) => path);
    this.touched = this.touched.filter((mine) => !paths.some((path) => overlap(mine, path)));
    const mine = withEdits(json(state), undoing(edits)) as unknown as State;
    const takeOther = (): void => this.put(merged(state, mine, this.state));
    return { paths, isMine: false, takeOther };
  }

  private async goStep(way: Way): Promise<string | null> {
    const [kind, id] = this.key;
    try {
      const done = await goStep({ kind, id, schema: this.schema }, way);
      if (!done) return null;
      const before = this.state;
      this.state = done.state;
      this.tell(before, null, this.keep(done));
      tellOthers([this.key]);
      return done.words;
    } catch (error) {
      storageFault(error);
      return null;
    }
  }

  private tell(before: State, collision: Collision | null, isOther: boolean): void {
    const paths = editsBetween(json(before), json(this.state)).map(({ path }: Edit) => path);
    if (paths.length === 0 && !collision && !isOther) return;
    for (const listener of [...this.listeners]) listener({ paths, collision });
  }

  /** What a page that goes leaves, for the next one to write. */
  get left(): { key: Key; schema: number; base: Stored | null; changes: Change[] } {
    return { key: this.key, schema: this.schema, base: this.stored, changes: this.changes };
  }
}
