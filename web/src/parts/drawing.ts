/** A drawing of the core at the width of its place on the page. */
import { LitElement, html, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { unsafeHTML } from "lit/directives/unsafe-html.js";
import type { Drawing } from "../contract/contract";
import { drawingSvg } from "../drawing/svg";

let count = 0;

/** What a drawing's size goes by, in pixels. */
export interface Room {
  width: number;
  screenHeight: number;
}

@customElement("lp-drawing")
export class DrawingView extends LitElement {
  @property({ attribute: false }) drawing: Drawing | null = null;
  /** Its place, where that is known before the drawing is laid out. */
  room: Room | null = null;
  @state() private width = 0;
  @state() private screenHeight = 0;
  private readonly idPrefix = `drawing-${(count += 1)}`;
  private readonly watch = new ResizeObserver(() => this.measure());

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.watch.observe(this);
    addEventListener("beforeprint", this.measure);
  }

  override disconnectedCallback(): void {
    removeEventListener("beforeprint", this.measure);
    this.watch.disconnect();
    super.disconnectedCallback();
  }

  /**
   * Asked once the page is laid out: in the middle of its changes all of it would be laid out for
   * the answer. One in a closed fold has no size and is drawn when that opens, for paper too.
   */
  private readonly measure = (): void => {
    this.width = Math.floor(this.clientWidth);
    this.screenHeight = innerHeight;
  };

  protected override willUpdate(): void {
    if (!this.width && this.room) Object.assign(this, this.room);
  }

  protected override render(): TemplateResult | null {
    if (!this.drawing || !this.width) return null;
    const width = Math.min(this.width, 640);
    const height = Math.min(Math.max(width * 0.66, 200), this.screenHeight * 0.62);
    const options = { thumbnail: false, idPrefix: this.idPrefix, width, height };
    // The renderer escapes every text; nothing else reaches the page this way.
    return html`${unsafeHTML(drawingSvg(this.drawing, options))}`;
  }
}
