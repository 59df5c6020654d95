/** One enlarged inch: a tap or a drag sets the fraction of the entry. */
import { LitElement, html, svg, type SVGTemplateResult, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { guard } from "lit/directives/guard.js";

const WIDTH = 340;
const EDGE = 14;
const HEIGHT = 92;
const TOP = 20;

const FINEST = 64;

function height(at: number, parts: number): number {
  if (at % parts === 0) return 62;
  for (const [share, tall] of [[2, 46], [4, 36], [8, 27], [16, 19], [32, 13]] as const) {
    if (at % (parts / share) === 0) return tall;
  }
  return 9;
}

@customElement("lp-inch")
export class Inch extends LitElement {
  /** Parts the inch is divided into: 8, 16, 32 or 64. */
  @property({ attribute: false }) parts = 16;
  /** Share of the inch the entry stands at, null for none. */
  @property({ attribute: false }) share: number | null = null;
  /** Told the number of parts from the left, 0 to the last, and of how many; another one looks no different. */
  @property({ attribute: false, hasChanged: () => false }) pick: (over: number, of: number) => void =
    () => undefined;
  /** How much finer than `parts` the person wants to tap: 1, 2 or 4 times. */
  @state() private finer = 1;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  /** Parts that are drawn and tapped now. */
  private get tapped(): number {
    return Math.min(this.parts * this.finer, FINEST);
  }

  protected override render(): TemplateResult {
    const parts = this.tapped;
    const over = this.share === null ? 0 : Math.round(this.share * parts);
    return html`<div class="inchline">
      ${this.nudge(-1, "One part less", "‹")} ${this.slider(parts, over)} ${this.nudge(1, "One part more", "›")}
      <button type="button" tabindex="-1" class="key quiet finer" aria-label="1/${parts}, tap finer parts" @click=${this.refine}>
        1/${parts}
      </button>
    </div>`;
  }

  private nudge(by: number, name: string, sign: string): TemplateResult {
    const press = (): void => this.pickOver(Math.round((this.share ?? 0) * this.tapped) + by);
    return html`<button type="button" tabindex="-1" class="key quiet nudge" aria-label=${name} @click=${press}>
      ${sign}
    </button>`;
  }

  /** To 32nds and 64ths, and back to the parts that lengths are shown in. */
  private refine(): void {
    this.finer = this.tapped >= FINEST ? 1 : this.finer * 2;
  }

  private slider(parts: number, over: number): TemplateResult {
    return html`<div
      class="inch"
      role="slider"
      tabindex="-1"
      aria-label="Fraction of an inch"
      aria-valuemin="0"
      aria-valuemax=${parts - 1}
      aria-valuenow=${over}
      aria-valuetext="${over}/${parts}"
      @pointerdown=${this.down}
      @pointermove=${this.move}
      @keydown=${this.key}
    >
      <svg viewBox="0 0 ${WIDTH} ${HEIGHT}" preserveAspectRatio="none" aria-hidden="true">
        <rect class="tape" x="0" y=${TOP - 8} width=${WIDTH} height=${HEIGHT - TOP + 8} rx="8"></rect>
        ${guard([parts], () => this.ticks(parts))}${this.foot()}
      </svg>
      <span class="quarter first" aria-hidden="true">1/4</span>
      <span class="quarter half" aria-hidden="true">1/2</span>
      <span class="quarter third" aria-hidden="true">3/4</span>
    </div>`;
  }

  private x(share: number): number {
    return EDGE + share * (WIDTH - 2 * EDGE);
  }

  private ticks(parts: number): SVGTemplateResult[] {
    const drawn: SVGTemplateResult[] = [];
    for (let at = 0; at <= parts; at += 1) {
      const x = this.x(at / parts);
      drawn.push(svg`<line class="tick" x1=${x} y1=${TOP} x2=${x} y2=${TOP + height(at, parts)}></line>`);
    }
    return drawn;
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
    this.pickOver(Math.round(share * this.tapped));
  }

  private key(event: KeyboardEvent): void {
    const step = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[event.key];
    if (!step) return;
    event.preventDefault();
    this.pickOver(Math.round((this.share ?? 0) * this.tapped) + step);
  }

  /** The right end would be the next inch's 0, so the last part is the one before it. */
  private pickOver(over: number): void {
    this.pick(Math.min(Math.max(over, 0), this.tapped - 1), this.tapped);
  }
}
