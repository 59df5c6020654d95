import { address, isKept } from "./site-url";

export interface Updates {
  /** Everything is cached: from now on the site works without a network. */
  ready(): void;
  /** The first visit could not be kept: no signal, or no room on the device. */
  failed(): void;
  /**
   * Another version is there. `apply` switches to it and reloads the page, once; everything typed
   * must be saved before.
   */
  waiting(apply: () => Promise<void>): void;
}

/** Resolve when a service worker serves this page. */
async function controlled(container: ServiceWorkerContainer): Promise<void> {
  if (container.controller) return;
  await new Promise((resolve) => {
    container.addEventListener("controllerchange", resolve, { once: true });
  });
}

/** Ask the worker to repair its cache; true when the cache is whole. */
function isWhole(worker: ServiceWorker): Promise<boolean> {
  const { port1, port2 } = new MessageChannel();
  return new Promise((resolve) => {
    port1.onmessage = (event) => resolve(event.data === true);
    worker.postMessage("check", [port2]);
  });
}

/** Tell when the first version could not be kept; a later one that fails leaves the old in charge. */
function watchForFailure(registration: ServiceWorkerRegistration, on: Updates): void {
  if (registration.active || registration.waiting) return;
  const first = registration.installing;
  // On a busy page it may have failed before anyone listened.
  if (!first) return on.failed();
  first.addEventListener("statechange", () => {
    if (first.state === "redundant" && !registration.active) on.failed();
  });
}

async function sayReady(container: ServiceWorkerContainer, on: Updates): Promise<void> {
  const { active } = await container.ready;
  if (!active || !(await isWhole(active))) return;
  await controlled(container);
  on.ready();
}

/** Let the waiting version take over, then load its page. */
async function takeOver(
  container: ServiceWorkerContainer,
  registration: ServiceWorkerRegistration,
): Promise<void> {
  const { waiting } = registration;
  if (waiting) {
    const switched = new Promise((resolve) => {
      container.addEventListener("controllerchange", resolve, { once: true });
    });
    waiting.postMessage("take over");
    await switched;
  }
  location.reload();
}

function watchForWaiting(
  container: ServiceWorkerContainer,
  registration: ServiceWorkerRegistration,
  on: Updates,
): void {
  let applying: Promise<void> | undefined;
  const apply = () => (applying ??= takeOver(container, registration));
  const announce = () => {
    if (registration.waiting && registration.active) on.waiting(apply);
  };
  const watchNew = () => registration.installing?.addEventListener("statechange", announce);
  registration.addEventListener("updatefound", watchNew);
  watchNew(); // opening the page may have started a download before anyone listened
  announce();
  let served = container.controller !== null;
  container.addEventListener("controllerchange", () => {
    // Another tab has accepted the update: this page is now older than its worker.
    if (served && !applying) on.waiting(apply);
    served = true;
  });
}

function askForUpdates(registration: ServiceWorkerRegistration): void {
  const ask = () => registration.update().catch(() => undefined); // no network: nothing new
  void ask();
  // An installed app stays open for days; it wakes more often than it starts.
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") void ask();
  });
}

async function follow(container: ServiceWorkerContainer, on: Updates): Promise<void> {
  const registration: ServiceWorkerRegistration | undefined =
    await container.register(address("sw.js"), { updateViaCache: "none" });
  if (!registration) return; // a browser told to block service workers gives none
  watchForFailure(registration, on);
  watchForWaiting(container, registration, on);
  askForUpdates(registration);
  await sayReady(container, on);
}

/** Keep this site for use without a network, and tell of new versions. */
export function startUpdates(on: Updates): void {
  // Absent outside https and localhost: the site works there, but only while its server answers.
  if (!("serviceWorker" in navigator)) return;
  const start = () =>
    void follow(navigator.serviceWorker, on).catch((error: unknown) => {
      console.warn(error);
      // Without a signal an old visit's worker is still there, and nothing is amiss.
      if (!isKept()) on.failed();
    });
  // The first visit's own files come before the copies for later.
  if (document.readyState === "complete") start();
  else addEventListener("load", start, { once: true });
}
