/**
 * Build the site: `node build/build.mjs [--core DIR] [--out DIR]`.
 *
 * Every address in the site is relative, so that it works under any path of any host. VERSION_NOTE
 * in the environment makes a different version of the same sources, for trying out updates.
 */
import { readdir, readFile } from "node:fs/promises";
import { basename, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { bundle, load } from "./bundles.mjs";
import { makeCatalog } from "./catalog.mjs";
import { startCore, wasmPath } from "./core.mjs";
import { Site } from "./site.mjs";
import { reportSizes } from "./sizes.mjs";
import { coreSources } from "./sources.mjs";

const web = fileURLToPath(new URL("..", import.meta.url));
const note = process.env["VERSION_NOTE"] ?? "";

async function addCore(site, sources) {
  return {
    sources: site.addHashed("core", "json", JSON.stringify(sources)),
    wasm: site.addHashed("micropython", "wasm", await readFile(wasmPath)),
  };
}

async function addScripts(site, assets, catalog) {
  const { js: worker } = await bundle(join(web, "src/worker/worker.ts"));
  const modules = {
    assets: { ...assets, worker: site.addHashed("worker", "js", worker) },
    catalog: { catalog },
  };
  const { js: app } = await bundle(join(web, "src/main.ts"), { modules });
  const { css } = await bundle(join(web, "styles/main.css"));
  return { app: site.addHashed("app", "js", app), style: site.addHashed("style", "css", css) };
}

async function addFixed(site) {
  site.add("manifest.webmanifest", await readFile(join(web, "manifest.webmanifest")));
  for (const icon of await readdir(join(web, "icons"))) {
    site.add(`icons/${icon}`, await readFile(join(web, "icons", icon)));
  }
}

/** Fill in the names that this build has made; a name without a place, or the reverse, is an error. */
function fill(page, names) {
  const filled = page.replaceAll(/%(\w+)%/g, (hole, name) => {
    if (!(name in names)) throw new Error(`index.html asks for ${hole}, which is not made`);
    return names[name];
  });
  const lost = Object.values(names).filter((value) => !filled.includes(value));
  if (lost.length > 0) throw new Error(`index.html has no place for ${lost.join(", ")}`);
  return filled;
}

async function addPage(site, names) {
  const page = await readFile(join(web, "index.html"), "utf8");
  site.add("index.html", fill(page, { ...names, version: site.version(note + page) }));
}

/** The worker comes last, since it lists all others; "./" is the address that serves index.html. */
async function addServiceWorker(site) {
  const files = site.digests().map(([path, hash]) => [path === "index.html" ? "./" : path, hash]);
  const modules = { files: { version: site.version(note), files } };
  const { js } = await bundle(join(web, "src/sw/sw.ts"), { format: "iife", modules });
  site.add("sw.js", js);
}

async function buildSite(package_) {
  const site = new Site();
  const sources = await coreSources(package_);
  const { drawingSvg } = await load(join(web, "src/drawing/svg.ts"));
  const catalog = makeCatalog(await startCore(sources), drawingSvg);
  const assets = await addCore(site, sources);
  const scripts = await addScripts(site, assets, catalog);
  await addFixed(site);
  await addPage(site, { ...assets, ...scripts });
  await addServiceWorker(site);
  return site;
}

const { values: options } = parseArgs({
  options: {
    core: { type: "string", default: join(web, "../server/longpoint") },
    out: { type: "string", default: join(web, "../server/longpoint/static") },
  },
});
const site = await buildSite(resolve(options.core));
await site.write(resolve(options.out));
reportSizes(site);
console.log(`Built into ${basename(options.out)}/`);
