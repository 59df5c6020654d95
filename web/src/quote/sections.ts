/** The parts of a quote's screen, one below the other. */
import { html, nothing, type TemplateResult } from "lit";
import type { JobReply } from "../contract/contract";
import type { Job } from "../job/job";
import { addRow, changeQuote, changeRow, deleteRow, putRight, signOff, signOffAgain, today } from "../job/quote-edits";
import { newId } from "../job/document";
import type { SignedOff } from "../job/quote-body";
import { icon } from "../parts/icons";
import { textField } from "../parts/text-field";
import { dateWords } from "../text/date";
import { typeset } from "../text/typeset";
import type { QuoteSheet } from "./sheets";
import { signing } from "./signing";

type Said = NonNullable<JobReply["quote"]>;
type Open = (kind: QuoteSheet["kind"], id?: string) => void;

/** Sums stand out among the parts they are made of. */
const SUMS = ["direct", "cost", "before_tax", "price", "total", "whole", "left"];

function taxed({ tax_words: words, tax_included: isIncluded, tax_text, total_text }: NonNullable<Said["due"]>): TemplateResult | typeof nothing {
  if (!words) return nothing;
  if (isIncluded) return html`<div><dt>${words}</dt></div>`;
  return html`${money(words, tax_text)} ${money("Total", total_text, "total")}`;
}

/** Returns a row of money. */
export function money(label: string, text: string, name = ""): TemplateResult {
  return html`<div class=${SUMS.includes(name) ? "sum" : ""}><dt>${typeset(label)}</dt><dd>${text}</dd></div>`;
}

interface Shown {
  title: string;
  under: string;
  amount: string;
  /** Something is still to be said. */
  asks?: boolean;
}

function lineButton({ title, under, amount, asks = false }: Shown, run: () => void): TemplateResult {
  return html`<li>
    <button type="button" class="plain entryline" @click=${run}>
      <span class="named">
        <span class="topline priced"><span class="name">${typeset(title)}</span> <span class="medium">${amount}</span></span>
        <span class="under-name ${asks ? "asking" : ""}">${typeset(under)}</span>
      </span>
      ${icon("handle")}
    </button>
  </li>`;
}

/** The lines of the quote: items, and what it names beside them. */
export function itemLines(job: Job, { lines }: Said, open: Open): TemplateResult {
  const items = job.body.items.map(({ id }) => id);
  const shown = ({ id, title, count, hours_text, material_text, price_text }: Said["lines"][number]): Shown => ({
    title: count > 1 ? `${title} × ${count}` : title,
    under: [hours_text || (items.includes(id) ? "how many hours?" : ""), `material ${material_text}`].filter(Boolean).join(" · "),
    amount: price_text,
    asks: hours_text === "" && items.includes(id),
  });
  const add = (): void => open("own", addRow(job, "lines", {}));
  return html`<section class="card item" aria-label="What it is for">
    <h2>What it is for</h2>
    <ul>
      ${lines.map((line) =>
        line.id === ""
          ? html`<li class="entryline">
              <span class="named">
                <span class="topline priced"><span class="name">${line.title}</span> <span class="medium">${line.price_text}</span></span>
                <span class="under-name">material ${line.material_text}, of no item</span>
              </span>
            </li>`
          : lineButton(shown(line), () => open(items.includes(line.id) ? "item" : "own", line.id)),
      )}
    </ul>
    <button type="button" class="plain another" @click=${add}>${icon("add")} Delivery, measuring, other</button>
  </section>`;
}

/** Tax, stages, what came in and what is left. */
export function paid(job: Job, { due }: Said, open: Open): TemplateResult | typeof nothing {
  if (!due) return nothing;
  const payments = job.body.quote?.payments ?? [];
  const add = (): void => open("payment", addRow(job, "payments", { at: today(), amount: null }));
  return html`<section class="card item" aria-label="How it is paid">
    <h2>How it is paid</h2>
    <dl class="build">
      ${taxed(due)}
      ${due.stages.map(({ name, percent_text, text }) => money(`${name}, ${percent_text}`, text))}
      ${due.extras_total ? html`${money("Changes agreed", due.extras_total_text)} ${money("All in all", due.whole_text, "whole")}` : nothing}
      ${due.paid ? html`${money("Paid", due.paid_text)} ${money("Left", due.left_text, "left")}` : nothing}
    </dl>
    ${due.stages_fault ? html`<p class="asking">${due.stages_fault}</p>` : nothing}
    <ul>
      ${payments.map(({ id, words, at }) =>
        lineButton({ title: words || "Payment", under: dateWords(at), amount: due.payments.find((each) => each.id === id)?.text ?? "" }, () => open("payment", id)),
      )}
    </ul>
    <button type="button" class="plain another" @click=${() => open("paid")}>${icon("handle")} Tax and stages</button>
    <button type="button" class="plain another" @click=${add}>${icon("add")} A payment came in</button>
  </section>`;
}

/** The price that both agreed on stands, whatever the job's numbers do. */
export function agreedPart(job: Job, { price, due, lines }: Said): TemplateResult | typeof nothing {
  const agreed = job.body.quote?.agreed;
  if (agreed) {
    return html`<section class="card item" aria-label="Agreed">
      <h2>Agreed ${dateWords(agreed.at)}</h2>
      ${signing({
        job, signed: agreed,
        customer: (part) => changeQuote(job, { agreed: { ...part, price: agreed.price ?? null } }, "Signed"),
        shop: (shop) => changeQuote(job, { agreed: { ...agreed, shop } }, "Signed"),
      })}
      <button type="button" @click=${() => job.changeWithUndo((body) => withoutAgreed(body), "Price open again")}>Open the price again</button>
    </section>`;
  }
  if (price === null || !due) return nothing;
  const isOnTop = due.tax > 0 && !due.tax_included;
  const signed = lines.map(({ id, title, count, price: part }) => ({ line: id, title, count, price: part ?? 0 }));
  const agree = (): void =>
    changeQuote(job, { agreed: { price, tax: isOnTop ? due.tax : null, lines: signed, at: today() } }, "Price agreed");
  return html`<button type="button" @click=${agree}>The customer agreed to ${due.total_text}${isOnTop ? " with its tax" : ""}</button>`;
}

function withoutAgreed(body: Job["body"]): Job["body"] {
  const { agreed: _, ...quote } = body.quote ?? {};
  return { ...body, quote };
}

/** Change orders: what came on top or fell away, once signed a part of the sum. */
export function changes(job: Job, { due }: Said, open: Open): TemplateResult | typeof nothing {
  if (!due) return nothing;
  const add = (): void => open("extra", addRow(job, "extras", { state: "offered", at: today() }));
  return html`<section class="card item" aria-label="Change orders">
    <h2>Change orders</h2>
    <ul>
      ${due.extras.map(({ id, title, state, price_text, days_text }) =>
        lineButton({ title, under: [state, days_text].filter(Boolean).join(" · "), amount: price_text }, () => open("extra", id)),
      )}
    </ul>
    <button type="button" class="plain another" @click=${add}>${icon("add")} A change</button>
  </section>`;
}

/** What is still to be put right, and who signed that all is. */
export function punchList(job: Job): TemplateResult {
  const { punch = [], signed = {} } = job.body.quote ?? {};
  const open = punch.filter(({ state }) => state !== "done").length;
  return html`<section class="card item" aria-label="Punch list and sign-off">
    <h2>Punch list and sign-off</h2>
    ${punch.map(
      ({ id, words = "", state }) => html`<div class="punch">
        <input
          type="checkbox"
          aria-label="Done: ${words || "this line"}"
          .checked=${state === "done"}
          @change=${(event: Event) => putRight(job, id, (event.target as HTMLInputElement).checked)}
        />
        ${textField({ label: "To put right", value: words, most: 400, put: (value) => changeRow(job, "punch", id, { words: value }) })}
        <button type="button" class="plain iconed" aria-label="Take away: ${words || "this line"}" @click=${() => deleteRow(job, "punch", id, "Line taken away")}>
          ${icon("close")}
        </button>
      </div>`,
    )}
    <button type="button" class="plain another" @click=${() => putRight(job, newId(), false)}>${icon("add")} Something to put right</button>
    ${signed.came_up ? html`<p class="asking">${cameUp(signed)}</p>` : nothing}
    ${open === 0
      ? signedOff(job, signed)
      : html`<p class="quiet">${open === 1 ? "1 thing" : `${open} things`} to put right before the sign-off.</p>`}
  </section>`;
}

function cameUp({ by, at, came_up: came }: SignedOff): string {
  const before = ["Signed off", by && `by ${by}`, dateWords(at)].filter(Boolean).join(" ");
  return `${before}; after that something came up, ${dateWords(came)}. It is signed again when that is put right.`;
}

function signedOff(job: Job, signed: SignedOff): TemplateResult {
  return html`${signing({
      job, signed, label: "Signed off by", customer: (part) => signOff(job, { ...signed, ...part }),
      shop: (shop) => changeQuote(job, { signed: { ...signed, shop } }, "Signed off"),
    })}
    ${signed.came_up ? html`<button type="button" @click=${() => signOffAgain(job, signed)}>Sign it off again</button>` : nothing}`;
}

/** Estimate beside actual, once hours worked were said; what it teaches is offered. */
export function howItWent({ compare, learned }: Said, learn: () => void): TemplateResult | typeof nothing {
  if (!compare) return nothing;
  return html`<section class="card item" aria-label="How it went">
    <h2>How it went</h2>
    ${compare.words ? html`<p>${compare.words}</p>` : nothing}
    <table class="went">
      <thead><tr><th scope="col">Item</th><th scope="col">Quoted</th><th scope="col">Worked</th><th scope="col">Material, paid</th></tr></thead>
      <tbody>
        ${compare.rows.map(
          ({ title, hours_text, actual_text, over_text, material_text, paid_text }) => html`<tr>
            <th scope="row">${typeset(title)}</th><td>${hours_text}</td>
            <td>${actual_text}${over_text ? html`<br /><small>${over_text}</small>` : nothing}</td>
            <td>${material_text}<br /><small>${paid_text}</small></td>
          </tr>`,
        )}
      </tbody>
    </table>
    ${learned.length > 0
      ? html`<p class="quiet">${learned.map(({ label, minutes }) => `${label}: ${Number(minutes.toFixed(1))} min`).join(" · ")}</p>
          <button type="button" @click=${learn}>Take these minutes over</button>`
      : nothing}
  </section>`;
}
