/** A small area to sign on with a finger; who uses a keyboard types the name beside it. */
import { LitElement, html, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Point, Stroke } from "../job/quote-body";
import { toast } from "../parts/toast";
import { drawnOn, HEIGHT, isFull, lines, WIDTH } from "./strokes";

@customElement("lp-signature")
export class Signature extends LitElement {
  @property({ attribute: false }) strokes: Stroke[] = [];
  /** Who signs, as far as it is said. */
  @property({ attribute: false }) by = "";
  @property({ attribute: false }) put: (strokes: Stroke[]) => void = () => undefined;
  /** What stands on the open area; null while it is closed. */
  @state() private pad: Stroke[] | null = null;
  /** The stroke under the finger. */
  @state() private stroke: Stroke | null = null;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override render(): TemplateResult {
    return html`<div class="signature">${this.pad ? this.area(this.pad) : this.shown()}</div>`;
  }

  private shown(): TemplateResult {
    const { strokes, by } = this;
    const begin = (): void => this.turn([]);
    if (strokes.length === 0) return html`<button type="button" @click=${begin}>Sign with a finger</button>`;
    return html`<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="Signature ${by && `of ${by}`}">${lines(strokes)}</svg>
      <button type="button" @click=${begin}>Sign again</button>`;
  }

  private area(pad: Stroke[]): TemplateResult {
    return html`<svg
        class="signarea"
        viewBox="0 0 ${WIDTH} ${HEIGHT}"
        role="img"
        aria-label="Area to sign on"
        @touchstart=${onlyDrawn}
        @pointerdown=${(event: PointerEvent) => this.begin(event)}
        @pointermove=${(event: PointerEvent) => this.draw(event)}
        @pointerup=${() => this.end()}
        @pointercancel=${() => this.end()}
      >
        ${lines(this.stroke ? [...pad, this.stroke] : pad)}
      </svg>
      <div class="actions">
        <button type="button" @click=${() => this.turn(null)}>Keep the signature</button>
        <button type="button" @click=${() => this.keep([])}>Clear it</button>
      </div>`;
  }

  /** Opens the area or closes it; the keyboard goes on where the button was. */
  private turn(pad: Stroke[] | null): void {
    this.pad = pad;
    void this.updateComplete.then(() => this.querySelector("button")?.focus({ preventScroll: true }));
  }

  private begin(event: PointerEvent): void {
    if (!event.isPrimary || event.button !== 0) return;
    event.preventDefault();
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    this.stroke = drawnOn([], pointOf(event, event.currentTarget as Element));
  }

  private draw(event: PointerEvent): void {
    if (!this.stroke || !event.isPrimary) return;
    const between = event.getCoalescedEvents();
    for (const each of between.length > 0 ? between : [event]) {
      this.stroke = drawnOn(this.stroke, pointOf(each, event.currentTarget as Element));
    }
  }

  private end(): void {
    const { pad, stroke } = this;
    this.stroke = null;
    if (!pad || !stroke) return;
    const strokes = [...pad, stroke];
    if (isFull(strokes)) toast("This is too much for one signature: clear it and sign again, shorter.");
    else this.keep(strokes);
  }

  private keep(strokes: Stroke[]): void {
    this.pad = strokes;
    this.put(strokes);
  }
}

/** A stroke is no swipe: taken for one, the tap after it would only stop the page that it moved. */
function onlyDrawn(event: TouchEvent): void {
  event.preventDefault();
}

function pointOf({ clientX, clientY }: PointerEvent, area: Element): Point {
  const { left, top, width, height } = area.getBoundingClientRect();
  return [((clientX - left) / width) * WIDTH, ((clientY - top) / height) * HEIGHT];
}
