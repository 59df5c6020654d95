/** The buy list: a line for each stock and thing, ticked at the counter with the price paid. */
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { jobHash } from "../address/address";
import type { JobReply } from "../contract/contract";
import { tableFold } from "../parts/lists";
import { typeset } from "../text/typeset";
import { priceText } from "../text/words";
import { priceIn } from "./money";
import { count, type SheetView } from "./sheet-view";
import { tickBox } from "./tick-box";
import { withoutTick, withPaid, withTick } from "./ticking";

type Line = JobReply["yard"]["lines"][number];

const isBuyable = (line: Line): boolean => line.amount > 0;

/** Returns what stands over the list. */
export function buyGist({ reply: { yard }, ticked }: SheetView): string {
  const open = yard.lines.filter((line) => isBuyable(line) && !ticked.is(line.of)).length;
  const about = yard.cost > 0 ? ` of about ${yard.cost_text}` : "";
  const paid = yard.paid > 0 || yard.cost > 0 ? `, ${yard.paid_text} so far${about}` : "";
  return `${open === 0 ? "all bought" : `${open} to buy`}${paid}`;
}

/** Returns the list. */
export function buyList(view: SheetView): TemplateResult {
  const { lines } = view.reply.yard;
  const stock = jobHash(view.job.id, "stock");
  if (lines.length === 0) {
    return html`<p class="card sheetsays">
      Nothing to buy yet: say what the pieces are cut from under <a href=${stock}>Stock</a>.
    </p>`;
  }
  return html`<div class="card ticklist">
    <ul>
      ${lines.map((line) => buyLine(line, view))}
    </ul>
    ${totals(view)}
  </div>`;
}

function buyLine(line: Line, view: SheetView): TemplateResult {
  const isOn = view.ticked.is(line.of);
  const turn = (): void => {
    const { job } = view;
    if (isOn) job.changeWithUndo((body) => withoutTick(body, line.of), `${line.title} not bought after all`);
    else job.changeWithUndo((body) => withTick(body, line.of, "bought"), `${line.title} bought`);
  };
  const isNeeded = isBuyable(line) || isOn || line.from_hand > 0;
  return html`<li class="tickrow ${isOn ? "ticked" : ""}">
    ${isBuyable(line) || isOn
      ? tickBox({ label: `Bought: ${line.title}`, isOn, turn })
      : html`<span class="notick"></span>`}
    <div class="what">
      <span class="name">${typeset(line.title)}</span>
      <span class="under-name">${typeset(isNeeded ? line.words : "No piece is cut from it yet")}</span>
    </div>
    <span class="medium amount">${typeset(isBuyable(line) ? line.amount_text : isNeeded ? "none" : "–")}</span>
    ${line.on_hand.length > 0
      ? html`<ul class="under-name wide onhand">
          ${line.on_hand.map((each, at) => html`<li>${typeset(`On hand: ${each}`)}, ${line.taken[at] ?? 0} used</li>`)}
        </ul>`
      : nothing}
    ${line.offered.length > 0
      ? html`<a class="wide fromshop" href=${jobHash(view.job.id, "stock")}
          >${count(line.offered.length, "offcut")} of the shop would do: take from it</a
        >`
      : nothing}
    ${isOn || line.cost_text ? costs(line, view, isOn) : nothing}
    ${line.layout.length > 0 ? plan(line) : nothing}
  </li>`;
}

/** Which piece comes out of which stick or sheet. */
function plan({ layout }: Line): TemplateResult {
  return html`<details class="fold wide">
    <summary><span class="foldname">The plan</span></summary>
    ${layout.map(tableFold)}
  </details>`;
}

/** What it should cost and what it did, side by side. */
function costs(line: Line, view: SheetView, isOn: boolean): TemplateResult {
  return html`<div class="wide costs">
    <span class="estimate">${line.cost_text ? `about ${line.cost_text}` : "no price known"}</span>
    ${isOn ? paidField(line, view) : nothing}
  </div>`;
}

function paidField(line: Line, view: SheetView): TemplateResult {
  const { job, ticked, prices } = view;
  const paid = ticked.paid(line.of);
  const typed = prices.get(line.of);
  const price = typed === undefined ? null : priceIn(typed);
  const enter = (event: Event): void => {
    const text = (event.target as HTMLInputElement).value;
    const read = priceIn(text);
    prices.set(line.of, text);
    if ("value" in read) job.change((body) => withPaid(body, line.of, read.value), `Price of ${line.title}`);
    view.refresh();
  };
  const fault = price && "fault" in price ? price.fault : "";
  return html`<label class="paid"
      ><span>Paid $</span
      ><input
        type="text"
        inputmode="decimal"
        autocomplete="off"
        aria-label="Paid for ${line.title}"
        aria-invalid=${fault !== ""}
        .value=${live(typed ?? (paid === null ? "" : priceText(paid)))}
        @input=${enter}
        @change=${() => fault || prices.delete(line.of)}
    /></label>
    ${fault ? html`<p class="message wide" role="alert">${fault}</p>` : nothing}`;
}

function totals({ reply: { yard } }: SheetView): TemplateResult | typeof nothing {
  if (yard.cost === 0 && yard.paid === 0) return nothing;
  const missing = yard.lines.filter((line) => isBuyable(line) && line.cost === null).length;
  return html`<div class="totals">
    <dl>
      <div><dt>Estimated</dt><dd>${yard.cost_text}</dd></div>
      <div><dt>Paid so far</dt><dd>${yard.paid_text}</dd></div>
    </dl>
    ${missing > 0 ? html`<p class="quiet">${count(missing, "line")} without a price.</p>` : nothing}
  </div>`;
}
