/** The box that a gloved thumb ticks, with a pencil's stroke in it. */
import { html, svg, type TemplateResult } from "lit";

export interface Box {
  /** What is ticked, as a screen reader says it. */
  label: string;
  isOn: boolean;
  /** Whether it is to be done again: a spoiled piece, a size that changed. */
  isWanting?: boolean;
  turn(): void;
}

/** Returns the box. */
export function tickBox({ label, isOn, isWanting = false, turn }: Box): TemplateResult {
  return html`<button
    type="button"
    class="tickbox ${isWanting ? "wanting" : ""}"
    role="checkbox"
    aria-checked=${isOn}
    aria-label=${label}
    @click=${turn}
  >
    <svg viewBox="0 0 32 32" aria-hidden="true" focusable="false">
      <rect x="2" y="2" width="28" height="28" rx="6"></rect>
      ${isOn ? svg`<path d="M8 20.5 24.5 11.5"></path>` : ""}
    </svg>
  </button>`;
}
