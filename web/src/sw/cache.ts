import { files, version } from "longpoint:files";

declare const self: ServiceWorkerGlobalScope;

/** The page. Named so, and not index.html, because some hosts redirect that name. */
export const SHELL = "./";

const digests = new Map(files);
const scope = () => self.registration.scope;
/** Two copies of the site under one origin keep their caches apart by their path. */
const prefix = () => `longpoint ${new URL(scope()).pathname} `;
const cacheName = () => prefix() + version;

export function isListed(path: string): boolean {
  return digests.has(path);
}

function url(path: string): string {
  return new URL(path, scope()).href;
}

async function sha256(bytes: ArrayBuffer): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** Return a response without a history: Safari refuses a redirected one for a page. */
function direct(response: Response, bytes: ArrayBuffer): Response {
  return response.redirected ? new Response(bytes, { headers: response.headers }) : response;
}

async function download(path: string, cache: RequestCache): Promise<Response> {
  const response = await fetch(new Request(url(path), { cache }));
  if (!response.ok) throw new Error(`${path} was answered with ${response.status}`);
  const bytes = await response.clone().arrayBuffer();
  if ((await sha256(bytes)) !== digests.get(path)) throw new Error(`${path} is of another version`);
  return direct(response, bytes);
}

/**
 * Fetch a file of exactly this version, or throw.
 *
 * A file whose name carries its hash may come from the browser's own cache, where the page's first
 * visit has just put it; any other must be asked for anew, or an old file would be kept as new.
 */
async function exactly(path: string): Promise<Response> {
  if (!path.startsWith("assets/")) return download(path, "reload");
  return download(path, "default").catch(() => download(path, "reload"));
}

/** Fetch every file, then keep all of them: one that fails leaves the old version in charge. */
export async function keepAll(): Promise<void> {
  const responses = await Promise.all(
    files.map(async ([path]) => [path, await exactly(path)] as const),
  );
  const cache = await caches.open(cacheName());
  await Promise.all(responses.map(([path, response]) => cache.put(url(path), response)));
}

/** Fetch what is missing from this version's cache: browsers have been seen to lose entries. */
export async function repair(): Promise<void> {
  const cache = await caches.open(cacheName());
  const held = new Set((await cache.keys()).map((request) => request.url));
  const missing = files.map(([path]) => path).filter((path) => !held.has(url(path)));
  await Promise.all(missing.map(async (path) => cache.put(url(path), await exactly(path))));
}

/** Answer from this version's cache and no other; from the network where an entry is lost. */
export async function answer(path: string, request: Request): Promise<Response> {
  const cache = await caches.open(cacheName());
  return (await cache.match(url(path))) ?? fetch(request);
}

export async function dropOldVersions(): Promise<void> {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(prefix()) && name !== cacheName());
  await Promise.all(old.map((name) => caches.delete(name)));
}
