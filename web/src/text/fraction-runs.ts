/**
 * Splits any text into plain runs and fraction runs; everything that shows a fraction uses this.
 *
 * A fraction is a proper one over a part that rules, pencils and settings use, standing free of letters:
 * `27 13/16`, `27-13/16`, `3/32`. Labels (`5/4x6`, `8/4`), clause numbers and `and/or` stay plain.
 */

export type Run =
  | { kind: "plain"; text: string }
  | { kind: "fraction"; whole: string; over: string; under: string };

const FRACTION = /(?<![\w/.,])(?:(\d+)[ \u00a0-])?(\d{1,3})\/(2|3|4|5|6|8|10|16|32|64|100|128)(?![\w/]|\.\d)/g;

/** Returns the runs of `text` in order; joining them again gives the same reading. */
export function runs(text: string): Run[] {
  const found: Run[] = [];
  let from = 0;
  for (const hit of text.matchAll(FRACTION)) {
    const [whole, over, under] = [hit[1] ?? "", hit[2] ?? "", hit[3] ?? ""];
    if (Number(over) >= Number(under) || Number(over) === 0) continue;
    if (hit.index > from) found.push({ kind: "plain", text: text.slice(from, hit.index) });
    found.push({ kind: "fraction", whole, over, under });
    from = hit.index + hit[0].length;
  }
  if (from < text.length) found.push({ kind: "plain", text: text.slice(from) });
  return found;
}

/** Returns `text` as it is said aloud: `27 13/16` becomes "27 and 13/16". */
export function spoken(text: string): string {
  return runs(text)
    .map((run) => (run.kind === "plain" ? run.text : said(run.whole, run.over, run.under)))
    .join("");
}

function said(whole: string, over: string, under: string): string {
  return whole ? `${whole} and ${over}/${under}` : `${over}/${under}`;
}

/** Splits a shown value into its number and the words after it: "60 1/16" and "shy". */
export function numberAndWords(text: string): [number: string, words: string] {
  const hit = /^([-\u2212]?[$\d][\d\s./,°'"″′-]*?)\s*((?:°[CF]|[A-Za-z%])[A-Za-z% ]*)?$/.exec(text);
  return hit ? [hit[1] ?? "", hit[2] ?? ""] : [text, ""];
}
