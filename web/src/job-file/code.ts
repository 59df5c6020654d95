/** A link as a QR code (ISO/IEC 18004), for the camera of another phone. */
import { svg, type SVGTemplateResult } from "lit";
import { encode } from "uqr";

/** Modules of white around a code: the standard's quiet zone. */
const QUIET = 4;

/** Returns a code as squares of 1. */
function codePath(link: string): { size: number; path: string } {
  const { data, size } = encode(link, { ecc: "L", border: QUIET });
  const dark = data.flatMap((row, y) => row.map((isDark, x) => (isDark ? `M${x} ${y}h1v1h-1z` : "")));
  return { size, path: dark.join("") };
}

/** Returns the code, black on white in any light: cameras look for dark on light. */
export function codePicture(link: string): SVGTemplateResult {
  const { size, path } = codePath(link);
  return svg`<svg class="code" viewBox="0 0 ${size} ${size}" role="img" aria-label="QR code of this job"
    shape-rendering="crispEdges">
    <rect width=${size} height=${size} fill="#fff"></rect><path d=${path} fill="#000"></path>
  </svg>`;
}
