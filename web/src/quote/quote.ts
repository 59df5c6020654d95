/** A job's quote: the price and what it is built of, how it is paid, what changed, the sign-off. */
import { LitElement, html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { Layer } from "../address/layers";
import type { JobReply, Scale } from "../contract/contract";
import type { Job } from "../job/job";
import { beginQuote, changeQuote, learnMinutes, today } from "../job/quote-edits";
import { keepShop, shopDocument, shopOwn, type ShopOwn } from "../job/shop-rates";
import { onPaper } from "../job-file/doors";
import { Hearing } from "../parts/hearing";
import { toast } from "../parts/toast";
import type { DocumentHandle } from "../store/store";
import { documentQuestions } from "../sync/questions";
import { typeset } from "../text/typeset";
import { agreedPart, changes, howItWent, itemLines, money, paid, punchList } from "./sections";
import { quoteSheet, type QuoteSheet } from "./sheets";

export type QuoteReply = NonNullable<JobReply["quote"]>;

@customElement("lp-quote")
export class QuoteScreen extends LitElement {
  @property({ attribute: false }) job!: Job;
  @property({ attribute: false }) scale!: Scale;
  @state() private sheet: QuoteSheet | null = null;
  @state() private shop: ShopOwn = {};
  private shopKept: DocumentHandle | null = null;
  private stopHearing: () => void = () => undefined;
  protected readonly hearing = new Hearing(this, () => this.job.onChange(() => this.requestUpdate()));
  protected readonly layer = new Layer(this, () => this.sheet !== null, () => (this.sheet = null));

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.readShop();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.stopHearing();
  }

  /** Reads what is kept of the shop, and again whenever it changes, here or on another phone. */
  private async readShop(): Promise<void> {
    this.shop = await shopOwn();
    this.shopKept = await shopDocument().catch(() => null);
    this.stopHearing();
    if (!this.isConnected) return;
    const again = async (): Promise<void> => void (this.shop = await shopOwn());
    this.stopHearing = this.shopKept?.onChange(() => void again()) ?? this.stopHearing;
  }

  protected override render(): TemplateResult {
    const { body, reply } = this.job;
    if (!body.quote) return this.beginning();
    const said = reply?.quote ?? null;
    return html`<div class="job quote">
        ${said ? this.whole(said) : html`<p class="found" role="status">Working it out …</p>`}
      </div>
      ${this.openSheet(said)}`;
  }

  private beginning(): TemplateResult {
    const begin = async (): Promise<void> => {
      this.shop = await shopOwn();
      const { rates = {}, minutes = [] } = this.shop;
      beginQuote(this.job, rates, minutes);
      if (rates.rate === undefined) this.sheet = { kind: "rates", id: "" };
    };
    return html`<div class="job quote">
      <p class="found">
        What to ask for this job: its stock from the buy list, your hours, your overhead, what you keep. Your rates are
        said once and stay for the next job.
      </p>
      <button type="button" class="primary" @click=${() => void begin()}>Begin the quote</button>
    </div>`;
  }

  private whole(said: QuoteReply): TemplateResult {
    const { job } = this;
    const open = (kind: QuoteSheet["kind"], id = ""): void => void (this.sheet = { kind, id });
    return html`${documentQuestions(this.shopKept, job.core)} ${this.price(said, () => open("rates"))} ${itemLines(job, said, open)} ${paid(job, said, open)}
      ${agreedPart(job, said)} ${changes(job, said, open)} ${punchList(job)}
      ${howItWent(said, () => this.learn(said))}
      <div class="actions">
        <button type="button" @click=${() => open("paper")}>Words on paper</button>
        <button type="button" @click=${() => open("shop")}>Your shop</button>
        <button type="button" class="primary" @click=${() => this.print()}>On paper</button>
      </div>
      <p class="quiet">
        Deposits, contracts signed at the customer's home, the right to cancel, licenses and sales tax differ by state:
        check your state. What is computed here is only what you said.
      </p>`;
  }

  private price(said: QuoteReply, rates: () => void): TemplateResult {
    return html`<section class="card quoteprice" aria-label="Price">
      <p class="bigprice" role="status">${said.price_text || "No price yet"}</p>
      ${said.kept ? html`<p>${said.kept}</p>` : nothing} ${said.drift ? html`<p class="asking">${said.drift}</p>` : nothing}
      ${[...said.asks, ...said.warnings].map((words) => html`<p class="asking">${typeset(words)}</p>`)}
      ${said.build.length > 0
        ? html`<details class="fold">
            <summary><span class="foldname">How it is built</span></summary>
            <dl class="build">${said.build.map(({ name, label, text }) => money(label, text, name))}</dl>
          </details>`
        : nothing}
      <button type="button" @click=${rates}>Rates: hour, overhead, profit</button>
    </section>`;
  }

  private learn({ learned }: QuoteReply): void {
    const minutes = learnMinutes(this.job, learned);
    this.keep({ minutes });
    toast("These minutes are the shop's now: the next quote begins with them.");
  }

  /** The first rates said become the shop's: they are said once. */
  private keepFirstRates(): void {
    const { rates = {} } = this.job.body.quote ?? {};
    const isSaid = [rates.rate, rates.overhead_percent, rates.profit_percent].every((each) => each !== undefined && each !== null);
    const isRefused = this.job.reply?.quote?.faults.some(({ field }) => field.startsWith("rates."));
    if (isSaid && !isRefused && this.shop.rates?.rate === undefined) this.keep({ rates });
  }

  private keep(part: ShopOwn): void {
    this.shop = { ...this.shop, ...part };
    void keepShop(part);
  }

  private print(): void {
    if (!this.job.body.quote?.date) changeQuote(this.job, { date: today() }, "Quote dated");
    void onPaper(this.job, this.scale, "quote");
  }

  private openSheet(said: QuoteReply | null): TemplateResult | typeof nothing {
    if (!this.sheet) return nothing;
    const { job, shop, sheet } = this;
    const close = (): void => {
      this.sheet = null;
      if (sheet.kind === "rates") this.keepFirstRates();
    };
    return quoteSheet({ job, said, shop, sheet, close, keep: (part) => this.keep(part) });
  }
}
