import { loadMicroPython, type MicroPython } from "@micropython/micropython-webassembly-pyscript";
import type { CoreAssets } from "./messages";

/** A name for the interpreter's file; it is answered from memory and never asked of a server. */
const WASM = "micropython.wasm";

/**
 * Answer the interpreter's request for its own file from `wasm`.
 *
 * Firefox refuses a worker's fetch while offline before the service worker can answer it
 * (bugzilla 2067202), so the page fetches the bytes and the worker gets them by message.
 */
function serveFromMemory(wasm: ArrayBuffer): void {
  const ask = self.fetch.bind(self);
  self.fetch = (what, options) =>
    what === WASM
      ? Promise.resolve(new Response(wasm, { headers: { "Content-Type": "application/wasm" } }))
      : ask(what, options);
}

/** Folders once and bytes for text: the interpreter's own ways to both take five times as long. */
function writeSources({ FS }: MicroPython, sources: CoreAssets["sources"]): void {
  const encoder = new TextEncoder();
  const folders = Object.keys(sources).map((path) => path.slice(0, path.lastIndexOf("/")));
  for (const folder of new Set(folders)) FS.mkdirTree(`/lib/${folder}`);
  for (const [path, text] of Object.entries(sources)) {
    FS.writeFile(`/lib/${path}`, encoder.encode(text));
  }
}

/**
 * Start MicroPython and return the core's one entry: JSON text in, JSON text out.
 *
 * Call it once in a worker: a second interpreter would take over the first one's globals.
 */
export async function boot({ wasm, sources }: CoreAssets): Promise<(text: string) => string> {
  serveFromMemory(wasm);
  const python = await loadMicroPython({ url: WASM });
  writeSources(python, sources);
  const { call } = python.pyimport("longpoint.trade.calls");
  return call;
}
