import { needs, parts, wasm } from "longpoint:assets";
import type { CoreAssets } from "../worker/messages";
import { bytesOf } from "./files";

const FRAME = "frame";

function load(part: string): Promise<ArrayBuffer> {
  const path = parts[part];
  if (path === undefined) throw new Error(`the core has no part ${part}`);
  return bytesOf(path);
}

/** Return the parts of the core that some tools need, the frame first. */
export function partsOf(tools: readonly string[]): string[] {
  const known = ["", ...tools].filter((tool) => Object.hasOwn(needs, tool));
  return [...new Set([FRAME, ...known.flatMap((tool) => needs[tool] ?? [])])];
}

export function loadParts(names: readonly string[]): Promise<ArrayBuffer[]> {
  return Promise.all(names.map(load));
}

/** Fetch the interpreter and the parts that the core starts with. */
export async function loadCoreAssets(names: readonly string[]): Promise<CoreAssets> {
  const [interpreter, first] = await Promise.all([bytesOf(wasm), loadParts(names)]);
  return { wasm: interpreter, parts: first };
}

let rest: Promise<void> | undefined;

/**
 * Take every part out of what is kept on the phone, for later.
 *
 * A tool opened later or a restart must not depend on files that an update accepted in another tab
 * has taken away.
 */
export function loadRest(): void {
  if (navigator.serviceWorker?.controller) rest ??= inTurn(); // else nothing is kept yet
}

/** One part after the other, once what was just answered is drawn: a page is at work. */
async function inTurn(): Promise<void> {
  await new Promise((resolve) => setTimeout(resolve));
  for (const part of Object.keys(parts)) await load(part).catch(() => undefined); // asked again when needed
}
