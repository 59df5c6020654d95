/** The field in field: which one the pad is for, and how pad and hardware keyboard write into it. */
import type { Session } from "./session";
import type { Core } from "../engine/core";
import { idOf, inputAt, typedPaths, valueAt } from "./paths";

interface Host {
  readonly session: Session;
  readonly core: Core;
  readonly updateComplete: Promise<unknown>;
  requestUpdate(): void;
  /** Brings the field at `path` onto the screen where it is folded away. */
  unfold(path: string): void;
  /** The form was changed by the person. */
  edited(): void;
}

const EDITING = /^(?:.|Backspace|Delete|Arrow.*|Home|End)$/u;

export class ActiveField {
  /** Path of the field in hand, empty for none. */
  active = "";
  /** A hardware keyboard edits it: its plain text and caret are shown. */
  isTyping = false;
  /** The entry was just taken in field: the next digit starts a new one. */
  isFresh = false;
  /** What the entry comes to, in the units in force and in the other system; null where it can't be read. */
  reading: { text: string; other: string } | null = null;
  private reads = 0;

  constructor(private readonly host: Host) {}

  get entry(): string {
    const value = this.active ? valueAt(this.host.session.inputs, this.active) : null;
    return value === null || typeof value === "object" ? "" : String(value);
  }

  focused(path: string): void {
    if (path === this.active) return;
    this.active = path;
    this.isTyping = false;
    this.isFresh = true;
    this.reading = null;
    this.host.unfold(path);
    this.read();
    this.host.requestUpdate();
    void this.host.updateComplete.then(() => this.reveal());
  }

  /** The entry as a hardware keyboard left it. */
  typed(path: string, text: string): void {
    this.active = path;
    this.isTyping = true;
    this.put(text);
  }

  /** The entry as the pad left it. */
  press(entry: string): void {
    this.isTyping = false;
    this.put(entry);
  }

  key(event: KeyboardEvent, path: string): void {
    if (event.key === "Enter") this.next(true);
    else if (event.key === "Escape") this.close();
    else if (EDITING.test(event.key) && !event.ctrlKey && !event.metaKey) return this.typing(path);
    else return;
    event.preventDefault();
  }

  next(byKeyboard = false): void {
    const path = this.following();
    if (path) this.take(path, byKeyboard);
    else this.close();
  }

  /**
   * Moves the focus to the field at `path`, once it is on the screen.
   *
   * From a keyboard its text is selected, as by Tab, so that typing starts a new entry.
   */
  take(path: string, byKeyboard = false): void {
    this.host.unfold(path);
    void this.host.updateComplete.then(() => {
      const field = document.getElementById(idOf(path));
      field?.focus();
      if (byKeyboard && field instanceof HTMLInputElement) field.select();
    });
  }

  get isLast(): boolean {
    return this.following() === "";
  }

  close(): void {
    document.getElementById(idOf(this.active))?.blur();
    this.drop();
  }

  drop(): void {
    this.active = "";
    this.host.requestUpdate();
  }

  /** Focus went elsewhere: the pad goes, unless the whole page lost it or the pad has it. */
  left(): void {
    setTimeout(() => {
      const at = document.activeElement;
      const stays = !document.hasFocus() || at?.closest(".pad") || at?.id === idOf(this.active);
      const isField = this.isTypedField(at?.id ?? "");
      if (this.active && !stays && !isField) this.drop();
    });
  }

  private isTypedField(id: string): boolean {
    const { declaration, inputs } = this.host.session;
    return typedPaths(declaration.inputs, inputs).some((path) => idOf(path) === id);
  }

  private put(entry: string): void {
    this.isFresh = false;
    this.host.session.set(this.active, entry);
    this.host.edited();
    this.read();
  }

  private typing(path: string): void {
    if (path !== this.active || this.isTyping) return;
    this.isTyping = true;
    this.host.requestUpdate();
  }

  private following(): string {
    const { declaration, inputs } = this.host.session;
    const paths = typedPaths(declaration.inputs, inputs);
    return paths[paths.indexOf(this.active) + 1] ?? "";
  }

  private reveal(): void {
    const card = document.getElementById(idOf(this.active))?.closest(".card");
    card?.scrollIntoView({ block: "nearest" });
  }

  private read(): void {
    const input = inputAt(this.host.session.declaration, this.active);
    const id = (this.reads += 1);
    if (input?.kind !== "length" || !this.entry) {
      this.reading = null;
      return;
    }
    const reading = this.host.core.read(input.kind, this.entry, this.host.session.scale);
    reading.then((reply) => (reply.ok ? reply : null)).catch(() => null).then((read) => {
      if (id !== this.reads) return;
      this.reading = read;
      this.host.requestUpdate();
    });
  }
}
