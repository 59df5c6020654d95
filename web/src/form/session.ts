/**
 * One open tool: its form, and what the core says about it.
 *
 * Every change asks the core at once and only the newest question's reply counts. While no reply
 * to the form as it stands is there, no answer stands: it is withdrawn, never stale.
 */
import type { Answer, Declaration, FieldError, Raw, RawInputs, RawRow, Scale } from "../contract";
import type { Core } from "../engine/core";
import { formPath, rowsAt, said, withValue } from "./paths";
import { ownInputs } from "../store/lists";
import { shareStructure } from "./structural-sharing";

export type Standing =
  | { state: "asking" }
  | { state: "answered"; answer: Answer; search: number | null }
  | { state: "withdrawn"; errors: FieldError[] }
  | { state: "storageFault"; words: string; final: boolean };

/** Milliseconds a shown answer may outlive a change; longer and it is withdrawn. */
const PATIENCE = 120;
const TRIES = 3;

export class Session {
  standing: Standing = { state: "asking" };
  /** The last answer given, to be shown as withdrawn; never as current. */
  last: Answer | null = null;
  /** Whether the person stopped the search for a better answer than the one that stands. */
  isPaused = false;
  /** Resolves when the newest question has its reply. */
  settled: Promise<void> = Promise.resolve();
  /** The tool was left: nothing changes this form any more. */
  isOver = false;
  private newest = 0;
  private slow = 0;

  constructor(
    readonly declaration: Declaration,
    public inputs: RawInputs,
    public scale: Scale,
    private readonly core: Core,
    private readonly changed: () => void,
  ) {}

  get isEmpty(): boolean {
    return Object.keys(ownInputs(this.declaration.inputs, this.inputs)).length === 0;
  }

  get errors(): FieldError[] {
    return this.standing.state === "withdrawn" ? this.standing.errors : [];
  }

  /** Puts `value` at `path` (`width`, `walls.1.length`). */
  set(path: string, value: Raw): void {
    this.replace(withValue(this.inputs, path, value));
  }

  /** Puts other rows under `name`. */
  setRows(name: string, rows: RawRow[]): void {
    const { [name]: _, ...others } = this.inputs;
    this.replace(rows.length > 0 ? { ...others, [name]: rows } : others);
  }

  addRow(name: string, row: RawRow, at = rowsAt(this.inputs, name).length): void {
    const rows = [...rowsAt(this.inputs, name)];
    rows.splice(at, 0, row);
    this.setRows(name, rows);
  }

  removeRow(name: string, at: number): void {
    this.setRows(name, rowsAt(this.inputs, name).filter((_, i) => i !== at));
  }

  moveRow(name: string, from: number, to: number): void {
    const rows = [...rowsAt(this.inputs, name)];
    const [row] = rows.splice(from, 1);
    if (row) rows.splice(to, 0, row);
    this.setRows(name, rows);
  }

  /** Takes another form, or the same one under another scale. */
  replace(inputs: RawInputs, scale = this.scale): void {
    this.inputs = inputs;
    this.scale = scale;
    this.ask();
  }

  /** Asks the core about the form as it stands. */
  ask(): void {
    this.newest += 1;
    const id = this.newest;
    this.isPaused = false;
    clearTimeout(this.slow);
    this.slow = window.setTimeout(() => this.stand(id, { state: "asking" }), PATIENCE);
    // A question still under way is heard out; of those that came meanwhile only the newest is put.
    this.settled = this.settled.then(() => this.asked(id));
    this.changed();
  }

  /** Ends this session: late replies go nowhere. */
  end(): void {
    this.isOver = true;
    this.newest += 1;
    clearTimeout(this.slow);
  }

  private async asked(id: number): Promise<void> {
    for (let turn = 1; id === this.newest; turn += 1) {
      try {
        const { slug, inputs } = this.declaration;
        const given = this.inputs;
        const reply = await this.core.answer(slug, said(inputs, given), this.scale);
        const atField = (error: FieldError): FieldError => ({
          ...error,
          field: formPath(inputs, given, error.field),
        });
        if (reply.ok) this.stand(id, { state: "answered", ...reply });
        else this.stand(id, { state: "withdrawn", errors: reply.errors.map(atField) });
        return await this.searched(id);
      } catch (error) {
        const words = error instanceof Error ? error.message : String(error);
        this.stand(id, { state: "storageFault", words, final: turn >= TRIES });
        if (turn >= TRIES) return;
        await this.core.started.catch(() => undefined);
      }
    }
  }

  /** Lets the search for a better answer rest, or go on. */
  pause(isPaused: boolean): void {
    this.isPaused = isPaused;
    this.changed();
    if (!isPaused) this.settled = this.searched(this.newest);
  }

  /**
   * Puts ever better answers in the place of the first, as long as the core finds any.
   *
   * A core that breaks or hangs on the way ends the search; the answer it gave before is no worse.
   */
  private async searched(id: number): Promise<void> {
    while (id === this.newest && !this.isPaused) {
      const { standing } = this;
      if (standing.state !== "answered" || standing.search === null) return;
      const reply = await this.core.goOn(standing.search).catch(() => null);
      const { progress, search } = reply?.ok ? reply : { progress: 1, search: null };
      const answer = (reply?.ok && reply.answer) || { ...standing.answer, progress };
      this.stand(id, { state: "answered", answer, search });
    }
  }

  /** A new answer is a new one even where it says the same; its parts are not. */
  private keepSame(standing: Extract<Standing, { state: "answered" }>): void {
    if (standing.answer !== this.last) standing.answer = { ...shareStructure(this.last, standing.answer) };
    this.last = standing.answer;
  }

  private stand(id: number, standing: Standing): void {
    if (id !== this.newest) return;
    if (standing.state !== "asking") clearTimeout(this.slow);
    this.standing = standing;
    if (standing.state === "answered") this.keepSame(standing);
    this.changed();
  }
}
