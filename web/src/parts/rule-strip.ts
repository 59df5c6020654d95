/** The strip of rule: a stretch of the tape around a length, the crow's foot on its very tick. */
import { html, svg, type SVGTemplateResult, type TemplateResult } from "lit";
import type { Ticked, Units } from "../contract/contract";

const WIDTH = 340;
const TOP = 22;
const BOTTOM = 72;
const EDGE = 10;

interface Ruler {
  /** Units shown to each side of the length, at least half an inch. */
  reach: number;
  /** Ticks to the unit that are drawn. */
  per: number;
  /** Every so many units a number stands. */
  number: number;
  height(tick: number): number;
}

/** Longer strokes for halves, quarters and so on, as a tape is divided. */
function inchHeight(per: number): (tick: number) => number {
  return (tick) => {
    for (const [share, height] of [[1, 34], [2, 25], [4, 20], [8, 15], [16, 11], [32, 8]] as const) {
      if (tick % (per / share) === 0) return height;
    }
    return 6;
  };
}

function tenthHeight(tick: number): number {
  return tick % 10 === 0 ? 34 : tick % 5 === 0 ? 22 : 13;
}

/** Thousandths are finer than a stroke: tenths are drawn and the crow's foot stands between. */
function rulerOf(units: Units, per: number): Ruler {
  if (units === "mm") return { reach: 17, per: 1, number: 10, height: tenthHeight };
  if (per % 8 !== 0) return { reach: 0.8, per: 10, number: 1, height: tenthHeight };
  const reach = per <= 16 ? 0.95 : per === 32 ? 0.7 : 0.55;
  return { reach, per: Math.min(per, 64), number: 1, height: inchHeight(Math.min(per, 64)) };
}

/** Returns the strip for a length shown at `tick`/`per` units, or nothing to draw as null. */
export function ruleStrip({ tick, per }: Ticked, units: Units): TemplateResult | null {
  if (tick === null || per === null || per <= 0) return null;
  const ruler = rulerOf(units, per);
  const at = tick / per;
  // A tape begins at 0: near it the stretch moves along instead of showing less than nothing.
  const middle = at >= 0 ? Math.max(at, ruler.reach * 0.8) : at;
  const scale = (WIDTH - 2 * EDGE) / 2 / ruler.reach;
  const x = (value: number): number => Math.round((WIDTH / 2 + (value - middle) * scale) * 10) / 10;
  const low = at >= 0 ? Math.max(middle - ruler.reach, 0) : middle - ruler.reach;
  const { strokes, numbers } = ticked(ruler, low, middle + ruler.reach, x, x(at));
  return html`<svg class="strip" viewBox="0 0 ${WIDTH} ${BOTTOM}" aria-hidden="true" focusable="false">
    <rect class="tape" x=${x(low)} y=${TOP} width=${WIDTH - x(low)} height=${BOTTOM - TOP}></rect>
    <path class="tick" d=${strokes}></path>
    ${numbers}
    <path class="edge" d="M${x(low)} ${TOP}H${WIDTH}"></path>
    <path class="foot" d="M${x(at) - 9} 3L${x(at)} ${TOP - 1}L${x(at) + 9} 3M${x(at)} ${TOP - 1}V${TOP + 42}"></path>
  </svg>`;
}

/** All strokes are one path: each change of the length moves them all. */
function ticked(
  ruler: Ruler, low: number, high: number, x: (value: number) => number, foot: number,
): { strokes: string; numbers: SVGTemplateResult[] } {
  let strokes = "";
  const numbers: SVGTemplateResult[] = [];
  for (let tick = Math.ceil(low * ruler.per); tick <= high * ruler.per; tick += 1) {
    const place = x(tick / ruler.per);
    strokes += `M${place} ${TOP}v${ruler.height(Math.abs(tick))}`;
    const isNumbered = tick % (ruler.per * ruler.number) === 0 && place < WIDTH - 16;
    if (isNumbered) numbers.push(numberSvg(tick / ruler.per, place, foot));
  }
  return { strokes, numbers };
}

/** A number stands right of its stroke, as on a tape, or left where the crow's foot would cross it. */
function numberSvg(value: number, place: number, foot: number): SVGTemplateResult {
  const width = 9 * String(value).length;
  const isCrossed = foot > place + 1 && foot < place + width + 8;
  const [x, anchor] = isCrossed ? [place - 4, "end"] : [place + 4, "start"];
  return svg`<text class="number" x=${x} y=${BOTTOM - 5} text-anchor=${anchor}>${value}</text>`;
}
