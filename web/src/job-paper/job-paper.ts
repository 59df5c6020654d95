/** What of a job is printed: its lists, its story sticks at full size, labels for its pieces. */
import { LitElement, html, nothing, render, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { layerClosed, layerOpened } from "../address/layers";
import type { FieldError, JobReply, LabelGrid, Scale } from "../contract/contract";
import type { Job } from "../job/job";
import { sheet } from "../parts/sheet";
import { toast } from "../parts/toast";
import type { Sheet } from "../print/paper";
import { printView, sheetsView } from "../print/print";
import { stickSheets } from "../print/story-stick";
import { heldUnder } from "../store/json";
import { openDocument, type DocumentHandle } from "../store/store";
import { count } from "../job-sheets/sheet-view";
import { labelForm, LABELS, type LabelFields } from "./label-form";
import { labelSheets, labelsOf } from "./labels";
import { documentQuestions } from "../sync/questions";
import { logoUrl } from "../job/logo";
import { shopOwn, type ShopOwn } from "../job/shop-rates";
import { paperOf, type Paper } from "./papers";
import { QUOTE_PAPERS, quotePaperOf, type QuotePaper } from "./quote-papers";

const PAPERS: { paper: Paper; words: string }[] = [
  { paper: "job", words: "Job sheet" },
  { paper: "buy", words: "Buy list" },
  { paper: "cut", words: "Cut list" },
  { paper: "mark", words: "Mark list" },
  { paper: "finish", words: "Finish plan" },
];

@customElement("lp-job-paper")
export class JobPaper extends LitElement {
  @property({ attribute: false }) job!: Job;
  @property({ attribute: false }) scale!: Scale;
  /** Papers by name, story sticks by the id of their question. */
  @state() chosen = new Set<string>();
  @state() private sticks: Stick[] = [];
  /** Whether a question plans the finish. */
  @state() private hasPlan = false;
  @state() private fields: LabelFields = LABELS.letter;
  @state() private errors: FieldError[] = [];
  private kept: DocumentHandle | null = null;
  private stopHearing: () => void = () => undefined;
  private shop: ShopOwn = {};
  private logo = "";
  private laidOut: Promise<void> = Promise.resolve();

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    layerOpened(() => this.end());
    void this.recall();
    this.laidOut = this.layOut();
  }

  /** Story sticks are many pages: each says how many before it is chosen. */
  private async layOut(): Promise<void> {
    await this.job.settled;
    const { reply } = this.job;
    if (reply) {
      this.sticks = sticksOf(reply);
      this.hasPlan = reply.finish.length > 0;
    }
    this.shop = await shopOwn();
    this.logo = await logoUrl(this.shop.logo ?? "").catch(() => "");
  }

  /** Labels are bought by the box: their measures stay for the next job. */
  private async recall(): Promise<void> {
    this.kept = await openDocument("settings", "labels");
    this.stopHearing = this.kept.onChange(() => this.takeKept());
    this.takeKept();
  }

  private takeKept(): void {
    const body = this.kept?.body ?? {};
    const kept = Object.keys(LABELS.letter).flatMap((name): [string, string][] => {
      const text = heldUnder(body, name);
      return typeof text === "string" ? [[name, text]] : [];
    });
    this.fields = { ...this.fields, ...Object.fromEntries(kept) };
  }

  protected override render(): TemplateResult {
    return sheet(
      "On paper",
      html`<fieldset class="options">
          <legend>Lists, Letter or A4</legend>
          <div class="choices">
            ${PAPERS.filter(({ paper }) => paper !== "finish" || this.hasPlan).map(({ paper, words }) => this.choice(paper, words))}
          </div>
        </fieldset>
        ${this.job.body.quote
          ? html`<fieldset class="options">
              <legend>For the customer</legend>
              <div class="choices">${QUOTE_PAPERS.map(({ paper, words }) => this.choice(paper, words))}</div>
            </fieldset>`
          : nothing}
        ${this.sticks.length > 0
          ? html`<fieldset class="options sticks">
              <legend>Story sticks, full size</legend>
              ${this.sticks.map(({ id, words, sheets }) =>
                this.choice(id, `${words}: ${count(sheets.length, "page")}`),
              )}
            </fieldset>`
          : nothing}
        <button type="button" class="primary" ?disabled=${this.chosen.size === 0} @click=${() => void this.printLists()}>
          Print
        </button>
        ${documentQuestions(this.kept, this.job.core)}
        ${labelForm({
          fields: this.fields,
          errors: this.errors,
          change: (fields) => this.keep(fields),
          print: () => void this.printLabels(),
        })}`,
      () => this.end(),
    );
  }

  private choice(paper: string, words: string): TemplateResult {
    const turn = (): void => {
      const chosen = new Set(this.chosen);
      if (!chosen.delete(paper)) chosen.add(paper);
      this.chosen = chosen;
    };
    return html`<label class="option"
      ><input type="checkbox" .checked=${this.chosen.has(paper)} @change=${turn} /><span>${words}</span></label
    >`;
  }

  private async reply(): Promise<JobReply | null> {
    await this.job.settled;
    const { reply, fault, faults } = this.job;
    if (!reply) toast(fault || faults[0]?.message || "The job is not worked out yet.");
    return reply;
  }

  private async printLists(): Promise<void> {
    await this.laidOut;
    const reply = await this.reply();
    if (!reply) return;
    const { body } = this.job;
    const papers = PAPERS.map(({ paper }) => paper).filter((paper) => this.chosen.has(paper));
    const sticks = sticksOf(reply).filter(({ id }) => this.chosen.has(id)).flatMap(({ sheets }) => sheets);
    const forCustomer = QUOTE_PAPERS.map(({ paper }) => paper).filter((paper) => this.chosen.has(paper));
    const view = document.createElement("div");
    const sheets = [
      ...forCustomer.map((paper: QuotePaper) => quotePaperOf(paper, { body, reply, shop: this.shop, logo: this.logo })),
      ...papers.map((paper) => paperOf(paper, { body, reply })),
    ].filter((each) => each !== nothing);
    render(html`${sheets}`, view);
    view.className = "papers";
    if (sheets.length + sticks.length === 0) return toast("Nothing stands on that paper yet.");
    if (sticks.length > 0) view.append(sheetsView(sticks));
    // A picture that is not there yet would be left out.
    await Promise.allSettled([...view.querySelectorAll("img")].map((image) => image.decode()));
    printView(view);
  }

  private async printLabels(): Promise<void> {
    const reply = await this.reply();
    if (!reply) return;
    const grid = await this.grid();
    const labels = labelsOf(reply, this.job.body.title, this.fields.only === "left");
    if (!grid) return;
    if (labels.length === 0) return toast("No piece to put a label on.");
    const view = document.createElement("div");
    view.className = `papers ${this.fields.paper}`;
    const skipped = (Math.max(1, Math.floor(Number(this.fields.first)) || 1) - 1) % grid.spots.length;
    const hasOutlines = this.fields.outlines === "yes";
    view.innerHTML = labelSheets(labels, { grid, skipped, hasOutlines }).join("");
    printView(view);
  }

  private async grid(): Promise<LabelGrid | null> {
    try {
      const said = await this.job.core.labels({ ...this.fields }, this.scale);
      this.errors = said.ok ? [] : said.errors;
      return said.ok ? said.grid : null;
    } catch (error) {
      toast(error instanceof Error ? error.message : String(error));
      return null;
    }
  }

  private keep(fields: LabelFields): void {
    this.fields = fields;
    this.errors = [];
    this.kept?.change({ ...this.kept.body, ...fields }, this.kept.units);
  }

  private end(): void {
    if (!this.isConnected) return;
    layerClosed();
    this.stopHearing();
    this.kept?.close();
    URL.revokeObjectURL(this.logo);
    this.remove();
  }
}

interface Stick {
  /** Of the question. */
  id: string;
  words: string;
  sheets: Sheet[];
}

/** A stick for each question that has marks. */
function sticksOf({ site }: JobReply): Stick[] {
  return site.items.flatMap(({ title, marks }) => {
    const entries = [...new Set(marks.map(({ entry }) => entry))];
    return entries.map((id) => {
      const own = marks.filter(({ entry }) => entry === id);
      const words = `${title}, ${own[0]?.title ?? ""}`;
      return { id, words, sheets: stickSheets(own, words) };
    });
  });
}
