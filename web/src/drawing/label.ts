/** Text inside a drawing: its estimated width in pixels and its SVG, fractions set small. */
import { runs, type Run } from "../text/fraction-runs";

/** Pixels; the stylesheet sets the same size. */
export const TEXT_SIZE = 14;
export const TEXT_HEIGHT = 18;

const WIDE = 0.6 * TEXT_SIZE;
/** What an M or a W is wider than other letters. */
const WIDER = 0.5 * TEXT_SIZE;
const SMALL = 0.42 * TEXT_SIZE;

function runWidth(run: Run): number {
  if (run.kind === "plain") return run.text.length * WIDE + (run.text.split(/[MW]/).length - 1) * WIDER;
  return run.whole.length * WIDE + (run.over.length + run.under.length + 1) * SMALL + 3;
}

/** Returns about how many pixels wide `text` is drawn; no font is measured. */
export function textWidth(text: string): number {
  return runs(text).reduce((sum, run) => sum + runWidth(run), 0) + 4;
}

/** Returns `text` fit for XML. */
export function escaped(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}

/**
 * Relative shifts, not positions, so that the whole text keeps one anchor. A character of no width
 * before a bare fraction takes the shift of the whole text, which the fraction's own would undo.
 */
function runSvg(run: Run): string {
  if (run.kind === "plain") return `<tspan>${escaped(run.text)}</tspan>`;
  const whole = `<tspan>${run.whole || "\u200b"}</tspan>`;
  const gap = run.whole ? ` dx="2"` : "";
  return (
    `${whole}<tspan class="small" dy="-4"${gap}>${run.over}</tspan>` +
    `<tspan dy="4">\u2044</tspan><tspan class="small" dy="2">${run.under}</tspan>` +
    `<tspan dy="-2">\u200b</tspan>`
  );
}

/** Returns the inside of a `<text>` element. */
export function textSvg(text: string): string {
  return runs(text).map(runSvg).join("");
}
