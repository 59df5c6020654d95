/** The shop's logo as it is kept, on white as paper is. */
import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { logoUrl } from "../job/logo";

@customElement("lp-logo")
export class Logo extends LitElement {
  /** Of the kept picture. */
  @property({ attribute: false }) logo = "";
  @state() private url = "";

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("logo")) void this.read();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    URL.revokeObjectURL(this.url);
  }

  private async read(): Promise<void> {
    const { logo } = this;
    const url = await logoUrl(logo).catch(() => "");
    URL.revokeObjectURL(logo === this.logo ? this.url : url);
    if (logo === this.logo) this.url = url;
  }

  protected override render(): TemplateResult | typeof nothing {
    return this.url ? html`<img src=${this.url} alt="The shop's logo" />` : nothing;
  }
}
