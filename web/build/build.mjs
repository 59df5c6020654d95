/**
 * Build the site: `node build/build.mjs [--core DIR] [--out DIR]`.
 *
 * Every address in the site is relative, so that it works under any path of any host. VERSION_NOTE
 * in the environment makes a different version of the same sources, for trying out updates.
 *
 * @import { Catalog } from "../src/contract/contract"
 * @import { Sources } from "./sources.mjs"
 * @typedef {{[name: string]: string}} Paths paths in the site by what they hold
 */
import { readdir, readFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { bundle, bundleTogether, load } from "./bundles.mjs";
import { makeCatalog } from "./catalog.mjs";
import { startCore, wasmPath } from "./core.mjs";
import { fill } from "./page.mjs";
import { Site } from "./site.mjs";
import { reportSizes } from "./sizes.mjs";
import { coreSources } from "./sources.mjs";

const web = fileURLToPath(new URL("..", import.meta.url));
const note = process.env["VERSION_NOTE"] ?? "";

/**
 * @param {Site} site
 * @param {Sources} sources
 * @returns {Promise<Paths>}
 */
async function addCore(site, sources) {
  return {
    sources: site.addHashed("core", "json", JSON.stringify(sources)),
    wasm: site.addHashed("micropython", "wasm", await readFile(wasmPath)),
  };
}

/**
 * @param {Site} site
 * @param {Paths} core
 * @param {Catalog} catalog
 * @returns {Promise<Paths>}
 */
async function addScripts(site, core, catalog) {
  const worker = site.addHashed("worker", "js", await bundle(join(web, "src/worker/worker.ts")));
  const modules = { assets: { ...core, worker }, catalog: { catalog } };
  const entries = { first: join(web, "src/engine/prestart-worker.ts"), app: join(web, "src/main.ts") };
  const scripts = await bundleTogether(entries, modules);
  const style = site.addHashed("style", "css", await bundle(join(web, "styles/main.css")));
  const paths = scripts.map(({ name, path, text }) => [name, site.add(path, text)]);
  return { ...Object.fromEntries(paths), style };
}

/** @param {Site} site */
async function addFixed(site) {
  site.add("manifest.webmanifest", await readFile(join(web, "manifest.webmanifest")));
  for (const icon of await readdir(join(web, "icons"))) {
    site.add(`icons/${icon}`, await readFile(join(web, "icons", icon)));
  }
}

/**
 * @param {Site} site
 * @param {Paths} paths
 */
async function addPage(site, paths) {
  const page = await readFile(join(web, "index.html"), "utf8");
  site.add("index.html", fill(page, { ...paths, version: site.version(note + page) }));
}

/**
 * Add the service worker, last, since it lists all other files.
 * @param {Site} site
 */
async function addServiceWorker(site) {
  // "./" is the address that serves index.html; the other some hosts redirect.
  const files = site.digests().map(([path, hash]) => [path === "index.html" ? "./" : path, hash]);
  const modules = { files: { version: site.version(note), files } };
  site.add("sw.js", await bundle(join(web, "src/sw/sw.ts"), { format: "iife", modules }));
}

/** @param {string} core the package folder whose trade/ the phone gets */
async function buildSite(core) {
  const site = new Site();
  const sources = await coreSources(core);
  const { drawingSvg } = await load(join(web, "src/drawing/svg.ts"));
  const catalog = makeCatalog(await startCore(sources), drawingSvg);
  const paths = await addCore(site, sources);
  const scripts = await addScripts(site, paths, catalog);
  await addFixed(site);
  await addPage(site, { ...paths, ...scripts });
  await addServiceWorker(site);
  return site;
}

const { values: options } = parseArgs({
  options: {
    core: { type: "string", default: join(web, "../server/longpoint") },
    out: { type: "string", default: join(web, "../server/longpoint/static") },
  },
});

try {
  const site = await buildSite(resolve(options.core));
  await site.write(resolve(options.out));
  reportSizes(site);
} catch (error) {
  // Left to itself Node would print the failing line, which in the interpreter is 100 KB long.
  console.error("The site was not built.", error instanceof Error ? error.stack : error);
  process.exitCode = 1;
}
