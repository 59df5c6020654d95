/** Drawings of the house, in the color of the text around them. */
import { html, svg, type TemplateResult } from "lit";
import { LINES } from "./icon-lines";

/** Returns a decorative icon; the control around it carries the words. */
export function icon(name: string): TemplateResult {
  return html`<svg class="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
    ${svg`<path d=${LINES[name] ?? ""}></path>`}
  </svg>`;
}

/** The sign of the house: the V pencilled at a measurement, standing on its line. */
export function crowsFoot(): TemplateResult {
  return html`<svg class="crowsfoot" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
    <path class="mark" d="M4 4l8 14 8-14"></path>
    <path class="line" d="M3 21h18"></path>
  </svg>`;
}
