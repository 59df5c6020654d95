/** Milliseconds in which a slow phone draws its first answer. */
const DRAWN = 1_000;

/** What a start can do without waits until its first answer, just given, is drawn. */
export async function afterStart(): Promise<void> {
  // On a first visit the app is to be kept as soon as can be.
  if (navigator.serviceWorker?.controller) await new Promise((resolve) => setTimeout(resolve, DRAWN));
}
