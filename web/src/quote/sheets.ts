/** The sheets of a quote's screen: rates, a line, how it is paid, a change, the words on paper. */
import { html, nothing, type TemplateResult } from "lit";
import type { JobReply } from "../contract/contract";
import type { Job } from "../job/job";
import type { Extra, Quote, QuoteLists, Rates } from "../job/quote-body";
import { addRow, changeOrder, changeQuote, changeRates, changeRow, deleteRow, setHours, signOrder } from "../job/quote-edits";
import { dropLogo, keepLogo } from "../job/logo";
import type { ShopOwn } from "../job/shop-rates";
import { isSame, type Json } from "../store/json";
import { icon } from "../parts/icons";
import { sheet } from "../parts/sheet";
import { textField } from "../parts/text-field";
import type { Typed } from "../parts/typed-field";
import { toast } from "../parts/toast";
import "./logo";
import { dateField, done, endOnEnter, numeral, options } from "./sheet-parts";
import { signing } from "./signing";

export interface QuoteSheet {
  kind: "rates" | "item" | "own" | "paid" | "payment" | "extra" | "paper" | "shop";
  /** Of the row it is about; empty where it is about none. */
  id: string;
}

export interface Opened {
  job: Job;
  said: NonNullable<JobReply["quote"]> | null;
  shop: ShopOwn;
  sheet: QuoteSheet;
  close(): void;
  keep(part: ShopOwn): void;
}

const LONG = 4000;

export function quoteSheet(opened: Opened): TemplateResult | typeof nothing {
  const [title, body] = SHEETS[opened.sheet.kind](opened);
  if (body === nothing) return nothing;
  return sheet(title, html`<div class="sheetform" @keydown=${endOnEnter}>${body}</div>`, opened.close);
}

type Made = [title: string, body: TemplateResult | typeof nothing];

const SHEETS: { [kind in QuoteSheet["kind"]]: (opened: Opened) => Made } = {
  rates: ratesSheet, item: itemSheet, own: ownSheet, paid: paidSheet, payment: paymentSheet, extra: extraSheet,
  paper: paperSheet, shop: shopSheet,
};

function ratesSheet(opened: Opened): Made {
  const { job, shop, keep } = opened;
  const rates = job.body.quote?.rates ?? {};
  const profit = rates.profit_of ?? "price";
  type Name = "rate" | "overhead_percent" | "contingency_percent" | "profit_percent";
  const rate = (name: Name, label: string, most: number): TemplateResult =>
    numeral(opened, { label, value: rates[name], field: `rates.${name}`, most, put: (value) => changeRates(job, { [name]: value }) });
  const isShops = isSame(rates as Json, (shop.rates ?? {}) as Json);
  const asShops = (): void => {
    keep({ rates });
    toast("Kept as the shop's rates: the next quote begins with them.");
  };
  return [
    "Rates",
    html`${rate("rate", "What an hour costs you, $", 10000)}
      <p class="quiet">Wage with taxes and benefits, without overhead and profit. The question Price at the yard works it out.</p>
      ${rate("overhead_percent", "Overhead, % of the direct cost", 900)}
      ${rate("contingency_percent", "Contingency, % of direct cost and overhead", 900)}
      ${options("profit", "Profit as", profit, [["price", "margin: % of the price"], ["cost", "markup: % of the cost"]],
        (value) => changeRates(job, { profit_of: value as "price" | "cost" }))}
      ${rate("profit_percent", profit === "price" ? "Profit, % of the price" : "Profit, % of the cost", profit === "price" ? 95 : 900)}
      ${options("rounded", "Price rounded", rates.round_up ?? "cent",
        [["cent", "to the cent"], ["one", "up to $1"], ["five", "up to $5"], ["ten", "up to $10"]],
        (value) => changeRates(job, { round_up: value as NonNullable<Rates["round_up"]> }))}
      ${isShops
        ? html`<p class="quiet">These are the shop's rates.</p>`
        : shop.rates?.rate !== undefined
          ? html`<button type="button" @click=${asShops}>Keep as the shop's rates</button>`
          : nothing}
      ${done()}`,
  ];
}

/** An item's hours: typed, or its operations with the shop's minutes; and as worked. */
function itemSheet(opened: Opened): Made {
  const { job, said, sheet: { id }, shop, keep } = opened;
  const item = job.body.items.find((each) => each.id === id);
  const line = said?.lines.find((each) => each.id === id);
  if (!item || !line) return ["", nothing];
  const minutes = job.body.quote?.minutes ?? [];
  const counted = line.operations.map(({ operation, label, count }) =>
    numeral(opened, {
      label: `${label}, minutes each (${count} of them)`, field: `minutes.${operation}.minutes`, most: 100000,
      value: minutes.find((each) => each.id === operation)?.minutes,
      put: (value) => changeRow(job, "minutes", operation, { minutes: value }),
    }),
  );
  const hours = (name: "hours" | "actual_hours", words: string): TemplateResult =>
    numeral(opened, {
      label: words, value: item[name], field: `items.${id}.${name}`, most: 10000,
      put: (value) => setHours(job, id, name, value),
    });
  const isShops = isSame(minutes as unknown as Json, (shop.minutes ?? []) as unknown as Json);
  return [
    item.title || "Item",
    html`${hours("hours", "Hours, all of it")}
      ${counted.length > 0
        ? html`<p class="quiet">Or leave the hours empty and say the minutes of one of each; your own records beat any list.</p>
            ${counted}
            ${minutes.length > 0 && !isShops
              ? html`<button type="button" @click=${() => keep({ minutes })}>Keep as the shop's minutes</button>`
              : nothing}`
        : nothing}
      <p>${line.hours_text ? `Quoted: ${line.hours_text}` : "No hours yet"}</p>
      ${hours("actual_hours", "Hours worked, when it is done")}
      ${done()}`,
  ];
}

/** Finds the row a sheet is about. */
function rowOf<Name extends keyof QuoteLists>({ job, sheet: { id } }: Opened, list: Name): QuoteLists[Name] | undefined {
  return ((job.body.quote?.[list] ?? []) as QuoteLists[Name][]).find((row) => row.id === id);
}

function removing(opened: Opened, list: keyof QuoteLists, words: string): TemplateResult {
  const remove = (): void => {
    opened.close();
    deleteRow(opened.job, list, opened.sheet.id, words);
  };
  return html`<div class="actions"><button type="button" @click=${remove}>Delete it</button></div>`;
}

function ownSheet(opened: Opened): Made {
  const row = rowOf(opened, "lines");
  if (!row) return ["", nothing];
  const { job } = opened;
  const put = (part: Partial<QuoteLists["lines"]>): void => changeRow(job, "lines", row.id, part);
  return [
    "A line of the quote",
    html`${textField({ label: "What it is for", value: row.title ?? "", put: (title) => put({ title }) })}
      ${numeral(opened, { label: "Hours", value: row.hours, field: `lines.${row.id}.hours`, most: 10000, put: (hours) => put({ hours }) })}
      ${numeral(opened, { label: "Cost beside the hours, $", value: row.material, field: `lines.${row.id}.material`, put: (material) => put({ material }) })}
      ${removing(opened, "lines", "Line deleted")} ${done()}`,
  ];
}

/** What stands on a paper that both agreed to isn't changed under their signatures. */
function agreedTo(title: string): Made {
  return [title, html`<p class="quiet">Both agreed to the price, and to this with it: to change it, open the price again.</p> ${done()}`];
}

function paidSheet(opened: Opened): Made {
  const { job } = opened;
  const quote = job.body.quote ?? {};
  const { stages = [], tax_on: taxed = "nothing" } = quote;
  const title = "Tax and stages";
  if (quote.agreed) return agreedTo(title);
  return [
    title,
    html`${options("tax", "Sales tax", taxed, [["nothing", "none"], ["material", "on the material"], ["price", "on the price"], ["included", "the price holds it"]],
        (value) => changeQuote(job, { tax_on: value as NonNullable<Quote["tax_on"]> }))}
      ${taxed === "nothing" ? nothing : numeral(opened, {
            label: "Tax, %", value: quote.tax_percent, field: "quote.tax_percent", most: 50,
            put: (percent) => changeQuote(job, { tax_percent: percent }),
          })}
      ${taxed === "included" ? html`<p class="quiet">The price grows by the tax, so that you keep the share you said of what is left without it.</p>` : nothing}
      <p class="quiet">${taxed === "nothing" ? "" : "It is worked out of the price alone: say a change order's sum with its tax. "}Which tax, and how much may be taken before work begins: check your state.</p>
      ${stages.map(
        ({ id, name = "", percent }, at) => html`<div class="stage" role="group" aria-label="Stage ${at + 1}">
          ${textField({ label: "Paid when", value: name, put: (value) => changeRow(job, "stages", id, { name: value }) })}
          ${numeral(opened, {
            label: "Of the total, %", value: percent, field: `stages.${id}.percent`, most: 100,
            put: (value) => changeRow(job, "stages", id, { percent: value }),
          })}
          <button type="button" class="plain iconed" aria-label="Take stage ${at + 1} away" @click=${() => deleteRow(job, "stages", id, "Stage deleted")}>
            ${icon("close")}
          </button>
        </div>`,
      )}
      <button type="button" class="plain another" @click=${() => addRow(job, "stages", {})}>${icon("add")} A stage</button> ${done()}`,
  ];
}

function paymentSheet(opened: Opened): Made {
  const row = rowOf(opened, "payments");
  if (!row) return ["", nothing];
  const put = (part: Partial<QuoteLists["payments"]>): void => changeRow(opened.job, "payments", row.id, part);
  return [
    "A payment",
    html`${numeral(opened, { label: "Amount, $", value: row.amount, field: `payments.${row.id}.amount`, put: (amount) => put({ amount }) })}
      ${textField({ label: "For what, how", value: row.words ?? "", put: (words) => put({ words }) })}
      ${dateField("On", row.at, (at) => put({ at }))} ${removing(opened, "payments", "Payment deleted")} ${done()}`,
  ];
}

/** A minus before the whole of what was typed, as the core reads it. */
function negative(value: Typed): Typed {
  if (value === null) return null;
  return typeof value === "number" ? -value : `-${value}`;
}

function withoutSign(value: Typed): Typed {
  return typeof value === "number" ? Math.abs(value) : (value?.replace(/^-/, "") ?? null);
}

function extraSheet(opened: Opened): Made {
  const row = rowOf(opened, "extras");
  if (!row) return ["", nothing];
  const put = (part: Partial<Extra>): void => changeOrder(opened.job, row, part);
  const note = (part: Partial<Extra>): void => changeRow(opened.job, "extras", row.id, part);
  const less = String(row.price ?? "").startsWith("-");
  const price = withoutSign(row.price ?? null);
  return [
    "A change order",
    html`${textField({ label: "What changes", value: row.title ?? "", put: (title) => put({ title }) })}
      ${textField({ label: "In more words", value: row.words ?? "", most: LONG, isLong: true, put: (words) => put({ words }) })}
      ${numeral(opened, {
        label: "By how much, $", value: price, field: `extras.${row.id}.price`,
        put: (value) => put({ price: less ? negative(value) : value }),
      })}
      ${options("sign", "It makes the job", less ? "less" : "more", [["more", "cost more"], ["less", "cost less"]],
        (value) => put({ price: value === "less" ? negative(price) : price }))}
      ${numeral(opened, { label: "Days later", value: row.days, field: `extras.${row.id}.days`, most: 1000, put: (days) => put({ days }) })}
      ${options("state", "It is", row.state ?? "offered", [["offered", "offered"], ["agreed", "agreed"], ["declined", "declined"]],
        (value) => note({ state: value as NonNullable<Extra["state"]> }))}
      ${signing({ job: opened.job, signed: row, customer: note, draw: (strokes) => signOrder(opened.job, row.id, strokes), shop: (shop) => note({ shop }) })}
      ${dateField("On", row.at, (at) => note({ at }))}
      <p class="quiet">Both sign before the work begins: here with a finger, or on paper; say who did.</p>
      ${removing(opened, "extras", "Change order deleted")} ${done()}`,
  ];
}

function paperSheet({ job }: Opened): Made {
  const quote = job.body.quote ?? {};
  const line = (label: string, name: "begins" | "ends"): TemplateResult =>
    textField({ label, value: quote[name] ?? "", put: (value) => changeQuote(job, { [name]: value }) });
  const long = (label: string, name: "work" | "exclusions" | "terms"): TemplateResult =>
    textField({ label, value: quote[name] ?? "", most: LONG, isLong: true, put: (value) => changeQuote(job, { [name]: value }) });
  const title = "Words on paper";
  if (quote.agreed) return agreedTo(title);
  return [
    title,
    html`${options("by", "Price", quote.price_by ?? "item", [["item", "item by item"], ["sum", "in one sum"]],
        (value) => changeQuote(job, { price_by: value as "item" | "sum" }))}
      ${dateField("Date", quote.date, (date) => changeQuote(job, { date }))}
      ${dateField("Good until", quote.valid_until, (until) => changeQuote(job, { valid_until: until }))}
      ${line("Work begins", "begins")} ${line("Work is done", "ends")} ${long("What is done, of what material", "work")}
      ${long("Not in it: painting, hidden damage, permits …", "exclusions")} ${long("Terms", "terms")} ${done()}`,
  ];
}

function shopSheet({ shop, keep }: Opened): Made {
  const line = (label: string, name: "name" | "address" | "phone" | "license"): TemplateResult =>
    textField({ label, value: shop[name] ?? "", put: (value) => keep({ [name]: value }) });
  const change = async (logo: string): Promise<void> => {
    await dropLogo(shop.logo);
    keep({ logo });
  };
  const choose = async (event: Event): Promise<void> => {
    const [file] = (event.target as HTMLInputElement).files ?? [];
    const logo = file ? await keepLogo(file) : "";
    if (logo) await change(logo);
  };
  return [
    "Your shop",
    html`<p class="quiet">Stands on every quote; it stays on this phone.</p>
      ${line("Name of the shop", "name")} ${line("Address", "address")} ${line("Phone", "phone")} ${line("License number", "license")}
      <label class="filebutton"
        ><input type="file" accept="image/*" @change=${(event: Event) => void choose(event)} /><span
          >${shop.logo ? "Another logo" : "A logo"}</span
        ></label
      >
      ${shop.logo
        ? html`<lp-logo .logo=${shop.logo}></lp-logo>
            <button type="button" @click=${() => void change("")}>No logo</button>`
        : nothing}
      ${done()}`,
  ];
}
