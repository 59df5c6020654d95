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

function respond(path: string, request: Request): Promise<Response> | null {
  if (path.startsWith("api/")) return null;
  if (path === "" || path === "index.html") return answer(SHELL, request);
  if (isListed(path)) return answer(path, request);
  return request.mode === "navigate" ? toShell(request) : null;
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
