import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { stripped } from "./strip.mjs";

/** @typedef {{[path: string]: string}} Sources text by path, such as "longpoint/trade/calls.py" */

/** The package's docstring and the core: everything that also runs on the phone. */
const isCore = (/** @type {string} */ path) => path === "__init__.py" || path.startsWith("trade/");

/**
 * Read the core's Python sources as the phone gets them: without docstrings and comments.
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
    stripped(await readFile(join(folder, path), "utf8")),
  ];
  return Object.fromEntries(await Promise.all(wanted.map(read)));
}
