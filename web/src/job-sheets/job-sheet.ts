/** The open job's sheet at a place: what it needs at the yard, at the saw or on site. */
import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { jobHash } from "../address/address";
import type { Scale } from "../contract/contract";
import type { Job } from "../job/job";
import { inWords } from "../job-file/taken";
import { Growing } from "../parts/growing";
import { icon } from "../parts/icons";
import { unsettled } from "../sync/questions";
import { typeset } from "../text/typeset";
import { buyGist, buyList } from "./buy-list";
import { hasSticks } from "./cut-groups";
import { cutGist, cutList, cutRows } from "./cut-list";
import { nextStep, showStep } from "./finish-plan";
import { markGist, markList, markRows } from "./mark-list";
import type { SheetView } from "./sheet-view";
import { Ticked } from "./ticking";

type Place = "yard" | "saw" | "site";

const TITLES: { [place in Place]: string } = { yard: "Buy list", saw: "Cut list", site: "Mark list" };
const GISTS = { yard: buyGist, saw: cutGist, site: markGist };
const ROWS = { yard: () => 0, saw: cutRows, site: markRows };

/** Rows that fill a screen, and those added after each frame. */
const FIRST = 14;
const MORE = 60;
/** A page's first sheet stands at once and grows downwards; one that is come back to is whole, and as high as it was. */
let isFirst = true;

@customElement("lp-job-sheet")
export class JobSheet extends LitElement {
  @property({ attribute: false }) job!: Job;
  @property({ attribute: false }) place: Place = "yard";
  @property({ attribute: false }) scale!: Scale;
  @property({ attribute: false }) putAway: () => void = () => undefined;
  @state() private open = "";
  /** Whether what is cut already is left out. */
  @state() private isShort = false;
  @state() private order: "setting" | "stick" = "setting";
  private readonly rows = new Growing(this, isFirst ? FIRST : Infinity, MORE, () => {
    const { reply } = this.job;
    return reply ? ROWS[this.place](reply) : 0;
  });
  private readonly prices = new Map<string, string>();
  private stop: () => void = () => undefined;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!changed.has("job")) return;
    this.stop();
    this.stop = this.job.onChange(() => this.requestUpdate());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.stop();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    // Moved within the page it is connected again with the job it had.
    if (this.hasUpdated) this.stop = this.job.onChange(() => this.requestUpdate());
  }

  protected override updated(): void {
    if (this.job.reply) isFirst = false;
  }

  protected override render(): TemplateResult | typeof nothing {
    const { job, place } = this;
    if (!job.isOpen) return nothing;
    const view = this.view();
    const gist = view ? GISTS[place](view) : "working it out…";
    const title = typeset(job.body.title || "Job");
    const next = view && place === "site" ? nextStep(view.reply, view.ticked) : undefined;
    return html`<section class="jobsheet ${place}" aria-label="${TITLES[place]} of ${job.body.title}">
      <div class="jobband">
        ${next
          ? html`<a class="named" href=${jobHash(job.id)}><strong>${title}</strong></a>
              <span role="status"
                ><button type="button" class="plain tonext" @click=${() => showStep(next)}>${typeset(gist)}</button></span
              >`
          : html`<a href=${jobHash(job.id)}><strong>${title}</strong> <span role="status">${gist}</span></a>`}
        <button type="button" class="plain iconed" aria-label="Put this job away" @click=${this.putAway}>
          ${icon("close")}
        </button>
      </div>
      ${this.trouble()} ${unsettled(job)} ${view ? this.list(view) : nothing}
    </section>`;
  }

  private view(): SheetView | null {
    const { job, scale, open, prices } = this;
    if (!job.reply) return null;
    return {
      job, scale, open, prices,
      most: this.rows.most,
      reply: job.reply,
      ticked: new Ticked(job.body.ticks),
      unfold: (name) => (this.open = name),
      refresh: () => this.requestUpdate(),
    };
  }

  /** Why there is no newer sheet, in words; the last one stays below. */
  private trouble(): TemplateResult | typeof nothing {
    const { fault, faults } = this.job;
    const words = [...faults.map(inWords), fault].filter(Boolean);
    if (words.length === 0) return nothing;
    return html`<div class="card sheetsays" role="alert">
      <p class="message">This job can't be worked out as it stands.</p>
      ${words.slice(0, 5).map((each) => html`<p>${each}</p>`)}
    </div>`;
  }

  private list(view: SheetView): TemplateResult {
    const { warnings } = view.reply;
    const says = warnings.map((words) => html`<p class="sheetsays quiet">${typeset(words)}</p>`);
    if (this.place === "yard") return html`${says} ${buyList(view)}`;
    if (this.place === "site") return markList(view);
    return html`${this.orders(view)} ${this.shortener(view)} ${cutList(view, this.order, this.isShort)}`;
  }

  /** Which order the pieces stand in, where sticks are planned. */
  private orders({ reply }: SheetView): TemplateResult | typeof nothing {
    if (!hasSticks(reply)) return nothing;
    const order = (name: "setting" | "stick"): TemplateResult => html`<label class="option"
      ><input type="radio" name="cutorder" .checked=${this.order === name} @change=${() => (this.order = name)} /><span
        >By ${name}</span
      ></label
    >`;
    return html`<div class="choices" role="group" aria-label="Order of the cuts">${order("setting")} ${order("stick")}</div>`;
  }

  /** A switch for a long list. It is there from the first: what is ticked must not move under the thumb. */
  private shortener({ reply }: SheetView): TemplateResult | typeof nothing {
    if (reply.saw.groups.length === 0) return nothing;
    const turn = (event: Event): void => void (this.isShort = (event.target as HTMLInputElement).checked);
    return html`<label class="option wide"
      ><input type="checkbox" role="switch" .checked=${this.isShort} @change=${turn} /><span
        >Only what is left to cut</span
      ></label
    >`;
  }
}
