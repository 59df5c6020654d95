/** The jobs kept here: what stands on each and what is next; beginning one, deleting one. */
import { LitElement, html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { demo } from "longpoint:assets";
import { jobHash } from "../address/address";
import type { Scale } from "../contract/contract";
import { address } from "../engine/site-url";
import { isJob, type JobBody } from "../job/document";
import type { Job } from "../job/job";
import { deleteJob, keepJob, newJob, undeleteJob } from "../job/kept-jobs";
import { takeIn } from "../job-file/doors";
import { notedStanding, saidIn } from "../job/standing";
import { Growing } from "../parts/growing";
import { Hearing } from "../parts/hearing";
import { icon } from "../parts/icons";
import { toast } from "../parts/toast";
import type { JsonObject } from "../store/json";
import { listAll, listLatest, onWritten, storageFault } from "../store/store";
import { keptWords, onSyncStatus } from "../sync/status";
import { typeset } from "../text/typeset";

/** Jobs that fill a screen, and those added after each frame. */
const FIRST = 12;
const MORE = 60;

@customElement("lp-jobs")
export class JobsScreen extends LitElement {
  @property({ attribute: false }) job!: Job;
  @property({ attribute: false }) scale!: Scale;
  /** The jobs, those worked on last first; null while they are read. */
  @state() private jobs: JobBody[] | null = null;
  private readonly cards = new Growing(this, FIRST, MORE, () => this.jobs?.length ?? 0);
  /** Those deleted, that can still be had back. */
  @state() private gone: JobBody[] = [];
  protected readonly hearing = new Hearing(this, () => this.job.onChange(() => this.heard()));
  /** Another window, or another of the shop's people, begins and deletes jobs too. */
  protected readonly written = new Hearing(this, () =>
    onWritten((keys) => void (keys.some(([kind, id]) => kind === "job" && id !== this.job.id) && this.read())));
  protected readonly server = new Hearing(this, () => onSyncStatus(() => this.requestUpdate()));
  private listed: JobBody | null = null;
  private said: () => void = () => undefined;
  private readonly isSaid = new Promise<void>((resolve) => (this.said = resolve));

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener("visibilitychange", this.seen);
    void this.read();
  }

  /** Who waits for this screen waits for its list. */
  protected override async getUpdateComplete(): Promise<boolean> {
    await this.isSaid;
    return super.getUpdateComplete();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    document.removeEventListener("visibilitychange", this.seen);
  }

  /** Another window may have begun or deleted one meanwhile. */
  private readonly seen = (): void => {
    if (document.visibilityState === "visible") void this.read();
  };

  /** What the core says of the open job is not on the list: two hundred jobs are not read for it. */
  private heard(): void {
    if (this.job.body !== this.listed) void this.read();
    else this.requestUpdate();
  }

  private async read(): Promise<void> {
    this.listed = this.job.body;
    try {
      if (!this.jobs) await this.readLatest();
      const [records, deleted] = await listAll("job");
      // In the order in which the latest were read.
      records.sort((one, other) => indexedDB.cmp(one.listed ?? [], other.listed ?? []));
      this.jobs = jobsIn(records.reverse());
      this.gone = jobsIn(deleted);
    } catch (error) {
      this.jobs ??= [];
      storageFault(error);
    }
    this.said();
  }

  /** What fills the screen stands before all are read. */
  private async readLatest(): Promise<void> {
    const latest = jobsIn(await listLatest("job", FIRST));
    if (latest.length === 0) return;
    this.jobs ??= latest;
    this.said();
  }

  protected override render(): TemplateResult {
    const { jobs } = this;
    return html`<div class="jobs">
      ${jobs?.length === 0
        ? html`<p class="found">
            A job keeps a customer's items together: each number is measured once and carried to every question.
          </p>`
        : nothing}
      <ul class="joblist">
        ${(jobs ?? []).slice(0, this.cards.most).map((job) => html`<li>${this.card(job)}</li>`)}
      </ul>
      ${jobs
        ? html`<div class="actions">
            <button type="button" class="primary" @click=${() => void this.begin()}>New job</button>
            <label class="filebutton"
              ><input type="file" accept="application/json,.json" @change=${(event: Event) => this.openFile(event)} /><span
                >Open a job file</span
              ></label
            >
            ${jobs.length === 0
              ? html`<button type="button" @click=${() => void this.openDemo()}>Open the demo job</button>`
              : nothing}
          </div>`
        : nothing}
      ${this.gone.length > 0 ? this.deletedFold() : nothing}
    </div>`;
  }

  private deletedFold(): TemplateResult {
    const named = ({ title }: JobBody): string => title || "Job without a name";
    return html`<details class="fold">
      <summary>
        <span class="foldname">Deleted in the last 30 days</span>
        <span class="gist">${this.gone.map(named).join(", ")}</span>
      </summary>
      <ul class="lines">
        ${this.gone.map(
          (job) => html`<li>
            <button type="button" class="plain line" @click=${() => void this.back(job.id)}>
              <span class="named"
                ><span class="name">${typeset(named(job))}</span>
                <span class="under-name">${typeset(`Have it back: ${saidIn(job)}`)}</span></span
              >
            </button>
          </li>`,
        )}
      </ul>
    </details>`;
  }

  private async back(id: string): Promise<void> {
    await undeleteJob(id).then(() => this.read(), storageFault);
  }

  private card(body: JobBody): TemplateResult {
    const { id, title, customer } = body;
    const name = title || "Job without a name";
    const standing = notedStanding(id);
    const kept = keptWords(["job", id]);
    const who = [customer?.name, customer?.address].filter(Boolean).join(", ");
    return html`<a class="card jobcard ${id === this.job.id ? "open" : ""}" href=${jobHash(id)}>
        <span class="asks">${typeset(name)}</span>
        <span class="under-name">${typeset([who, saidIn(body)].filter(Boolean).join(" · "))}</span>
        ${standing?.share != null ? html`<progress max="1" .value=${standing.share} aria-label="Cut"></progress>` : nothing}
        ${kept ? html`<span class="under-name">${kept}</span>` : nothing}
        ${standing?.words ? html`<span class="under-name">${typeset(standing.words)}</span>` : nothing}
      </a>
      <button type="button" class="plain iconed" aria-label="Delete ${name}" @click=${() => void this.deleted(id, name)}>
        ${icon("close")}
      </button>`;
  }

  private async begin(): Promise<void> {
    location.hash = jobHash(await newJob("", this.scale));
  }

  /** A job made up for looking round: it lies beside real ones as one of its own, and is deleted like them. */
  private async openDemo(): Promise<void> {
    try {
      const response = await fetch(address(demo));
      const id = await keepJob((await response.json()) as JobBody, "Demo job opened");
      location.hash = jobHash(id);
    } catch (error) {
      console.error(error);
      toast("The demo job isn't here yet: it needs a signal once.");
    }
  }

  private openFile(event: Event): void {
    const field = event.target as HTMLInputElement;
    const file = field.files?.[0];
    field.value = "";
    const open = (id: string): void => void (id && (location.hash = jobHash(id)));
    if (file) void takeIn(file, this.job.core, open);
  }

  private async deleted(id: string, name: string): Promise<void> {
    try {
      await deleteJob(id);
      await this.read();
      toast(`${name} deleted.`, "Undo", () => void this.back(id));
    } catch (error) {
      storageFault(error);
    }
  }
}

function jobsIn(records: { body: JsonObject }[]): JobBody[] {
  return records.filter(({ body }) => isJob(body)).map(({ body }) => body as unknown as JobBody);
}
