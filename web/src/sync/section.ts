/** The shop's server in the settings: who is signed in here, and what has not gone up yet. */
import { html, nothing, type TemplateResult } from "lit";
import { address } from "../engine/site-url";
import { toast } from "../parts/toast";
import { typeset } from "../text/typeset";
import { leftWords } from "./left";
import { forgetWho, sendLeft, syncStatus, type SyncStatus } from "./status";
import { inOneLine, refusals } from "./words";

export function shopSection(): TemplateResult | typeof nothing {
  const status = syncStatus();
  if (status.is === "none") return nothing;
  return html`<section class="shop-server" aria-label="The shop's server">
    <h2>The shop's server</h2>
    ${status.is === "in" ? signedIn(status) : status.person ? leftHere(status) : signedOut()}
  </section>`;
}

const link = (page: string, words: string): TemplateResult => html`<a class="button" href=${address(page)}>${words}</a>`;

function signedOut(): TemplateResult {
  return html`<p class="quiet">
      Signed in, you share jobs, lists and photos with the shop's people. Every question is answered without it.
    </p>
    ${link("sign-in", "Sign in")}`;
}

/** Signed out here or on another device: what is here stays until someone says otherwise. */
function leftHere(status: SyncStatus): TemplateResult {
  return html`<p>
      This device is signed out. What ${typeset(status.person)} kept here is still on it, for whoever holds it. ${notUp(status)}
      ${status.toGo.size > 0 ? "That goes up when someone signs in." : nothing}
    </p>
    <div class="actions">${link("sign-in", "Sign in")}</div>
    <details class="fold">
      <summary><span class="foldname">Take the shop's jobs off this phone</span></summary>
      <p>What the shop's server has goes from this phone and stays there. What it lacks stays here.</p>
      <button type="button" @click=${() => void takeOff()}>Take it off</button>
    </details>`;
}

function notUp({ called, toGo }: SyncStatus): string {
  const count = toGo.size;
  if (count === 0) return "All of it is on the shop's server.";
  return `${count === 1 ? "1 thing has" : `${count} things have`} not gone up yet: ${inOneLine([...called.values()])}.`;
}

function signedIn(status: SyncStatus): TemplateResult {
  const { person, device, isWaiting, heard, toGo, left } = status;
  const hasOwn = toGo.size > (left?.names.length ?? 0);
  const at = heard?.toLocaleTimeString("en-US", { hour: "numeric", minute: "2-digit" });
  return html`<p role="status">
      ${typeset(person ? `${person} on ${device}. ` : "")}${isWaiting ? "Waiting for a network. " : ""}${typeset(notUp(status))}
      ${at ? html`<span class="quiet">Last heard ${at}.</span>` : nothing}
    </p>
    ${refusals(status).map((words) => html`<p class="message">${typeset(words)}</p>`)} ${leftByOther(status)}
    <p class=${hasOwn ? "message" : "quiet"}>
      ${hasOwn ? "Before you sign out, let it go up: what has not is on this phone alone. " : nothing}After signing
      out, what is on this phone stays on it until it is taken off here.
    </p>
    <div class="actions">${link("people", "People")} ${link("devices", "Devices")} ${link("sign-out", "Sign out")}</div>`;
}

/** What somebody else left here never goes up in another's name by itself. */
function leftByOther({ left, called }: SyncStatus): TemplateResult | typeof nothing {
  if (!left) return nothing;
  const words = left.names.map((name) => called.get(name) ?? "").filter(Boolean);
  return html`<p class="message">${typeset(leftWords(left, words))} It goes up when ${typeset(left.by)} signs in here, or now in your name.</p>
    <div class="actions"><button type="button" @click=${sendLeft}>Send it up in my name</button></div>`;
}

async function takeOff(): Promise<void> {
  const { person, left } = syncStatus();
  const names = await (await import("./leave")).takeOff();
  const stays = names.length;
  forgetWho(stays > 0 ? { by: left?.by ?? person, names } : null);
  toast(stays > 0 ? `It is off this phone, but for ${stays} that the server lacks.` : "It is off this phone.");
}
