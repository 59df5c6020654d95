/**
 * Build the site: `node build/build.mjs [--core DIR] [--out DIR] [--sizes]`, from the core's parts in
 * DIR; with `--sizes` it prints the bytes of every file, which takes longer than building them.
 *
 * Every address in the site is relative, so that it works under any path of any host. VERSION_NOTE
 * in the environment makes a different version of the same sources, for trying out updates.
 *
 * @import { Catalog } from "../src/contract/contract"
 * @import { Shelf } from "./catalog.mjs"
 * @import { Core } from "./parts.mjs"
 * @typedef {{[name: string]: string}} Paths paths in the site by what they hold
 */
import { readdir, readFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { bundle, bundleTogether, load } from "./bundles.mjs";
import { makeShelf } from "./catalog.mjs";
import { startCore, wasmPath } from "./core.mjs";
import { fill, inline } from "./page.mjs";
import { readCore } from "./parts.mjs";
import { placeLinks } from "./shell.mjs";
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
 * Add each value as a file of JSON.
 * @param {Site} site
 * @param {string} name
 * @param {{[key: string]: unknown}} values
 * @returns {Paths} by key
 */
function addEach(site, name, values) {
  const paths = Object.entries(values).map(([key, value]) => [
    key,
    site.addHashed(`${name}-${key}`, "json", JSON.stringify(value)),
  ]);
  return Object.fromEntries(paths);
}

/**
 * Add what of the shelf is loaded when it is wanted.
 * @param {Site} site
 * @param {Shelf} shelf
 */
function addShelf(site, { tools, pictures, patterns }) {
  return {
    tools: addEach(site, "tool", tools),
    pictures: addEach(site, "pictures", pictures),
    patterns: site.addHashed("patterns", "json", JSON.stringify(patterns)),
  };
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
 * @param {Paths} core what every core starts with
 * @param {{[name: string]: unknown}} assets what else the scripts find by name
 * @param {Catalog} catalog
 * @returns {Promise<Paths>}
 */
async function addScripts(site, core, assets, catalog) {
  const job = site.addHashed("job", "css", await bundle(join(web, "styles/job.css")));
  const modules = { core, assets: { ...assets, styles: { job } }, catalog: { catalog } };
  const at = (/** @type {string} */ source) => join(web, "src", source);
  const entries = { first: at("engine/prestart-worker.ts"), app: at("main.ts") };
  const rooms = at("job/rooms.ts");
  const behind = { [at("job-file/rooms.ts")]: rooms, [at("quote/quote.ts")]: rooms };
  const scripts = await bundleTogether(entries, { loader: at("engine/define.ts"), behind, modules });
  for (const [path, text] of Object.entries(scripts.files)) site.add(path, text);
  const style = site.addHashed("style", "css", await bundle(join(web, "styles/main.css")));
  return { ...scripts.entries, style };
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
 * @param {{[name: string]: string}} values
 * @returns {Promise<string>} its HTML
 */
async function addPage(site, values) {
  const page = await readFile(join(web, "index.html"), "utf8");
  const version = site.version([note, page, ...Object.values(values)].join());
  const filled = fill(page, { ...values, version });
  site.add("index.html", filled);
  return filled;
}

/**
 * What every start asks for: the page, with the addresses that stand in it, and what each core starts
 * with. A browser judges the worker by the headers that it came with.
 * @typedef {{page: string, core: string[]}} First
 */

/**
 * Add the service worker, last, since it lists all other files.
 *
 * Those that no start waits for it fetches in one: compressed together they travel in fewer bytes,
 * and with the headers of one file. Scripts come by themselves: out of the pack no browser keeps them
 * compiled.
 * @param {Site} site
 * @param {First} first
 */
async function addServiceWorker(site, { page, core }) {
  const isForLater = (/** @type {string} */ path) =>
    path.startsWith("assets/") && !path.endsWith(".js") && !core.includes(path) && !page.includes(path);
  const packed = new Map(site.files().filter(([path]) => isForLater(path)).map(([path, content]) => [path, Buffer.from(content)]));
  const files = site.digests().map(([path, hash]) => [
    path === "index.html" ? "./" : path, // the address that serves it; the other some hosts redirect
    hash,
    packed.get(path)?.length ?? 0,
  ]);
  const version = site.version(note);
  const pack = site.addHashed("pack", "bin", Buffer.concat([...packed.values()]));
  const modules = { files: { version, files, pack } };
  site.add("sw.js", await bundle(join(web, "src/sw/sw.ts"), { format: "iife", modules }));
}

/** @param {string} folder the core's parts */
async function buildSite(folder) {
  const site = new Site();
  const read = await readCore(folder);
  const { filesOf } = await load(join(web, "src/worker/parts.ts"));
  const { drawingSvg } = await load(join(web, "src/drawing/svg.ts"));
  const ask = await startCore(Object.values(read.parts).flatMap(filesOf));
  const shelf = makeShelf(ask, drawingSvg);
  const wasm = site.addHashed("micropython", "wasm", await readFile(wasmPath));
  const worker = site.addHashed("worker", "js", await bundle(join(web, "src/worker/worker.ts")));
  const { frame = "", ...parts } = addParts(site, read);
  const version = site.version(note); // interpreter, worker and parts: all that makes a reply
  const core = { wasm, worker, frame };
  const demo = await addDemo(site);
  const assets = { core: version, parts, needs: read.needs, demo, ...addShelf(site, shelf) };
  const scripts = await addScripts(site, core, assets, shelf.catalog);
  const atOnce = await bundle(join(web, "src/engine/at-once.ts"), { format: "iife", modules: { core } });
  await addFixed(site);
  const { LINES } = await load(join(web, "src/parts/icon-lines.ts"));
  const places = placeLinks(shelf.catalog, LINES);
  const page = await addPage(site, { places, ...scripts, ...inline(atOnce) });
  await addServiceWorker(site, { page, core: Object.values(core) });
  // The server's own pages wear it; the app doesn't, and keeps it nowhere.
  site.add("pages.css", await bundle(join(web, "styles/pages.css")));
  return site;
}

const { values: options } = parseArgs({
  options: {
    core: { type: "string", default: join(web, "generated/core") },
    out: { type: "string", default: join(web, "../server/longpoint/static") },
    sizes: { type: "boolean", default: false },
  },
});

try {
  const site = await buildSite(resolve(options.core));
  await site.write(resolve(options.out));
  if (options.sizes) reportSizes(site);
} catch (error) {
  // Left to itself Node would print the failing line, which in the interpreter is 100 KB long.
  console.error("The site was not built.", error instanceof Error ? error.stack : error);
  process.exitCode = 1;
}
