/** Sets text on screen with stacked fractions; a screen reader hears the spoken form. */
import { html, nothing, type TemplateResult } from "lit";
import { runs, spoken, type Run } from "./fraction-runs";

/** A short unit stays on its number's line. */
function whole(text: string): string {
  return text.replace(/(\d) (?=(?:°[CF]|%|h|min|s|mil|gal|qt|fl oz|lb)(?![\w°]))/g, "$1\u00a0");
}

/** Plain text stays text: a template of its own for each would be three nodes in the place of one. */
export type Typeset = TemplateResult | string;

function setRun(run: Run): Typeset {
  if (run.kind === "plain") return whole(run.text);
  return html`<span class="fraction"
    >${run.whole || nothing}<span class="stack"
      ><span class="over">${run.over}</span><span class="under">${run.under}</span></span
    ></span
  >`;
}

/** Returns `text` with its fractions stacked; plain text comes back as it is. */
export function typeset(text: string): Typeset {
  const parts = runs(text);
  if (!parts.some((run) => run.kind === "fraction")) return whole(text);
  return html`<span aria-hidden="true">${parts.map(setRun)}</span
    ><span class="unseen">${spoken(text)}</span>`;
}

/** As `set`, for places that are hidden from screen readers as a whole. */
export function typesetSilently(text: string): TemplateResult {
  return html`${runs(text).map(setRun)}`;
}
