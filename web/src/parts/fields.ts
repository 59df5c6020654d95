/** Input cards: real labelled controls, their values typeset over them. */
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { repeat } from "lit/directives/repeat.js";
import type { Field, Input, Option } from "../contract/contract";
import type { FieldHost } from "../form/host";
import { idOf, TYPED } from "../form/paths";
import { typesetSilently, typeset } from "../text/typeset";

/** A card or a message, under a key that stays with it when others come and go before it. */
type Cell = readonly [key: string, drawn: TemplateResult];

/**
 * Returns the cards of `fields`, two by two; a message stands full width below its pair.
 *
 * @param inputs the declared inputs the fields belong to
 * @param prefix path of the row the fields belong to, with its dot; empty at the top
 * @param block draws a field that is no card of its own (rows)
 */
export function fieldGrid(
  fields: Field[], inputs: Input[], prefix: string, host: FieldHost,
  block?: (input: Input, field: Field) => TemplateResult,
): TemplateResult {
  const cells: Cell[] = [];
  let pair: Card[] = [];
  let wide: Card[] = [];
  const close = (): void => {
    cells.push(...pairOf(pair, host), ...wide.flatMap((one) => pairOf([one], host)));
    [pair, wide] = [[], []];
  };
  for (const field of fields) {
    const input = inputs.find((each) => each.name === field.name);
    if (!input) continue;
    const one = { input, field, path: prefix + input.name };
    if (input.kind === "rows" && block) {
      close();
      cells.push([input.name, block(input, field)]);
    } else if (isWide(input, field)) {
      // A line of its own waits until the pair before it is whole: no hole is left beside a card.
      wide.push(one);
      if (pair.length === 0) close();
    } else if (pair.push(one) === 2) close();
  }
  close();
  return html`<div class="grid">${repeat(cells, ([key]) => key, ([, drawn]) => drawn)}</div>`;
}

interface Card {
  input: Input;
  field: Field;
  path: string;
}

function pairOf(pair: Card[], host: FieldHost): Cell[] {
  const cards = pair.map((one): Cell => [one.path, card(one, host)]);
  const isAlone = pair.length === 1 && pair.every(({ input, field }) => !isWide(input, field));
  const blank: Cell[] = isAlone ? [["blank", html`<span class="blank"></span>`]] : [];
  const words = pair
    .filter(({ path }) => host.message(path) !== "")
    .map(({ path }): Cell => [`${path} message`, fieldMessage(path, host.message(path), host)]);
  return [...cards, ...blank, ...words];
}

/** Characters of all its words up to which a choice is tapped where it stands, not in a list. */
const TAPPED = 44;

function optionsOf(input: Input, field: Field): Option[] {
  return field.choices ?? input.choices ?? [];
}

/** Whether a choice of two or three short words takes a line of its own, each word a button. */
function isWide(input: Input, field: Field): boolean {
  if (input.kind !== "choice") return false;
  const options = optionsOf(input, field);
  const length = options.reduce((sum, { label }) => sum + label.length, 0);
  return options.length > 1 && options.length <= 3 && length <= TAPPED;
}

/** Returns a message in words for the field at `path`, tied to it by id, with what may have been meant. */
export function fieldMessage(path: string, words: string, host: FieldHost): TemplateResult {
  const instead = host.instead(path);
  return html`<div class="message" id="${idOf(path)}-message">
    <p>${typeset(words)}</p>
    ${instead.map(
      (text) => html`<button type="button" @click=${() => host.change(path, text)}>${typeset(text)}</button>`,
    )}
  </div>`;
}

function card({ input, field, path }: Card, host: FieldHost): TemplateResult {
  const isWrong = host.message(path) !== "";
  const isWanted = field.missing === true;
  const classes = [
    "card", "field", path === host.active ? "active" : "", isWrong ? "wrong" : "",
    isWanted ? "wanted" : "", isWide(input, field) ? "wide" : "",
  ];
  return html`<div class=${classes.filter(Boolean).join(" ")}>
    ${isWide(input, field)
      ? html`<span class="label" id="${idOf(path)}-label">${typeset(input.label)}</span>`
      : html`<label class="label" for=${idOf(path)}>${typeset(input.label)}</label>`}
    ${control(input, field, path, isWrong, host)}
    ${sourceLine(field, path, host)}
    ${input.help
      ? html`<span class="unseen" id="${idOf(path)}-help">${typeset(input.help)}</span>`
      : nothing}
  </div>`;
}

/** Where a carried number is from, or what would be carried in the place of what was typed. */
function sourceLine(field: Field, path: string, host: FieldHost): TemplateResult | typeof nothing {
  const way = host.wayTo(path);
  if (field.of) {
    const words = html`from ${typeset(field.of)}`;
    return way ? html`<a class="from" href=${way}><span>${words}</span></a>` : html`<span class="from">${words}</span>`;
  }
  const { carried } = field;
  if (!carried) return nothing;
  return html`<button type="button" class="plain from differs" @click=${() => host.change(path, "")}>
    <span>${typeset(`${carried.from} says ${carried.text}: take it`)}</span>
  </button>`;
}

function control(
  input: Input, field: Field, path: string, isWrong: boolean, host: FieldHost,
): TemplateResult {
  const described = describedBy(input, path, isWrong);
  if (TYPED.includes(input.kind)) return typedControl(input, field, path, isWrong, described, host);
  if (input.kind === "flag") return flagControl(path, described, host);
  if (isWide(input, field)) return tappedChoice(input, field, path, described, host);
  return choiceControl(input, field, path, described, host);
}

function describedBy(input: Input, path: string, isWrong: boolean): string | typeof nothing {
  const ids = [isWrong ? `${idOf(path)}-message` : "", input.help ? `${idOf(path)}-help` : ""];
  return ids.filter(Boolean).join(" ") || nothing;
}

/** Returns a number with the sign it is written with, dollars before it, degrees right behind it. */
export function signed(kind: Input["kind"], unit: string, text: string): string {
  if (unit === "$") return text.replace(/^(?=[\d.])/, "$");
  return kind === "angle" ? text.replace(/(?<=\d)$/, "°") : text;
}

/** `inputmode=none` keeps the phone's own keyboard down; the pad and a hardware keyboard type. */
function typedControl(
  input: Input, field: Field, path: string, isWrong: boolean,
  described: string | typeof nothing, host: FieldHost,
): TemplateResult {
  const named = field.unit ?? input.unit;
  // The sign stands on what is shown alone: in what is typed the next key would come after it.
  const typed = host.shown(path);
  const text = signed(input.kind, named, typed);
  const empty = signed(input.kind, named, field.empty ?? "");
  const unit = text.includes(named) ? "" : named;
  const isTyping = host.active === path && host.isTyping;
  const isFree = input.kind === "text" && !field.offers?.length;
  return html`<div class="value ${isTyping ? "typing" : ""}">
    <span class="shown ${text ? "" : "empty"}" aria-hidden="true"
      >${typesetSilently(text || empty || "–")}${(text || (!empty && input.kind === "number")) && unit
        ? html`<span class="unit">${unit}</span>`
        : nothing}</span
    >
    <input
      id=${idOf(path)}
      type="text"
      inputmode=${isFree ? "text" : "none"}
      autocomplete="off"
      autocapitalize="off"
      spellcheck="false"
      enterkeyhint="next"
      maxlength="200"
      placeholder=${empty || nothing}
      aria-required=${input.required ? "true" : nothing}
      aria-invalid=${isWrong ? "true" : nothing}
      aria-describedby=${described}
      .value=${live(typed)}
      @focus=${() => host.focused(path)}
      @input=${(event: InputEvent) => host.typed(path, (event.target as HTMLInputElement).value)}
      @keydown=${(event: KeyboardEvent) => host.key(event, path)}
    />
  </div>`;
}

function flagControl(
  path: string, described: string | typeof nothing, host: FieldHost,
): TemplateResult {
  const isOn = host.isOn(path);
  return html`<div class="value over">
    ${laidOver(isOn ? "yes" : "no")}
    <span class="switch ${isOn ? "on" : ""}" aria-hidden="true"></span>
    <input
      id=${idOf(path)}
      type="checkbox"
      role="switch"
      aria-describedby=${described}
      .checked=${live(isOn)}
      @change=${(event: Event) => host.change(path, (event.target as HTMLInputElement).checked)}
    />
  </div>`;
}

function laidOver(words: string): TemplateResult {
  return html`<span class="shown ${words ? "" : "empty"}" aria-hidden="true"
    >${typesetSilently(words || "choose")}</span
  >`;
}

/** Two or three short words: each is a button, one tap chooses. */
function tappedChoice(
  input: Input, field: Field, path: string, described: string | typeof nothing, host: FieldHost,
): TemplateResult {
  const options = optionsOf(input, field);
  const chosen = host.chosen(path, options);
  return html`<div
    class="choices"
    role="radiogroup"
    aria-labelledby="${idOf(path)}-label"
    aria-describedby=${described}
    aria-required=${input.required ? "true" : nothing}
  >
    ${options.map(
      ({ value, label }, at) => html`<label class="option"
        ><input
          id=${at === 0 ? idOf(path) : nothing}
          type="radio"
          name=${idOf(path)}
          value=${value}
          .checked=${live(value === chosen)}
          @change=${() => host.change(path, value)}
        /><span>${typeset(label)}</span></label
      >`,
    )}
  </div>`;
}

function choiceControl(
  input: Input, field: Field, path: string, described: string | typeof nothing, host: FieldHost,
): TemplateResult {
  const options = optionsOf(input, field);
  const chosen = host.chosen(path, options);
  return html`<div class="value over">
    ${laidOver(options.find(({ value }) => value === chosen)?.label ?? "")}
    <select
      id=${idOf(path)}
      aria-describedby=${described}
      aria-required=${input.required ? "true" : nothing}
      @change=${(event: Event) => host.change(path, (event.target as HTMLSelectElement).value)}
    >
      ${chosen ? nothing : html`<option value="" selected>choose</option>`}
      ${options.map(
        ({ value, label }) => html`<option value=${value} .selected=${live(value === chosen)}>
          ${label}
        </option>`,
      )}
    </select>
  </div>`;
}
