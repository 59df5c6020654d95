import { brotliCompressSync, gzipSync } from "node:zlib";

/** @typedef {[plain: number, gzip: number, brotli: number]} Sizes */

/**
 * @param {string} name
 * @param {(string | number)[]} sizes
 */
const line = (name, sizes) =>
  name.padEnd(44) + sizes.map((size) => String(size).padStart(9)).join("");

/**
 * @param {import("./site.mjs").Content} content
 * @returns {Sizes}
 */
function sizesOf(content) {
  const bytes = Buffer.from(content);
  return [bytes.length, gzipSync(bytes).length, brotliCompressSync(bytes).length];
}

/**
 * Print the bytes of every file, plain and as they travel.
 * @param {import("./site.mjs").Site} site
 */
export function reportSizes(site) {
  console.log(line("file", ["bytes", "gzip", "brotli"]));
  /** @type {Sizes} */
  const total = [0, 0, 0];
  for (const [path, content] of site.files()) {
    const sizes = sizesOf(content);
    sizes.forEach((size, at) => (total[at] = (total[at] ?? 0) + size));
    console.log(line(path, sizes));
  }
  console.log(line("total", total));
}
