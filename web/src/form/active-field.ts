/** The field in hand: which one the pad is for, and how pad and hardware keyboard write into it. */
import type { InchSplit } from "../contract/contract";
import { layerClosed, layerOpened } from "../address/layers";
import { idOf, typedPaths } from "./paths";
import type { Session } from "./session";

interface Host {
  readonly session: Session;
  readonly updateComplete: Promise<unknown>;
  requestUpdate(): void;
  /** Brings the field at `path` onto the screen where it is folded away. */
  unfold(path: string): void;
  /** Puts a text at `path`, as typed. */
  change(path: string, text: string): void;
}

const EDITING = /^(?:.|Backspace|Delete|Arrow.*|Home|End)$/u;

export class ActiveField {
  /** A hardware keyboard edits it: its plain text and caret are shown. */
  isTyping = false;
  /** The entry was just taken in hand: the next digit starts a new one. */
  isFresh = false;

  constructor(private readonly host: Host) {}

  get path(): string {
    return this.host.session.active;
  }

  get entry(): string {
    return this.path ? this.host.session.shown(this.path) : "";
  }

  focused(path: string): void {
    if (path === this.path) return;
    this.isTyping = false;
    this.isFresh = true;
    layerOpened(() => this.close());
    this.host.unfold(path);
    this.host.session.askField(path);
    this.host.requestUpdate();
    void this.host.updateComplete.then(() => this.reveal());
  }

  /** The entry as a hardware keyboard left it. */
  typed(path: string, text: string): void {
    this.host.session.active = path;
    this.isTyping = true;
    this.put(text);
  }

  /** The pad changes the entry. */
  press(change: (entry: string, isFresh: boolean) => string): void {
    this.isTyping = false;
    this.put(change(this.entry, this.isFresh));
  }

  /**
   * Puts `over` parts of `parts` of an inch in the place of the entry's fraction.
   *
   * Where the core is slow another field may be in hand by the time it has said how: the fraction
   * goes to the one that was in hand at the tap.
   */
  async pick(over: number, parts: number): Promise<void> {
    const { path } = this;
    const split = await this.host.session.splitOf(path);
    if (!split) return;
    const entry = withFraction(split, over, parts);
    if (path === this.path) this.press(() => entry);
    else this.host.change(path, entry);
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
    document.getElementById(idOf(this.path))?.blur();
    this.drop();
  }

  drop(): void {
    this.host.session.active = "";
    layerClosed();
    this.host.requestUpdate();
  }

  /** Focus went elsewhere: the pad goes, unless the whole page lost it or the pad has it. */
  left(): void {
    setTimeout(() => {
      const at = document.activeElement;
      const stays = !document.hasFocus() || at?.closest(".pad") || at?.id === idOf(this.path);
      const isField = this.paths().some((path) => idOf(path) === at?.id);
      if (this.path && !stays && !isField) this.drop();
    });
  }

  private paths(): string[] {
    const { said, declaration } = this.host.session;
    return typedPaths(said, declaration);
  }

  private put(entry: string): void {
    this.isFresh = false;
    this.host.change(this.path, entry);
  }

  private typing(path: string): void {
    if (path !== this.path || this.isTyping) return;
    this.isTyping = true;
    this.host.requestUpdate();
  }

  private following(): string {
    const paths = this.paths();
    return paths[paths.indexOf(this.path) + 1] ?? "";
  }

  private reveal(): void {
    const card = document.getElementById(idOf(this.path))?.closest(".card");
    card?.scrollIntoView({ block: "nearest" });
  }
}

/** Returns an entry with `over`/`parts` where its fraction stands; 0 takes the fraction away. */
export function withFraction({ before, after }: InchSplit, over: number, parts: number): string {
  if (over === 0) return (before || "0") + after;
  const [most, least] = reduced(over, parts);
  return [before, `${most}/${least}`].filter(Boolean).join(" ") + after;
}

function reduced(over: number, under: number): [number, number] {
  return over % 2 === 0 && under % 2 === 0 ? reduced(over / 2, under / 2) : [over, under];
}
