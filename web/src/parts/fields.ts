/** Input cards: real labelled controls, their values typeset over them. */
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { repeat } from "lit/directives/repeat.js";
import type { Input, Raw, RawInputs } from "../contract";
import { chosenValue, idOf, shownValue, TYPED } from "../form/paths";
import { typesetSilently, typeset } from "../text/typeset";

export interface FieldHost {
  /** Path of the field in hand, empty for none. */
  readonly active: string;
  /** Whether a hardware keyboard edits it, so that its caret must be seen. */
  readonly isTyping: boolean;
  message(path: string): string;
  change(path: string, value: Raw): void;
  typed(path: string, text: string): void;
  focused(path: string): void;
  key(event: KeyboardEvent, path: string): void;
}

/** A card or a message, under a key that stays with it when others come and go before it. */
type Cell = readonly [key: string, drawn: TemplateResult];

/**
 * Returns the cards of `inputs`, all of which apply, two by two; a message stands full width below its pair.
 *
 * @param prefix path of the row the inputs belong to, with its dot; empty at the top
 * @param block draws an input that is no card of its own (rows)
 */
export function fieldGrid(
  inputs: Input[], given: RawInputs, prefix: string, host: FieldHost,
  block?: (input: Input) => TemplateResult,
): TemplateResult {
  const cells: Cell[] = [];
  let pair: Input[] = [];
  const close = (): void => {
    cells.push(...pairOf(pair, given, prefix, host));
    pair = [];
  };
  for (const input of inputs) {
    if (input.kind === "rows" && block) {
      close();
      cells.push([input.name, block(input)]);
    } else if (pair.push(input) === 2) close();
  }
  close();
  return html`<div class="grid">${repeat(cells, ([key]) => key, ([, drawn]) => drawn)}</div>`;
}

function pairOf(pair: Input[], given: RawInputs, prefix: string, host: FieldHost): Cell[] {
  const at = (input: Input): string => prefix + input.name;
  const cards = pair.map((input): Cell => [input.name, card(input, at(input), given, host)]);
  const blank: Cell[] = pair.length === 1 ? [["blank", html`<span class="blank"></span>`]] : [];
  const words = pair
    .filter((input) => host.message(at(input)) !== "")
    .map((input): Cell => [`${input.name} message`, fieldMessage(at(input), host.message(at(input)))]);
  return [...cards, ...blank, ...words];
}

/** Returns a message in words for the field at `path`, tied to it by id. */
export function fieldMessage(path: string, words: string): TemplateResult {
  return html`<p class="message" id="${idOf(path)}-message">${typeset(words)}</p>`;
}

function card(input: Input, path: string, given: RawInputs, host: FieldHost): TemplateResult {
  const value = given[input.name] ?? null;
  const isWrong = host.message(path) !== "";
  const classes = ["card", "field", path === host.active ? "active" : "", isWrong ? "wrong" : ""];
  return html`<div class=${classes.join(" ")}>
    <label class="label" for=${idOf(path)}>${typeset(input.label)}</label>
    ${control(input, path, value, isWrong, host)}
    ${input.help
      ? html`<span class="unseen" id="${idOf(path)}-help">${typeset(input.help)}</span>`
      : nothing}
  </div>`;
}

function control(
  input: Input, path: string, value: Raw, isWrong: boolean, host: FieldHost,
): TemplateResult {
  const described = describedBy(input, path, isWrong);
  if (TYPED.includes(input.kind)) return typedControl(input, path, value, isWrong, described, host);
  const shown = shownValue(input, value);
  const over = html`<span class="shown ${shown ? "" : "empty"}" aria-hidden="true"
    >${typesetSilently(shown || "choose")}</span
  >`;
  if (input.kind === "flag") return flagControl(input, path, value, described, over, host);
  return choiceControl(input, path, value, described, over, host);
}

function describedBy(input: Input, path: string, isWrong: boolean): string | typeof nothing {
  const ids = [isWrong ? `${idOf(path)}-message` : "", input.help ? `${idOf(path)}-help` : ""];
  return ids.filter(Boolean).join(" ") || nothing;
}

/** `inputmode=none` keeps the phone's own keyboard down; the pad and a hardware keyboard type. */
function typedControl(
  input: Input, path: string, value: Raw, isWrong: boolean,
  described: string | typeof nothing, host: FieldHost,
): TemplateResult {
  const text = shownValue(input, value);
  const isTyping = host.active === path && host.isTyping;
  const isFree = input.kind === "text" && !input.offers?.length;
  return html`<div class="value ${isTyping ? "typing" : ""}">
    <span class="shown ${text ? "" : "empty"}" aria-hidden="true"
      >${typesetSilently(text || input.default_text || "–")}${text && input.unit
        ? html`<span class="unit">${input.unit}</span>`
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
      maxlength="20000"
      placeholder=${input.default_text || nothing}
      aria-required=${input.required ? "true" : nothing}
      aria-invalid=${isWrong ? "true" : nothing}
      aria-describedby=${described}
      .value=${live(text)}
      @focus=${() => host.focused(path)}
      @input=${(event: InputEvent) => host.typed(path, (event.target as HTMLInputElement).value)}
      @keydown=${(event: KeyboardEvent) => host.key(event, path)}
    />
  </div>`;
}

function flagControl(
  input: Input, path: string, value: Raw, described: string | typeof nothing,
  over: TemplateResult, host: FieldHost,
): TemplateResult {
  const isOn = (value ?? input.default) === true;
  return html`<div class="value over">
    ${over}<span class="switch ${isOn ? "on" : ""}" aria-hidden="true"></span>
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

function choiceControl(
  input: Input, path: string, value: Raw, described: string | typeof nothing,
  over: TemplateResult, host: FieldHost,
): TemplateResult {
  const chosen = chosenValue(input, value);
  return html`<div class="value over">
    ${over}
    <select
      id=${idOf(path)}
      aria-describedby=${described}
      aria-required=${input.required ? "true" : nothing}
      @change=${(event: Event) => host.change(path, (event.target as HTMLSelectElement).value)}
    >
      ${chosen === null ? html`<option value="" selected>choose</option>` : nothing}
      ${(input.choices ?? []).map(
        (choice) => html`<option value=${choice.value} .selected=${live(choice.value === chosen)}>
          ${choice.label}
        </option>`,
      )}
    </select>
  </div>`;
}
