/** Writes the form into the address of the open page, not on every key but before it is left. */

/** Milliseconds between two writes: a browser refuses more than about a hundred in half a minute. */
const GAP = 400;

/** What an entry of the browser's history notes. */
interface EntryState {
  /** Its address was written here: the saved form behind it is never older. */
  isFromForm: boolean;
  /** It stands for an open pad or sheet. */
  layer: boolean;
  /** A layer's entry stands on it. */
  bears: boolean;
}

let waiting = "";
let timer = 0;
let last = 0;
/** The address as the open page found or left it: where another stands, another page is opening. */
let own = "";

// A link is followed after its click was heard here, so the page left behind keeps what was typed.
addEventListener("click", writeNow, { capture: true });
addEventListener("pagehide", writeNow);

/** Returns what the entry that stands now notes. */
export function entryState(): EntryState {
  const state = history.state as Partial<EntryState> | null;
  return {
    isFromForm: state?.isFromForm === true, layer: state?.layer === true, bears: state?.bears === true,
  };
}

/** Writes `hash` into the address now, or within a moment where one was just written. */
export function writeSoon(hash: string): void {
  waiting = hash;
  clearTimeout(timer);
  const wait = last + GAP - Date.now();
  if (wait <= 0) writeNow();
  else timer = window.setTimeout(writeNow, wait);
}

/** A page opens at the address that stands now: nothing else may write there. */
export function arrived(): void {
  own = location.hash;
  forget();
}

/** Whether the address that stands now was written from the form, perhaps a moment ago. */
export function isFromForm(): boolean {
  return entryState().isFromForm;
}

/** Forgets a write that waits: another page is open now. */
export function forget(): void {
  waiting = "";
  clearTimeout(timer);
}

/** Writes the open page's newest address over the one that stands now; true where they differ. */
export function rewrite(): boolean {
  const hash = waiting || own;
  const differs = location.hash !== hash;
  history.replaceState({ ...entryState(), isFromForm: true }, "", hash);
  own = hash;
  forget();
  return differs;
}

function writeNow(): void {
  if (!waiting) return;
  // Back, or an address typed above, arrives before the page hears of it: that entry is not ours.
  if (location.hash === own && waiting !== own) {
    history.replaceState({ ...entryState(), isFromForm: true }, "", waiting);
    own = location.hash;
    last = Date.now();
  }
  forget();
}
