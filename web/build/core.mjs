import { loadMicroPython } from "@micropython/micropython-webassembly-pyscript";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";

const entry = createRequire(import.meta.url).resolve("@micropython/micropython-webassembly-pyscript");

/** Where the interpreter's wasm lies. */
export const wasmPath = join(dirname(entry), "micropython.wasm");

/**
 * Start the core in MicroPython, the interpreter that runs it on the phone.
 *
 * @param {{[path: string]: string}} sources as coreSources gives them
 * @returns {Promise<(request: object) => any>} ask: a request in, its reply out; throws what broke
 */
export async function startCore(sources) {
  const python = await loadMicroPython({ url: wasmPath });
  for (const [path, text] of Object.entries(sources)) {
    python.FS.mkdirTree(`/lib/${dirname(path)}`);
    python.FS.writeFile(`/lib/${path}`, text);
  }
  const { call } = python.pyimport("longpoint.trade.calls");
  return (request) => JSON.parse(call(JSON.stringify(request)));
}
