import { build } from "esbuild";

/** Give `import ... from "longpoint:name"` the values that this build has made. */
function made(modules) {
  return {
    name: "made by this build",
    setup({ onResolve, onLoad }) {
      onResolve({ filter: /^longpoint:/ }, ({ path }) => ({ path, namespace: "made" }));
      onLoad({ filter: /.*/, namespace: "made" }, ({ path }) => {
        const values = modules[path.slice("longpoint:".length)];
        if (!values) return { errors: [{ text: `${path} is not made for this bundle` }] };
        const lines = Object.entries(values).map(
          // Parsing JSON is quicker for a browser than the same value as a program.
          ([name, value]) => `export const ${name} = JSON.parse(${JSON.stringify(JSON.stringify(value))});`,
        );
        return { contents: lines.join("\n") };
      });
    },
  };
}

/** MicroPython's script asks for these under Node alone. */
const NODE_ONLY = ["module", "path", "url", "fs", "crypto"];

/**
 * Bundle one entry.
 *
 * @param {string} entry path of a .ts or .css file
 * @param {{format?: "esm" | "iife", modules?: object}} options modules: what longpoint:<name> exports
 * @returns {Promise<{[extension: string]: string}>} the text of each file made, by "js" or "css"
 */
export async function bundle(entry, { format = "esm", modules = {} } = {}) {
  const { outputFiles } = await build({
    entryPoints: [entry],
    bundle: true,
    write: false,
    minify: true,
    format,
    target: ["es2022", "safari16"],
    outdir: "out",
    legalComments: "none",
    logLevel: "warning",
    external: NODE_ONLY,
    plugins: [made(modules)],
  });
  return Object.fromEntries(outputFiles.map(({ path, text }) => [path.split(".").pop(), text]));
}

/** Bundle a module that needs no page and import it here. */
export async function load(entry) {
  const { js } = await bundle(entry);
  return import(`data:text/javascript;base64,${Buffer.from(js).toString("base64")}`);
}
