import { dirname, join, parse } from "node:path";
import { rollup } from "rollup";

/** Characters of a file, before it is minified, that is no burden where nobody wants it. */
const SMALL = 20_000;

/**
 * Join the files that a program was split into: what an entry can't start without becomes one file.
 *
 * A bundler splits by who uses what, which makes a dozen small files of a start. Each would travel
 * with headers of its own and compressed alone. What two entries share goes to the first of them.
 * What a later file shares it would wait for: that goes to the one file that whoever wants it has
 * open, else to the last entry, where it is small.
 *
 * The files are classic scripts that call `define` (AMD): a browser keeps those compiled.
 *
 * @param {Map<string, string>} files by path
 * @param {{[name: string]: string}} entries paths by name
 * @param {object} how
 * @param {Map<string, string>} how.behind which later file opens only where which other is open
 * @param {string} how.define what sets up `define`, at the top of the first entry
 * @param {(code: string) => Promise<string>} how.minify
 */
export async function joined(files, entries, { behind, define, minify }) {
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
    banner: ({ name }) => (name === Object.keys(entries)[0] ? define : ""),
    entryFileNames: "assets/[name]-[hash:12].js",
    chunkFileNames: "assets/[name]-[hash:12].js",
    hashCharacters: "hex",
    sanitizeFileName: (name) => name.replace(/-[A-Z0-9]{8}$/, ""), // the splitter's hash
    hoistTransitiveImports: false,
    manualChunks: (path, { getModuleIds, getModuleInfo }) => {
      const names = Object.keys(entries);
      const own = names.find((name) => startsWith(entries[name] ?? "", getModuleInfo).has(path));
      if (own) return own;
      const later = [...getModuleIds()].filter((each) => getModuleInfo(each)?.dynamicImporters.length);
      if (later.includes(path)) return parse(path).name;
      const wanting = later.filter((each) => startsWith(each, getModuleInfo).has(path));
      const [home = "", ...others] = new Set(wanting.map((each) => behind.get(each) ?? each));
      if (others.length === 0) return parse(home).name;
      return (getModuleInfo(path)?.code?.length ?? 0) < SMALL ? names.at(-1) : undefined;
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
