/** The pad: a sheet at the foot of the screen with the entry in hand, an enlarged inch and keys. */
import { html, nothing, type TemplateResult } from "lit";
import type { Field, InchSplit, Input, Scale } from "../contract/contract";
import { typeset, typesetSilently } from "../text/typeset";
import { icon } from "./icons";
import "./inch";
import { keysFor, type Key } from "./keys";

export interface PadView {
  input: Input;
  /** What the field is called aloud: "Recess width", "Wall 2 length". */
  name: string;
  entry: string;
  /** What the core says of the field. */
  field: Field;
  /** Where the entry can take a fraction of an inch; null where it can't. */
  split: InchSplit | null;
  message: string;
  /** Whether the next digit starts a new entry. */
  isFresh: boolean;
  isLast: boolean;
  scale: Scale;
  glance: TemplateResult;
  /** Puts what `change` makes of the entry as it is now: what is shown may be one key behind. */
  press(change: (entry: string, isFresh: boolean) => string): void;
  /** Puts so many parts of an inch in the place of the entry's fraction. */
  pick(over: number, parts: number): void;
  next(): void;
  close(): void;
  /** Brings the phone's own keyboard up for a text. */
  keyboard(): void;
}

/** Focus stays in the field: its caret, its name and its messages are what a person is at. */
function keepFocus(event: Event): void {
  event.preventDefault();
}

/** Returns the pad for the field in hand. */
export function pad(view: PadView): TemplateResult {
  const { input, scale } = view;
  const hasInch = input.kind === "length" && scale.units === "in" && scale.step !== 1000;
  return html`<div
    class="pad for-${input.kind}"
    role="group"
    aria-label="Pad for ${view.name}"
    @pointerdown=${keepFocus}
    @mousedown=${keepFocus}
  >
    <div class="glance">${view.glance}</div>
    ${entryLine(view)} ${hasInch ? inch(view) : nothing}
    ${input.kind === "text" ? offers(view) : keyboard(view)}
  </div>`;
}

function entryLine(view: PadView): TemplateResult {
  const { input, entry } = view;
  const words = view.message || input.help;
  return html`<div class="entryline">
      <span class=${entryClasses(view)} aria-hidden="true"
        >${typesetSilently(entry || view.field.empty || "–")}</span
      >
      <span class="also">${typeset(alsoWords(view))}</span>
      <button type="button" class="plain iconed" tabindex="-1" aria-label="Close the pad" @click=${view.close}>
        ${icon("more")}
      </button>
    </div>
    <p class="padwords ${view.message ? "wrong" : ""}">${typeset(words)}</p>`;
}

/** Longer than this, an entry is set smaller so that all of it is seen. */
const LONG = 11;

function entryClasses({ field, entry, isFresh }: PadView): string {
  const isLong = (entry || field.empty || "").length > LONG;
  const classes = ["entry", isLong ? "long" : "", entry ? "" : "empty", entry && isFresh ? "fresh" : ""];
  return classes.filter(Boolean).join(" ");
}

/** Always what the entry comes to, in both systems; a number says its unit. */
function alsoWords({ input, entry, field, name }: PadView): string {
  if (input.kind !== "length") return (field.unit ?? input.unit) || name;
  if (!entry) return name;
  return field.reads && !field.message ? `= ${field.reads.join(" · ")}` : "";
}

/** The finest part that a thumb can tap on an enlarged inch. */
const FINEST_TAP = 64;

function inch(view: PadView): TemplateResult {
  const parts = Math.min(view.scale.step, FINEST_TAP);
  return html`<lp-inch
    .parts=${parts}
    .share=${view.split?.share ?? null}
    .pick=${(over: number, of: number) => view.pick(over, of)}
  ></lp-inch>`;
}

function keyboard(view: PadView): TemplateResult {
  const rows = keysFor(view.input.kind, view.scale.units);
  const columns = rows[0]?.length ?? 4;
  const last = rows[rows.length - 1] ?? [];
  return html`<div class="keys of-${columns}">
    ${rows.flat().map((key) => keyButton(key, !key.act && last.length < columns, view))}
  </div>`;
}

function keyButton(key: Key, isWide: boolean, view: PadView): TemplateResult {
  const { act } = key;
  const pressed = (): void => {
    if (!act) view.next();
    else view.press((entry, isFresh) => act(isFresh && key.isFresh ? "" : entry));
  };
  const label = act ? key.label : view.isLast ? "Done" : "Next";
  const name = act ? key.name : label;
  const classes = `key ${key.look} ${isWide ? "wide" : ""}`;
  return html`<button type="button" tabindex="-1" class=${classes} aria-label=${name} @click=${pressed}>
    ${label === "erase" ? icon("erase") : label}${key.under
      ? html`<small class="underkey">${key.under}</small>`
      : nothing}
  </button>`;
}

function offers(view: PadView): TemplateResult {
  const shown = view.field.offers ?? [];
  return html`<div class="offers" role="group" aria-label="Choices for ${view.name}">
      ${shown.map(
        (value) => html`<button
          type="button"
          tabindex="-1"
          class="key digit"
          aria-pressed=${value === view.entry}
          @click=${() => view.press(() => value)}
        >
          ${typeset(value)}
        </button>`,
      )}
    </div>
    <div class="keys of-4">
      <button type="button" tabindex="-1" class="key quiet wide" @click=${view.keyboard}>Type it</button>
      <button type="button" tabindex="-1" class="key quiet" @click=${() => view.press(() => "")}>Clear</button>
      <button type="button" tabindex="-1" class="key action" @click=${view.next}>
        ${view.isLast ? "Done" : "Next"}
      </button>
    </div>`;
}
