/** The pad: a sheet at the foot of the screen with the entry in hand, an enlarged inch and keys. */
import { html, nothing, type TemplateResult } from "lit";
import type { Input, RawInputs, Scale, Units } from "../contract";
import { holds } from "../form/paths";
import { fractionOf, setFraction } from "../text/entry";
import { typeset, typesetSilently } from "../text/typeset";
import { numberAndWords } from "../text/fraction-runs";
import { icon } from "./icons";
import "./inch";
import { keysFor, type Key } from "./keys";

export interface PadView {
  input: Input;
  /** What the field is called aloud: "Recess width", "Wall 2 length". */
  name: string;
  entry: string;
  /** What the entry comes to, in the units in force and in the other system; null where it can't be read. */
  reading: { text: string; other: string } | null;
  message: string;
  /** Whether the next digit starts a new entry. */
  isFresh: boolean;
  isLast: boolean;
  scale: Scale;
  /** The inputs an offer's condition may speak of. */
  given: RawInputs;
  siblings: Input[];
  glance: TemplateResult;
  press(entry: string): void;
  next(): void;
  close(): void;
  /** Brings the phone's own keyboard up for a text. */
  keyboard(): void;
}

const UNIT_WORDS = { in: "inches", mm: "millimeters" };

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
        >${typesetSilently(entry || input.default_text || "–")}</span
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

function entryClasses({ input, entry, isFresh }: PadView): string {
  const isLong = (entry || input.default_text).length > LONG;
  const classes = ["entry", isLong ? "long" : "", entry ? "" : "empty", entry && isFresh ? "fresh" : ""];
  return classes.filter(Boolean).join(" ");
}

function alsoWords(view: PadView): string {
  const { input, entry, reading, scale } = view;
  if (input.kind !== "length") return input.unit || view.name;
  if (!entry) return view.name;
  const other = reading ? inUnits(reading.other) : "";
  if (!isWorkedOut(entry, scale.units)) return [UNIT_WORDS[scale.units], other].filter(Boolean).join(" · ");
  return reading ? `= ${inUnits(reading.text)} · ${other}` : "";
}

/** A length as the core shows it names its unit only in millimeters. */
function inUnits(text: string): string {
  if (/mm/.test(text)) return text;
  const [number, words] = numberAndWords(text);
  return [number, "in", words].filter(Boolean).join(" ");
}

/** Whether an entry has to be worked out to be known in the units in force: a sum, feet, other units. */
function isWorkedOut(entry: string, units: Units): boolean {
  const isSum = /\S\s+[+\u2212-]/.test(entry.trim());
  const isMarked = /[a-z'"′″’”]/i.test(entry);
  const isOwn = units === "mm" ? /^[\d.\s]+mm$/i : /^[\d.\s/-]+(?:in|["″”])$/i;
  return isSum || (isMarked && !isOwn.test(entry.trim()));
}

function inch(view: PadView): TemplateResult {
  const parts = view.scale.step;
  return html`<lp-inch
    .parts=${parts}
    .share=${view.reading ? fractionOf(view.entry) : null}
    .pick=${(over: number) => view.press(setFraction(view.entry, over, parts))}
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
    else view.press(act(view.isFresh && key.isFresh ? "" : view.entry));
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
  const { input, given, siblings } = view;
  const shown = (input.offers ?? []).filter((offer) => holds(offer.only_when, given, siblings));
  return html`<div class="offers" role="group" aria-label="Choices for ${view.name}">
      ${shown.map(
        ({ value }) => html`<button
          type="button"
          tabindex="-1"
          class="key digit"
          aria-pressed=${value === view.entry}
          @click=${() => view.press(value)}
        >
          ${typeset(value)}
        </button>`,
      )}
    </div>
    <div class="keys of-4">
      <button type="button" tabindex="-1" class="key quiet wide" @click=${view.keyboard}>Type it</button>
      <button type="button" tabindex="-1" class="key quiet" @click=${() => view.press("")}>Clear</button>
      <button type="button" tabindex="-1" class="key action" @click=${view.next}>
        ${view.isLast ? "Done" : "Next"}
      </button>
    </div>`;
}
