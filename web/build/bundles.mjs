import { build } from "esbuild";
import { basename } from "node:path";

/**
 * What longpoint:<name> exports.
 * @typedef {{[name: string]: {[exported: string]: unknown}}} Modules
 */

/**
 * Write a module that exports `values`; parsing JSON is quicker for a browser than a program.
 * @param {object} values
 */
function moduleText(values) {
  const json = (/** @type {unknown} */ value) => JSON.stringify(JSON.stringify(value));
  const lines = Object.entries(values).map(
    ([name, value]) => `export const ${name} = JSON.parse(${json(value)});`,
  );
  return lines.join("\n");
}

/**
 * Give `import ... from "longpoint:name"` the values that this build has made.
 * @param {Modules} modules
 * @returns {import("esbuild").Plugin}
 */
function made(modules) {
  return {
    name: "made by this build",
    setup({ onResolve, onLoad }) {
      onResolve({ filter: /^longpoint:/ }, ({ path }) => ({ path, namespace: "made" }));
      onLoad({ filter: /.*/, namespace: "made" }, ({ path }) => {
        const values = modules[path.slice("longpoint:".length)];
        if (values) return { contents: moduleText(values) };
        return { errors: [{ text: `${path} is not made for this bundle` }] };
      });
    },
  };
}

/** MicroPython's script asks for these under Node alone. */
const NODE_ONLY = ["module", "path", "url", "fs", "crypto"];

/**
 * What all bundles have in common.
 * @param {Modules} modules
 */
const common = (modules) =>
  /** @satisfies {import("esbuild").BuildOptions} */ ({
    bundle: true,
    write: false,
    minify: true,
    target: ["es2022", "safari16"],
    outdir: "out",
    legalComments: "none",
    logLevel: "warning",
    external: NODE_ONLY,
    plugins: [made(modules)],
  });

/**
 * Bundle one entry, a .ts or .css file, and return its text.
 *
 * @param {string} entry
 * @param {{format?: "esm" | "iife", modules?: Modules}} [options]
 * @returns {Promise<string>}
 */
export async function bundle(entry, { format = "esm", modules = {} } = {}) {
  const { outputFiles } = await build({ ...common(modules), entryPoints: [entry], format });
  const [file, ...more] = outputFiles;
  if (!file || more.length > 0) throw new Error(`${entry}: one file was expected of its bundle`);
  return file.text;
}

/**
 * Bundle several entries that share what they have in common.
 *
 * What a page opens later (`import()`) is in files of its own. Shared files are imported by name, so
 * here the bundler makes the names; `first` are those that the entries can't start without.
 *
 * @param {{[name: string]: string}} entries
 * @param {Modules} modules
 * @returns {Promise<{files: {[path: string]: string}, entries: Paths, first: string[]}>}
 * @typedef {{[name: string]: string}} Paths paths in the site by the name of the entry
 */
export async function bundleTogether(entries, modules) {
  const { outputFiles, metafile } = await build({
    ...common(modules),
    entryPoints: Object.entries(entries).map(([out, from]) => ({ in: from, out })),
    format: "esm",
    splitting: true,
    metafile: true,
    entryNames: "assets/[name]-[hash]",
    chunkNames: "assets/[name]-[hash]",
  });
  const files = outputFiles.map(({ path, text }) => [inSite(path), text]);
  const found = Object.keys(entries).map((name) => [
    name,
    files.map(([path]) => path ?? "").find((path) => path.startsWith(`assets/${name}-`)) ?? "",
  ]);
  const paths = Object.fromEntries(found);
  return { files: Object.fromEntries(files), entries: paths, first: startingWith(Object.values(paths), metafile) };
}

/** @param {string} path of an output file */
const inSite = (path) => `assets/${basename(path)}`;

/**
 * Return the files that are imported before any of these can run, each once.
 * @param {string[]} paths
 * @param {import("esbuild").Metafile} metafile
 */
function startingWith(paths, metafile) {
  const outputs = new Map(Object.entries(metafile.outputs).map(([path, output]) => [inSite(path), output]));
  const found = new Set(paths);
  for (const path of found) {
    const imports = outputs.get(path)?.imports ?? [];
    for (const each of imports) if (each.kind === "import-statement") found.add(inSite(each.path));
  }
  return [...found].filter((path) => !paths.includes(path));
}

/**
 * Bundle a module that needs no page and import it here.
 * @param {string} entry
 */
export async function load(entry) {
  const text = await bundle(entry);
  return import(`data:text/javascript;base64,${Buffer.from(text).toString("base64")}`);
}
