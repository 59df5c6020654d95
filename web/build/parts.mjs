import { readdir, readFile } from "node:fs/promises";
import { basename, join } from "node:path";

/**
 * The core as server/phone_core.py has compiled it.
 *
 * @typedef {object} Core
 * @property {{[room: string]: Buffer}} parts
 * @property {{[tool: string]: string[]}} needs rooms by tool, beside the frame
 */

/**
 * @param {string} folder web/generated/core
 * @returns {Promise<Core>}
 */
export async function readCore(folder) {
  const names = (await readdir(folder)).filter((name) => name.endsWith(".bin")).sort();
  const parts = await Promise.all(
    names.map(async (name) => [basename(name, ".bin"), await readFile(join(folder, name))]),
  );
  const needs = JSON.parse(await readFile(join(folder, "needs.json"), "utf8"));
  return { parts: Object.fromEntries(parts), needs };
}
