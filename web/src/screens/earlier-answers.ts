/** The last answers of a tool, to be called back with their inputs. */
import { html, type TemplateResult } from "lit";
import type { KeptAnswer } from "../store/store";
import { sheet } from "../parts/sheet";
import { typeset } from "../text/typeset";

/** The format is made when it is needed: that takes longer than all else a start reads. */
const WHEN: Intl.DateTimeFormatOptions = { month: "short", day: "numeric", hour: "numeric", minute: "2-digit" };

/** Returns the sheet; `kept` is null while it is read, words where it can't be. */
export function earlierSheet(
  kept: KeptAnswer[] | string | null, recall: (entry: KeptAnswer) => void, close: () => void,
): TemplateResult {
  return sheet("Earlier answers", body(kept, recall), close);
}

function body(
  kept: KeptAnswer[] | string | null, recall: (entry: KeptAnswer) => void,
): TemplateResult {
  if (kept === null) return html`<p class="quiet">Looking…</p>`;
  if (typeof kept === "string") return html`<p class="message">${kept}</p>`;
  if (kept.length === 0) {
    return html`<p class="quiet">None yet. An answer is kept once it has stood for a moment.</p>`;
  }
  const when = new Intl.DateTimeFormat("en-US", WHEN);
  return html`<ul class="lines">
    ${kept.map(
      (entry) => html`<li>
        <button type="button" class="plain line" @click=${() => recall(entry)}>
          <span class="named"
            ><span class="name strong">${typeset(entry.lead)}</span>
            <span class="under-name">${typeset(entry.says)}</span>
            <span class="under-name">${when.format(entry.at)}</span></span
          >
        </button>
      </li>`,
    )}
  </ul>`;
}
