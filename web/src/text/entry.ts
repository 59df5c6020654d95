/**
 * What the pad's keys do to the text of an entry. Pure: text in, text out.
 *
 * The entry is the very text the core reads, so the pad, a hardware keyboard and a shared address
 * all carry the same forms.
 */

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
