import { brotliCompressSync, gzipSync } from "node:zlib";

const cells = (path, ...sizes) => path.padEnd(44) + sizes.map((size) => String(size).padStart(9)).join("");

/** Print the bytes of every file, plain and as they travel; icons are fetched by the system, later. */
export function reportSizes(site) {
  const rows = site
    .list()
    .filter(({ path }) => !path.startsWith("icons/"))
    .map(({ path, content }) => {
      const bytes = Buffer.from(content);
      return { path, sizes: [bytes.length, gzipSync(bytes).length, brotliCompressSync(bytes).length] };
    });
  const total = [0, 1, 2].map((at) => rows.reduce((sum, { sizes }) => sum + sizes[at], 0));
  console.log(cells("file", "bytes", "gzip", "brotli"));
  for (const { path, sizes } of rows) console.log(cells(path, ...sizes));
  console.log(cells("total", ...total));
}
