/**
 * Lays a drawing out in pixels: inches times a scale, and labels of fixed size beside it.
 *
 * Shapes come back in list order. Dimension lines run in lanes beside what they measure; labels and
 * balloons move along or out until they are clear of each other.
 */
import type { Drawing, Point, Role, Shape } from "../contract/contract";
import { around, clearest, spanning, union, type Box, type Spot } from "./boxes";
import { TEXT_HEIGHT, textWidth } from "./label";
import { direction, fitsOn, Lanes, outward, OVERHANG, roomAlong } from "./lanes";

const BALLOON = 11;

export type Placed =
  | { kind: "area"; role: Role; spots: Spot[] }
  | { kind: "line"; role: Role; spots: [Spot, Spot] }
  | { kind: "arc"; role: Role; center: Spot; radius: number; start: number; sweep: number }
  | { kind: "circle"; role: Role; center: Spot; radius: number }
  | { kind: "dimension"; role: Role; feet: [Spot, Spot]; line: [Spot, Spot]; at: Spot; text: string }
  | { kind: "tag"; role: Role; foot: Spot; at: Spot; text: string; width: number }
  | { kind: "text"; role: Role; at: Spot; text: string; anchor: "start" | "middle" | "end" };

export interface Layout {
  placed: Placed[];
  extent: Box;
}

type Sized<S extends Shape["shape"]> = Extract<Shape, { shape: S }>;

/** A dimension's line and what it measures between, its direction, and the way out from there. */
interface Lined {
  feet: [Spot, Spot];
  line: [Spot, Spot];
  along: Spot;
  side: Spot;
  length: number;
}

/** One drawing at one scale (pixels to the inch). */
class Sheet {
  readonly placed: Placed[] = [];
  extent: Box;
  private readonly taken: Box[] = [];
  /** Upright dimension lines, none of which may strike through another's label. */
  private readonly uprights = new Map<Shape, Box>();

  constructor(
    private readonly origin: Point,
    private readonly scale: number,
    corner: Point,
    private readonly lanes: Lanes,
  ) {
    this.extent = spanning([[0, 0], this.spot(corner)]);
  }

  spot(point: Point): Spot {
    return [(point[0] - this.origin[0]) * this.scale, (point[1] - this.origin[1]) * this.scale];
  }

  add(shape: Shape): void {
    if (shape.shape === "dimension") this.dimension(shape);
    else if (shape.shape === "tag") this.tag(shape);
    else if (shape.shape === "text") this.text(shape);
    else this.outline(shape);
  }

  private outline(shape: Sized<"area" | "line" | "arc" | "circle">): void {
    const role = shape.role;
    if (shape.shape === "area") {
      this.put({ kind: "area", role, spots: shape.points.map((point) => this.spot(point)) });
    } else if (shape.shape === "line") {
      this.put({ kind: "line", role, spots: [this.spot(shape.from), this.spot(shape.to)] });
    } else {
      const center = this.spot(shape.center);
      const radius = shape.radius * this.scale;
      if (shape.shape === "circle") this.put({ kind: "circle", role, center, radius });
      else this.put({ kind: "arc", role, center, radius, start: shape.start, sweep: shape.sweep });
    }
  }

  private dimension(shape: Sized<"dimension">): void {
    const { feet, line, along, side, length } = this.lined(shape);
    const width = textWidth(shape.text);
    const spots = labelSpots(line, along, side, length, width);
    const others = [...this.uprights].filter(([own]) => own !== shape).map(([, box]) => box);
    const at = clearest(spots, width, TEXT_HEIGHT, [...this.taken, ...others]);
    this.take(around(at, width, TEXT_HEIGHT));
    this.grow(spanning(line));
    this.put({ kind: "dimension", role: shape.role, feet, line, at, text: shape.text });
  }

  private lined(shape: Sized<"dimension">): Lined {
    const feet: [Spot, Spot] = [this.spot(shape.from), this.spot(shape.to)];
    const [along, length] = direction(feet);
    const side = outward(along, shape.lane);
    const out = this.lanes.offset(side, shape.lane);
    const line = feet.map((foot) => moved(foot, side, out)) as [Spot, Spot];
    return { feet, line, along, side, length };
  }

  /** Lines drawn later are to be kept clear of too. */
  foresee(shape: Shape): void {
    if (shape.shape !== "dimension") return;
    const { line, along } = this.lined(shape);
    const { left, right, top, bottom } = spanning(line);
    const isUpright = Math.abs(along[1]) > 0.9;
    if (isUpright) this.uprights.set(shape, { left: left - 2, right: right + 2, top, bottom });
  }

  private tag(shape: Sized<"tag">): void {
    const foot = this.spot(shape.at);
    const width = Math.max(2 * BALLOON, textWidth(shape.text) + 6);
    const away = width + 2;
    const spots: Spot[] = [foot];
    for (const [x, y] of [[1, 0], [-1, 0], [0, -1], [0, 1], [1, 1], [-1, 1], [1, -1], [-1, -1]]) {
      spots.push([foot[0] + (x ?? 0) * away, foot[1] + (y ?? 0) * away]);
    }
    const at = clearest(spots, width, 2 * BALLOON, this.taken);
    this.take(around(at, width, 2 * BALLOON));
    this.put({ kind: "tag", role: shape.role, foot, at, text: shape.text, width });
  }

  private text(shape: Sized<"text">): void {
    const at = this.spot(shape.at);
    const width = textWidth(shape.text);
    const shift = { start: width / 2, middle: 0, end: -width / 2 }[shape.anchor];
    const near: Spot[] = [0, 1, -1, 2, -2].map((row) => [at[0] + shift, at[1] + row * TEXT_HEIGHT]);
    const middle = clearest(near, width, TEXT_HEIGHT, this.taken);
    this.take(around(middle, width, TEXT_HEIGHT));
    const anchored: Spot = [middle[0] - shift, middle[1]];
    this.put({ kind: "text", role: shape.role, at: anchored, text: shape.text, anchor: shape.anchor });
  }

  private put(item: Placed): void {
    this.placed.push(item);
    if (item.kind === "area" || item.kind === "line") this.grow(spanning(item.spots));
    if (item.kind === "circle") this.grow(around(item.center, 2 * item.radius, 2 * item.radius));
  }

  private take(box: Box): void {
    this.taken.push(box);
    this.grow(box);
  }

  private grow(box: Box): void {
    this.extent = union(this.extent, box);
  }
}

function moved(spot: Spot, way: Spot, far: number): Spot {
  return [spot[0] + way[0] * far, spot[1] + way[1] * far];
}

/** Places for a dimension's label, best first: on the line, along it, beyond its ends, outside. */
function labelSpots(
  line: [Spot, Spot], along: Spot, side: Spot, length: number, width: number,
): Spot[] {
  const middle: Spot = [(line[0][0] + line[1][0]) / 2, (line[0][1] + line[1][1]) / 2];
  const onLine = moved(middle, side, Math.abs(side[0]) * (width / 2 - OVERHANG));
  const outside = moved(middle, side, Math.abs(side[0]) * (width / 2 + OVERHANG) + Math.abs(side[1]) * 13);
  const beyond = length / 2 + roomAlong(along, width) / 2 + 8;
  const ends = [moved(middle, along, beyond), moved(middle, along, -beyond)];
  if (!fitsOn(along, length, width)) return [outside, ...ends, moved(outside, side, TEXT_HEIGHT)];
  const shifts = [0.22, -0.22, 0.36, -0.36].map((part) => moved(onLine, along, part * length));
  return [onLine, ...shifts, outside, ...ends];
}

/** Returns the drawing laid out at `scale` pixels to the inch. */
export function laidOut(drawing: Drawing, scale: number): Layout {
  const [x0, y0, x1, y1] = drawing.box;
  const sheet = new Sheet([x0, y0], scale, [x1, y1], new Lanes(drawing, scale));
  drawing.shapes.forEach((shape) => sheet.foresee(shape));
  for (const shape of drawing.shapes) sheet.add(shape);
  return { placed: sheet.placed, extent: sheet.extent };
}
