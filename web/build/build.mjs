/**
 * Build the site: `node build/build.mjs [--core DIR] [--out DIR]`, from the core's parts in DIR.
 *
 * Every address in the site is relative, so that it works under any path of any host. VERSION_NOTE
 * in the environment makes a different version of the same sources, for trying out updates.
 *
 * @import { Catalog } from "../src/contract/contract"
 * @import { Core } from "./parts.mjs"
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
import { readCore } from "./parts.mjs";
import { Site } from "./site.mjs";
import { reportSizes } from "./sizes.mjs";

const web = fileURLToPath(new URL("..", import.meta.url));
const note = process.env["VERSION_NOTE"] ?? "";

/**
 * @param {Site} site
 * @param {Core} core
 * @returns {Paths} by room
 */
function addParts(site, { parts }) {
  const paths = Object.entries(parts).map(([room, part]) => [
    room,
    site.addHashed(`core-${room}`, "bin", part),
  ]);
  return Object.fromEntries(paths);
}

/**
 * Add the job that an empty list offers to open; nobody who doesn't open it waits for it.
 * @param {Site} site
 */
async function addDemo(site) {
  const { job } = JSON.parse(await readFile(join(web, "../fixtures/job/demo.json"), "utf8"));
  return site.addHashed("demo", "json", JSON.stringify(job));
}

/**
 * @param {Site} site
 * @param {{wasm: string, parts: Paths, needs: Core["needs"], demo: string}} assets
 * @param {Catalog} catalog
 * @returns {Promise<Paths>}
 */
async function addScripts(site, assets, catalog) {
  const worker = site.addHashed("worker", "js", await bundle(join(web, "src/worker/worker.ts")));
  const job = site.addHashed("job", "css", await bundle(join(web, "styles/job.css")));
  const modules = { assets: { ...assets, worker, styles: { job } }, catalog: { catalog } };
  const entries = { first: join(web, "src/engine/prestart-worker.ts"), app: join(web, "src/main.ts") };
  const scripts = await bundleTogether(entries, modules);
  for (const [path, text] of Object.entries(scripts.files)) site.add(path, text);
  const style = site.addHashed("style", "css", await bundle(join(web, "styles/main.css")));
  const preloads = scripts.first.map((path) => `<link rel="modulepreload" href="${path}">`);
  return { ...scripts.entries, style, preloads: preloads.join("\n    ") };
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

/** @param {string} folder the core's parts */
async function buildSite(folder) {
  const site = new Site();
  const core = await readCore(folder);
  const { filesOf } = await load(join(web, "src/worker/parts.ts"));
  const { drawingSvg } = await load(join(web, "src/drawing/svg.ts"));
  const ask = await startCore(Object.values(core.parts).flatMap(filesOf));
  const catalog = makeCatalog(ask, drawingSvg);
  const wasm = site.addHashed("micropython", "wasm", await readFile(wasmPath));
  const parts = addParts(site, core);
  const demo = await addDemo(site);
  const scripts = await addScripts(site, { wasm, parts, needs: core.needs, demo }, catalog);
  await addFixed(site);
  await addPage(site, { wasm, frame: parts["frame"] ?? "", ...scripts });
  await addServiceWorker(site);
  return site;
}

const { values: options } = parseArgs({
  options: {
    core: { type: "string", default: join(web, "generated/core") },
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
