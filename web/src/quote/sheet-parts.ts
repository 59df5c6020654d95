/** What the sheets of a quote are made of: numbers, options, dates, the way out. */
import { html, type TemplateResult } from "lit";
import { typedField, type Typed } from "../parts/typed-field";
import type { Opened } from "./sheets";

/** Enter goes on to the next field; in the last one it closes. */
export function endOnEnter(event: KeyboardEvent): void {
  const field = event.target as HTMLElement;
  if (event.key !== "Enter" || !(field instanceof HTMLInputElement) || field.type !== "text") return;
  event.preventDefault();
  const all = [...(event.currentTarget as HTMLElement).querySelectorAll<HTMLInputElement>("input[type=text]")];
  const next = all[all.indexOf(field) + 1];
  if (next) next.focus();
  else field.closest("dialog")?.close();
}

export function done(): TemplateResult {
  const end = (event: Event): void => (event.currentTarget as HTMLElement).closest("dialog")?.close();
  return html`<button type="button" class="primary sheetdone" @click=${end}>Done</button>`;
}

interface Numeral {
  label: string;
  value: Typed | undefined;
  /** As the core names it where it can't be read. */
  field: string;
  most?: number;
  put(value: Typed): void;
}

export function numeral({ said }: Opened, { field, most = 1e7, ...rest }: Numeral): TemplateResult {
  const fault = said?.faults.find((each) => each.field === field)?.message ?? "";
  return typedField({ ...rest, most, fault });
}

export function options(name: string, legend: string, chosen: string, all: [string, string][], choose: (value: string) => void): TemplateResult {
  return html`<fieldset class="options">
    <legend>${legend}</legend>
    <div class="choices">
      ${all.map(
        ([value, words]) => html`<label class="option"
          ><input type="radio" name=${name} .checked=${chosen === value} @change=${() => choose(value)} /><span>${words}</span></label
        >`,
      )}
    </div>
  </fieldset>`;
}

export function dateField(label: string, value: string | undefined, put: (value: string) => void): TemplateResult {
  const hear = (event: Event): void => put((event.target as HTMLInputElement).value);
  return html`<label class="textfield"
    ><span class="label">${label}</span><input type="date" .value=${value ?? ""} @change=${hear}
  /></label>`;
}
