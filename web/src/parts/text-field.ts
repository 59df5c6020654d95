/** A line of text typed on the phone's own keyboard, and a count with its two buttons. */
import { html, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { toast } from "./toast";

export interface TextField {
  label: string;
  value: string;
  /** Characters it takes. */
  most?: number;
  /** Several lines. */
  isLong?: boolean;
  inputmode?: "text" | "tel" | "decimal";
  put(value: string): void;
}

export function textField({ label, value, most = 120, isLong, inputmode = "text", put }: TextField): TemplateResult {
  const hear = (event: Event): void => put((event.target as HTMLInputElement).value);
  const paste = (event: ClipboardEvent): void => refuseTooMuch(event, most);
  return html`<label class="textfield"
    ><span class="label">${label}</span>
    ${isLong
      ? html`<textarea rows="3" maxlength=${most} .value=${live(value)} @input=${hear} @paste=${paste}></textarea>`
      : html`<input
          type="text"
          inputmode=${inputmode}
          autocomplete="off"
          maxlength=${most}
          .value=${live(value)}
          @input=${hear}
          @paste=${paste}
        />`}
  </label>`;
}

/** A field would cut what is pasted at its length without a word: it is left where it came from. */
function refuseTooMuch(event: ClipboardEvent, most: number): void {
  const field = event.target as HTMLInputElement;
  const length = field.value.length + (event.clipboardData?.getData("text").length ?? 0);
  if (length <= most) return;
  event.preventDefault();
  const [all, room] = [length, most].map((count) => count.toLocaleString("en-US"));
  toast(`With this it would be ${all} characters, and there is room for ${room}: nothing was pasted.`);
}

/** Returns a whole number with a button for one less and one for one more. */
export function counter(label: string, value: number, [least, most]: [number, number], put: (value: number) => void): TemplateResult {
  return html`<div class="counter" role="group" aria-label=${label}>
    <span class="label">${label}</span>
    <button type="button" aria-label="One less" ?disabled=${value <= least} @click=${() => put(value - 1)}>−</button>
    <output>${value}</output>
    <button type="button" aria-label="One more" ?disabled=${value >= most} @click=${() => put(value + 1)}>+</button>
  </div>`;
}
