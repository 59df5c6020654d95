/** Milliseconds in which a slow phone draws its first answer. */
const DRAWN = 1_000;

/** What a start can do without waits until its first answer, just given, is drawn. */
export function afterStart(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, DRAWN));
}
