/** Writes the form into the address of the open page, not on every key but before it is left. */

/** Milliseconds between two writes: a browser refuses more than about a hundred in half a minute. */
const GAP = 400;

/** Names, in what the browser keeps for this tab, the addresses written here last, the newest first. */
const WRITTEN = "written";

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
/** Whether the form behind the newest address is the one that is kept, and not a link's. */
let isKept = false;
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

/**
 * Writes `hash` into the address now, or within a moment where one was just written.
 *
 * @param isOfKept whether it says the form that is kept; a link's, unchanged, is not
 */
export function writeSoon(hash: string, isOfKept: boolean): void {
  waiting = hash;
  isKept = isOfKept;
  clearTimeout(timer);
  const wait = last + GAP - Date.now();
  if (wait <= 0) writeNow();
  else timer = window.setTimeout(writeNow, wait);
}

/** A page opens at the address that stands now: nothing else may write there. */
export function arrived(): void {
  own = location.hash;
  isKept = false;
  forget();
}

/**
 * Whether the address that stands now was written from the form, perhaps a moment ago.
 *
 * A page that is loaded anew right after a write comes back with its entry's notes gone, seen in
 * Chromium, or with the address before: so what was written is known by the tab too.
 */
export function isFromForm(): boolean {
  return entryState().isFromForm || (isReturn() && written().includes(location.hash));
}

/** Whether the page was loaded anew or come back to, and not led to by a link. */
function isReturn(): boolean {
  const [way] = performance.getEntriesByType("navigation") as PerformanceNavigationTiming[];
  return way !== undefined && way.type !== "navigate";
}

function written(): string[] {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(WRITTEN) ?? "[]");
    return Array.isArray(kept) ? kept.map(String) : [];
  } catch {
    // A browser may keep nothing for a tab: then only the entry's notes tell.
    return [];
  }
}

/** Puts `hash` in the place of the address that stands now. */
function write(hash: string): void {
  history.replaceState({ ...entryState(), isFromForm: isKept }, "", hash);
  own = location.hash;
  if (!isKept) return;
  try {
    const before = written().filter((each) => each !== own);
    sessionStorage.setItem(WRITTEN, JSON.stringify([own, ...before].slice(0, 2)));
  } catch {
    // As above: nothing is kept for this tab.
  }
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
  write(hash);
  forget();
  return differs;
}

function writeNow(): void {
  if (!waiting) return;
  // Back, or an address typed above, arrives before the page hears of it: that entry is not ours.
  if (location.hash === own && (waiting !== own || isKept !== entryState().isFromForm)) {
    write(waiting);
    last = Date.now();
  }
  forget();
}
