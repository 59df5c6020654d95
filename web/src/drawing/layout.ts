/**
 * Lays a drawing out in pixels: inches times a scale, and labels of fixed size beside it.
 *
 * Shapes come back in list order. Dimension lines run in lanes beside what they measure; labels and
 * balloons move along or out until they are clear of each other.
 */
import type { Drawing, Point, Role, Shape } from "../contract";
import { around, clearest, spanning, union, type Box, type Spot } from "./boxes";
import { TEXT_HEIGHT, textWidth } from "./label";

const FIRST_LANE = 22;
const LANE = 26;
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

/** One drawing at one scale (pixels to the inch). */
class Sheet {
  readonly placed: Placed[] = [];
  extent: Box;
  private readonly taken: Box[] = [];

  constructor(
    private readonly origin: Point,
    private readonly scale: number,
    corner: Point,
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
    const feet: [Spot, Spot] = [this.spot(shape.from), this.spot(shape.to)];
    const [along, length] = direction(feet);
    const out = laneOffset(shape.lane);
    const side: Spot = [along[1] * Math.sign(out || 1), -along[0] * Math.sign(out || 1)];
    const line = feet.map((foot) => moved(foot, side, Math.abs(out))) as [Spot, Spot];
    const width = textWidth(shape.text);
    const spots = labelSpots(line, along, side, length, width);
    const at = clearest(spots, width, TEXT_HEIGHT, this.taken);
    this.take(around(at, width, TEXT_HEIGHT));
    this.grow(spanning(line));
    this.put({ kind: "dimension", role: shape.role, feet, line, at, text: shape.text });
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

function direction([from, to]: [Spot, Spot]): [along: Spot, length: number] {
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.sqrt(x * x + y * y);
  return length > 0 ? [[x / length, y / length], length] : [[1, 0], 0];
}

/** Lane 1, 2.. lie to the left of the direction, which on a y-down screen is (y, -x). */
function laneOffset(lane: number): number {
  return lane === 0 ? 0 : Math.sign(lane) * (FIRST_LANE + LANE * (Math.abs(lane) - 1));
}

function moved(spot: Spot, way: Spot, far: number): Spot {
  return [spot[0] + way[0] * far, spot[1] + way[1] * far];
}

/** Places for a dimension's label, best first: on the line, along it, beyond its ends, outside. */
function labelSpots(
  line: [Spot, Spot], along: Spot, side: Spot, length: number, width: number,
): Spot[] {
  const middle: Spot = [(line[0][0] + line[1][0]) / 2, (line[0][1] + line[1][1]) / 2];
  const onLine = moved(middle, side, Math.abs(side[0]) * (width / 2 - 8));
  const room = Math.abs(along[0]) * width + Math.abs(along[1]) * TEXT_HEIGHT;
  const outside = moved(middle, side, Math.abs(side[0]) * (width / 2 + 8) + Math.abs(side[1]) * 13);
  const beyond = length / 2 + room / 2 + 8;
  const ends = [moved(middle, along, beyond), moved(middle, along, -beyond)];
  if (length < room + 12) return [outside, ...ends, moved(outside, side, TEXT_HEIGHT)];
  const shifts = [0.22, -0.22, 0.36, -0.36].map((part) => moved(onLine, along, part * length));
  return [onLine, ...shifts, outside, ...ends];
}

/** Returns the drawing laid out at `scale` pixels to the inch. */
export function laidOut(drawing: Drawing, scale: number): Layout {
  const [x0, y0, x1, y1] = drawing.box;
  const sheet = new Sheet([x0, y0], scale, [x1, y1]);
  for (const shape of drawing.shapes) sheet.add(shape);
  return { placed: sheet.placed, extent: sheet.extent };
}
