/** One thing after the other: what is written here, and what could not be. */
let working: Promise<void> = Promise.resolve();
let first: Promise<unknown> = Promise.resolve();
/** What was to be said before there was a screen to say it on. */
const unsaid: string[] = [];
let onFault = (words: string): void => void unsaid.push(words);

/** Tells `say` in words when something could not be kept or read, by now or from now on. */
export function onStorageFault(say: (words: string) => void): void {
  onFault = say;
  for (const words of unsaid.splice(0)) say(words);
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

/** Lets `other` be done before what is changed from now on is written; it must come within a moment. */
export function writeAfter(other: Promise<unknown>): void {
  first = other;
}

/** Does `work`, which writes, in its turn. */
export function writeInTurn<T>(work: () => Promise<T>): Promise<T> {
  const other = first;
  return inTurn(() => other.then(work));
}

/** Resolves when everything typed so far is written, or was said to be impossible to keep. */
export function flushed(): Promise<void> {
  return working;
}
