/** A link as a QR code (ISO/IEC 18004), for the camera of another phone. */
import { svg, type SVGTemplateResult } from "lit";
import { encode } from "uqr";

/** Modules of white around a code: the standard's quiet zone. */
const QUIET = 4;

/** Bytes in the largest code, version 40 with the least correction (ISO/IEC 18004, table 7). */
const MOST = 2953;

/** Whether a link fits into one code. */
export function fitsCode(link: string): boolean {
  return new TextEncoder().encode(link).length <= MOST;
}

/** Returns a code as squares of 1: each run of dark modules in a row is one stroke of the path. */
export function codePath(link: string): { size: number; path: string } {
  const { data, size } = encode(link, { ecc: "L", border: QUIET });
  const runs = data.flatMap((row, y) =>
    row.map((isDark, x) => (isDark ? `M${x} ${y}h1v1h-1z` : "")),
  );
  return { size, path: runs.join("") };
}

/** Returns the code, black on white in any light: cameras look for dark on light. */
export function codePicture(link: string): SVGTemplateResult {
  const { size, path } = codePath(link);
  return svg`<svg class="code" viewBox="0 0 ${size} ${size}" role="img" aria-label="QR code of this job"
    shape-rendering="crispEdges">
    <rect width=${size} height=${size} fill="#fff"></rect><path d=${path} fill="#000"></path>
  </svg>`;
}
