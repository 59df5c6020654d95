import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";

/** The package's docstring and the core: everything that also runs on the phone. */
const isCore = (path) => path === "__init__.py" || path.startsWith("trade/");

/**
 * Read the core's Python sources.
 *
 * @param {string} folder the package folder, server/longpoint
 * @returns {Promise<{[path: string]: string}>} text by path, such as "longpoint/trade/calls.py"
 */
export async function coreSources(folder) {
  const names = await readdir(folder, { recursive: true });
  const paths = names.map((name) => name.replaceAll("\\", "/"));
  const wanted = paths.filter((path) => path.endsWith(".py") && isCore(path)).sort();
  const texts = await Promise.all(wanted.map((path) => readFile(join(folder, path), "utf8")));
  return Object.fromEntries(wanted.map((path, index) => [`longpoint/${path}`, texts[index]]));
}
