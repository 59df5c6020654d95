/** A figure set big: its number with a stacked fraction, then "full", "shy" or a unit in words. */
import { html, nothing, type TemplateResult } from "lit";
import { typesetSilently } from "../text/typeset";
import { numberAndWords, runs, spoken } from "../text/fraction-runs";

/** Longer numbers are set smaller so that they stay on one line of a narrow phone. */
function sizeOf(text: string): string {
  const width = runs(text).reduce(
    (sum, run) => sum + (run.kind === "plain" ? run.text.length : run.whole.length + 1.3), 0,
  );
  return width <= 5 ? "giant" : width <= 8 ? "large" : "long";
}

/** Returns `text` as the giant figure, `also` in words beside it. */
export function bigFigure(text: string, also = ""): TemplateResult {
  const [number, words] = numberAndWords(text);
  const beside = [words, also].filter(Boolean).join(" · ");
  return html`<span class="big ${sizeOf(number)}"
    ><span aria-hidden="true"
      ><span class="number">${typesetSilently(number)}</span>${beside
        ? html` <span class="beside">${typesetSilently(beside)}</span>`
        : nothing}</span
    ><span class="unseen">${spoken([text, also].filter(Boolean).join(", "))}</span></span
  >`;
}

/** Returns `text` at the size of the line it stands in, words after the number in pencil. */
export function lineFigure(text: string): TemplateResult {
  const [number, words] = numberAndWords(text);
  return html`<span class="linefigure"
    ><span aria-hidden="true"
      >${typesetSilently(number)}${words
        ? html` <span class="beside">${typesetSilently(words)}</span>`
        : nothing}</span
    ><span class="unseen">${spoken(text)}</span></span
  >`;
}
