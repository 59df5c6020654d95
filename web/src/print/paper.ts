/**
 * The sheet that fits US Letter and A4 alike, and what stands on each one. All in millimeters.
 *
 * 7 1/4 by 9 7/8 inches: what A4's width and Letter's height leave inside margins of 12 mm, and a
 * whole number of CSS pixels each way, so that no browser's rounding to pixels changes its size.
 */
import { escaped, textSvg, textWidth } from "../drawing/label";

export const INCH = 25.4;
export const WIDTH = 7.25 * INCH;
export const HEIGHT = 9.875 * INCH;

/** The part of a sheet between its title and its check ruler. */
export const BODY = { top: 12.5, height: 8.5 * INCH };

export interface Sheet {
  title: string;
  /** Returns the SVG of what the sheet is for; `page` is its number in the whole print, from 1. */
  draw(page: number): string;
}

/** Text of the drawings stands 14 user units high; its fractions are set in the same units. */
const DRAWN = 14;

/** Returns a number of millimeters to a thousandth. */
export function mm(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}

/** Returns a straight line between two points. */
export function line(name: string, x1: number, y1: number, x2: number, y2: number): string {
  return `<line class="${name}" x1="${mm(x1)}" y1="${mm(y1)}" x2="${mm(x2)}" y2="${mm(y2)}"/>`;
}

export interface Setting {
  size?: number;
  anchor?: "start" | "middle" | "end";
  name?: string;
}

/** Returns one line of text on the baseline at `y`, fractions set small. */
export function words(x: number, y: number, text: string, setting: Setting = {}): string {
  const { size = 3.2, anchor = "start", name = "plain" } = setting;
  const place = `translate(${mm(x)} ${mm(y)}) scale(${mm(size / DRAWN)})`;
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

const RULER = HEIGHT - 9;
const ADVICE = [
  "Check this ruler before use: 4 in along its upper",
  "edge, 100 mm along its lower edge. If it is off,",
  "print again at 100 %, not fitted to the page.",
];

/** Each edge with its own line, so that neither length depends on how the other is read. */
function edge(unit: number, count: number, longer: number, way: number, label: string): string {
  const ticks = Array.from({ length: count + 1 }, (_, at) => {
    const length = at % longer === 0 ? 4 : 2.2;
    return line("fine", at * unit, RULER + way * 0.6, at * unit, RULER + way * (0.6 + length));
  });
  const y = RULER + way * 0.6;
  const text = words(count * unit - 1.5, RULER + way * 5.2 + (way > 0 ? 2.4 : 0), label, {
    anchor: "end",
  });
  return line("ruler", 0, y, count * unit, y) + ticks.join("") + text;
}

function ruler(): string {
  const advice = ADVICE.map((text, at) => words(108, RULER - 3 + at * 4.4, text, { size: 2.9 }));
  return edge(INCH / 8, 32, 8, -1, "4 in") + edge(2, 50, 5, 1, "100 mm") + advice.join("");
}

/** Returns one page as SVG at its true size. */
export function sheetSvg(sheet: Sheet, page: number, pages: number): string {
  const number = words(WIDTH, 4, `${page} of ${pages}`, { anchor: "end", name: "strong" });
  const size = `width="${mm(WIDTH)}mm" height="${mm(HEIGHT)}mm"`;
  return (
    `<svg class="sheet" ${size} viewBox="0 0 ${mm(WIDTH)} ${mm(HEIGHT)}" role="img" ` +
    `aria-label="${escaped(sheet.title)}, page ${page} of ${pages}">` +
    `${words(0, 4, sheet.title, { name: "strong" })}${number}${sheet.draw(page)}${ruler()}</svg>`
  );
}
