/** The open tool's form as the person works on it: edits, rows, what is unfolded, undo. */
import type { ReactiveControllerHost } from "lit";
import type { Declaration, Raw, RawInputs, Scale } from "../contract";
import type { Core } from "../engine/core";
import type { RowsHost } from "../parts/rows";
import { capital } from "../text/words";
import { hashWith } from "../address/address";
import { writeSoon } from "../address/address-bar";
import { applying, folded, inputAt, nameOf, rowsAt, TYPED } from "./paths";
import { ActiveField } from "./active-field";
import { autosave } from "../store/autosave";
import { changedLists, listInputs, ownInputs } from "../store/lists";
import { AnswerRecorder } from "./answer-recorder";
import { respelled } from "./respell";
import { toast } from "../parts/toast";
import { Session } from "./session";
import { messageAt } from "./status-text";

export class FormController implements RowsHost {
  readonly session: Session;
  readonly field: ActiveField;
  readonly memory: AnswerRecorder;
  /** The row whose fields stand open. */
  opened: { name: string; at: number } | null = null;
  /** Whether the person asked to see the inputs that fold away. */
  isUnfolded = false;

  constructor(
    private readonly screen: ReactiveControllerHost,
    readonly core: Core,
    private readonly declaration: Declaration,
    start: RawInputs,
    scale: Scale,
  ) {
    this.session = new Session(declaration, start, scale, core, () => this.seen());
    this.field = new ActiveField(this);
    this.memory = new AnswerRecorder(this.session);
    this.session.ask();
    this.write();
  }

  get updateComplete(): Promise<unknown> {
    return this.screen.updateComplete;
  }

  requestUpdate(): void {
    this.screen.requestUpdate();
  }

  get active(): string {
    return this.field.active;
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
    return messageAt(this.session, path, this.field.active);
  }

  change(path: string, value: Raw): void {
    this.session.set(path, value);
    this.edited();
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
    if (first) this.field.take(`${name}.${at}.${first.name}`);
  }

  copy(name: string, at: number): void {
    const row = rowsAt(this.session.inputs, name)[at];
    this.session.addRow(name, { ...row }, at + 1);
    this.edited();
    this.openRow(name, at + 1);
  }

  remove(name: string, at: number): void {
    const { inputs } = this.session;
    this.openRow(name, null);
    this.session.removeRow(name, at);
    this.edited();
    this.offerUndo(`${capital(this.called(name, at))} removed.`, inputs);
  }

  move(name: string, from: number, to: number): void {
    if (this.opened) this.openRow(name, to);
    this.session.moveRow(name, from, to);
    this.edited();
    toast(`${capital(this.called(name, from))} is now ${this.called(name, to)}.`);
  }

  /** Empties the form. */
  startOver(): void {
    const { inputs } = this.session;
    this.opened = null;
    this.session.replace(listInputs(this.declaration.inputs, inputs));
    this.edited();
    scrollTo(0, 0);
    this.offerUndo("The form is empty.", inputs);
  }

  /** Takes other inputs, typed under `from`, in the place of the form's. */
  async recall(inputs: RawInputs, from: Scale): Promise<void> {
    const { units } = this.session.scale;
    this.opened = null;
    const { inputs: asked } = this.declaration;
    const recalled = await respelled(asked, inputs, from, units, this.core);
    if (this.session.isOver) return;
    this.session.replace({ ...listInputs(asked, this.session.inputs), ...recalled });
    this.edited();
  }

  /** Shows everything under another scale; what was typed keeps its meaning. */
  async rescale(to: Scale): Promise<void> {
    const { inputs, scale } = this.session;
    const asked = this.declaration.inputs;
    const spelled = await respelled(asked, inputs, scale, to.units, this.core);
    if (this.session.isOver) return;
    this.session.replace(spelled, to);
    this.edited();
  }

  /** The form was changed by the person: it is kept, and the address says it. */
  edited(): void {
    const { inputs, scale } = this.session;
    const { slug, inputs: asked } = this.declaration;
    autosave(slug, ownInputs(asked, inputs), scale.units);
    for (const [name, list] of changedLists(asked, inputs)) autosave(name, list, scale.units);
    this.write();
  }

  /** Brings the field at `path` onto the screen. */
  unfold(path: string): void {
    const [name = "", at] = path.split(".");
    if (at !== undefined) this.openRow(name, Number(at));
    const [, rest] = folded(applying(this.declaration.inputs, this.session.inputs));
    if (!rest.some((input) => input.name === name)) return;
    this.isUnfolded = true;
    this.requestUpdate();
  }

  private seen(): void {
    this.memory.watch();
    this.requestUpdate();
  }

  private write(): void {
    const { inputs, scale } = this.session;
    writeSoon(hashWith(this.declaration, inputs, scale.units));
  }

  private called(name: string, at: number): string {
    return nameOf(this.declaration, `${name}.${at}`);
  }

  private offerUndo(words: string, inputs: RawInputs): void {
    const { scale } = this.session;
    toast(words, "Undo", () => void this.recall(inputs, scale));
  }
}
