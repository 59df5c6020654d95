import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";

/** @typedef {{[path: string]: string}} Sources text by path, such as "longpoint/trade/calls.py" */

/** The package's docstring and the core: everything that also runs on the phone. */
const isCore = (/** @type {string} */ path) => path === "__init__.py" || path.startsWith("trade/");

/**
 * Read the core's Python sources, as they are: their comments cost 10 KB on the way to the phone
 * and nothing there, and a traceback's line numbers stay right.
 *
 * @param {string} folder the package folder, server/longpoint
 * @returns {Promise<Sources>}
 */
export async function coreSources(folder) {
  const names = await readdir(folder, { recursive: true });
  const paths = names.map((name) => name.replaceAll("\\", "/"));
  const wanted = paths.filter((path) => path.endsWith(".py") && isCore(path)).sort();
  const read = async (/** @type {string} */ path) => [
    `longpoint/${path}`,
    await readFile(join(folder, path), "utf8"),
  ];
  return Object.fromEntries(await Promise.all(wanted.map(read)));
}
