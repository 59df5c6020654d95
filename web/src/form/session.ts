/**
 * One open tool: its form as typed, and what the core says about it.
 *
 * Every change asks the core at once and only the newest question's reply counts. While no reply
 * to the form as it stands is there, no answer stands: it is withdrawn, never stale.
 */
import type {
  Answer, CarriedNumber, CatalogTool, Declaration, Field, FormReply, FormSaid, InchSplit, Option, Raw, RawInputs, RawRow,
  Scale, SearchReply, SetAside, Units,
} from "../contract/contract";
import type { AskedForm, Core } from "../engine/core";
import { BROKE, CoreFault } from "../engine/fault";
import { ownInputs } from "../store/lists";
import type { KeptForm } from "../store/store";
import type { Standing } from "./answer-standing";
import { fieldAt, inOrder, isAlike, rowsAt, textOf, valueAt, withValue } from "./paths";
import { shareStructure } from "./structural-sharing";

/** Milliseconds a shown answer may outlive a change; longer and it is withdrawn. */
const PATIENCE = 120;
/** Milliseconds that what was typed waits to be drawn together with its answer. */
const MOMENT = 50;
const TRIES = 3;

export class Session {
  readonly declaration: Declaration;
  inputs: RawInputs;
  typedIn: Units;
  version: number;
  /** What was kept and can't be used by this version: shown, kept, and in nobody's way. */
  aside: SetAside[];
  /** What other questions of its job give. */
  carried: CarriedNumber[] = [];
  /** What the core last said about the fields. */
  said: FormSaid;
  standing: Standing = { state: "asking" };
  /** The last answer given, to be shown as withdrawn; never as current. */
  last: Answer | null = null;
  /** The last of them that had its pieces, tables and drawings with it. */
  lastWhole: Answer | null = null;
  /** Whether the person stopped the search for a better answer than the one that stands. */
  isPaused = false;
  /** Resolves when the newest question has its reply. */
  settled: Promise<void> = Promise.resolve();
  /** Resolves with the newest question's reply, at the latest a moment after it was put. */
  soon: Promise<void> = Promise.resolve();
  private arrived: () => void = () => undefined;
  /** The tool was left: nothing changes this form any more. */
  isOver = false;
  /** Path of the field in hand. */
  active = "";
  /** Where the entry in hand can take a fraction; null where it can't. */
  pad: InchSplit | null = null;
  /** Resolves when the core has spoken of the field taken in hand last. */
  inHand: Promise<void> = Promise.resolve();
  private saidOf: RawInputs | null = null;
  private newest = 0;
  private slow = 0;

  /**
   * @param changed told of every change
   * @param asks inputs that are asked first, in their order
   */
  constructor(
    tool: CatalogTool,
    kept: KeptForm,
    public scale: Scale,
    private readonly core: Core,
    private readonly changed: () => void,
    private readonly asks: readonly string[] = [],
  ) {
    this.declaration = tool.declaration;
    this.said = inOrder(tool.form, asks);
    this.inputs = kept.inputs;
    this.typedIn = kept.typedIn;
    this.version = kept.version;
    this.aside = kept.aside;
  }

  /** Whether the core has spoken of this form, or can't. */
  get isHeard(): boolean {
    return this.saidOf !== null || this.standing.state === "faulted";
  }

  get isEmpty(): boolean {
    return !this.isTyped && this.carried.length === 0;
  }

  private get isTyped(): boolean {
    return Object.keys(ownInputs(this.declaration.inputs, this.inputs)).length > 0;
  }

  /** Takes other numbers from the questions of its job. */
  carry(carried: CarriedNumber[]): void {
    if (isAlike(carried, this.carried)) return;
    this.carried = carried;
    this.ask();
  }

  get kept(): KeptForm {
    const { inputs, typedIn, version, aside } = this;
    return { inputs, typedIn, version, aside };
  }

  /** Returns what the core says of the field at `path`; undefined for one that is not asked. */
  field(path: string): Field | undefined {
    return fieldAt(this.said, path);
  }

  /** Returns what stands in the field at `path`: as the core says it, or as just typed. */
  shown(path: string): string {
    const value = valueAt(this.inputs, path);
    const isSaid = this.saidOf !== null && isAlike(value, valueAt(this.saidOf, path));
    if (isSaid || typeof value === "boolean") return this.field(path)?.shown ?? "";
    return textOf(value);
  }

  /** Returns the value chosen at `path`, empty for none; one that is not offered now gives way. */
  chosen(path: string, offered: Option[]): string {
    const value = valueAt(this.inputs, path);
    const isOffered = offered.some((each) => each.value === value);
    return isOffered ? String(value) : (this.field(path)?.chosen ?? "");
  }

  /** Whether the yes-or-no at `path` stands at yes. */
  isOn(path: string): boolean {
    const value = valueAt(this.inputs, path);
    return typeof value === "boolean" ? value : this.field(path)?.shown === "yes";
  }

  /** Puts a text typed in the units in force, or another value, at `path`. */
  set(path: string, value: Raw, inUnits = false): void {
    const { units } = this.scale;
    if (!this.isTyped) this.typedIn = units;
    const isForeign = inUnits && typeof value === "string" && value !== "" && units !== this.typedIn;
    this.replace(withValue(this.inputs, path, isForeign ? { text: String(value), units } : value));
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

  /** Takes other inputs, typed in the same units. */
  replace(inputs: RawInputs): void {
    this.inputs = inputs;
    this.ask();
  }

  /** Takes another form. */
  take({ inputs, typedIn, version, aside }: KeptForm): void {
    this.typedIn = typedIn;
    this.version = version;
    this.aside = aside;
    this.replace(inputs);
  }

  /** Shows everything under another scale; what was typed stays as it was typed. */
  rescale(scale: Scale): void {
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
    this.soon = new Promise((resolve) => {
      const timer = setTimeout(resolve, MOMENT);
      this.arrived = () => {
        clearTimeout(timer);
        resolve();
      };
    });
    this.changed();
  }

  /** Asks for the field in hand alone: its answer stands, and a search goes on. */
  askField(path: string): void {
    this.active = path;
    this.inHand = this.askedField(path);
  }

  private async askedField(path: string): Promise<void> {
    const id = this.newest;
    const reply = await this.core.fields(this.question(), this.scale).catch(() => null);
    if (!reply?.ok || id !== this.newest || path !== this.active) return;
    this.pad = fieldAt(reply, path)?.pad ?? null;
    this.changed();
  }

  /** Returns where the entry at `path`, as it stands, can take a fraction; null where it can't. */
  async splitOf(path: string): Promise<InchSplit | null> {
    await Promise.all([this.settled, this.inHand]);
    if (path === this.active) return this.pad;
    const reply = await this.core.fields({ ...this.question(), active: path }, this.scale).catch(() => null);
    return (reply?.ok && fieldAt(reply, path)?.pad) || null;
  }

  /** Ends this session: late replies go nowhere. */
  end(): void {
    this.isOver = true;
    this.newest += 1;
    clearTimeout(this.slow);
  }

  private question(): AskedForm {
    const { declaration, inputs, typedIn, version, active } = this;
    const carried = Object.fromEntries(
      this.carried.map(({ input, value, from }) => [input, { value, from }]),
    );
    return { tool: declaration.slug, inputs, typed_in: typedIn, version, active, carried };
  }

  private async asked(id: number): Promise<void> {
    for (let turn = 1; id === this.newest; turn += 1) {
      try {
        const reply = await this.core.form(this.question(), this.scale);
        if (id === this.newest) this.replied(id, reply);
        return await this.searched(id);
      } catch (error) {
        const words = error instanceof Error ? error.message : String(error);
        this.stand(id, { state: "faulted", words, final: turn >= TRIES });
        if (turn >= TRIES) return;
        await this.core.started.catch(() => undefined);
      }
    }
  }

  private replied(id: number, reply: FormReply | SearchReply): void {
    if (!reply.ok) {
      const words = reply.errors.map(({ message }) => message).join(" ");
      return this.stand(id, { state: "faulted", words, final: true });
    }
    if ("fields" in reply) this.hear(reply);
    const { answer, search } = reply;
    this.stand(id, answer ? { state: "answered", answer, search } : { state: "withdrawn" });
  }

  /**
   * Takes what the core says of the fields, and inputs it brought up to its version.
   *
   * They are kept with the next change: opening an address must not write over what is kept.
   */
  private hear(reply: FormSaid): void {
    this.said = shareStructure(this.said, inOrder(reply, this.asks));
    this.pad = this.field(this.active)?.pad ?? null;
    this.version = reply.version;
    if (reply.inputs) this.inputs = reply.inputs;
    this.saidOf = this.inputs;
    if (reply.aside.length > 0) this.aside = [...this.aside, ...reply.aside];
  }

  /** Lets the search for a better answer rest, or go on. */
  pause(isPaused: boolean): void {
    this.isPaused = isPaused;
    this.changed();
    if (!isPaused) this.settled = this.settled.then(() => this.searched(this.newest));
  }

  /**
   * Puts ever better answers in the place of the first, as long as the core finds any.
   *
   * A core that breaks or hangs on the way ends the search; the answer it gave before is no worse.
   * Only a brief one lacks something: it goes on to the whole, and where that doesn't come all is
   * asked again.
   */
  private async searched(id: number): Promise<void> {
    while (id === this.newest) {
      const { standing } = this;
      if (standing.state !== "answered" || standing.search === null) return;
      const { is_brief: isBrief } = standing.answer;
      if (this.isPaused && !isBrief) return;
      const reply = await this.core.goOn(standing.search).catch(() => null);
      if (isBrief && !reply?.ok) throw new CoreFault(BROKE);
      if (id !== this.newest) return;
      if (reply && "fields" in reply) this.hear(reply);
      const { progress, search } = reply?.ok ? reply : { progress: 1, search: null };
      const answer = (reply?.ok && reply.answer) || { ...standing.answer, progress };
      this.stand(id, { state: "answered", answer, search });
    }
  }

  /** A new answer is a new one even where it says the same; its parts are not. */
  private keepSame(standing: Extract<Standing, { state: "answered" }>): void {
    if (standing.answer !== this.last) standing.answer = { ...shareStructure(this.lastWhole, standing.answer) };
    this.last = standing.answer;
    if (!standing.answer.is_brief) this.lastWhole = standing.answer;
  }

  private stand(id: number, standing: Standing): void {
    if (id !== this.newest) return;
    if (standing.state !== "asking") clearTimeout(this.slow);
    this.standing = standing;
    if (standing.state === "answered") this.keepSame(standing);
    this.arrived();
    this.changed();
  }
}
