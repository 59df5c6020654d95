/** Labels for the pieces, at their places on a sheet of labels, true to the size that was measured. */
import type { JobReply, LabelGrid } from "../contract/contract";
import { INCH, px, wide, words } from "../print/paper";

export interface Label {
  tag: string;
  length: string;
  /** What stands below tag and length, as far as there is room. */
  lines: string[];
}

/** Pixels of a label's rim that stay white: sheets run a little askew through a printer. */
const RIM = 7;
/** Pixels: the largest letters, and the smallest that are worth printing. */
const BIG = 26;
const SMALL = 12.5;
const LEAST = 6.5;

/** Returns a label for each piece, in the order of the cut list. */
export function labelsOf({ saw, items }: JobReply, job: string, isOnlyLeft: boolean): Label[] {
  const titles = new Map(items.map(({ id, title }) => [id, title]));
  return saw.groups
    .flatMap(({ cuts }) => cuts)
    .filter(({ state }) => !isOnlyLeft || state === "" || state === "spoiled")
    .map(({ tag, name, text, section_text: section, item }) => ({
      tag,
      length: text,
      lines: [name, section, [job, titles.get(item)].filter(Boolean).join(" · ")].filter(Boolean),
    }));
}

export interface LabelPrint {
  grid: LabelGrid;
  /** Places of the first sheet that are used up. */
  skipped: number;
  /** For a trial on plain paper. */
  hasOutlines: boolean;
}

/** Returns the sheets, each an SVG as large as the paper. */
export function labelSheets(labels: Label[], print: LabelPrint): string[] {
  const { grid, skipped } = print;
  const all: (Label | null)[] = [...Array.from({ length: skipped }, () => null), ...labels];
  const places = grid.spots.length;
  return Array.from({ length: Math.ceil(all.length / places) }, (_, at) =>
    sheetSvg(all.slice(at * places, (at + 1) * places), print),
  );
}

function sheetSvg(labels: (Label | null)[], { grid, hasOutlines }: LabelPrint): string {
  const [width, height] = grid.paper;
  // A hair less than the paper, so that no rounding to pixels begins another page.
  const size = `width="${px(width * INCH)}px" height="${px(height * INCH - 2)}px"`;
  const inside = labels.map((label, at) => (label ? labelSvg(label, grid, at, hasOutlines) : ""));
  return `<svg class="labelsheet" ${size} role="img" aria-label="Labels">${inside.join("")}</svg>`;
}

function labelSvg(label: Label, grid: LabelGrid, at: number, hasOutline: boolean): string {
  const [left, top] = grid.spots[at] ?? [0, 0];
  const [width, height] = [grid.width * INCH, grid.height * INCH];
  const place = `x="${px(left * INCH)}" y="${px(top * INCH)}" width="${px(width)}" height="${px(height)}"`;
  const outline = hasOutline ? `<rect ${place}/>` : "";
  return `${outline}<svg ${place}>${textsSvg(label, width, height)}</svg>`;
}

/** Tag and length lead; each further line that finds no room at a size to be read is left out. */
function textsSvg({ tag, length, lines }: Label, width: number, height: number): string {
  const room = width - 2 * RIM;
  const big = fitting(`${tag}   ${length}`, Math.min(BIG, (height - 2 * RIM) * 0.42), room);
  const first = RIM + big * 0.85;
  const head =
    words(RIM, first, tag, { size: big, name: "strong" }) +
    words(width - RIM, first, length, { size: big, name: "strong", anchor: "end" });
  const left = height - RIM - first - big * 0.3;
  const shown = lines.slice(0, Math.max(0, Math.floor(left / LEAST / 1.25)));
  const size = Math.min(SMALL, left / Math.max(shown.length, 1) / 1.25);
  const below = shown.map((text, row) =>
    words(RIM, first + big * 0.3 + (row + 0.85) * size * 1.25, text, { size: fitting(text, size, room) }),
  );
  return head + below.join("");
}

function fitting(text: string, size: number, room: number): number {
  return size * Math.min(1, room / Math.max(wide(text, size), 1));
}
