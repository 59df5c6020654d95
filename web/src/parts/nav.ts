/**
 * The places, at the foot of the screen or, on a wide one, along its right edge.
 *
 * They stand in the page's own HTML, so that its first paint waits for no script.
 */
import { hashOf } from "../address/address";

/** Marks the open place. */
export function markPlace(place: string): void {
  for (const link of document.querySelectorAll(".places a")) {
    if (link.getAttribute("href") === hashOf(place)) link.setAttribute("aria-current", "page");
    else link.removeAttribute("aria-current");
  }
}
