/** How far out the lanes of dimension lines lie: labels are set level, so upright lines need more room. */
import type { Drawing, Shape } from "../contract/contract";
import type { Spot } from "./boxes";
import { TEXT_HEIGHT, textWidth } from "./label";

type Dimension = Extract<Shape, { shape: "dimension" }>;

const FIRST_LANE = 22;
const LANE = 26;
/** Between the end of a label and the next line out. */
const CLEAR = 6;
/** How far a label on its line reaches back over it, and how far one beside it keeps off. */
export const OVERHANG = 8;

/** Returns the unit vector along a line and its length. */
export function direction([from, to]: [Spot, Spot]): [along: Spot, length: number] {
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.sqrt(x * x + y * y);
  return length > 0 ? [[x / length, y / length], length] : [[1, 0], 0];
}

/** Returns the way out: lanes 1, 2.. lie left of the direction, which on a y-down screen is (y, -x). */
export function outward(along: Spot, lane: number): Spot {
  const sign = lane < 0 ? -1 : 1;
  return [along[1] * sign, -along[0] * sign];
}

/** Whether a label of `width` has room on a line of `length`, its direction being `along`. */
export function fitsOn(along: Spot, length: number, width: number): boolean {
  return length >= roomAlong(along, width) + 12;
}

/** Returns how much of a line a label of `width` covers. */
export function roomAlong(along: Spot, width: number): number {
  return Math.abs(along[0]) * width + Math.abs(along[1]) * TEXT_HEIGHT;
}

/** The lanes of one drawing at one scale, pixels to the inch. */
export class Lanes {
  /** What the labels of each lane need of the way to the next lane, by way out and lane. */
  private readonly needs = new Map<string, number>();

  constructor(drawing: Drawing, private readonly scale: number) {
    for (const shape of drawing.shapes) if (shape.shape === "dimension") this.note(shape);
  }

  /** Returns the distance in pixels of a dimension's line from its feet. */
  offset(side: Spot, lane: number): number {
    let far = lane === 0 ? 0 : FIRST_LANE;
    for (let at = 1; at < Math.abs(lane); at += 1) far += this.needs.get(keyOf(side, at)) ?? LANE;
    return far;
  }

  private note({ from, to, lane, text }: Dimension): void {
    const [along, inches] = direction([from, to]);
    const side = outward(along, lane);
    const width = textWidth(text);
    const over = fitsOn(along, inches * this.scale, width) ? -OVERHANG : OVERHANG;
    const key = keyOf(side, Math.abs(lane));
    const need = Math.abs(side[0]) * (width + over + CLEAR);
    this.needs.set(key, Math.max(this.needs.get(key) ?? LANE, need));
  }
}

/** Lines that lean the same way within some 45 degrees share their lanes. */
function keyOf(side: Spot, lane: number): string {
  return `${Math.round(side[0])} ${Math.round(side[1])} ${lane}`;
}
