import { needs, parts } from "longpoint:assets";
import type { CoreAssets } from "../worker/messages";
import { fetchAssets } from "./core-worker";
import { bytesOf } from "./files";
import { isKept } from "./site-url";
import { afterStart } from "./start";

let assets: Promise<CoreAssets> | undefined;

function keep(fetching: Promise<CoreAssets>): Promise<CoreAssets> {
  assets = fetching;
  fetching.catch(() => (assets = undefined));
  return fetching;
}

if (globalThis.coreAtOnce) keep(globalThis.coreAtOnce.assets);

/** Return what a core starts with, fetched once for the life of the page unless that fails. */
export function coreAssets(): Promise<CoreAssets> {
  return assets ?? keep(fetchAssets());
}

function load(part: string): Promise<ArrayBuffer> {
  const path = parts[part];
  if (path === undefined) throw new Error(`the core has no part ${part}`);
  return bytesOf(path);
}

/** Return the parts of the core that some tools need beside the frame. */
export function partsOf(tools: readonly string[]): string[] {
  const known = ["", ...tools].filter((tool) => Object.hasOwn(needs, tool));
  return [...new Set(known.flatMap((tool) => needs[tool] ?? []))];
}

export function loadParts(names: readonly string[]): Promise<ArrayBuffer[]> {
  return Promise.all(names.map(load));
}

let rest: Promise<void> | undefined;

/**
 * Take every further part out of what is kept on the phone, for later.
 *
 * A tool opened later or a restart must not depend on files that an update accepted in another tab
 * has taken away.
 */
export function loadRest(): void {
  if (isKept()) rest ??= inTurn(); // else nothing is kept yet
}

/** One part after the other, once what was just answered is drawn. */
async function inTurn(): Promise<void> {
  await afterStart();
  for (const part of Object.keys(parts)) await load(part).catch(() => undefined); // asked again when needed
}
