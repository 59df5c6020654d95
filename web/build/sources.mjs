import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";

/** @typedef {import("../src/worker/parts").File} File */

/** The package's docstring and the core: everything that also runs on the phone. */
const isCore = (/** @type {string} */ path) => path === "__init__.py" || path.startsWith("trade/");

/**
 * Read the core's Python sources as they are.
 *
 * @param {string} folder the package folder, server/longpoint
 * @returns {Promise<File[]>}
 */
export async function coreSources(folder) {
  const names = await readdir(folder, { recursive: true });
  const paths = names.map((name) => name.replaceAll("\\", "/"));
  const wanted = paths.filter((path) => path.endsWith(".py") && isCore(path)).sort();
  return Promise.all(
    wanted.map(async (path) => [`longpoint/${path}`, await readFile(join(folder, path))]),
  );
}
