/** Make a path of this site complete; every path is relative to the page. */
export function address(path: string): string {
  return new URL(path, document.baseURI).href;
}

/** Whether the app is kept on the phone and serves this page from there. */
export function isKept(): boolean {
  return Boolean(navigator.serviceWorker?.controller);
}

/** Find a file in what the service worker has kept: it checks that before it is kept, and again. */
async function kept(url: string): Promise<Response | undefined> {
  if (!isKept()) return undefined;
  return caches.match(url).catch(() => undefined);
}

/**
 * Take a file of this site out of what is kept on the phone, else fetch it, or throw.
 *
 * A page that looks there itself has it for a third of the work of asking the service worker.
 */
export async function fetched(path: string): Promise<Response> {
  const url = address(path);
  const response = (await kept(url)) ?? (await fetch(url));
  if (!response.ok) throw new Error(`${path} was answered with ${response.status}`);
  return response;
}
