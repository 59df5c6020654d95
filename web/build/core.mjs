import { loadMicroPython } from "@micropython/micropython-webassembly-pyscript";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";

const entry = createRequire(import.meta.url).resolve(
  "@micropython/micropython-webassembly-pyscript",
);

/** Where the interpreter's wasm lies. */
export const wasmPath = join(dirname(entry), "micropython.wasm");

/**
 * A request in, its reply out; throws when the core breaks.
 * @typedef {(request: object) => any} Ask
 */

/**
 * Start the core in MicroPython, the interpreter that runs it on the phone.
 *
 * @param {import("../src/worker/parts").File[]} files
 * @returns {Promise<Ask>}
 */
export async function startCore(files) {
  const python = await loadMicroPython({ url: wasmPath });
  for (const [path, content] of files) {
    python.FS.mkdirTree(`/lib/${dirname(path)}`);
    python.FS.writeFile(`/lib/${path}`, content);
  }
  // As the worker has it, so that what is measured here is what a phone takes.
  python.pyimport("gc").threshold(4_000_000);
  const { call } = python.pyimport("longpoint.trade.calls");
  return (request) => JSON.parse(call(JSON.stringify(request)));
}
