/**
 * Where two pages meet: one is cut on its line and laid on the line of the other. The half diamonds
 * on both make one diamond when the pages lie right.
 */
import { line, px, words } from "./paper";

const HALF = 11;

export type Spot = readonly [x: number, y: number];

/** One page's side of a join, from one end of its line to the other. */
export interface Join {
  from: Spot;
  to: Spot;
  /** The way into this page's own part. */
  inward: Spot;
  /** Number of the page on the other side. */
  other: number;
  /** The page that is cut goes on top of the earlier one. */
  isCut: boolean;
}

function diamond({ from, to, inward }: Join): string {
  const middle: Spot = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const along: Spot = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const at = (part: number, inside: number): string =>
    `${px(middle[0] + along[0] * part + inward[0] * inside)} ` +
    px(middle[1] + along[1] * part + inward[1] * inside);
  return `<path class="fine" d="M${at(-HALF, 0)}L${at(0, HALF)}L${at(HALF, 0)}"/>`;
}

/** What to do stands beyond the line, where it is cut off or covered; an upright one ends the sheet. */
function advice({ from, to, inward, other, isCut }: Join): string {
  const text = isCut ? `cut, lay on page ${other}` : `page ${other} lies on here`;
  const [x, y] = inward;
  if (x === 0) return words(to[0], to[1] + (y > 0 ? -4.5 : 10.6), text, { size: 9.5, anchor: "end" });
  const turned = words(0, 0, text, { size: 9.5, anchor: x > 0 ? "start" : "end" });
  const place = `translate(${px(from[0] + x * 4.5)} ${px(from[1] + 23)}) rotate(${90 * x})`;
  return `<g transform="${place}">${turned}</g>`;
}

/** Returns the line, its half diamond, and what to do there. */
export function joinSvg(join: Join): string {
  return line("join", ...join.from, ...join.to) + diamond(join) + advice(join);
}
