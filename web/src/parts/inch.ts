/** One enlarged inch: a tap or a drag sets the fraction of the entry. */
import { LitElement, html, svg, type SVGTemplateResult, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { guard } from "lit/directives/guard.js";

const WIDTH = 340;
const EDGE = 14;
const HEIGHT = 92;
const TOP = 20;

@customElement("lp-inch")
export class Inch extends LitElement {
  /** Parts the inch is divided into: 8, 16, 32 or 64. */
  @property({ attribute: false }) parts = 16;
  /** Share of the inch the entry stands at, null for none. */
  @property({ attribute: false }) share: number | null = null;
  /** Told the number of parts from the left, 0 to `parts` - 1; another one looks no different. */
  @property({ attribute: false, hasChanged: () => false }) pick: (over: number) => void = () => undefined;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override render(): TemplateResult {
    const over = this.share === null ? 0 : Math.round(this.share * this.parts);
    return html`<div
      class="inch"
      role="slider"
      tabindex="-1"
      aria-label="Fraction of an inch"
      aria-valuemin="0"
      aria-valuemax=${this.parts - 1}
      aria-valuenow=${over}
      aria-valuetext="${over}/${this.parts}"
      @pointerdown=${this.down}
      @pointermove=${this.move}
      @keydown=${this.key}
    >
      <svg viewBox="0 0 ${WIDTH} ${HEIGHT}" preserveAspectRatio="none" aria-hidden="true">
        <rect class="tape" x="0" y=${TOP - 8} width=${WIDTH} height=${HEIGHT - TOP + 8} rx="8"></rect>
        ${guard([this.parts], () => this.ticks())}${this.foot()}
      </svg>
      <span class="quarter first" aria-hidden="true">1/4</span>
      <span class="quarter half" aria-hidden="true">1/2</span>
      <span class="quarter third" aria-hidden="true">3/4</span>
    </div>`;
  }

  private x(share: number): number {
    return EDGE + share * (WIDTH - 2 * EDGE);
  }

  private ticks(): SVGTemplateResult[] {
    const drawn: SVGTemplateResult[] = [];
    for (let at = 0; at <= this.parts; at += 1) {
      const x = this.x(at / this.parts);
      drawn.push(svg`<line class="tick" x1=${x} y1=${TOP} x2=${x} y2=${TOP + this.height(at)}></line>`);
    }
    return drawn;
  }

  private height(at: number): number {
    if (at % this.parts === 0) return 62;
    for (const [share, height] of [[2, 46], [4, 36], [8, 27], [16, 19], [32, 13]] as const) {
      if (at % (this.parts / share) === 0) return height;
    }
    return 9;
  }

  private foot(): SVGTemplateResult | null {
    if (this.share === null) return null;
    const x = this.x(this.share);
    return svg`<path class="foot" d="M${x - 10} 2L${x} ${TOP}L${x + 10} 2M${x} ${TOP}v22"></path>`;
  }

  private down(event: PointerEvent): void {
    (event.currentTarget as HTMLElement).setPointerCapture(event.pointerId);
    this.pickAt(event);
  }

  private move(event: PointerEvent): void {
    if ((event.currentTarget as HTMLElement).hasPointerCapture(event.pointerId)) this.pickAt(event);
  }

  private pickAt(event: PointerEvent): void {
    const box = (event.currentTarget as HTMLElement).getBoundingClientRect();
    const x = ((event.clientX - box.left) / box.width) * WIDTH;
    const share = (x - EDGE) / (WIDTH - 2 * EDGE);
    this.pickOver(Math.round(share * this.parts));
  }

  private key(event: KeyboardEvent): void {
    const step = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[event.key];
    if (!step) return;
    event.preventDefault();
    this.pickOver(Math.round((this.share ?? 0) * this.parts) + step);
  }

  /** The right end would be the next inch's 0, so the last part is the one before it. */
  private pickOver(over: number): void {
    this.pick(Math.min(Math.max(over, 0), this.parts - 1));
  }
}
