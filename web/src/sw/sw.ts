import { answer, dropOldVersions, isListed, keepAll, repair, SHELL } from "./cache";

declare const self: ServiceWorkerGlobalScope;

/** Return a request's path relative to the scope, or null if it is not for this site's files. */
function pathOf(request: Request): string | null {
  const { origin, pathname } = new URL(request.url);
  const scope = new URL(self.registration.scope);
  const ours = origin === scope.origin && pathname.startsWith(scope.pathname);
  return ours && request.method === "GET" ? pathname.slice(scope.pathname.length) : null;
}

/** Every screen is a hash route of the one page; an address that names no page leads to it. */
async function toShell(request: Request): Promise<Response> {
  return fetch(request).catch(() => Response.redirect(self.registration.scope));
}

/** Pages that the shop's server alone has, by which people come in. */
const SERVERS = /^(sign-in|sign-out|join|people|devices|password|log)(\/|$)/;

const AWAY = `<!doctype html><html lang="en"><head><meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark"><title>No network · Longpoint</title></head>
<body><h1>No network</h1><p>This page is on the shop's server, which can't be reached now.</p>
<p><a href="SCOPE">To the app</a>: it works without.</p></body></html>`;

/** Pass a page of the shop's server on; without a network say so, and don't show the app for it. */
async function fromServer(request: Request): Promise<Response> {
  const headers = { "content-type": "text/html; charset=utf-8" };
  const away = AWAY.replace("SCOPE", new URL(self.registration.scope).pathname);
  return fetch(request).catch(() => new Response(away, { status: 503, headers }));
}

function respond(path: string, request: Request): Promise<Response> | null {
  if (path.startsWith("api/")) return null;
  if (path === "" || path === "index.html") return answer(SHELL, request);
  if (isListed(path)) return answer(path, request);
  if (request.mode !== "navigate") return null;
  return SERVERS.test(path) ? fromServer(request) : toShell(request);
}

self.addEventListener("install", (event) => event.waitUntil(keepAll()));

self.addEventListener("activate", (event) => {
  event.waitUntil(Promise.all([dropOldVersions(), self.clients.claim()]));
});

self.addEventListener("fetch", (event) => {
  const path = pathOf(event.request);
  const response = path === null ? null : respond(path, event.request);
  if (response) event.respondWith(response);
});

/** Make the asking page ours and the cache whole; the answer says whether both are so. */
async function check(port: MessagePort | undefined): Promise<void> {
  const whole = await Promise.all([self.clients.claim(), repair()]).then(
    () => true,
    () => false,
  );
  port?.postMessage(whole);
}

self.addEventListener("message", (event) => {
  if (event.data === "check") event.waitUntil(check(event.ports[0]));
  if (event.data === "take over") event.waitUntil(self.skipWaiting());
});
