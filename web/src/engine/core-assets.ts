import { needs, parts, wasm } from "longpoint:assets";
import type { CoreAssets } from "../worker/messages";
import { address } from "./site-url";

const FRAME = "frame";

const held = new Map<string, Promise<ArrayBuffer>>();

async function get(path: string): Promise<ArrayBuffer> {
  const response = await fetch(address(path));
  if (!response.ok) throw new Error(`${path} was answered with ${response.status}`);
  return response.arrayBuffer();
}

/** Fetch a file once for the life of the page; a failed fetch is forgotten, the next asks again. */
function hold(path: string): Promise<ArrayBuffer> {
  const known = held.get(path);
  if (known) return known;
  const file = get(path);
  held.set(path, file);
  file.catch(() => held.delete(path));
  return file;
}

function partOf(room: string): Promise<ArrayBuffer> {
  const path = parts[room];
  if (path === undefined) throw new Error(`the core has no room ${room}`);
  return hold(path);
}

/** Return the rooms of the core that some tools need, the frame first. */
export function roomsOf(tools: readonly string[]): string[] {
  const rooms = ["", ...tools].flatMap((tool) => needs[tool] ?? []);
  return [...new Set([FRAME, ...rooms])];
}

/** Fetch the parts of some rooms. */
export function loadParts(rooms: readonly string[]): Promise<ArrayBuffer[]> {
  return Promise.all(rooms.map(partOf));
}

/** Fetch the interpreter and the parts that the core starts with. */
export async function loadCoreAssets(rooms: readonly string[]): Promise<CoreAssets> {
  const [interpreter, first] = await Promise.all([hold(wasm), loadParts(rooms)]);
  return { wasm: interpreter, parts: first };
}

/**
 * Fetch every part, for later.
 *
 * A tool opened later or a restart must not depend on the network, or on files that an update
 * accepted in another tab has taken away.
 */
export function loadRest(): void {
  loadParts(Object.keys(parts)).catch(() => undefined); // no network now: asked again when needed
}
