/** A signature as a job keeps it: strokes of whole points; declared in the core (`trade/job/signature_shape.py`). */
import { svg, type SVGTemplateResult } from "lit";
import type { Point, Stroke } from "../job/quote-body";

/** The area signed on, in its own units. */
export const WIDTH = 600;
export const HEIGHT = 240;
export const MOST = { strokes: 60, points: 600 };
/** Units between two kept points: about a finger's own trembling. */
const NEAR = 6;

/** Returns a stroke with a further point, if that is far enough from its last one. */
export function drawnOn(stroke: Stroke, [x, y]: Point): Stroke {
  const point: Point = [within(x, WIDTH), within(y, HEIGHT)];
  const last = stroke.at(-1);
  const isFar = !last || Math.hypot(point[0] - last[0], point[1] - last[1]) >= NEAR;
  return isFar ? [...stroke, point] : stroke;
}

const within = (value: number, most: number): number => Math.min(most, Math.max(0, Math.round(value)));

/** Whether a signature takes no more. */
export function isFull(strokes: Stroke[]): boolean {
  const points = strokes.reduce((sum, stroke) => sum + stroke.length, 0);
  return strokes.length > MOST.strokes || points > MOST.points;
}

/** Returns the lines of a signature, in the units of its area. */
export function lines(strokes: Stroke[]): SVGTemplateResult {
  return svg`<path d=${strokes.map(pathOf).join("")} />`;
}

/** Rounds a stroke's corners: each point pulls a curve that goes from middle to middle. */
function pathOf(stroke: Stroke): string {
  const [first, ...rest] = stroke;
  if (!first) return "";
  const curves = rest.slice(0, -1).map(([x, y], at) => {
    const [nextX, nextY] = rest[at + 1] ?? [x, y];
    return `Q${x} ${y} ${(x + nextX) / 2} ${(y + nextY) / 2}`;
  });
  const [endX, endY] = rest.at(-1) ?? first;
  return `M${first[0]} ${first[1]}${curves.join("")}L${endX} ${endY}`;
}
