/** The story stick: all marks of an answer at their true distances, a strip for each datum. */
import type { Mark } from "../contract/contract";
import { capital } from "../text/words";
import { joinSvg } from "./join";
import { BODY, INCH, WIDTH, line, wide, words, type Sheet } from "./paper";

const TICK = 53;
const LABEL = TICK + 23;
const APART = 17.4;
const NUMBER = 12.9;
const NAME = 10.6;
const GAP = 15;
/** A mark just where two pages meet stands on both. */
const SAME = 0.02;

/** Labels keep off the joins' half diamonds. */
const INSET = 23;

interface Strip {
  from: string;
  marks: { at: number; number: string; name: string }[];
}

/** Distances from the strip's start: the datum, or the first mark before it. */
function stripsOf(marks: Mark[], start: number): Strip[] {
  const strips: Strip[] = [...new Set(marks.map(({ from }) => from))].map((from) => ({
    from,
    marks: [{ at: -start, number: "0", name: capital(from) }],
  }));
  for (const { from, value, tag, text, label } of marks) {
    const strip = strips.find((each) => each.from === from);
    const name = tag ? `${label} (${tag})` : label;
    strip?.marks.push({ at: value * INCH - start, number: text, name });
  }
  for (const strip of strips) strip.marks.sort((one, other) => one.at - other.at);
  return strips;
}

/** Moves labels apart, as little as needed, and keeps them between the page's joins. */
function spread(spots: number[], apart: number): number[] {
  const placed: number[] = [];
  for (const spot of spots) placed.push(Math.max(spot, (placed.at(-1) ?? INSET - apart) + apart));
  let least = BODY.height - INSET;
  for (let at = placed.length - 1; at >= 0; at -= 1) {
    placed[at] = Math.min(placed[at] ?? 0, least);
    least = (placed[at] ?? 0) - apart;
  }
  return placed;
}

/** Room that a mark's number and name take beside its tick. */
function needed({ number, name }: Strip["marks"][number]): number {
  return LABEL + wide(number, NUMBER) + 8 + wide(name, NAME) + GAP;
}

function labelSvg(x: number, y: number, number: string, name: string, shrunk: number): string {
  const after = x + wide(number, NUMBER * shrunk) + 8;
  return (
    words(x, y + NUMBER * 0.35 * shrunk, number, { size: NUMBER * shrunk, name: "strong" }) +
    words(after, y + NUMBER * 0.35 * shrunk, name, { size: NAME * shrunk })
  );
}

function marksSvg(strip: Strip, x: number, from: number): string {
  const here = strip.marks.filter(({ at }) => at >= from - SAME && at <= from + BODY.height + SAME);
  const apart = Math.min(APART, (BODY.height - 2 * INSET) / Math.max(here.length, 1));
  const rows = spread(here.map(({ at }) => at - from), apart);
  return here
    .map(({ at, number, name }, index) => {
      const y = BODY.top + at - from;
      const row = BODY.top + (rows[index] ?? 0);
      return (
        line("tick", x, y, x + TICK, y) +
        line("lead", x + TICK, y, x + LABEL - 4, row) +
        labelSvg(x + LABEL, row, number, name, apart / APART)
      );
    })
    .join("");
}

interface Tile {
  strips: Strip[];
  /** Which stretch of the stick, from 0, and how many there are. */
  number: number;
  count: number;
  /** Pixels of the sheet for each strip. */
  share: number;
}

function tileSvg({ strips, number, count, share }: Tile, page: number): string {
  const [top, bottom] = [BODY.top, BODY.top + BODY.height];
  return strips
    .map((strip, at) => {
      const x = at * share;
      const [from, to] = [x, x + share - GAP];
      const name = words(x, top - 9, `From ${strip.from}`, { name: "strong", size: 10.6 });
      const before = { from: [from, top], to: [to, top], inward: [0, 1] } as const;
      const after = { from: [from, bottom], to: [to, bottom], inward: [0, -1] } as const;
      return (
        line("edge", x, top, x, bottom) +
        name +
        marksSvg(strip, x, number * BODY.height) +
        (number > 0 ? joinSvg({ ...before, other: page - 1, isCut: true }) : "") +
        (number < count - 1 ? joinSvg({ ...after, other: page + 1, isCut: false }) : "")
      );
    })
    .join("");
}

/** Returns the sheets of the story stick, as many strips side by side as their labels allow. */
export function stickSheets(marks: Mark[], tool: string): Sheet[] {
  if (marks.length === 0) return [];
  const values = marks.map(({ value }) => value * INCH);
  const start = Math.min(0, ...values);
  const count = Math.max(1, Math.ceil((Math.max(0, ...values) - start - SAME) / BODY.height));
  const strips = stripsOf(marks, start);
  const room = Math.max(...strips.flatMap((each) => each.marks.map(needed)));
  const beside = Math.max(1, Math.min(strips.length, Math.floor(WIDTH / room)));
  const sheets: Sheet[] = [];
  for (let first = 0; first < strips.length; first += beside) {
    const group = { strips: strips.slice(first, first + beside), count, share: WIDTH / beside };
    for (let number = 0; number < count; number += 1) {
      const draw = (page: number): string => tileSvg({ ...group, number }, page);
      sheets.push({ title: `${tool}: story stick`, draw });
    }
  }
  return sheets;
}
