/** Saves a tool's form at each change; while one write is under way only the newest form waits. */
import { saveForm } from "./store";
import type { RawInputs, Units } from "../contract/contract";

/** A saved form says in which units its bare numbers were typed, as an address does. */
const UNITS = "units";

/** Where a page that goes leaves what the storage had no time for. */
const LEFT = "longpoint unwritten";

const waiting = new Map<string, RawInputs>();
/** What is not surely written yet: waiting, or in a write under way. */
const unwritten = new Map<string, RawInputs>();
let isLeft = false;
let writing: Promise<void> = Promise.resolve();
let onFault: (words: string) => void = () => undefined;

takeUp();
addEventListener("pagehide", leave);

/** Tells `say` in words when something could not be kept. */
export function onStorageFault(say: (words: string) => void): void {
  onFault = say;
}

/** Keeps `inputs` as soon as the storage is free; a later change under that name replaces it. */
export function autosave(name: string, inputs: RawInputs, units: Units): void {
  put(name, { ...inputs, [UNITS]: units });
}

/** Resolves when everything typed so far is written, or was said to be impossible to keep. */
export function flushed(): Promise<void> {
  return writing;
}

function put(name: string, form: RawInputs): void {
  waiting.set(name, form);
  unwritten.set(name, form);
  writing = writing.then(writeWaiting);
}

async function writeWaiting(): Promise<void> {
  const forms = [...waiting];
  waiting.clear();
  await Promise.all(forms.map(([name, form]) => write(name, form)));
  if (isLeft && unwritten.size === 0) localStorage.removeItem(LEFT);
}

async function write(name: string, form: RawInputs): Promise<void> {
  await saveForm(name, form).catch(storageFault);
  if (unwritten.get(name) === form) unwritten.delete(name);
}

/** A reload in the middle of typing ends the page before the database answers; this is at once. */
function leave(): void {
  if (unwritten.size === 0) return;
  try {
    localStorage.setItem(LEFT, JSON.stringify([...unwritten]));
    isLeft = true;
  } catch (error) {
    console.warn(error);
  }
}

/** Writes what the page before this one left. */
function takeUp(): void {
  try {
    const left = JSON.parse(localStorage.getItem(LEFT) ?? "[]") as [string, RawInputs][];
    localStorage.removeItem(LEFT);
    for (const [name, form] of left) put(name, form);
  } catch (error) {
    console.warn(error);
  }
}

/** Splits a saved form into its inputs and the units they were typed in. */
export function unpacked(saved: RawInputs): { inputs: RawInputs; units: Units } {
  const { [UNITS]: units, ...inputs } = saved;
  return { inputs, units: units === "mm" ? "mm" : "in" };
}

/** Says in words that something could not be kept. */
export function storageFault(error: unknown): void {
  console.error(error);
  onFault(error instanceof Error ? error.message : "What was typed could not be kept.");
}
