/** Writes the form into the address of the open page, not on every key but before it is left. */

/** Milliseconds between two writes: a browser refuses more than about a hundred in half a minute. */
const GAP = 400;

let waiting = "";
let timer = 0;
let last = 0;

// A link is followed after its click was heard here, so the page left behind keeps what was typed.
addEventListener("click", writeNow, { capture: true });
addEventListener("pagehide", writeNow);

/** Writes `hash` into the address now, or within a moment where one was just written. */
export function writeSoon(hash: string): void {
  waiting = hash;
  clearTimeout(timer);
  const wait = last + GAP - Date.now();
  if (wait <= 0) writeNow();
  else timer = window.setTimeout(writeNow, wait);
}

/** Forgets a write that waits: another page is open now. */
export function forget(): void {
  waiting = "";
  clearTimeout(timer);
}

function writeNow(): void {
  if (!waiting) return;
  if (waiting !== location.hash) history.replaceState(history.state, "", waiting);
  last = Date.now();
  forget();
}
