/** On a question of a job: what each sort of its pieces is cut from. */
import { LitElement, html, nothing, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { jobHash } from "../address/address";
import type { Piece } from "../contract/contract";
import { entryOf } from "../job/document";
import { setStock } from "../job/edits";
import type { EntryForm } from "../job/entry-form";
import { stockChooser } from "./stock";

@customElement("lp-cut-from")
export class CutFrom extends LitElement {
  @property({ attribute: false }) entry!: EntryForm;
  @property({ attribute: false }) pieces: Piece[] = [];
  private stopHearing: () => void = () => undefined;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.stopHearing = this.entry.job.onChange(() => this.requestUpdate());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.stopHearing();
  }

  protected override render(): TemplateResult | typeof nothing {
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
}
