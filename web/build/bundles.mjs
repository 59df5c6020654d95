import { build, transform } from "esbuild";
import { resolve } from "node:path";
import { joined } from "./join.mjs";

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

/** The oldest browsers that the app is for. */
const TARGET = ["es2022", "safari16"];

/**
 * What all bundles have in common.
 * @param {Modules} modules
 */
const common = (modules) =>
  /** @satisfies {import("esbuild").BuildOptions} */ ({
    bundle: true,
    write: false,
    minify: true,
    target: TARGET,
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
 * What a page opens later (`import()`) is in files of its own. Files import each other by name, so
 * here the bundler makes the names.
 *
 * @param {Paths} entries
 * @param {object} how
 * @param {string} how.loader sets up `define`, by which files find each other
 * @param {Paths} how.behind which source opens only where which other is open
 * @param {Modules} how.modules
 * @returns {Promise<{files: {[path: string]: string}, entries: Paths}>}
 * @typedef {{[name: string]: string}} Paths paths in the site by the name of the entry
 */
export async function bundleTogether(entries, { loader, behind, modules }) {
  const { outputFiles, metafile } = await build({
    ...common(modules),
    minify: false, // once they are joined
    entryPoints: Object.entries(entries).map(([out, from]) => ({ in: from, out })),
    format: "esm",
    splitting: true,
    metafile: true,
  });
  const outputs = Object.entries(metafile.outputs);
  const outOf = (/** @type {string} */ source) => {
    const found = outputs.find(([, { entryPoint }]) => entryPoint && resolve(entryPoint) === source);
    if (!found) throw new Error(`${source} is in no file of its own`);
    return resolve(found[0]);
  };
  const split = new Map(outputFiles.map(({ path, text }) => [path, text]));
  const starts = Object.entries(entries).map(([name, source]) => [name, outOf(source)]);
  const files = await joined(split, Object.fromEntries(starts), {
    behind: new Map(Object.entries(behind).map(([later, other]) => [outOf(later), outOf(other)])),
    define: await bundle(loader, { format: "iife" }),
    minify: minified,
  });
  const started = files.filter(({ isEntry }) => isEntry);
  return {
    files: Object.fromEntries(files.map(({ fileName, code }) => [fileName, code])),
    entries: Object.fromEntries(started.map(({ name, fileName }) => [name, fileName])),
  };
}

/**
 * A script, not a module: what stands at its top level keeps its name.
 * @param {string} code
 */
async function minified(code) {
  return (await transform(code, { minify: true, target: TARGET })).code;
}

/**
 * Bundle a module that needs no page and import it here.
 * @param {string} entry
 */
export async function load(entry) {
  const text = await bundle(entry);
  return import(`data:text/javascript;base64,${Buffer.from(text).toString("base64")}`);
}
