/** A drawing of the core at the width of its place on the page. */
import { LitElement, html, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { unsafeHTML } from "lit/directives/unsafe-html.js";
import type { Drawing } from "../contract/contract";
import { drawingSvg } from "../drawing/svg";

let count = 0;

@customElement("lp-drawing")
export class DrawingView extends LitElement {
  @property({ attribute: false }) drawing: Drawing | null = null;
  @state() private width = 0;
  @state() private screenHeight = 0;
  private readonly idPrefix = `drawing-${(count += 1)}`;
  private readonly watch = new ResizeObserver(() => this.measure());

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.measure();
    this.watch.observe(this);
  }

  override disconnectedCallback(): void {
    this.watch.disconnect();
    super.disconnectedCallback();
  }

  /** Not in `render`: asked of a page in the middle of its changes, a size has all of it laid out. */
  private measure(): void {
    this.width = Math.floor(this.clientWidth);
    this.screenHeight = innerHeight;
  }

  protected override render(): TemplateResult | null {
    if (!this.drawing) return null;
    const width = Math.min(this.width || document.documentElement.clientWidth - 32, 640);
    const height = Math.min(Math.max(width * 0.66, 200), this.screenHeight * 0.62);
    const options = { thumbnail: false, idPrefix: this.idPrefix, width, height };
    // The renderer escapes every text; nothing else reaches the page this way.
    return html`${unsafeHTML(drawingSvg(this.drawing, options))}`;
  }
}
