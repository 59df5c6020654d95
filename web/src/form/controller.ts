/** The open tool's form as the person works on it: edits, rows, what is unfolded, undo. */
import type { ReactiveControllerHost } from "lit";
import { hashWith, jobHash } from "../address/address";
import { writeSoon } from "../address/address-bar";
import type { CatalogTool, Declaration, Field, Option, Raw, RawRow, Scale } from "../contract/contract";
import type { Core } from "../engine/core";
import type { EntryForm } from "../job/entry-form";
import { toast } from "../parts/toast";
import { listInputs, listsIn, ownInputs } from "../store/lists";
import { writeAfter } from "../store/queue";
import type { FormChange, FormCollision, KeptForm, ToolDocuments } from "../store/store";
import { ActiveField } from "./active-field";
import { AnswerRecorder } from "./answer-recorder";
import type { FormHost } from "./host";
import { folded, hasTwoUnits, inputAt, nameOf, rowsAt, TYPED } from "./paths";
import { Session } from "./session";
import { messageAt } from "./status-text";

/** What a tool is opened with. */
export interface Start {
  form: KeptForm;
  documents: ToolDocuments;
  /** Whether the form is the one that is kept, not an address's. */
  isKept: boolean;
  /** The question of a job that it is; null for a form that stands alone. */
  entry: EntryForm | null;
}

export class FormController implements FormHost {
  readonly session: Session;
  readonly field: ActiveField;
  readonly recorder: AnswerRecorder;
  private readonly declaration: Declaration;
  readonly documents: ToolDocuments;
  /** Whether the form shown is the one that is kept, and not one from an address, unchanged. */
  private isKept: boolean;
  readonly entry: EntryForm | null;
  private readonly stopHearing: () => void;
  /** The row whose fields stand open. */
  opened: { name: string; at: number } | null = null;
  /** Whether the person asked to see the fields that fold away. */
  isUnfolded = false;

  constructor(
    private readonly screen: ReactiveControllerHost,
    core: Core,
    tool: CatalogTool,
    start: Start,
    scale: Scale,
  ) {
    this.declaration = tool.declaration;
    this.session = new Session(tool, start.form, scale, core, () => this.seen(), start.entry?.asks);
    this.field = new ActiveField(this);
    this.recorder = new AnswerRecorder(this.session);
    this.documents = start.documents;
    this.isKept = start.isKept;
    this.entry = start.entry;
    this.session.carried = this.entry?.carried ?? [];
    this.stopHearing = this.documents.onChange((change) => this.heard(change));
    this.session.ask();
    this.write();
  }

  /** The tool is left. */
  end(): void {
    this.stopHearing();
    this.documents.close();
    this.session.end();
  }

  get canUndo(): boolean {
    return this.isKept && this.documents.form.canUndo;
  }

  get canRedo(): boolean {
    return this.isKept && this.documents.form.canRedo;
  }

  undo(): void {
    void this.documents.form.undo();
  }

  redo(): void {
    void this.documents.form.redo();
  }

  get updateComplete(): Promise<unknown> {
    return this.screen.updateComplete;
  }

  requestUpdate(): void {
    this.screen.requestUpdate();
  }

  get active(): string {
    return this.session.active;
  }

  get isTyping(): boolean {
    return this.field.isTyping;
  }

  /** Labels of the lists in use that an address does not carry. */
  get unshared(): string[] {
    const { inputs: asked } = this.declaration;
    const lists = listInputs(asked, this.session.inputs);
    return asked.filter(({ name }) => rowsAt(lists, name).length > 0).map(({ label }) => label);
  }

  message(path: string): string {
    return messageAt(this.session, path);
  }

  shown(path: string): string {
    return this.session.shown(path);
  }

  chosen(path: string, offered: Option[]): string {
    return this.session.chosen(path, offered);
  }

  isOn(path: string): boolean {
    return this.session.isOn(path);
  }

  /** Texts that may have been meant by what stands at `path`. */
  instead(path: string): string[] {
    return this.message(path) === "" ? [] : (this.session.field(path)?.instead ?? []);
  }

  change(path: string, value: Raw): void {
    const input = inputAt(this.declaration, path);
    this.session.set(path, value, input !== undefined && hasTwoUnits(input));
    this.edited();
  }

  /** Whether a field that may fold away stays open: it was changed, or has something to say. */
  readonly isHeld = (field: Field): boolean =>
    field.changed === true || field.name === this.active || this.message(field.name) !== "";

  wayTo(path: string): string {
    const source = this.session.carried.find(({ input }) => input === path)?.entry ?? "";
    // Pieces are of a stock or an item too, which are no question.
    return this.entry?.job.toolOf(source) ? jobHash(this.entry.job.id, source) : "";
  }

  typed(path: string, text: string): void {
    this.field.typed(path, text);
  }

  focused(path: string): void {
    this.field.focused(path);
  }

  key(event: KeyboardEvent, path: string): void {
    this.field.key(event, path);
  }

  openRow(name: string, at: number | null): void {
    this.opened = at === null ? null : { name, at };
    this.requestUpdate();
  }

  add(name: string): void {
    const at = rowsAt(this.session.inputs, name).length;
    this.session.addRow(name, {});
    this.edited();
    this.openRow(name, at);
    const columns = inputAt(this.declaration, name)?.columns ?? [];
    const first = columns.find((column) => TYPED.includes(column.kind));
    const { active } = this;
    const take = (): void => this.field.take(`${name}.${at}.${first?.name}`);
    // Who has tapped another field meanwhile keeps it in hand.
    if (first) void this.session.settled.then(() => ["", active].includes(this.active) && take());
  }

  copy(name: string, at: number): void {
    const row: RawRow | undefined = rowsAt(this.session.inputs, name)[at];
    this.session.addRow(name, { ...row }, at + 1);
    this.edited();
    this.openRow(name, at + 1);
  }

  /** Puts a row at the end of a list, as an answer offers it. */
  keep(name: string, row: RawRow, words: string): void {
    const { kept } = this.session;
    this.session.addRow(name, { ...row });
    this.edited();
    this.offerUndo(`${words} is kept.`, kept);
  }

  remove(name: string, at: number): void {
    const { kept } = this.session;
    this.openRow(name, null);
    this.session.removeRow(name, at);
    this.edited();
    this.offerUndo(`${this.called(name, at)} removed.`, kept);
  }

  move(name: string, from: number, to: number): void {
    if (this.opened) this.openRow(name, to);
    this.session.moveRow(name, from, to);
    this.edited();
    toast(`${this.called(name, from)} is now number ${to + 1}.`);
  }

  /** Empties the form. */
  startOver(): void {
    const { kept } = this.session;
    this.opened = null;
    this.session.replace(listInputs(this.declaration.inputs, kept.inputs));
    this.edited();
    scrollTo(0, 0);
    this.offerUndo("The form is empty.", kept);
  }

  /** Takes another form of this tool in the place of this one; the person's own lists stay. */
  recall(form: KeptForm): void {
    this.opened = null;
    const { inputs: asked } = this.declaration;
    const { inputs, typedIn } = this.session;
    const lists = listsIn(asked, inputs, typedIn, form.typedIn);
    this.session.take({ ...form, inputs: { ...ownInputs(asked, form.inputs), ...lists } });
    this.edited();
  }

  rescale(to: Scale): void {
    this.session.rescale(to);
    this.write();
  }

  /** The form was changed: it is kept, and the address says it. */
  edited(): void {
    this.isKept = true;
    // To write takes the processor that answer and drawing wait for.
    writeAfter(this.session.soon.then(() => new Promise((next) => setTimeout(next))));
    this.documents.edited(this.session.kept);
    this.write();
  }

  /** What is kept was changed in another window, or by undo: it is shown. */
  private heard({ isOther, collision }: FormChange): void {
    if (isOther) this.takeKept();
    if (this.entry) this.session.carry(this.entry.carried);
    if (collision) this.sayCollision(collision);
    this.requestUpdate();
  }

  /** A form from an address, unchanged, stays; the person's own lists come with it either way. */
  private takeKept(): void {
    const { inputs, typedIn, scale } = this.session;
    if (this.isKept) this.session.take(this.documents.kept(scale.units));
    else this.session.replace({ ...ownInputs(this.declaration.inputs, inputs), ...this.documents.keptLists(typedIn) });
    this.write();
  }

  private sayCollision({ fields, isMine, takeOther }: FormCollision): void {
    const what = fields.map((path) => nameOf(this.declaration, path)).join(", ") || "This form";
    const words = `${what}: changed in another window of Longpoint`;
    if (isMine) toast(`${words} too. What was typed here stands.`, "Take the other", takeOther);
    else toast(`${words}.`, "Take mine back", takeOther);
  }

  /** Brings the field at `path` onto the screen. */
  unfold(path: string): void {
    const [name = "", at] = path.split(".");
    if (at !== undefined) this.openRow(name, Number(at));
    const [, rest] = folded(this.session.said.fields, this.declaration.inputs, this.isHeld);
    if (!rest.some((field: Field) => field.name === name)) return;
    this.isUnfolded = true;
    this.requestUpdate();
  }

  private seen(): void {
    this.recorder.watch();
    this.requestUpdate();
  }

  /** The address of a question of a job names it; what was typed stands in the job. */
  private write(): void {
    if (this.entry) return;
    const { inputs, typedIn } = this.session;
    writeSoon(hashWith(this.declaration, inputs, typedIn), this.isKept);
  }

  private called(name: string, at: number): string {
    return nameOf(this.declaration, `${name}.${at}`);
  }

  private offerUndo(words: string, form: KeptForm): void {
    toast(words, "Undo", () => this.session.isOver || this.recallWhole(form));
  }

  private recallWhole(form: KeptForm): void {
    this.session.take(form);
    this.edited();
  }
}
