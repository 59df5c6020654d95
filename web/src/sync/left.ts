/** What one person left on this phone that had not gone up when another signed in: it waits for a word. */
import { inOneLine } from "./words";

export interface Left {
  by: string;
  /** Of documents. */
  names: string[];
}

/** Who was signed in last on this device; an empty name after what the server has was taken off it. */
export interface Who {
  person: string;
  device: string;
  left?: Left | null;
}

/**
 * Returns what waits once `person` has signed in: it never goes up in another's name by itself.
 *
 * @param toGo names of the documents that have not gone up
 */
export function leftNow(before: Who | null, person: string, toGo: string[]): Left | null {
  const left = before?.left ?? null;
  if (left?.by === person) return null;
  if (!before?.person || before.person === person) return left && stillLeft(left, toGo);
  return toGo.length > 0 ? { by: left?.by ?? before.person, names: toGo } : null;
}

export function stillLeft({ by, names }: Left, toGo: string[]): Left | null {
  const still = names.filter((name) => toGo.includes(name));
  return still.length > 0 ? { by, names: still } : null;
}

export function leftWords({ by }: Left, called: readonly string[]): string {
  const what = called.length === 1 ? "1 thing" : `${called.length} things`;
  return `${by} left ${what} on this phone that had not gone up: ${inOneLine(called)}.`;
}
