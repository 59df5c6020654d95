import { files, pack, version } from "longpoint:files";

declare const self: ServiceWorkerGlobalScope;

/** The page. Named so, and not index.html, because some hosts redirect that name. */
export const SHELL = "./";

const digests = new Map(files.map(([path, digest]) => [path, digest]));
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

/** Media types without which a browser refuses a file, by the end of its path. */
const TYPES: { [end: string]: string } = {
  "/": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".webmanifest": "application/manifest+json",
};

function typeOf(path: string): string | undefined {
  return Object.entries(TYPES).find(([end]) => path.endsWith(end))?.[1];
}

function essence(type: string | null | undefined): string {
  return type?.split(";")[0]?.trim().toLowerCase() ?? "";
}

function hasItsType(path: string, response: Response): boolean {
  const wanted = essence(typeOf(path));
  return !wanted || essence(response.headers.get("content-type")) === wanted;
}

/**
 * Return a response that every browser takes, whatever the host called the file.
 *
 * Its bytes are known by their hash, so a host's wrong media type is set right for good. It has no
 * history either: Safari refuses a redirected response for a page.
 */
function fit(path: string, response: Response, bytes: ArrayBuffer): Response {
  if (!response.redirected && hasItsType(path, response)) return response;
  const headers = new Headers(response.headers);
  if (!hasItsType(path, response)) headers.set("content-type", typeOf(path) ?? "");
  return new Response(bytes, { headers });
}

async function download(path: string, cache: RequestCache): Promise<Response> {
  const response = await fetch(new Request(url(path), { cache }));
  if (!response.ok) throw new Error(`${path} was answered with ${response.status}`);
  const bytes = await response.clone().arrayBuffer();
  if ((await sha256(bytes)) !== digests.get(path)) throw new Error(`${path} is of another version`);
  return fit(path, response, bytes);
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

/** Files by path, as they came in one. */
type Unpacked = Map<string, ArrayBuffer>;

/** Fetch the pack and take it apart; where it doesn't come, its files do one by one. */
async function unpacked(): Promise<Unpacked> {
  const response = await fetch(url(pack)).catch(() => null);
  if (!response?.ok) return new Map();
  const bytes = await response.arrayBuffer();
  let at = 0;
  return new Map(files.map(([path, , length]) => [path, bytes.slice(at, (at += length))]));
}

/** Return a file out of the pack, if it is there and exactly of this version. */
async function fromPack(path: string, unpacked: Unpacked): Promise<Response | null> {
  const bytes = unpacked.get(path);
  if (!bytes || (await sha256(bytes)) !== digests.get(path)) return null;
  return new Response(bytes, { headers: { "content-type": typeOf(path) ?? "application/octet-stream" } });
}

/**
 * Fetch every file, then keep all of them: one that fails leaves the old version in charge.
 *
 * Together files travel in fewer bytes; an update fetches those that changed, by name.
 */
export async function keepAll(): Promise<void> {
  const isUpdate = (await caches.keys()).some((name) => name.startsWith(prefix()));
  const together = isUpdate ? null : unpacked();
  const responses = await Promise.all(
    files.map(async ([path, , inPack]) => {
      const packed = inPack && together ? await fromPack(path, await together) : null;
      return [path, packed ?? (await exactly(path))] as const;
    }),
  );
  const cache = await caches.open(cacheName());
  await Promise.all(responses.map(([path, response]) => cache.put(url(path), response)));
}

/** Tell whether a kept file is what its version needs: status, media type and every byte. */
async function isSound(path: string, kept: Response | undefined): Promise<boolean> {
  if (!kept?.ok || !hasItsType(path, kept)) return false;
  return (await sha256(await kept.arrayBuffer())) === digests.get(path);
}

/**
 * Fetch again what this version's cache has lost or holds damaged.
 *
 * Browsers have been seen to lose entries. One file after the other: a page may be at work.
 */
export async function repair(): Promise<void> {
  const cache = await caches.open(cacheName());
  for (const [path] of files) {
    if (await isSound(path, await cache.match(url(path)))) continue;
    await cache.put(url(path), await exactly(path));
  }
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
