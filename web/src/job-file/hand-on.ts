/** Handing the open job on: as a file, in a link, as a code for another phone's camera, as lists. */
import { LitElement, html, nothing, type SVGTemplateResult, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { layerClosed, layerOpened } from "../address/layers";
import type { JobReply } from "../contract/contract";
import type { Job } from "../job/job";
import { count } from "../job-sheets/sheet-view";
import { sheet } from "../parts/sheet";
import { toast } from "../parts/toast";
import type { JsonObject } from "../store/json";
import { buyCsv, cutCsv } from "./csv";
import { fileName, giveFile, giveLink, save } from "./give";
import { linkOf } from "./link";
import { photosOf, withPictures } from "./pictures";

/** Bytes in the largest code, version 40 with the least correction (ISO/IEC 18004, table 7). */
const MOST = 2953;

const fitsCode = (link: string): boolean => new TextEncoder().encode(link).length <= MOST;

@customElement("lp-hand-on")
export class HandOn extends LitElement {
  @property({ attribute: false }) job!: Job;
  /** The job in a link; empty while it is being packed, and where it can't be. */
  @state() private link = "";
  @state() private why = "";
  @state() private hasPhotos = true;
  /** The code, once what makes it is loaded; null for a job too large for one. */
  @state() private picture: SVGTemplateResult | null = null;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    layerOpened(() => this.end());
    void this.pack();
  }

  private get body(): JsonObject {
    return this.job.body as unknown as JsonObject;
  }

  private async pack(): Promise<void> {
    try {
      const link = await linkOf(this.body);
      if (fitsCode(link)) this.picture = (await import("./code")).codePicture(link);
      this.link = link;
    } catch (error) {
      this.why = error instanceof Error ? error.message : String(error);
    }
  }

  protected override render(): TemplateResult {
    const photos = photosOf(this.job.body).length;
    const turn = (event: Event): void => void (this.hasPhotos = (event.target as HTMLInputElement).checked);
    return sheet(
      "Hand this job on",
      html`<div class="doings">
          <button type="button" class="primary" @click=${() => void this.jobFile().then(giveFile)}>Send the job file</button>
          <button type="button" @click=${() => void this.jobFile().then(save)}>Save the job file</button>
          ${photos > 0
            ? html`<label class="option wide"
                ><input type="checkbox" role="switch" .checked=${this.hasPhotos} @change=${turn} /><span
                  >${count(photos, "photo")} in the file</span
                ></label
              >`
            : nothing}
          ${this.link
            ? html`<button type="button" @click=${() => void giveLink(this.job.body.title, this.link)}>Send a link</button>`
            : nothing}
        </div>
        ${this.code()}
        <section class="handlists" aria-label="Lists for a spreadsheet">
          <h3>Lists for a spreadsheet (CSV)</h3>
          <div class="actions">
            <button type="button" @click=${() => void this.giveList("buy list", buyCsv)}>Buy list</button>
            <button type="button" @click=${() => void this.giveList("cut list", cutCsv)}>Cut list</button>
          </div>
        </section>`,
      () => this.end(),
    );
  }

  private code(): TemplateResult {
    if (this.why) return html`<p class="quiet" role="status">${this.why}</p>`;
    if (!this.link) return html`<p class="quiet" role="status">Making the code…</p>`;
    if (!this.picture) {
      return html`<p class="quiet" role="status">This job is too large for one code: send the file or the link.</p>`;
    }
    return html`<figure class="handcode">
      ${this.picture}
      <figcaption class="quiet">
        The whole job. Point the camera of a phone that has Longpoint at it: it needs no network.
      </figcaption>
    </figure>`;
  }

  private async jobFile(): Promise<File> {
    const { body } = this.job;
    const text = JSON.stringify(this.hasPhotos ? await withPictures(body) : body, null, 1);
    return new File([text], fileName(this.job.body.title, ".longpoint.json"), { type: "application/json" });
  }

  private async giveList(name: string, list: (reply: JobReply) => string): Promise<void> {
    await this.job.settled;
    const { reply, fault, faults } = this.job;
    if (!reply) return toast(fault || faults[0]?.message || "The lists are not worked out yet.");
    const file = fileName(this.job.body.title, `-${name.replace(" ", "-")}.csv`);
    await giveFile(new File([list(reply)], file, { type: "text/csv" }));
  }

  private end(): void {
    if (!this.isConnected) return;
    layerClosed();
    this.remove();
  }
}
