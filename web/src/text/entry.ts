/**
 * What the pad's keys do to the text of an entry. Pure: text in, text out.
 *
 * The entry is the very text the core reads, so the pad, a hardware keyboard and a shared address
 * all carry the same forms.
 */

/** The last term of a sum: everything after the last free-standing plus or minus. */
const LAST_TERM = /^([\s\S]*\s[+\u2212-]\s*|)([^]*)$/;
const FRACTION_END = /^(.*?)(?:(\d+)[ -])?(\d+)\/(\d+)$/;
const WORD_END = /\s(?:ft|in|mm)\s?$/;
const OPERATOR_END = /\s?[+\u2212-]\s?$/;

/** Returns `text` with a digit, point, slash or other character typed at its end. */
export function type(text: string, character: string): string {
  if (character === " ") return /[\d.'"]$/.test(text) ? `${text} ` : text;
  if (/\d/.test(character) && /(?:ft|in|mm)$/.test(text)) return `${text} ${character}`;
  return text + character;
}

/** Returns `text` with a unit written after its last number. */
export function unit(text: string, word: string): string {
  const bare = text.replace(/\s*(?:ft|in|mm)?\s*$/, (end) => (/ft/.test(end) && word === "in" ? end : ""));
  return /\d$/.test(bare) ? `${bare} ${word}` : text;
}

/** Returns `text` without its last character; an operator or a unit goes as a whole. */
export function backspace(text: string): string {
  for (const whole of [WORD_END, OPERATOR_END]) {
    if (whole.test(text)) return text.replace(whole, "");
  }
  return text.slice(0, -1).trimEnd();
}

/** Returns `text` with a plus after it; pressed again the plus turns into a minus and back. */
export function plusMinus(text: string): string {
  const body = text.trimEnd();
  if (body === "" || body === "-") return body === "" ? "-" : "";
  if (/\s[+]$/.test(body)) return `${body.slice(0, -1)}- `;
  if (/\s[\u2212-]$/.test(body)) return `${body.slice(0, -1)}+ `;
  return `${body} + `;
}

/** Returns `text` with the fraction of its last term replaced by `over`/`under`; 0 takes it away. */
export function setFraction(text: string, over: number, under: number): string {
  const [, before = "", term = ""] = LAST_TERM.exec(text) ?? [];
  const [number = "", tail = ""] = splitUnit(term.trim());
  const base = wholePart(number);
  const part = over === 0 ? "" : reduced(over, under);
  const shown = [base.lead, base.whole, part].filter((word) => word !== "").join(" ");
  return before + (shown || (over === 0 ? "0" : "")) + tail;
}

/** Returns the fraction the last term ends with as a share of one, or null where it has none. */
export function fractionOf(text: string): number | null {
  const [, , term = ""] = LAST_TERM.exec(text) ?? [];
  const [number = ""] = splitUnit(term.trim());
  const hit = FRACTION_END.exec(number);
  if (hit) return Number(hit[4]) > 0 ? Number(hit[3]) / Number(hit[4]) : null;
  const decimal = /\.\d+$/.exec(number);
  if (decimal) return Number(`0${decimal[0]}`);
  return /\d$/.test(number) ? 0 : null;
}

function splitUnit(term: string): [string, string] {
  if (/mm$/.test(term)) return ["", ""];
  const hit = /^(.*?)(\s*(?:in|"|″)\s*)$/.exec(term);
  return hit ? [hit[1] ?? "", hit[2] ?? ""] : [term, ""];
}

/** Parts of a term: what stands before its whole inches (feet, a sign) and the whole inches. */
function wholePart(number: string): { lead: string; whole: string } {
  const hit = FRACTION_END.exec(number);
  const rest = hit ? `${hit[1] ?? ""}${hit[2] ?? ""}` : number.replace(/\.\d*$/, "");
  const digits = /^(.*?)(\d*)$/.exec(rest.trim());
  return { lead: (digits?.[1] ?? "").trim(), whole: digits?.[2] ?? "" };
}

function reduced(over: number, under: number): string {
  return over % 2 === 0 && under % 2 === 0 ? reduced(over / 2, under / 2) : `${over}/${under}`;
}
