/** One job: its items, the questions asked for each, and what each question comes to or asks. */
import { LitElement, html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import { jobHash } from "../address/address";
import { Layer } from "../address/layers";
import type { JobEntryReply, Pattern, Scale } from "../contract/contract";
import { allPatterns, bringPictures, calledAs } from "../engine/catalog";
import { itemOf, itemWith, type Entry, type Item } from "../job/document";
import type { Job } from "../job/job";
import { handOn, onPaper } from "../job-file/doors";
import { Hearing } from "../parts/hearing";
import { icon } from "../parts/icons";
import { lineFigure } from "../parts/length";
import { jobQuestions } from "../sync/questions";
import { keptWords, onSyncStatus } from "../sync/status";
import { typeset } from "../text/typeset";
import { addItemSheet, addQuestionSheet, entrySheet, itemSheet, jobSheet } from "./job-sheets";
import { Search } from "./search";

/** The open sheet, and the id of what it is about. */
interface Sheet {
  kind: "job" | "add item" | "item" | "entry" | "add question";
  id: string;
}

@customElement("lp-job")
export class JobScreen extends LitElement {
  @property({ attribute: false }) job!: Job;
  @property({ attribute: false }) scale!: Scale;
  @state() private sheet: Sheet | null = null;
  /** The words that a question to add is searched for. */
  @state() private asked = "";
  private patterns: Pattern[] = [];
  private readonly search = new Search(this);
  protected readonly hearing = new Hearing(this, () => this.job.onChange(() => this.requestUpdate()));
  protected readonly server = new Hearing(this, () => onSyncStatus(() => this.requestUpdate()));
  protected readonly layer = new Layer(this, () => this.sheet !== null, () => (this.sheet = null));

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    // A job without a name asks for one first.
    if (!this.job.body.title && this.job.body.items.length === 0) this.sheet = { kind: "job", id: "" };
  }

  protected override render(): TemplateResult {
    const { body, faults, fault, reply } = this.job;
    return html`<div class="job">
        ${this.about()} ${jobQuestions(this.job)} ${body.items.length > 0 ? this.parts() : nothing}
        ${faults.map(({ field, message }) => html`<p class="caution">${field}: ${typeset(message)}</p>`)}
        ${fault
          ? html`<p class="caution">${typeset(fault)}</p>
              <button type="button" @click=${() => this.job.work(0)}>Try again</button>`
          : nothing}
        ${repeat(body.items, ({ id }) => id, (item) => this.item(item))}
        ${body.items.length === 0 ? html`<p class="found">What is made or fitted on this job? Add it as an item.</p>` : nothing}
        ${(reply?.warnings ?? []).map((words) => html`<p class="quiet">${typeset(words)}</p>`)}
        <div class="actions">
          <button type="button" class=${body.items.length === 0 ? "primary" : ""} @click=${() => void this.showPatterns()}>
            ${icon("add")} ${body.items.length === 0 ? "An item" : "Another item"}
          </button>
          <button type="button" @click=${() => void onPaper(this.job, this.scale)}>On paper</button>
          <button type="button" @click=${() => void handOn(this.job)}>Hand it on</button>
        </div>
      </div>
      ${this.openSheet()}`;
  }

  /** What belongs to the job as a whole. */
  private parts(): TemplateResult {
    const { id, reply } = this.job;
    return html`<nav class="parts" aria-label="Of the whole job">
      <a class="part" href=${jobHash(id, "stock")}>Stock</a>
      <a class="part" href=${jobHash(id, "quote")}>Quote <span class="quiet">${reply?.quote?.price_text}</span></a>
    </nav>`;
  }

  /** Whose job it is, and the way back from the last change. */
  private about(): TemplateResult {
    const { customer } = this.job.body;
    const who = [customer?.name, customer?.address].filter(Boolean).join(", ");
    const kept = keptWords(["job", this.job.id], true);
    return html`<div class="jobhead">
      <button type="button" class="plain customer" @click=${() => this.show({ kind: "job", id: "" })}>
        <span class="unseen">Job and customer: </span>${typeset(who || "Name and customer")}
        ${kept ? html`<span class="under-name">${kept}</span>` : nothing}
      </button>
      <button type="button" class="plain iconed" aria-label="Undo" ?disabled=${!this.job.canUndo} @click=${() => this.job.undo()}>
        ${icon("undo")}
      </button>
      <button type="button" class="plain iconed" aria-label="Redo" ?disabled=${!this.job.canRedo} @click=${() => this.job.redo()}>
        ${icon("redo")}
      </button>
    </div>`;
  }

  private item(item: Item): TemplateResult {
    const title = item.title || "Item";
    const count = item.count ?? 1;
    return html`<section class="card item" id="item-${item.id}" aria-label=${title}>
      <button type="button" class="plain itemtitle" @click=${() => this.show({ kind: "item", id: item.id })}>
        <h2>${typeset(title)} ${count > 1 ? html`<span class="gist">× ${count} alike</span>` : nothing}</h2>
        ${icon("handle")}
      </button>
      ${item.note ? html`<p class="quiet note">${item.note}</p>` : nothing}
      ${item.photos?.length ? html`<p class="quiet">${item.photos.length === 1 ? "1 photo" : `${item.photos.length} photos`}</p>` : nothing}
      <ul>
        ${repeat(item.entries, ({ id }) => id, (entry) => html`<li>${this.line(entry)}</li>`)}
      </ul>
      <button type="button" class="plain another" @click=${() => this.show({ kind: "add question", id: item.id })}>
        ${icon("add")} ${item.entries.length === 0 ? "A question" : "Another question"}
      </button>
    </section>`;
  }

  private line(entry: Entry): TemplateResult {
    const said = this.job.entries.find(({ id }) => id === entry.id);
    const title = calledAs(entry);
    return html`<a class="entryline" href=${jobHash(this.job.id, entry.id)}>
        <span class="balloon">${entry.letter}</span>
        <span class="named">
          <span class="topline"><span class="name">${typeset(title)}</span> ${figuresOf(said)}</span>
          ${underName(entry, said)}
        </span>
      </a>
      <button
        type="button"
        class="plain iconed"
        aria-label="Move, rename or delete ${title}"
        @click=${() => this.show({ kind: "entry", id: entry.id })}
      >
        ${icon("handle")}
      </button>`;
  }

  private show(sheet: Sheet): void {
    this.asked = "";
    this.sheet = sheet;
  }

  private async showPatterns(): Promise<void> {
    const none: Pattern[] = []; // an empty item can be begun with all the same
    [this.patterns] = await Promise.all([allPatterns().catch(() => none), bringPictures()]);
    this.show({ kind: "add item", id: "" });
  }

  private openSheet(): TemplateResult | typeof nothing {
    const { sheet, job } = this;
    const close = (): void => void (this.sheet = null);
    if (sheet?.kind === "job") return jobSheet(job, close);
    if (sheet?.kind === "add item") return addItemSheet(job, this.patterns, (id) => this.seen(id), close);
    if (sheet?.kind === "add question") {
      const ask = (asked: string): void => void (this.asked = asked);
      return addQuestionSheet({ job, item: sheet.id, asked: this.asked, search: this.search, ask, close });
    }
    const item = sheet && (sheet.kind === "item" ? itemOf(job.body, sheet.id) : itemWith(job.body, sheet.id));
    if (!sheet || !item) return nothing;
    if (sheet.kind === "item") return itemSheet(job, item, (id) => this.seen(id), close);
    const entry = item.entries.find(({ id }) => id === sheet.id);
    return entry ? entrySheet(job, item, entry, calledAs(entry), close) : nothing;
  }

  /** Brings an item just laid into the job onto the screen. */
  private seen(id: string): void {
    this.sheet = null;
    void this.updateComplete.then(() => document.getElementById(`item-${id}`)?.scrollIntoView({ block: "start" }));
  }
}

/** What a question asks, or the sentence it comes to and how many numbers it took. */
function underName(entry: Entry, said: JobEntryReply | undefined): TemplateResult | typeof nothing {
  if (!said) return nothing;
  const asks = said.waiting?.words || said.errors[0]?.message;
  if (asks) return html`<span class="under-name asking">${typeset(asks)}</span>`;
  const taken = said.carried.filter(({ input }) => !Object.hasOwn(entry.inputs, input));
  const from = [...new Set(taken.map((each) => each.from))];
  return html`<span class="under-name">${typeset(said.verdict)}</span>
    ${taken.length > 0
      ? html`<span class="under-name taken">${taken.length} from ${typeset(from.join(", "))}</span>`
      : nothing}`;
}

/** The lead figure; a width and a height stand together. */
function figuresOf(said: JobEntryReply | undefined): TemplateResult | typeof nothing {
  if (!said || said.errors.length > 0) return nothing;
  const leads = said.figures.filter(({ lead }) => lead);
  const [first, second] = leads.length > 0 ? leads : said.figures;
  if (!first) return nothing;
  const height = first.name.endsWith("width") && second?.name.endsWith("height") ? second : null;
  return html`<span class="medium"
    >${lineFigure(first.text)}${height ? html` x ${lineFigure(height.text)}` : nothing}</span
  >`;
}
