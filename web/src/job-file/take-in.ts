/** A job that came by file or link: what it is, and whether it is taken in. */
import { LitElement, html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { layerClosed, layerOpened } from "../address/layers";
import type { Core } from "../engine/core";
import type { JobBody } from "../job/document";
import { keepJob } from "../job/kept-jobs";
import { sheet } from "../parts/sheet";
import { flushed, listTitles } from "../store/store";
import { count } from "../job-sheets/sheet-view";
import { jobTextIn } from "./link";
import { keepPictures } from "./pictures";
import { beside, gist, taken, textOf, Untakable, type Taken } from "./taken";

const FAULTS_SHOWN = 12;

@customElement("lp-take-in")
export class TakeIn extends LitElement {
  /** The file that holds it, or the address. */
  @property({ attribute: false }) from: File | string = "";
  @property({ attribute: false }) core!: Core;
  /** Told once it is over: the id of the job to open, or nothing. */
  @property({ attribute: false }) done: (id: string) => void = () => undefined;
  @state() private found: Taken | null = null;
  @state() private faults: string[] = [];
  @state() private isBusy = false;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    layerOpened(() => this.end(""));
    void this.look();
  }

  private async look(): Promise<void> {
    try {
      const { from } = this;
      const text = typeof from === "string" ? jobTextIn(from) : textOf(from);
      this.found = await taken(await text, this.core);
    } catch (error) {
      if (error instanceof Untakable) this.faults = error.faults;
      else this.faults = [error instanceof Error ? error.message : String(error)];
    }
  }

  protected override render(): TemplateResult {
    const title = this.faults.length > 0 ? "Not taken in" : "A job comes in";
    return sheet(title, this.inside(), () => this.end(""));
  }

  private inside(): TemplateResult {
    if (this.faults.length > 0) return this.refused();
    if (!this.found) return html`<p role="status">Looking at it…</p>`;
    const { body, here, pictures } = this.found;
    const photos = pictures.size > 0 ? `, ${count(pictures.size, "photo")}` : "";
    return html`<section class="card incoming">
        <h3>${body.title || "A job without a title"}</h3>
        ${body.customer?.name ? html`<p class="quiet">${body.customer.name}</p>` : nothing}
        <p class="quiet">${gist(body)}${photos}</p>
      </section>
      ${this.offer(body, here)}`;
  }

  private offer(body: JobBody, here: Taken["here"]): TemplateResult {
    const date = new Date().toLocaleDateString("en-US", { month: "short", day: "numeric" });
    if (here === "same") {
      return html`<p>This job is kept here already, and says just the same.</p>
        ${this.doings("Open it", () => this.end(body.id))}`;
    }
    if (here === "") return this.doings("Take it in", () => void this.keep(body));
    const why =
      here === "other"
        ? "This job is kept here already, and says something else. Both can stand side by side; nothing is written over."
        : "This job was deleted here. What came is kept beside it.";
    return html`<p>${why}</p>
      ${this.doings("Take it in beside it", () => void this.keep(beside(body, date)))}`;
  }

  private doings(words: string, act: () => void): TemplateResult {
    return html`<div class="doings">
      <button type="button" class="primary" ?disabled=${this.isBusy} @click=${act}>${words}</button>
      <button type="button" @click=${() => this.end("")}>Leave it</button>
    </div>`;
  }

  private refused(): TemplateResult {
    const more = this.faults.length - FAULTS_SHOWN;
    return html`<ul class="faults" role="alert">
        ${this.faults.slice(0, FAULTS_SHOWN).map((words) => html`<li>${words}</li>`)}
        ${more > 0 ? html`<li>And ${more} more.</li>` : nothing}
      </ul>
      <div class="doings"><button type="button" @click=${() => this.end("")}>Close</button></div>`;
  }

  /** It is kept when the storage has it; otherwise the storage has said why, and this stays open. */
  private async keep(body: JobBody): Promise<void> {
    this.isBusy = true;
    await keepJob(await keepPictures(body, this.found?.pictures ?? new Map<string, string>()), "Taken in");
    await flushed();
    const kept = await listTitles("job").catch(() => []);
    this.isBusy = false;
    if (kept.some(({ id }) => id === body.id)) this.end(body.id);
  }

  private end(id: string): void {
    if (!this.isConnected) return;
    layerClosed();
    this.remove();
    this.done(id);
  }
}
