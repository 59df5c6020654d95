/** What its job adds to an answered question: pieces cut to an old size, what they are cut from, who takes its numbers. */
import { LitElement, html, nothing, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { jobHash } from "../address/address";
import type { JobEntryReply, Piece } from "../contract/contract";
import { entryOf } from "../job/document";
import { setStock } from "../job/edits";
import type { EntryForm } from "../job/entry-form";
import { Hearing } from "../parts/hearing";
import { unsettled } from "../sync/questions";
import { typeset } from "../text/typeset";
import { stockChooser } from "./stock";

@customElement("lp-in-job")
export class InJob extends LitElement {
  @property({ attribute: false }) entry!: EntryForm;
  @property({ attribute: false }) pieces: Piece[] = [];
  protected readonly hearing = new Hearing(this, () => this.entry.job.onChange(() => this.requestUpdate()));

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override render(): TemplateResult {
    return html`${unsettled(this.entry.job)} ${this.stale()} ${this.cutFrom()} ${this.taken()}`;
  }

  /** Pieces that were cut before their number moved. */
  private stale(): (TemplateResult | typeof nothing)[] {
    const cuts = this.entry.job.reply?.saw.groups.flatMap((group) => group.cuts) ?? [];
    return cuts
      .filter(({ entry }) => entry === this.entry.id)
      .map(({ tag, name, stale }) =>
        stale ? html`<p class="caution">${typeset(`${tag} ${name}: ${stale.words}`)}</p>` : nothing,
      );
  }

  private cutFrom(): TemplateResult | typeof nothing {
    const { job, id } = this.entry;
    const chosen = entryOf(job.body, id)?.stock ?? {};
    const roles = [...new Set(this.pieces.map(({ role }) => role || "all"))];
    if (roles.length === 0) return nothing;
    const stock = job.body.stock ?? [];
    return html`<section class="things" aria-label="Cut from">
      <h2>Cut from</h2>
      ${roles.map((role) =>
        stockChooser(
          role === "all" ? "All its pieces" : role,
          chosen[role] ?? chosen["all"] ?? "",
          stock,
          (value) => setStock(job, id, role, value),
        ),
      )}
      <a class="partlink" href=${jobHash(job.id, "stock")}>${stock.length === 0 ? "Name a stock" : "All stock of the job"}</a>
    </section>`;
  }

  /** The questions that a number of this one is carried to. */
  private taken(): TemplateResult | typeof nothing {
    const { job, id } = this.entry;
    const takers = job.entries.filter(({ carried }) => carried.some(({ entry }) => entry === id));
    if (takers.length === 0) return nothing;
    return html`<section class="things" aria-label="Taken from here">
      <h2>Taken from here</h2>
      <ul class="takers">
        ${takers.map((taker) => html`<li><a class="partlink" href=${jobHash(job.id, taker.id)}>${wordsOf(taker, id)}</a></li>`)}
      </ul>
    </section>`;
  }
}

function wordsOf({ letter, title, carried }: JobEntryReply, from: string): TemplateResult {
  const texts = carried.filter(({ entry }) => entry === from).map(({ text }) => text);
  return html`${typeset(`${letter} ${title}`)} <span class="quiet">${texts.length === 1 ? "1 number" : `${texts.length} numbers`}</span>`;
}
