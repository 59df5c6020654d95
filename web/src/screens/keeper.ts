/** Saves a tool's form at each change; while one write is under way only the newest form waits. */
import { saveForm } from "../engine/store";
import type { RawInputs, Units } from "../contract";

/** A saved form says in which units its bare numbers were typed, as an address does. */
const UNITS = "units";

const waiting = new Map<string, RawInputs>();
let writing: Promise<void> = Promise.resolve();
let onFault: (words: string) => void = () => undefined;

/** Tells `say` in words when something could not be kept. */
export function tellFaults(say: (words: string) => void): void {
  onFault = say;
}

/** Keeps `inputs` as soon as the storage is free; a later change under that name replaces it. */
export function keepSoon(name: string, inputs: RawInputs, units: Units): void {
  waiting.set(name, { ...inputs, [UNITS]: units });
  writing = writing.then(writeWaiting);
}

/** Resolves when everything typed so far is written, or was said to be impossible to keep. */
export function flushed(): Promise<void> {
  return writing;
}

async function writeWaiting(): Promise<void> {
  const forms = [...waiting];
  waiting.clear();
  await Promise.all(forms.map(([slug, inputs]) => saveForm(slug, inputs).catch(faulted)));
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
