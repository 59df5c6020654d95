import { dirname, join, parse } from "node:path";
import { rollup } from "rollup";

/** Characters of a file, before it is minified, that is no burden where nobody wants it. */
const SMALL = 20_000;

/**
 * Join the files that a program was split into: what an entry can't start without becomes one file.
 *
 * A bundler splits by who uses what, which makes a dozen small files of a start. Each would travel
 * with headers of its own and compressed alone. What two entries share goes to the first of them.
 * Who opens a later file would wait for what that shares with others: it goes to the last entry where
 * it is small, else to the largest that wants it.
 *
 * The files are classic scripts that call `define` (AMD): a browser keeps those compiled.
 *
 * @param {Map<string, string>} files by path
 * @param {{[name: string]: string}} entries paths by name
 * @param {{define: string, minify: (code: string) => Promise<string>}} how what sets up `define`
 */
export async function joined(files, entries, { define, minify }) {
  const program = await rollup({
    input: entries,
    preserveEntrySignatures: false,
    plugins: [
      {
        name: "files in memory",
        resolveId: (path, from) => (from ? join(dirname(from), path) : path),
        load: (path) => files.get(path) ?? null,
        renderChunk: minify,
      },
    ],
  });
  const { output } = await program.generate({
    format: "amd",
    amd: { forceJsExtensionForImports: true },
    minifyInternalExports: true,
    banner: ({ isEntry }) => (isEntry ? define : ""),
    entryFileNames: "assets/[name]-[hash:12].js",
    chunkFileNames: "assets/[name]-[hash:12].js",
    hashCharacters: "hex",
    sanitizeFileName: (name) => name.replace(/-[A-Z0-9]{8}$/, ""), // the splitter's hash
    hoistTransitiveImports: false,
    manualChunks: (path, { getModuleInfo }) => {
      const names = Object.keys(entries);
      const own = names.find((name) => startsWith(entries[name] ?? "", getModuleInfo).has(path));
      const { dynamicImporters = [], importers = [], code } = getModuleInfo(path) ?? {};
      if (own || dynamicImporters.length > 0) return own ?? parse(path).name;
      const size = (/** @type {string} */ each) => getModuleInfo(each)?.code?.length ?? 0;
      const [largest = path] = [...importers].sort((one, other) => size(other) - size(one));
      return (code?.length ?? 0) < SMALL ? names.at(-1) : parse(largest).name;
    },
  });
  return output.filter((file) => file.type === "chunk");
}

/**
 * Return the paths of what runs before `entry` can, with its own.
 * @param {string} entry
 * @param {import("rollup").GetModuleInfo} getModuleInfo
 */
function startsWith(entry, getModuleInfo) {
  const found = new Set([entry]);
  for (const path of found) for (const each of getModuleInfo(path)?.importedIds ?? []) found.add(each);
  return found;
}
