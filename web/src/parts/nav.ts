/** The places, at the foot of the screen or, on a wide one, along its right edge. */
import { html, nothing, type TemplateResult } from "lit";
import { catalog } from "../engine/catalog";
import { hashOf, JOB } from "../address/address";
import { capital } from "../text/words";
import { icon } from "./icons";

/** Returns the bar with the open place marked. */
export function nav(place: string): TemplateResult {
  return html`<nav class="places" aria-label="Places">
    ${[JOB, ...catalog.places.map((each) => each.place)].map(
      (each) => html`<a href=${hashOf(each)} aria-current=${each === place ? "page" : nothing}
        >${icon(each)}<span>${capital(each)}</span></a
      >`,
    )}
  </nav>`;
}
