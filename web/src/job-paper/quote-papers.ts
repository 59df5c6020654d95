/** The papers a customer gets: quote, change orders, statement of what is due, sign-off. */
import { html, nothing, type TemplateResult } from "lit";
import type { JobReply } from "../contract/contract";
import type { JobBody } from "../job/document";
import type { Hand, Signed } from "../job/quote-body";
import type { ShopOwn } from "../job/shop-rates";
import { HEIGHT, lines, WIDTH } from "../quote/strokes";
import { dateWords } from "../text/date";
import { today } from "../job/quote-edits";
import { typesetSilently } from "../text/typeset";
import { box, table, ticked, type Cells, type Made } from "./papers";
import { dollars } from "../text/words";

export type QuotePaper = "quote" | "changes" | "due" | "signoff";

export const QUOTE_PAPERS: { paper: QuotePaper; words: string }[] = [
  { paper: "quote", words: "Quote" },
  { paper: "changes", words: "Change orders" },
  { paper: "due", words: "Statement" },
  { paper: "signoff", words: "Sign-off" },
];

export interface PrintedQuote {
  body: JobBody;
  reply: JobReply;
  shop: ShopOwn;
  /** The address of the shop's logo; empty for none. */
  logo: string;
}

/** Characters of a text that stands beside another, so that a quote keeps to one page. */
const MOST_BESIDE = 600;

const set = (text: string): TemplateResult => typesetSilently(text);

/** Returns one paper, or nothing where there is nothing to say on it. */
export function quotePaperOf(paper: QuotePaper, printed: PrintedQuote): TemplateResult | typeof nothing {
  const made = { quote: quotePaper, changes: changePaper, due: duePaper, signoff: signPaper }[paper](printed);
  if (!made) return nothing;
  const [title, inside] = made;
  const { body, shop, logo } = printed;
  const customer = [body.customer?.name, body.customer?.address, body.customer?.phone].filter(Boolean).join(" · ");
  const own = [shop.address, shop.phone, shop.license && `License ${shop.license}`].filter(Boolean).join(" · ");
  return html`<article class="paper">
    <header>
      <div class="letterhead">
        ${logo ? html`<img src=${logo} alt="" />` : nothing}
        ${shop.name ? html`<p><b>${shop.name}</b>${own ? html`<br />${own}` : nothing}</p>` : nothing}
        <h1>${title}</h1>
      </div>
      <p>${[body.title, customer].filter(Boolean).join(" · ")}</p>
    </header>
    ${inside}
  </article>`;
}

function quotePaper({ body, reply: { quote }, shop }: PrintedQuote): Made | null {
  const said = body.quote;
  if (!said || !quote?.due) return null;
  const { due } = quote;
  const byItem = said.price_by !== "sum";
  const signed = said.agreed?.lines?.map(({ title = "", count = 1, price }) => ({ title, count, price_text: dollars(price) }));
  const rows = (signed ?? quote.lines).map(({ title, count, price_text }): Cells => [
    set(count > 1 ? `${title} × ${count}` : title), byItem ? price_text : "",
  ]);
  const sums: Cells[] = [[html`<b>Price</b>`, html`<b>${quote.price_text}</b>`]];
  if (due.tax_included && due.tax_words) sums.push([due.tax_words, ""]);
  else if (due.tax_words) sums.push([due.tax_words, due.tax_text], [html`<b>Total</b>`, html`<b>${due.total_text}</b>`]);
  const when = [dated("Date", said.date), dated("Good until", said.valid_until), dated("Begins", said.begins), dated("Done", said.ends)];
  return [
    "Quote",
    html`<p>${when.filter(Boolean).join(" · ")}</p>
      ${long("What is done", said.work)} ${table(["What it is for", "Price"], [...rows, ...sums], "sums")} ${stages(due)}
      <div class=${isShort(said.exclusions) && isShort(said.terms) ? "halves" : ""}>
        ${long("Not in it", said.exclusions)} ${long("Terms", said.terms)}
      </div>
      <div class="closing">
        <p>Any change is written down as a change order and signed by both before it is done.</p>
        ${signatures(shop, said.agreed)}
      </div>`,
  ];
}

type Due = NonNullable<NonNullable<JobReply["quote"]>["due"]>;

function dated(label: string, value: string | undefined): string {
  return value ? `${label} ${dateWords(value)}` : "";
}

function long(title: string, text: string | undefined): TemplateResult | typeof nothing {
  if (!text) return nothing;
  return html`<section><h2>${title}</h2>${text.split("\n").map((line) => html`<p>${set(line)}</p>`)}</section>`;
}

/** Whether a text has room in half the width. */
const isShort = (text = ""): boolean => text !== "" && text.length <= MOST_BESIDE;

function stages(due: Due): TemplateResult | typeof nothing {
  if (due.stages.length === 0) return nothing;
  const rows = due.stages.map(({ name, percent_text, text }): Cells => [name, percent_text, text]);
  return html`<section><h2>Paid in stages</h2>${table(["When", "Of the total", "Amount"], rows, "sums")}</section>`;
}

function changePaper({ body, reply: { quote }, shop }: PrintedQuote): Made | null {
  const due = quote?.due;
  if (!due || due.extras.length === 0) return null;
  const orders = due.extras.map((extra) => {
    const own = body.quote?.extras?.find(({ id }) => id === extra.id);
    const words = [extra.state, extra.days_text, own?.by && `signed by ${own.by}`, dateWords(own?.at)].filter(Boolean).join(" · ");
    return html`<section class="order">
      <h2>${set(extra.title)}: ${extra.price_text}</h2>
      <p>${words}</p>
      ${own?.words ? html`<p>${set(own.words)}</p>` : nothing} ${extra.state === "offered" || own?.strokes || own?.shop ? signatures(shop, own) : nothing}
    </section>`;
  });
  const sum = html`<p class="closing">Agreed changes ${due.extras_total_text}; the job is ${due.whole_text} with them.</p>`;
  return ["Change orders", html`${orders} ${sum}`];
}

function duePaper({ body, reply: { quote } }: PrintedQuote): Made | null {
  const due = quote?.due;
  if (!due) return null;
  const staged = due.stages.length > 0
    ? due.stages.map(({ name, percent_text, text }): Cells => [`${name}, ${percent_text}`, text])
    : [["The whole of it", due.total_text] as Cells];
  const agreed = due.extras.filter(({ state }) => state === "agreed").map((each): Cells => [set(`Change: ${each.title}`), each.price_text]);
  const payments = (body.quote?.payments ?? []).map(({ id, words, at }): Cells => [
    set([`Paid ${dateWords(at)}`.trim(), words].filter(Boolean).join(", ")), dollars(-(due.payments.find((each) => each.id === id)?.amount ?? 0)),
  ]);
  const rows: Cells[] = [
    ...staged, ...agreed, [html`<b>All in all</b>`, html`<b>${due.whole_text}</b>`], ...payments,
    [html`<b>Left to pay</b>`, html`<b>${due.left_text}</b>`],
  ];
  return ["Statement", html`<p>${dated("As of", today())}</p>
    ${due.tax_words ? html`<p>${due.tax_included ? `${due.tax_words} of the price` : `${due.tax_words}: ${due.tax_text} is in it`}.</p>` : nothing} ${table(["What", "Amount"], rows, "sums")}`];
}

function signPaper({ body, shop }: PrintedQuote): Made | null {
  if (!body.quote) return null;
  const { punch = [], signed } = body.quote;
  const rows = punch.map(({ words = "", state, at = "" }): Cells => [state === "done" ? ticked : box, set(words), state === "done" ? dateWords(at) : ""]);
  return [
    "Sign-off",
    html`${punch.length > 0
        ? html`<section><h2>To put right</h2>${table(["", "What", "Done"], rows)}</section>`
        : html`<p>Nothing is left to put right.</p>`}
      <p class="closing">The work is done and looked at together.${signed?.by ? ` Signed off by ${signed.by}, ${dateWords(signed.at)}.` : ""}</p>
      ${signed?.came_up ? html`<p>Something came up after that: it is signed again when all is put right.</p>` : nothing}
      ${signatures(shop, signed?.came_up ? {} : signed)}`,
  ];
}

/** Two lines to sign on, the customer's and the shop's; over each what was signed on the screen. */
function signatures({ name }: ShopOwn, signed: Signed = {}): TemplateResult {
  return html`<div class="signatures">${signedLine("Customer", signed)} ${signedLine(name || "Shop", signed.shop)}</div>`;
}

function signedLine(whose: string, { by = "", at, strokes = [] }: Hand = {}): TemplateResult {
  const isSigned = by !== "" || strokes.length > 0;
  return html`<p>
    ${strokes.length > 0 ? html`<svg class="signhand" viewBox="0 0 ${WIDTH} ${HEIGHT}">${lines(strokes)}</svg>` : nothing}
    <span class="signline"></span>
    ${isSigned ? [whose, by, dateWords(at)].filter(Boolean).join(", ") : `${whose}, date`}
  </p>`;
}
