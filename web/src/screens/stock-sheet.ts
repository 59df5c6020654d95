/** The sheet of one stock: how it is sold, its sizes and prices, what lies in the shop already. */
import { LitElement, html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Raw, Scale } from "../contract/contract";
import type { Core } from "../engine/core";
import type { Stock } from "../job/document";
import type { Job } from "../job/job";
import { changeRow, changeStock, deleteStock, rowsOf, SOLD, withStock, type StockList, type StockRow } from "../job/stock-edits";
import { KEPT_FOR_SHOP, offcutWords, ShopHearing, type ShopOffcuts } from "../job/shop";
import { Hearing } from "../parts/hearing";
import { icon } from "../parts/icons";
import "../parts/number-field";
import { sheet } from "../parts/sheet";
import { textField } from "../parts/text-field";
import { typeset } from "../text/typeset";

type SizeName = "thickness" | "width" | "kerf" | "trim" | "extra_length" | "extra_width";

/** What a row of each list is called. */
const LISTS = { lengths: "Length sold", sheets: "Sheet sold", on_hand: "On hand" };

/** The sizes that each way of selling asks for. */
const SIZES: { [sold: string]: [SizeName, string][] } = {
  board: [
    ["thickness", "Thickness"], ["extra_length", "Rough length over finished"],
    ["extra_width", "Rough width over finished"],
  ],
  stick: [["thickness", "Thickness"], ["width", "Width"], ["kerf", "Kerf"], ["trim", "Trim each end"]],
  sheet: [["thickness", "Thickness"], ["kerf", "Kerf"], ["trim", "Trim off every edge"]],
};

/** What a stock's own price is for; sheets are priced each, sticks each or by the foot. */
const PRICES = {
  board: "Price a board foot, $", stick: "Price a lineal foot, $", each: "Price, $", volume: "Price, $",
};

@customElement("lp-stock-sheet")
export class StockSheet extends LitElement {
  @property({ attribute: false }) job!: Job;
  @property({ attribute: false }) core!: Core;
  @property({ attribute: false }) scale!: Scale;
  @property({ attribute: false }) stock!: Stock;
  @property({ attribute: false }) close: () => void = () => undefined;
  /** Why a size can't be read, by the size's name. */
  @state() private messages: { [name: string]: string } = {};
  // What the shop's offcuts are good for comes with the job's reply.
  private readonly inShopNow = new ShopHearing(this, () => this.job.work());
  protected readonly hearing = new Hearing(this, () => this.job.onChange(() => this.requestUpdate()));
  private asked = "";
  /** Takes back what was last kept for the shop. */
  @state() private undo: (() => void) | null = null;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override updated(): void {
    void this.check();
  }

  /** Asks the core about the sizes as they are typed. */
  private async check(): Promise<void> {
    const texts = sizesIn(this.stock);
    const asked = JSON.stringify(texts);
    if (asked === this.asked) return;
    this.asked = asked;
    const said = await this.core.readSizes(texts, this.job.body.units ?? "in", this.scale).catch(() => null);
    if (!said?.ok || asked !== this.asked) return;
    const wrong = Object.entries(said.sizes).map(([name, { message = "" }]) => [name, message]);
    this.messages = Object.fromEntries(wrong.filter(([, message]) => message));
  }

  protected override render(): TemplateResult {
    const { stock, job } = this;
    const { id, title, sold } = stock;
    const end = (): void => this.querySelector("dialog")?.close();
    const remove = (): void => {
      this.close();
      deleteStock(job, id, title);
    };
    return sheet(
      title || "Stock",
      html`${textField({ label: "Name of the stock", value: title, put: (value) => changeStock(job, id, { title: value }) })}
        ${this.ways()}
        ${(SIZES[sold] ?? []).map(([name, label]) =>
          this.size(label, name, stock[name], (value) => changeStock(job, id, { [name]: value })),
        )}
        ${sold === "sheet" ? nothing : this.money(PRICES[sold], stock.price, (price) => changeStock(job, id, { price }))}
        ${sold === "board"
          ? html`<lp-number .label=${"Waste, %"} .most=${900} .value=${stock.waste ?? null}
              .put=${(waste: number | null) => changeStock(job, id, { waste })}></lp-number>`
          : nothing}
        ${sold === "stick" ? this.rows("lengths", "Lengths sold", "a length") : nothing}
        ${sold === "sheet" ? this.rows("sheets", "Sheets sold", "a sheet size") : nothing}
        ${sold in SIZES ? this.rows("on_hand", "On hand, used first", "what is on hand") : nothing} ${this.kept()} ${this.offered()}
        ${this.left()}
        <div class="actions"><button type="button" @click=${remove}>Delete this stock</button></div>
        <button type="button" class="primary" @click=${end}>Done</button>`,
      this.close,
    );
  }

  private ways(): TemplateResult {
    const { stock, job } = this;
    return html`<fieldset class="options">
      <legend>Sold as</legend>
      <div class="choices">
        ${SOLD.map(
          ({ sold, words }) => html`<label class="option"
            ><input
              type="radio"
              name="sold"
              .checked=${stock.sold === sold}
              @change=${() => changeStock(job, stock.id, { sold })}
            /><span>${words}</span></label
          >`,
        )}
      </div>
    </fieldset>`;
  }

  private size(label: string, name: string, value: Raw | undefined, put: (text: string) => void): TemplateResult {
    const message = this.messages[name] ?? "";
    return html`<div>
      ${textField({ label, value: value === undefined || value === null ? "" : String(value), most: 40, put })}
      ${message ? html`<p class="message">${message}</p>` : nothing}
    </div>`;
  }

  private money(label: string, value: number | null | undefined, put: (value: number | null) => void): TemplateResult {
    return html`<lp-number .label=${label} .isPrice=${true} .value=${value ?? null} .put=${put}></lp-number>`;
  }

  private rows(list: StockList, title: string, what: string): TemplateResult {
    const { stock, job } = this;
    const rows = rowsOf(stock, list);
    return html`<fieldset class="stockrows">
      <legend>${title}</legend>
      ${rows.map((row, at) => this.row(list, row, at))}
      <button type="button" class="addrow" @click=${() => changeRow(job, stock, list, rows.length, {})}>
        ${icon("add")} Add ${what}
      </button>
    </fieldset>`;
  }

  /** What finished jobs left in the shop that a piece comes out of. */
  private offered(): TemplateResult | typeof nothing {
    const line = this.job.reply?.yard.lines.find((each) => each.stock === this.stock.id);
    const shop = this.inShopNow.offcuts;
    const rows = (line?.offered ?? []).filter((at) => shop?.rows[at]);
    if (!shop || rows.length === 0) return nothing;
    return html`<section class="block" aria-label="Offcuts in the shop">
      <h2>Offcuts in the shop</h2>
      ${rows.map((at) => {
        const words = offcutWords(shop.rows[at]!);
        return html`<button type="button" class="takeoffcut" @click=${() => this.take(shop, at)}>${typeset(`Take ${words}`)}</button>`;
      })}
    </section>`;
  }

  private take(shop: ShopOffcuts, at: number): void {
    const taken = shop.take(at);
    changeRow(this.job, this.stock, "on_hand", rowsOf(this.stock, "on_hand").length, taken);
  }

  private keep(shop: ShopOffcuts, row: StockRow, at: number): void {
    const { job, stock } = this;
    shop.keep(stock, row, job.body.title, job.body.units ?? "in");
    const left = rowsOf(stock, "on_hand").filter((_, place) => place !== at);
    if (!job.change((body) => withStock(body, stock.id, (one) => ({ ...one, on_hand: left })), KEPT_FOR_SHOP)) return;
    const after = job.body;
    this.undo = () => (job.body === after ? job.undo() : undefined);
  }

  /** Words at the screen's foot lie behind this sheet, so what can be taken back is said here. */
  private kept(): TemplateResult | typeof nothing {
    const { undo } = this;
    if (!undo) return nothing;
    const back = (): void => {
      this.undo = null;
      undo();
    };
    return html`<p class="keptforshop" role="status">
      ${KEPT_FOR_SHOP}. <button type="button" @click=${back}>Undo</button>
    </p>`;
  }

  /** What the plan leaves, by the sizes that it says: kept for the shop with a tap. */
  private left(): TemplateResult | typeof nothing {
    const line = this.job.reply?.yard.lines.find((each) => each.stock === this.stock.id);
    const shop = this.inShopNow.offcuts;
    if (!shop || !line || line.leaves.length === 0) return nothing;
    const keep = (row: StockRow): void => {
      const { job, stock } = this;
      const kept = shop.keep(stock, row, job.body.title, job.body.units ?? "in");
      this.undo = () => void shop.takeBack(kept);
    };
    return html`<section class="block" aria-label="Left by the plan">
      <h2>Left by the plan</h2>
      ${line.leaves.map(
        (row) => html`<button type="button" class="takeoffcut" @click=${() => keep(row)}>
          ${typeset(`Keep ${offcutWords(row)}`)}
        </button>`,
      )}
    </section>`;
  }

  private row(list: StockList, row: StockRow, at: number): TemplateResult {
    const { stock, job } = this;
    const shop = this.inShopNow.offcuts;
    const put = (part: StockRow): void => changeRow(job, this.stock, list, at, part);
    const name = `${list}.${at}`;
    return html`<div class="stockrow" role="group" aria-label="${LISTS[list]} ${at + 1}">
      ${this.size("Length", `${name}.length`, row.length, (length) => put({ length }))}
      ${stock.sold === "stick" ? nothing : this.size("Width", `${name}.width`, row.width, (width) => put({ width }))}
      ${list === "on_hand"
        ? html`<lp-number .label=${"How many"} .isWhole=${true} .least=${1} .most=${500} .empty=${"1"} .value=${row.count ?? null}
              .put=${(count: number | null) => put({ count: count ?? undefined } as StockRow)}></lp-number>
            ${textField({ label: "Where it stands", value: row.where ?? "", most: 60, put: (where) => put({ where }) })}`
        : this.money("Price, $", row.price, (price) => put({ price }))}
      <button
        type="button"
        class="plain iconed"
        aria-label="Take ${LISTS[list]} ${at + 1} away"
        @click=${() => changeRow(job, stock, list, at, null)}
      >
        ${icon("close")}
      </button>
      ${list === "on_hand" && shop && row.length
        ? html`<button type="button" class="keepforshop" @click=${() => this.keep(shop, row, at)}>Keep for the shop</button>`
        : nothing}
    </div>`;
  }
}

/** Returns all sizes typed for a stock, by the names that messages go by. */
function sizesIn(stock: Stock): { [name: string]: string } {
  const own = (SIZES[stock.sold] ?? []).map(([name]) => [name, stock[name]]);
  const listed = (["lengths", "sheets", "on_hand"] as const).flatMap((list) =>
    rowsOf(stock, list).flatMap((row, at) => [
      [`${list}.${at}.length`, row.length], [`${list}.${at}.width`, row.width],
    ]),
  );
  const typed = [...own, ...listed].filter(([, value]) => typeof value === "string" && value !== "");
  return Object.fromEntries(typed) as { [name: string]: string };
}
