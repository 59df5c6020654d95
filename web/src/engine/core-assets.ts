import { sources, wasm } from "longpoint:assets";
import type { CoreAssets } from "../worker/messages";
import { address } from "./site-url";

async function get(path: string): Promise<Response> {
  const response = await fetch(address(path));
  if (!response.ok) throw new Error(`${path} was answered with ${response.status}`);
  return response;
}

async function load(): Promise<CoreAssets> {
  const [wasmFile, sourcesFile] = await Promise.all([get(wasm), get(sources)]);
  return { wasm: await wasmFile.arrayBuffer(), sources: await sourcesFile.json() };
}

let held: Promise<CoreAssets> | undefined;

/**
 * Fetch the interpreter and the core's sources, once for the life of the page.
 *
 * They are held because a restart must not depend on the network or on files that an update
 * accepted in another tab has taken away. A failed fetch is forgotten, so that the next asks again.
 */
export function loadCoreAssets(): Promise<CoreAssets> {
  if (!held) {
    held = load();
    held.catch(() => (held = undefined));
  }
  return held;
}
