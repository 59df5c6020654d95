/**
 * The sheet that fits US Letter and A4 alike, and what stands on each one. All in CSS pixels, which
 * are 96 to the inch on paper.
 *
 * 7 1/4 by 9 7/8 inches: what A4's width and Letter's height leave inside margins of 12 mm, and a
 * whole number of pixels each way, so that no browser's rounding to pixels changes its size.
 */
import { escaped, textSvg, textWidth } from "../drawing/label";

export const INCH = 96;
export const WIDTH = 7.25 * INCH;
export const HEIGHT = 9.875 * INCH;

/** The part of a sheet between its title and its check ruler. */
export const BODY = { top: 47, height: 8.5 * INCH };

export interface Sheet {
  title: string;
  /** Returns the SVG of what the sheet is for; `page` is its number in the whole print, from 1. */
  draw(page: number): string;
}

/** Text of the drawings stands 14 user units high; its fractions are set in the same units. */
const DRAWN = 14;

/** Returns a number of pixels to a thousandth. */
export function px(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}

/** Returns a straight line between two points. */
export function line(name: string, x1: number, y1: number, x2: number, y2: number): string {
  return `<line class="${name}" x1="${px(x1)}" y1="${px(y1)}" x2="${px(x2)}" y2="${px(y2)}"/>`;
}

export interface Setting {
  size?: number;
  anchor?: "start" | "middle" | "end";
  name?: string;
}

/** Returns one line of text on the baseline at `y`, fractions set small. */
export function words(x: number, y: number, text: string, setting: Setting = {}): string {
  const { size = 12, anchor = "start", name = "plain" } = setting;
  const place = `translate(${px(x)} ${px(y)}) scale(${px(size / DRAWN)})`;
  return `<text class="${name}" transform="${place}" text-anchor="${anchor}">${textSvg(text)}</text>`;
}

/** Returns about how wide `text` is at `size`. */
export function wide(text: string, size: number): number {
  return (textWidth(text) * size) / DRAWN;
}

/** Returns `text` as lines that are about as wide as the sheet at most. */
export function wrapped(text: string, size: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const longer = `${lines.at(-1) ?? ""} ${word}`.trimStart();
    if (lines.length > 0 && wide(longer, size) <= WIDTH) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

const RULER = HEIGHT - 34;
const ADVICE = [
  "Check this ruler before use: 4 in along its upper",
  "edge, 100 mm along its lower edge. If it is off,",
  "print again at 100 %, not fitted to the page.",
];

/**
 * Each edge with its own line and in its own unit, so that neither length depends on how the other
 * is read.
 */
function edge(unit: "in" | "mm", step: number, count: number, longer: number, label: string): string {
  const way = unit === "in" ? -1 : 1;
  const place = (at: number): string => `${at * step}${unit}`;
  const upright = (at: number, length: number): string =>
    `<line class="fine" x1="${place(at)}" y1="${px(RULER + way * 2.3)}" ` +
    `x2="${place(at)}" y2="${px(RULER + way * (2.3 + length))}"/>`;
  const ticks = Array.from({ length: count + 1 }, (_, at) => upright(at, at % longer === 0 ? 15 : 8.3));
  const y = px(RULER + way * 2.3);
  const text = RULER + way * 19.7 + (way > 0 ? 9 : 0);
  return (
    `<line class="ruler" x1="0" y1="${y}" x2="${place(count)}" y2="${y}"/>${ticks.join("")}` +
    `<svg x="${place(count)}" y="${px(text)}" overflow="visible">${words(-6, 0, label, { anchor: "end" })}</svg>`
  );
}

function ruler(): string {
  const advice = ADVICE.map((text, at) => words(408, RULER - 11 + at * 16.6, text, { size: 11 }));
  return edge("in", 1 / 8, 32, 8, "4 in") + edge("mm", 2, 50, 5, "100 mm") + advice.join("");
}

/** Returns one page as SVG at its true size. */
export function sheetSvg(sheet: Sheet, page: number, pages: number): string {
  const number = words(WIDTH, 15, `${page} of ${pages}`, { anchor: "end", name: "strong" });
  const size = `width="${WIDTH}px" height="${HEIGHT}px"`;
  return (
    `<svg class="sheet" ${size} viewBox="0 0 ${px(WIDTH)} ${px(HEIGHT)}" role="img" ` +
    `aria-label="${escaped(sheet.title)}, page ${page} of ${pages}">` +
    `${words(0, 15, sheet.title, { name: "strong" })}${number}${sheet.draw(page)}${ruler()}</svg>`
  );
}
