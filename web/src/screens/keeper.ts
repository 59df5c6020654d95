/** Saves a tool's form soon after each change, and at once when the page is hidden. */
import { saveForm } from "../engine/store";
import type { RawInputs, Units } from "../contract";

const DELAY = 250;
/** A saved form says in which units its bare numbers were typed, as an address does. */
const UNITS = "units";

let waiting: { slug: string; inputs: RawInputs } | null = null;
let timer = 0;
let writing: Promise<void> = Promise.resolve();
let onFault: (words: string) => void = () => undefined;

/** Tells `say` in words when something could not be kept. */
export function tellFaults(say: (words: string) => void): void {
  onFault = say;
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") void flushed();
  });
  addEventListener("pagehide", () => void flushed());
}

/** Keeps `inputs` within a quarter of a second; a later change of the same form replaces it. */
export function keepSoon(slug: string, inputs: RawInputs, units: Units): void {
  if (waiting && waiting.slug !== slug) void flushed();
  waiting = { slug, inputs: { ...inputs, [UNITS]: units } };
  clearTimeout(timer);
  timer = window.setTimeout(() => void flushed(), DELAY);
}

/** Resolves when everything typed so far is written, or was said to be impossible to keep. */
export function flushed(): Promise<void> {
  clearTimeout(timer);
  const entry = waiting;
  waiting = null;
  if (entry) writing = writing.then(() => saveForm(entry.slug, entry.inputs)).catch(faulted);
  return writing;
}

/** Splits a saved form into its inputs and the units they were typed in. */
export function unpacked(saved: RawInputs): { inputs: RawInputs; units: Units } {
  const { [UNITS]: units, ...inputs } = saved;
  return { inputs, units: units === "mm" ? "mm" : "in" };
}

/** Says in words that something could not be kept. */
export function faulted(error: unknown): void {
  console.error(error);
  onFault(error instanceof Error ? error.message : "What was typed could not be kept.");
}
