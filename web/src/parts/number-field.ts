/** A number typed on the phone's own keyboard: what can't be read stays, with a sentence. */
import { LitElement, html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { live } from "lit/directives/live.js";
import { priceText } from "../text/words";

@customElement("lp-number")
export class NumberField extends LitElement {
  @property({ attribute: false }) label = "";
  @property({ attribute: false }) value: number | null = null;
  @property({ attribute: false }) least = 0;
  @property({ attribute: false }) most = 1e7;
  @property({ attribute: false }) isWhole = false;
  @property({ attribute: false }) isPrice = false;
  /** What stands there while it is empty. */
  @property({ attribute: false }) empty = "";
  @property({ attribute: false }) put: (value: number | null) => void = () => undefined;
  /** The text in hand; null while nothing is typed. */
  @state() private draft: string | null = null;
  /** The number that stood before it: a text that won't do is not read as its beginning. */
  private stood: number | null = null;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override render(): TemplateResult {
    const text = this.draft ?? (this.value === null ? "" : this.isPrice ? priceText(this.value) : String(this.value));
    const message = this.message(text);
    return html`<label class="textfield"
        ><span class="label">${this.label}</span>
        <input
          type="text"
          inputmode=${this.isWhole ? "numeric" : "decimal"}
          autocomplete="off"
          maxlength="20"
          placeholder=${this.empty || nothing}
          aria-invalid=${message ? "true" : nothing}
          .value=${live(text)}
          @input=${(event: Event) => this.typed((event.target as HTMLInputElement).value)}
          @blur=${() => this.message(this.draft ?? "") || (this.draft = null)}
      /></label>
      ${message ? html`<p class="message">${message}</p>` : nothing}`;
  }

  private typed(text: string): void {
    if (this.draft === null) this.stood = this.value;
    this.draft = text;
    if (text.trim() === "") this.put(null);
    else this.put(this.message(text) ? this.stood : read(text, this.isPrice));
  }

  private message(text: string): string {
    if (text.trim() === "") return "";
    const value = read(text, this.isPrice);
    const isFit = value >= this.least && value <= this.most && (!this.isWhole || Number.isInteger(value));
    const kind = this.isWhole ? "whole number" : "number";
    if (!isFit && this.isPrice && text.includes(",")) {
      return `“${text.slice(0, 20)}” has a comma that ends no thousands: write 1,250 or 1250, and cents with a point, like 1.25.`;
    }
    return isFit ? "" : `“${text.slice(0, 20)}” won't do: a ${kind} from ${this.least} to ${this.most}.`;
  }
}

function read(text: string, isPrice: boolean): number {
  const bare = text.trim().replace(/^\$/, "");
  const plain = isPrice && /^\d{1,3}(?:,\d{3})+(?:\.\d*)?$/.test(bare) ? bare.replaceAll(",", "") : bare;
  return /^\d{1,12}(?:\.\d*)?$|^\.\d+$/.test(plain) ? Number(plain) : NaN;
}
