/** A job's stock: what its pieces are cut from, what is bought by count, and which is which. */
import { LitElement, html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import { Layer } from "../address/layers";
import type { RawRow, Scale, Units } from "../contract/contract";
import { calledAs } from "../engine/catalog";
import type { Core } from "../engine/core";
import { entriesOf, type Entry, type Sold, type Stock, type Thing } from "../job/document";
import { setStock } from "../job/edits";
import type { Job } from "../job/job";
import { offcutWords, ShopHearing, type ShopOffcuts } from "../job/shop";
import { addStock, addThing, changeThing, deleteThing, SOLD, stockOfRow } from "../job/stock-edits";
import { Hearing } from "../parts/hearing";
import { icon } from "../parts/icons";
import "../parts/number-field";
import { sheet } from "../parts/sheet";
import { textField } from "../parts/text-field";
import { toast } from "../parts/toast";
import { isUnits } from "../store/check";
import { readRows } from "../store/form-body";
import { openDocument, storageFault } from "../store/store";
import { documentQuestions } from "../sync/questions";
import { typeset } from "../text/typeset";
import "./stock-sheet";

/** Name of the yard's own list, once for all tools and jobs. */
const YARD = "yard-sizes";
/** Stands instead of a stock: these pieces are cut for another question, or not at all. */
export const NOT_CUT = "none";

@customElement("lp-stock")
export class StockScreen extends LitElement {
  @property({ attribute: false }) job!: Job;
  @property({ attribute: false }) core!: Core;
  @property({ attribute: false }) scale!: Scale;
  /** What is open: the id of a stock, or the choice of one to add. */
  @state() private open = "";
  @state() private yard: { rows: RawRow[]; units: Units } = { rows: [], units: "in" };
  private readonly inShopNow = new ShopHearing(this, () => this.requestUpdate());
  protected readonly hearing = new Hearing(this, () => this.job.onChange(() => this.requestUpdate()));
  protected readonly layer = new Layer(this, () => this.open !== "", () => (this.open = ""));

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.readYard().catch(storageFault);
  }

  private async readYard(): Promise<void> {
    const list = await openDocument("list", YARD);
    const units = list.body["typed_in"];
    this.yard = { rows: readRows(list.body), units: isUnits(units) ? units : "in" };
    list.close();
  }

  protected override render(): TemplateResult {
    const { stock = [], things = [] } = this.job.body;
    return html`<div class="job">
        ${stock.length === 0
          ? html`<p class="found">Name each stock once: pieces are cut from it, and the buy list adds up what they take.</p>`
          : nothing}
        ${stock.length > 0
          ? html`<section class="card item" aria-label="Stock">
              <ul>${repeat(stock, ({ id }) => id, (each) => html`<li>${this.line(each)}</li>`)}</ul>
            </section>`
          : nothing}
        <div class="actions">
          <button type="button" class=${stock.length === 0 ? "primary" : ""} @click=${() => (this.open = "add")}>
            ${icon("add")} A stock
          </button>
        </div>
        ${this.cutFrom(stock)}
        <section class="things" aria-label="Bought by count">
          <h2>Bought by count</h2>
          ${repeat(things, ({ id }) => id, (thing) => this.thing(thing))}
          <button type="button" @click=${() => addThing(this.job)}>${icon("add")} Hinges, pulls, screws …</button>
        </section>
        ${documentQuestions(this.inShopNow.offcuts?.list ?? null, this.core)} ${this.inShop()}
      </div>
      ${this.openSheet(stock)}`;
  }

  private line(stock: Stock): TemplateResult {
    const line = this.job.reply?.yard.lines.find((each) => each.stock === stock.id);
    const words = SOLD.find(({ sold }) => sold === stock.sold)?.words ?? stock.sold;
    const sizes = [stock.thickness, stock.width].filter(Boolean).join(" x ");
    const onHand = (stock.on_hand ?? []).length;
    const under = [words, sizes, onHand > 0 ? `${onHand} on hand` : "", line?.words ?? ""].filter(Boolean).join(" · ");
    return html`<button type="button" class="plain entryline" @click=${() => (this.open = stock.id)}>
      <span class="named">
        <span class="topline"
          ><span class="name">${typeset(stock.title || "Stock")}</span>
          ${line && line.amount > 0
            ? html`<span class="medium">${Number(line.amount.toFixed(1))} ${line.unit}</span>`
            : nothing}</span
        >
        <span class="under-name">${typeset(under)}</span>
      </span>
      ${icon("handle")}
    </button>`;
  }

  /** What the pieces of each question are cut from, for each sort of its pieces. */
  private cutFrom(stock: Stock[]): TemplateResult | typeof nothing {
    const replies = this.job.entries;
    const withPieces = entriesOf(this.job.body).filter(
      ({ id, stock: own }) => (replies.find((each) => each.id === id)?.pieces ?? 0) > 0 || own,
    );
    if (withPieces.length === 0) return nothing;
    return html`<section class="things" aria-label="What is cut from what">
      <h2>What is cut from what</h2>
      ${withPieces.map((entry) => Object.keys({ ...(entry.stock ?? { all: "" }) }).map((role) => this.chooser(entry, role, stock)))}
    </section>`;
  }

  private chooser(entry: Entry, role: string, stock: Stock[]): TemplateResult {
    const title = calledAs(entry);
    const label = `${entry.letter} ${title}${role === "all" ? "" : `, ${role}`}`;
    return stockChooser(label, entry.stock?.[role] ?? "", stock, (id) => setStock(this.job, entry.id, role, id));
  }

  private thing(thing: Thing): TemplateResult {
    const { id, title, count, price, from } = thing;
    const line = this.job.reply?.yard.lines.find((each) => each.of === id);
    const put = (part: Partial<Thing>): void => changeThing(this.job, id, part);
    return html`<div class="card thing" role="group" aria-label=${title || "Thing"}>
      ${textField({ label: "What", value: title, put: (value) => put({ title: value }) })}
      <lp-number .label=${"How many"} .most=${10000} .value=${count ?? null} .empty=${from ? String(line?.amount ?? "") : "0"}
        .put=${(value: number | null) => put({ count: value ?? undefined } as Partial<Thing>)}></lp-number>
      <lp-number .label=${"Price each, $"} .isPrice=${true} .value=${price ?? null} .put=${(value: number | null) => put({ price: value })}></lp-number>
      <button type="button" class="plain iconed" aria-label="Delete ${title || "this"}" @click=${() => deleteThing(this.job, id, title)}>
        ${icon("close")}
      </button>
      ${from && count === undefined ? html`<p class="quiet">${line?.words || "Counted by its question."}</p>` : nothing}
    </div>`;
  }

  /** The shop's own list: what finished jobs left. */
  private inShop(): TemplateResult | typeof nothing {
    const shop = this.inShopNow.offcuts;
    if (!shop || shop.rows.length === 0) return nothing;
    return html`<details class="fold">
      <summary>
        <span class="foldname">Offcuts in the shop</span> <span class="gist">${shop.rows.map(({ title }) => title).join(", ")}</span>
      </summary>
      <ul class="offcuts">
        ${shop.rows.map(
          (row, at) => html`<li>
            <span>${typeset(`${String(row["title"])}: ${offcutWords(row)}`)}</span>
            <button type="button" @click=${() => gone(shop, row, at)}>Gone</button>
          </li>`,
        )}
      </ul>
    </details>`;
  }

  private openSheet(stock: Stock[]): TemplateResult | typeof nothing {
    const close = (): void => void (this.open = "");
    if (this.open === "add") return this.adding(close);
    const found = stock.find(({ id }) => id === this.open);
    if (!found) return nothing;
    const { job, core, scale } = this;
    return html`<lp-stock-sheet .job=${job} .core=${core} .scale=${scale} .stock=${found} .close=${close}></lp-stock-sheet>`;
  }

  /** The yard's own list first: what the tape said there, and what it costs. */
  private adding(close: () => void): TemplateResult {
    const { rows, units } = this.yard;
    const add = (made: Omit<Stock, "id">): void => void (this.open = addStock(this.job, made));
    const row = (each: RawRow): TemplateResult => {
      const made = stockOfRow(each, units, this.job.body.units ?? "in");
      const under = [made.thickness, made.width].filter(Boolean).join(" x ");
      return html`<li>
        <button type="button" class="plain line" @click=${() => add(made)}>
          <span class="named"
            ><span class="name">${typeset(made.title)}</span>
            <span class="under-name">${typeset([under, made.price ? `$${made.price}` : ""].filter(Boolean).join(" · "))}</span></span
          >
        </button>
      </li>`;
    };
    return sheet(
      "Add a stock",
      html`${rows.length > 0
          ? html`<section class="block" aria-label="From your yard's sizes">
              <h2>From your yard's sizes</h2>
              <ul class="lines">${rows.map(row)}</ul>
            </section>`
          : html`<p class="quiet">Sizes kept on your yard's list (Stock sizes, at the yard) are offered here.</p>`}
        <section class="block" aria-label="A new one">
          <h2>A new one</h2>
          <div class="actions">
            ${SOLD.map(
              ({ sold, words }) => html`<button type="button" @click=${() => add({ title: "", sold })}>${words}</button>`,
            )}
          </div>
        </section>`,
      close,
    );
  }
}

/** Takes a row off the shop's list, and offers it back. */
function gone(shop: ShopOffcuts, row: RawRow, at: number): void {
  const taken = shop.take(at);
  const stock = { id: "", title: String(row["title"]), sold: row["sold"] as Sold };
  const putBack = (): unknown => shop.keep(stock, taken, String(row["job"] ?? ""), "in");
  toast(`${stock.title} taken off the list.`, "Undo", () => void putBack());
}

/** Returns the choice of what pieces are cut from. */
export function stockChooser(label: string, chosen: string, stock: Stock[], choose: (id: string) => void): TemplateResult {
  const isKnown = chosen === "" || chosen === NOT_CUT || stock.some(({ id }) => id === chosen);
  const option = (value: string, words: string): TemplateResult =>
    html`<option value=${value} ?selected=${value === chosen}>${words}</option>`;
  return html`<label class="textfield"
    ><span class="label">${typeset(label)}</span>
    <select @change=${(event: Event) => choose((event.target as HTMLSelectElement).value)}>
      ${option("", "not said yet")} ${isKnown ? nothing : option(chosen, "a stock that is gone")}
      ${stock.map(({ id, title }) => option(id, title || "Stock"))} ${option(NOT_CUT, "cut for another question")}
    </select>
  </label>`;
}
