/**
 * Keeps what was typed true when the units in force change.
 *
 * A bare number is in the units in force, so a change of units would change what it means. Its unit
 * is written out instead ("27 13/16" becomes "27 13/16 in"); when its own units come back into
 * force the bare form returns. A sum is worked out and written as one length.
 */
import type { Input, Raw, RawInputs, RawRow, Scale, Units } from "../contract";
import type { Core } from "../engine/core";

const BARE = /^\s*(?:[\d.]+|[\d\s./\u2044¼-¾⅐-⅞]+|\d+-\d+\/\d+)\s*$/;
const MARKED = { in: /^([\d\s./-]+?)\s*in$/, mm: /^([\d\s./-]+?)\s*mm$/ };

type Reader = Pick<Core, "read">;

/** Returns `inputs`, typed under `from`, so that they mean the same under `to`. */
export async function respelled(
  asked: Input[], inputs: RawInputs, from: Scale, to: Units, core: Reader,
): Promise<RawInputs> {
  if (from.units === to) return inputs;
  const changed: RawInputs = { ...inputs };
  for (const input of asked) {
    const value = inputs[input.name];
    if (input.kind === "length" && typeof value === "string") {
      changed[input.name] = await respelledText(value, from, to, core);
    }
    if (input.kind === "rows" && Array.isArray(value)) {
      const rows = value.map((row) => respelled(input.columns ?? [], row, from, to, core));
      changed[input.name] = (await Promise.all(rows)) as RawRow[];
    }
  }
  return changed;
}

async function respelledText(text: string, from: Scale, to: Units, core: Reader): Promise<Raw> {
  if (!text.trim()) return text;
  const own = MARKED[to].exec(text.trim());
  if (own) return own[1] ?? text;
  if (BARE.test(text)) return `${text.trim()} ${from.units}`;
  if (/[a-z'"′″’”]/i.test(text) && !/\s[+\u2212-]\s/.test(text)) return text;
  const read = await core.read("length", text, from);
  return read.ok ? written(read.value, from.units) : text;
}

/** `inches` as a decimal with its unit; a millionth is far below what any saw can cut. */
function written(inches: number, units: Units): string {
  const value = units === "mm" ? inches * 25.4 : inches;
  return `${Math.round(value * 1e6) / 1e6} ${units}`;
}
