/** A template: a drawing at its true size, over as many pages as it takes. */
import type { Drawing, Point, Shape } from "../contract/contract";
import { laidOut, type Layout } from "../drawing/layout";
import { placedSvg } from "../drawing/svg";
import { joinSvg, type Spot } from "./join";
import { BODY, INCH, WIDTH, px, words, wrapped, type Sheet } from "./paper";

/** Room for half a stroke at the edge. */
const MARGIN = 11;
const SAID = 9.8;

interface Tile {
  description: string;
  inside: string;
  /** Pixels of the whole drawing that this page shows. */
  left: number;
  top: number;
  column: number;
  row: number;
  columns: number;
  rows: number;
}

function joinsSvg({ column, row, columns, rows }: Tile, page: number): string {
  const [top, bottom] = [BODY.top, BODY.top + BODY.height];
  const [nw, ne]: [Spot, Spot] = [[0, top], [WIDTH, top]];
  const [sw, se]: [Spot, Spot] = [[0, bottom], [WIDTH, bottom]];
  const joins: string[] = [];
  const join = (from: Spot, to: Spot, inward: Spot, other: number): void => {
    joins.push(joinSvg({ from, to, inward, other, isCut: other < page }));
  };
  if (row > 0) join(nw, ne, [0, 1], page - columns);
  if (row < rows - 1) join(sw, se, [0, -1], page + columns);
  if (column > 0) join(nw, sw, [1, 0], page - 1);
  if (column < columns - 1) join(ne, se, [-1, 0], page + 1);
  return joins.join("");
}

/** What the drawing says in a sentence stands on its first page. */
function wordsSvg(description: string): string {
  const lines = wrapped(description, SAID);
  return lines.map((text, at) => words(0, 28 + at * 12, text, { size: SAID })).join("");
}

/** A nested picture is clipped to its box. */
function tileSvg(tile: Tile, page: number): string {
  const box = [tile.left, tile.top, WIDTH, BODY.height].map(px);
  return (
    `<svg y="${px(BODY.top)}" width="${px(WIDTH)}" height="${px(BODY.height)}" ` +
    `viewBox="${box.join(" ")}"><g class="drawing">${tile.inside}</g></svg>` +
    (tile.column + tile.row === 0 ? wordsSvg(tile.description) : "") +
    joinsSvg(tile, page)
  );
}

/** A quarter turn: what ran across runs down. */
const turned = ([x, y]: Point): Point => [-y, x];

function turnedShape(shape: Shape): Shape {
  if (shape.shape === "area") return { ...shape, points: shape.points.map((point) => turned(point as Point)) };
  if (shape.shape === "circle") return { ...shape, center: turned(shape.center) };
  if (shape.shape === "arc") return { ...shape, center: turned(shape.center), start: shape.start + 90 };
  if (shape.shape === "tag" || shape.shape === "text") return { ...shape, at: turned(shape.at) };
  return { ...shape, from: turned(shape.from), to: turned(shape.to) };
}

/** Returns the drawing turned by a quarter; its words stay upright. */
function turnedDrawing(drawing: Drawing): Drawing {
  const [x0, y0, x1, y1] = drawing.box;
  const description = `${drawing.description} Printed a quarter turn on: its top is to the right.`;
  return { ...drawing, description, box: [-y1, x0, -y0, x1], shapes: drawing.shapes.map(turnedShape) };
}

interface Tiling {
  description: string;
  layout: Layout;
  columns: number;
  rows: number;
}

function tilingOf(drawing: Drawing): Tiling {
  const layout = laidOut(drawing, INCH);
  const { left, right, top, bottom } = layout.extent;
  const [width, height] = [right - left + 2 * MARGIN, bottom - top + 2 * MARGIN];
  const { description } = drawing;
  return { description, layout, columns: Math.ceil(width / WIDTH), rows: Math.ceil(height / BODY.height) };
}

/** A sheet is taller than wide: a long template that lies on one sheet upright is printed upright. */
function fewestSheets(drawing: Drawing): Tiling {
  const [lying, upright] = [tilingOf(drawing), tilingOf(turnedDrawing(drawing))];
  return upright.columns * upright.rows < lying.columns * lying.rows ? upright : lying;
}

/** Returns the sheets of one template, row by row. */
export function templateSheets(drawing: Drawing, tool: string): Sheet[] {
  const { description, layout, columns, rows } = fewestSheets(drawing);
  const inside = placedSvg(layout.placed);
  const [left, top] = [layout.extent.left - MARGIN, layout.extent.top - MARGIN];
  return Array.from({ length: columns * rows }, (_, at) => {
    const [column, row] = [at % columns, Math.floor(at / columns)];
    const tile = {
      description, inside, column, row, columns, rows,
      left: left + column * WIDTH,
      top: top + row * BODY.height,
    };
    return { title: `${tool}: ${drawing.title}`, draw: (page) => tileSvg(tile, page) };
  });
}
