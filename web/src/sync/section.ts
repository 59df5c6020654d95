/** The shop's server in the settings: who is signed in here, and what has not gone up yet. */
import { html, nothing, type TemplateResult } from "lit";
import { address } from "../engine/site-url";
import { typeset } from "../text/typeset";
import { syncStatus, type SyncStatus } from "./status";

export function shopSection(): TemplateResult | typeof nothing {
  const status = syncStatus();
  if (status.is === "none") return nothing;
  return html`<section class="shop-server" aria-label="The shop's server">
    <h2>The shop's server</h2>
    ${status.is === "out" ? signedOut() : signedIn(status)}
  </section>`;
}

function signedOut(): TemplateResult {
  return html`<p class="quiet">
      Signed in, you share jobs, lists and photos with the shop's people. Every question is answered without it.
    </p>
    <a class="button" href=${address("sign-in")}>Sign in</a>`;
}

function signedIn({ person, device, isWaiting, toGo, refused }: SyncStatus): TemplateResult {
  const kept = toGo.size === 0 ? "All of it is on the shop's server." : `${toGo.size === 1 ? "1 thing has" : `${toGo.size} things have`} not gone up yet.`;
  return html`<p role="status">
      ${typeset(person ? `${person} on ${device}. ` : "")}${isWaiting ? "Waiting for a network. " : ""}${kept}
    </p>
    ${[...new Set(refused.values())].map((words) => html`<p class="fault">${typeset(words)}</p>`)}
    <div class="actions">
      <a class="button" href=${address("people")}>People</a>
      <a class="button" href=${address("devices")}>Devices</a>
      <a class="button" href=${address("sign-out")}>Sign out</a>
    </div>`;
}
