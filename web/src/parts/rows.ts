/** Rows of an input (walls, boards): a list to add to, open, copy, take from and put in order. */
import { LitElement, html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import type { Field, Input, RawRow, RowFields } from "../contract/contract";
import type { FormHost } from "../form/host";
import { keyOf } from "../form/paths";
import { typeset } from "../text/typeset";
import { capital, inSentence, withArticle } from "../text/words";
import { fieldGrid, fieldMessage, signed } from "./fields";
import { icon } from "./icons";

@customElement("lp-rows")
export class Rows extends LitElement {
  @property({ attribute: false }) input!: Input;
  @property({ attribute: false }) rows: RawRow[] = [];
  /** What the core says of each row; shorter than `rows` while it has not spoken of the last. */
  @property({ attribute: false }) said: RowFields[] = [];
  /** Index of the row whose fields stand open. */
  @property({ attribute: false }) opened: number | null = null;
  @property({ attribute: false }) host!: FormHost;
  // The host answers from these; they are properties so that a change of them is seen here.
  @property({ attribute: false }) active = "";
  @property({ attribute: false }) isTyping = false;
  @property({ attribute: false }) isStanding = false;
  /** Where the row under the thumb is now, null while none is held. */
  @state() private dragged: number | null = null;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override render(): TemplateResult {
    const { input, rows } = this;
    const word = input.row || "row";
    const message = this.host.message(input.name);
    const isFull = rows.length >= (input.max_rows ?? Infinity);
    // Rows that may stay away say what they are by their button alone until there is one.
    const isQuiet = rows.length === 0 && !input.required;
    return html`<fieldset class="rows">
      <legend class=${isQuiet ? "unseen" : ""}>${typeset(input.label)}</legend>
      <ol>
        ${repeat(rows, keyOf, (_, at) => this.row(at, word))}
      </ol>
      ${message ? fieldMessage(input.name, message, this.host) : nothing}
      <button type="button" class="addrow" ?disabled=${isFull} @click=${() => this.host.add(input.name)}>
        ${icon("add")} Add ${withArticle(word)}
      </button>
    </fieldset>`;
  }

  private row(at: number, word: string): TemplateResult {
    const isOpen = this.opened === at;
    const path = `${this.input.name}.${at}`;
    const message = this.host.message(path);
    const isWrong = message !== "" || this.wrongColumn(at, path);
    const isHeld = this.dragged === at;
    const classes = ["row", isOpen ? "open" : "", isWrong ? "wrong" : "", isHeld ? "held" : ""];
    return html`<li class=${classes.join(" ")}>
      <div class="rowline">
        <button
          type="button"
          class="plain summary"
          aria-expanded=${isOpen}
          @click=${() => this.host.openRow(this.input.name, isOpen ? null : at)}
        >
          <span class="unseen">${capital(word)}</span>
          <span class="balloon">${at + 1}</span>${this.summary(at)}
        </button>
        <button
          type="button"
          class="plain iconed handle"
          aria-label="Move ${word} ${at + 1}: drag, or up and down keys"
          @pointerdown=${() => this.grab(at)}
          @keydown=${(event: KeyboardEvent) => this.arrows(event, at)}
        >
          ${icon("handle")}
        </button>
      </div>
      ${message ? fieldMessage(path, message, this.host) : nothing}
      ${isOpen || isWrong ? this.fields(at, word, isOpen) : nothing}
    </li>`;
  }

  /** A closed row with something wrong in it shows its fields too: the words stand under them. */
  private fields(at: number, word: string, isOpen: boolean): TemplateResult {
    const { name, columns } = this.input;
    const last = this.rows.length - 1;
    const act = (
      label: string, run: () => void, off = false, picture = "",
    ): TemplateResult => html`<button
      type="button"
      aria-label="${label} ${word} ${at + 1}"
      ?disabled=${off}
      @click=${run}
    >
      ${picture ? icon(picture) : label}
    </button>`;
    return html`<div class="rowfields">
      ${fieldGrid(this.fieldsOf(at), columns ?? [], `${name}.${at}.`, this.host)}
      ${isOpen
        ? html`<div class="actions">
            ${act("Move up", () => this.host.move(name, at, at - 1), at === 0, "up")}
            ${act("Move down", () => this.host.move(name, at, at + 1), at === last, "down")}
            ${act("Duplicate", () => this.host.copy(name, at))}
            ${act("Remove", () => this.host.remove(name, at))}
          </div>`
        : nothing}
    </div>`;
  }

  private fieldsOf(at: number): Field[] {
    return this.said[at]?.fields ?? (this.input.columns ?? []).map(({ name }) => ({ name }));
  }

  private wrongColumn(at: number, path: string): boolean {
    return this.fieldsOf(at).some((field) => this.host.message(`${path}.${field.name}`) !== "");
  }

  private summary(at: number): TemplateResult {
    const columns = this.input.columns ?? [];
    const [first = "", ...rest] = this.fieldsOf(at).map((field, place) => {
      const column = columns.find((each) => each.name === field.name);
      const shown = this.host.shown(`${this.input.name}.${at}.${field.name}`);
      return column ? saidInRow(column, columns, field, shown, place === 0) : "";
    });
    const beside = rest.filter(Boolean).join(" · ");
    return html`<span class="rowsays"
      ><span class="medium"
        >${first
          ? typeset(first)
          : html`<span aria-hidden="true">–</span><span class="unseen">empty</span>`}</span
      >
      ${beside ? html`<span class="chip">${typeset(beside)}</span>` : nothing}</span
    >`;
  }

  /** Listens on the window: a captured pointer would be let go when the row's element moves. */
  private grab(at: number): void {
    this.dragged = at;
    this.host.openRow(this.input.name, null);
    const until = new AbortController();
    const { signal } = until;
    addEventListener("pointermove", (event) => this.drag(event.clientY), { signal });
    const letGo = (): void => {
      this.dragged = null;
      until.abort();
    };
    addEventListener("pointerup", letGo, { signal });
    addEventListener("pointercancel", letGo, { signal });
  }

  private drag(y: number): void {
    const to = this.rowAt(y);
    if (to === null || this.dragged === null || to === this.dragged) return;
    this.host.move(this.input.name, this.dragged, to);
    this.dragged = to;
  }

  private rowAt(y: number): number | null {
    const lines = [...this.querySelectorAll<HTMLElement>("li.row")];
    const at = lines.findIndex((line) => {
      const { top, bottom } = line.getBoundingClientRect();
      return y >= top && y < bottom;
    });
    return at === -1 ? null : at;
  }

  private arrows(event: KeyboardEvent, at: number): void {
    const to = at + ({ ArrowUp: -1, ArrowDown: 1 }[event.key] ?? 0);
    if (to === at || to < 0 || to >= this.rows.length) return;
    event.preventDefault();
    this.host.move(this.input.name, at, to);
  }
}

/** Returns a field as its row says it: the first alone, others where they were changed, with what they are. */
function saidInRow(
  column: Input, columns: Input[], field: Field, shown: string, isFirst: boolean,
): string {
  const text = withUnit({ ...column, unit: field.unit ?? column.unit }, shown);
  if (isFirst) return text || (field.empty ?? "");
  if (!field.changed || text === "") return "";
  if (column.kind === "flag") return shown === "yes" ? column.label : "";
  const isSaid = ["length", "angle", "number"].includes(column.kind) || isOtherCount(column);
  const isOnlyOne = columns.filter(({ unit }) => unit === column.unit).length === 1;
  const isPlain = !isSaid || (column.unit !== "" && isOnlyOne);
  return column.kind === "angle" || !isPlain ? `${inSentence(column.label)} ${text}` : text;
}

/** Whether it counts something else than how many rows alike there are. */
function isOtherCount({ kind, name }: Input): boolean {
  return kind === "count" && name !== "count";
}

function withUnit(column: Input, shown: string): string {
  if (shown === "" || column.kind === "choice" || column.kind === "flag") return shown;
  if (isOtherCount(column)) return shown;
  if (column.kind === "count") return `×\u2009${shown}`;
  const text = signed(column.kind, column.unit, shown);
  return [text, text.includes(column.unit) ? "" : column.unit].filter(Boolean).join(" ");
}
