/** Says that everything is here for use without a network. */
import { toast } from "../parts/toast";

const READY = "longpoint ready offline";

/** Said once on a device; where even that can't be noted, it may be said again. */
export function sayReadyOnce(): void {
  try {
    if (localStorage.getItem(READY)) return;
    localStorage.setItem(READY, "said");
  } catch (error) {
    console.warn(error);
  }
  toast("Ready offline: everything here works with no signal.");
}

/** Said where the first visit could not be kept. */
export function sayNotReady(): void {
  toast(
    "Longpoint could not be kept for use with no signal: check the signal and the room left on " +
      "this phone, then reload.",
  );
}
