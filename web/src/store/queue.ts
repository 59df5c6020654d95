/** One thing after the other: what is written here, and what could not be. */
let working: Promise<void> = Promise.resolve();
let onFault: (words: string) => void = () => undefined;

/** Tells `say` in words when something could not be kept or read. */
export function onStorageFault(say: (words: string) => void): void {
  onFault = say;
}

/** Says in words that something could not be kept or read. */
export function storageFault(error: unknown): void {
  console.error(error);
  onFault(error instanceof Error ? error.message : "What was typed could not be kept.");
}

/** Does `work` once all that was asked for before is done. */
export function inTurn<T>(work: () => Promise<T>): Promise<T> {
  const done = working.then(work);
  working = done.then(
    () => undefined,
    () => undefined,
  );
  return done;
}

/** Resolves when everything typed so far is written, or was said to be impossible to keep. */
export function flushed(): Promise<void> {
  return working;
}
