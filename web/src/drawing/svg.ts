/**
 * Renders the core's drawing vocabulary as accessible SVG text. Pure: it needs no DOM and knows no
 * tool. Roles become classes (`r-stock`); the stylesheet holds every color and size of type.
 */
import type { Drawing } from "../contract/contract";
import { spoken } from "../text/fraction-runs";
import type { Box, Spot } from "./boxes";
import { escaped, textSvg } from "./label";
import { laidOut, type Layout, type Placed } from "./layout";

export interface SvgOptions {
  /** A small square picture without numbers, hidden from screen readers. */
  thumbnail: boolean;
  /** Makes the ids of title and description unique on the page. */
  idPrefix: string;
  /** Pixels the drawing may take; text keeps its size and the drawing takes the rest. */
  width?: number;
  height?: number;
}

const THUMBNAIL = 96;
const MARGIN = 4;
const OUTLINES = ["area", "line", "arc", "circle"];

/** Returns a complete `<svg>` for `drawing`; sizes in pixels. */
export function drawingSvg(drawing: Drawing, options: SvgOptions): string {
  if (options.thumbnail) return thumbnailSvg(drawing);
  const layout = fitted(drawing, options.width ?? 358, options.height ?? 340);
  const [title, description] = [`${options.idPrefix}-title`, `${options.idPrefix}-description`];
  const body = placedSvg(layout.placed);
  return (
    `<svg class="drawing" role="img" aria-labelledby="${title} ${description}" ` +
    `${frame(layout.extent, MARGIN)}>` +
    `<title id="${title}">${escaped(spoken(drawing.title))}</title>` +
    `<desc id="${description}">${escaped(spoken(drawing.description))}</desc>${body}</svg>`
  );
}

function thumbnailSvg(drawing: Drawing): string {
  const shapes = drawing.shapes.filter((shape) => OUTLINES.includes(shape.shape));
  const room = THUMBNAIL - 2 * MARGIN;
  const { placed, extent } = fitted({ ...drawing, shapes }, room, room);
  const [x, y] = [(extent.left + extent.right) / 2, (extent.top + extent.bottom) / 2];
  const [left, top] = [x - THUMBNAIL / 2, y - THUMBNAIL / 2];
  return (
    `<svg class="drawing thumbnail" aria-hidden="true" focusable="false" ` +
    `viewBox="${n(left)} ${n(top)} ${THUMBNAIL} ${THUMBNAIL}">${placedSvg(placed)}</svg>`
  );
}

/** Returns what is laid out as SVG, for a picture that sets its own size. */
export function placedSvg(placed: Placed[]): string {
  return placed.map(itemSvg).join("");
}

/** Finds the scale at which drawing and labels together fill the room; labels don't scale. */
function fitted(drawing: Drawing, width: number, height: number): Layout {
  const [x0, y0, x1, y1] = drawing.box;
  const [wide, high] = [Math.max(x1 - x0, 1e-6), Math.max(y1 - y0, 1e-6)];
  let scale = Math.min(width / wide, height / high);
  let layout = laidOut(drawing, scale);
  for (let turn = 0; turn < 4; turn += 1) {
    const { left, top, right, bottom } = layout.extent;
    const beside = right - left - wide * scale;
    const above = bottom - top - high * scale;
    scale = Math.max(
      Math.min((width - 2 * MARGIN - beside) / wide, (height - 2 * MARGIN - above) / high),
      24 / Math.max(wide, high),
    );
    layout = laidOut(drawing, scale);
  }
  return layout;
}

function frame(extent: Box, margin: number): string {
  const [left, top] = [extent.left - margin, extent.top - margin];
  const width = extent.right - extent.left + 2 * margin;
  const height = extent.bottom - extent.top + 2 * margin;
  const size = `width="${n(width)}" height="${n(height)}"`;
  return `${size} viewBox="${n(left)} ${n(top)} ${n(width)} ${n(height)}"`;
}

/** Tenths of a pixel are plenty; a value that is no number draws nothing instead of breaking. */
function n(value: number): string {
  return Number.isFinite(value) ? String(Math.round(value * 10) / 10) : "0";
}

function pairs(spots: Spot[]): string {
  return spots.map((spot) => `${n(spot[0])},${n(spot[1])}`).join(" ");
}

function itemSvg(item: Placed): string {
  const name = `class="${item.kind} r-${item.role}"`;
  if (item.kind === "area") return `<polygon ${name} points="${pairs(item.spots)}"/>`;
  if (item.kind === "line") return segment(name, item.spots);
  if (item.kind === "circle") {
    return `<circle ${name} ${place(item.center, "c")} r="${n(item.radius)}"/>`;
  }
  if (item.kind === "arc") return arcSvg(name, item);
  if (item.kind === "dimension") return dimensionSvg(name, item);
  if (item.kind === "tag") return tagSvg(name, item);
  return `<text ${name} ${place(item.at)} dy="5" text-anchor="${item.anchor}">${textSvg(item.text)}</text>`;
}

function place(spot: Spot, letter = ""): string {
  return `${letter}x="${n(spot[0])}" ${letter}y="${n(spot[1])}"`;
}

function segment(name: string, [from, to]: [Spot, Spot]): string {
  const ends = `x1="${n(from[0])}" y1="${n(from[1])}" x2="${n(to[0])}" y2="${n(to[1])}"`;
  return `<line ${name} ${ends}/>`;
}

/** Angles run clockwise on a y-down screen, which is SVG's positive sweep. */
function arcSvg(name: string, arc: Extract<Placed, { kind: "arc" }>): string {
  const sweep = Math.max(-359.9, Math.min(359.9, arc.sweep));
  const at = (degrees: number): Spot => [
    arc.center[0] + arc.radius * Math.cos((degrees * Math.PI) / 180),
    arc.center[1] + arc.radius * Math.sin((degrees * Math.PI) / 180),
  ];
  const flags = `${Math.abs(sweep) > 180 ? 1 : 0} ${sweep > 0 ? 1 : 0}`;
  const radius = n(arc.radius);
  const [from, to] = [pairs([at(arc.start)]), pairs([at(arc.start + sweep)])];
  return `<path ${name} d="M${from} A${radius} ${radius} 0 ${flags} ${to}"/>`;
}

function dimensionSvg(name: string, item: Extract<Placed, { kind: "dimension" }>): string {
  const [from, to] = item.line;
  const length = Math.max(Math.hypot(to[0] - from[0], to[1] - from[1]), 1e-6);
  const across: Spot = [(-5 * (to[1] - from[1])) / length, (5 * (to[0] - from[0])) / length];
  const bars = item.line.map((end) =>
    segment(`class="bar"`, [
      [end[0] - across[0], end[1] - across[1]],
      [end[0] + across[0], end[1] + across[1]],
    ]),
  );
  const leads = item.line.map((end, i) => segment(`class="lead"`, [item.feet[i] ?? end, end]));
  return (
    `<g ${name}>${leads.join("")}${segment(`class="bar"`, item.line)}${bars.join("")}` +
    `<text ${place(item.at)} dy="5" text-anchor="middle">${textSvg(item.text)}</text></g>`
  );
}

function tagSvg(name: string, item: Extract<Placed, { kind: "tag" }>): string {
  const isMoved = item.at[0] !== item.foot[0] || item.at[1] !== item.foot[1];
  const leader = isMoved ? segment(`class="lead"`, [item.foot, item.at]) : "";
  const corner: Spot = [item.at[0] - item.width / 2, item.at[1] - 11];
  return (
    `<g ${name}>${leader}<rect ${place(corner)} width="${n(item.width)}" height="22" rx="11"/>` +
    `<text ${place(item.at)} dy="4.5" text-anchor="middle">${escaped(item.text)}</text></g>`
  );
}
