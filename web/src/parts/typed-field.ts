/** A number kept as it is typed: the core reads it, and says what can't be read. */
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";

/** A plain number, or a text as it was typed; null for nothing. */
export type Typed = number | string | null;

export interface TypedField {
  label: string;
  value: Typed | undefined;
  /** A larger number is left to the core, which refuses it. */
  most: number;
  /** What the core says of it; empty where nothing is wrong. */
  fault: string;
  put(value: Typed): void;
}

export function typedField({ label, value, most, fault, put }: TypedField): TemplateResult {
  const hear = (event: Event): void => put(asKept((event.target as HTMLInputElement).value, most));
  return html`<div class="typedfield">
    <label class="textfield"
      ><span class="label">${label}</span>
      <input
        type="text"
        inputmode="text"
        autocomplete="off"
        maxlength="60"
        aria-invalid=${fault ? "true" : nothing}
        .value=${live(value === null || value === undefined ? "" : String(value))}
        @input=${hear}
    /></label>
    ${fault ? html`<p class="message" role="alert">${fault}</p>` : nothing}
  </div>`;
}

/** Only what reads the same as a number is kept as one: "0." is on its way to 0.5. */
function asKept(text: string, most: number): Typed {
  const number = Number(text);
  const isPlain = /^\d+(?:\.\d+)?$/.test(text) && String(number) === text && number <= most;
  return text.trim() === "" ? null : isPlain ? number : text;
}
