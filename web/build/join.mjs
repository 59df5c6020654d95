import { dirname, join } from "node:path";
import { rollup } from "rollup";

/** Characters of a file, before it is minified, that is no burden where nobody wants it. */
const SMALL = 30_000;

/**
 * Join the files that a program was split into: what an entry can't start without becomes one file.
 *
 * A bundler splits by who uses what, which makes a dozen small files of a start. Each would travel
 * with headers of its own and compressed alone. What two entries share goes to the first of them;
 * what several later files share, to the last, where it is small: who wants one of them would wait for it.
 *
 * @param {Map<string, string>} files by path
 * @param {{[name: string]: string}} entries paths by name
 * @param {(code: string) => Promise<string>} minify
 */
export async function joined(files, entries, minify) {
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
    entryFileNames: "assets/[name]-[hash:12].js",
    chunkFileNames: "assets/[name]-[hash:12].js",
    hashCharacters: "hex",
    sanitizeFileName: (name) => name.replace(/-[A-Z0-9]{8}$/, ""), // the splitter's hash
    hoistTransitiveImports: false,
    manualChunks: (path, { getModuleInfo }) => {
      const names = Object.keys(entries);
      const own = names.find((name) => startsWith(entries[name] ?? "", getModuleInfo).has(path));
      const { dynamicImporters = [], code } = getModuleInfo(path) ?? {};
      const isSmall = dynamicImporters.length === 0 && (code?.length ?? 0) < SMALL;
      return own ?? (isSmall ? names.at(-1) : undefined);
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
