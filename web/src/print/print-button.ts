/** What an answer's screen offers to print at full size. */
import { html, nothing, type TemplateResult } from "lit";
import type { Answer } from "../contract/contract";
import { printSheets, sheetsOf } from "./print";

/** Marks make a story stick, templates stand for themselves. */
export function printButton(answer: Answer, tool: string): TemplateResult | typeof nothing {
  const sheets = sheetsOf(answer, tool);
  if (sheets.length === 0) return nothing;
  const pages = sheets.length === 1 ? "1 page" : `${sheets.length} pages`;
  return html`<button type="button" class="broad" @click=${() => printSheets(sheets)}>
    Print at full size <span class="quiet">${pages}</span>
  </button>`;
}
