/** The sheets of an open answer: on which job it is kept, and in which question a number is used. */
import { LitElement, html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { CatalogTool, Scale } from "../contract/contract";
import { allTools } from "../engine/catalog";
import type { Core } from "../engine/core";
import type { Session } from "../form/session";
import type { Job } from "../job/job";
import { listJobs } from "../job/kept-jobs";
import { askedAlready, keepOn, keepOnNew, takers, useAlone, useOnJob, type Taker } from "../job/keeping";
import type { Chosen } from "../parts/chosen";
import { sheet } from "../parts/sheet";
import { storageFault } from "../store/store";
import { typeset } from "../text/typeset";

function line(name: string, under: string, run: () => void): TemplateResult {
  return html`<li>
    <button type="button" class="plain line" @click=${run}>
      <span class="named"
        ><span class="name">${typeset(name)}</span>
        ${under ? html`<span class="under-name">${typeset(under)}</span>` : nothing}</span
      >
    </button>
  </li>`;
}

function block(title: string, lines: TemplateResult[]): TemplateResult | typeof nothing {
  if (lines.length === 0) return nothing;
  return html`<section class="block" aria-label=${title}>
    <h2>${typeset(title)}</h2>
    <ul class="lines">${lines}</ul>
  </section>`;
}

@customElement("lp-keep")
export class KeepSheet extends LitElement {
  @property({ attribute: false }) job!: Job;
  @property({ attribute: false }) session!: Session;
  @property({ attribute: false }) scale!: Scale;
  @property({ attribute: false }) close: () => void = () => undefined;
  @state() private jobs: { id: string; title: string }[] = [];

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    listJobs().then((jobs) => (this.jobs = jobs), storageFault);
  }

  private run(act: Promise<unknown>): void {
    this.close();
    void act;
  }

  protected override render(): TemplateResult {
    const { job, session, scale } = this;
    const { title, items } = job.body;
    const others = this.jobs.filter(({ id }) => id !== job.id);
    const open = async (id: string): Promise<void> => {
      if (await job.open(id)) this.requestUpdate();
    };
    const here = items.map((item) =>
      line(item.title || "Item", `${item.entries.length} on it`, () => this.run(keepOn(job, item.id, session))),
    );
    const anew = line("A new item", "", () => this.run(keepOn(job, "", session)));
    return sheet(
      "Keep this answer",
      html`${job.isOpen ? block(`On ${title || "the open job"}`, [...here, anew]) : nothing}
      ${block("On another job", [
        ...others.map((each) => line(each.title || "Job without a name", "", () => void open(each.id))),
        line("A new job", "", () => this.run(keepOnNew(job, session, scale))),
      ])}`,
      this.close,
    );
  }
}

@customElement("lp-use")
export class UseSheet extends LitElement {
  @property({ attribute: false }) job: Job | null = null;
  @property({ attribute: false }) core!: Core;
  /** The question of a job that the number is from; empty for a tool that stands alone. */
  @property({ attribute: false }) from = "";
  @property({ attribute: false }) tool = "";
  @property({ attribute: false }) chosen!: Chosen;
  @property({ attribute: false }) close: () => void = () => undefined;
  /** Which size it is; null until the core has said so. */
  @state() private quantity: string | null = null;
  private tools: CatalogTool[] = [];

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    const find = Promise.all([this.core.gives(this.tool).catch(() => []), allTools()]);
    void find.then(([gives, tools]) => {
      this.tools = tools;
      this.quantity = gives.find(({ name }) => name === this.chosen.figure)?.quantity ?? "";
    });
  }

  protected override render(): TemplateResult {
    const { chosen, quantity } = this;
    return sheet(
      `Use ${chosen.label} in`,
      quantity === null ? html`<p class="quiet">Looking…</p>` : this.found(chosen, quantity),
      this.close,
    );
  }

  private found(chosen: Chosen, quantity: string): TemplateResult {
    const { own, others } = takers(this.tools, chosen.kind, quantity);
    const slugs = [...new Set(others.map(({ tool }) => tool.declaration.slug))];
    return html`${block("Questions that ask for it", own.map((taker) => this.taker(taker, this.toolName(taker))))}
    ${slugs.length > 0
      ? html`<section class="block" aria-label="Other questions">
          <h2>${own.length > 0 ? "Other questions" : "Questions"}</h2>
          ${slugs.map((slug) => this.fields(others.filter(({ tool }) => tool.declaration.slug === slug)))}
        </section>`
      : nothing}`;
  }

  private fields(takers: Taker[]): TemplateResult {
    const [first] = takers;
    return html`<details class="fold">
      <summary>
        <span class="foldname">${first ? this.toolName(first) : ""}</span>
        <span class="gist">${takers.map(({ input }) => input.label).join(", ")}</span>
      </summary>
      <ul class="lines">
        ${takers.map((taker) => this.taker(taker, taker.input.label))}
      </ul>
    </details>`;
  }

  /** A question that the item asks already is named by its letter. */
  private toolName({ tool }: Taker): string {
    const there = this.job && this.from ? askedAlready(this.job, this.from, tool) : undefined;
    return [there?.letter, tool.declaration.title].filter(Boolean).join(" ");
  }

  private taker(taker: Taker, name: string): TemplateResult {
    const use = (): void => {
      this.close();
      if (this.job && this.from) void useOnJob(this.job, this.from, taker, this.chosen);
      else useAlone(taker, this.chosen);
    };
    const { label } = taker.input;
    return line(name, name === label ? "" : `as ${label}`, use);
  }
}
