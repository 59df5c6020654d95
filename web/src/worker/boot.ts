import { loadMicroPython, type MicroPython } from "@micropython/micropython-webassembly-pyscript";
import type { CoreAssets } from "./messages";
import { filesOf } from "./parts";

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

/**
 * Bytes that are used before garbage is collected, between two calls: it takes some milliseconds
 * however little there is, and after 16 KB, as the interpreter has it, nearly each call would wait.
 */
const GARBAGE = 4_000_000;

/** The core, started. */
export interface Core {
  /** Put further parts where the core's imports look. */
  add(parts: ArrayBuffer[]): void;
  /** The core's one entry: JSON text in, JSON text out. */
  call(text: string): string;
}

/** Each folder is made once: making them takes as long as writing the files. */
function write({ FS }: MicroPython, parts: ArrayBuffer[]): void {
  const files = parts.flatMap(filesOf);
  const folders = files.map(([path]) => path.slice(0, path.lastIndexOf("/")));
  for (const folder of new Set(folders)) FS.mkdirTree(`/lib/${folder}`);
  for (const [path, content] of files) FS.writeFile(`/lib/${path}`, content);
}

/**
 * Start MicroPython with some parts of the core.
 *
 * Call it once in a worker: a second interpreter would take over the first one's globals.
 */
export async function boot({ wasm, parts }: CoreAssets): Promise<Core> {
  serveFromMemory(wasm);
  const python = await loadMicroPython({ url: WASM });
  write(python, parts);
  python.pyimport("gc").threshold(GARBAGE);
  const { call } = python.pyimport("longpoint.trade.calls");
  return { add: (more) => write(python, more), call };
}
