/** What stands around every screen: the header, the word of an update, what is said at the foot. */
import { html, nothing, type TemplateResult } from "lit";
import { crowsFoot, icon } from "../parts/icons";
import type { Toast } from "../parts/toast";
import { typeset } from "../text/typeset";

export interface Head {
  title: string;
  /** What the page belongs to, under its title: a job, an item. */
  under: string;
  /** Where the sign leads back to; empty for a page that nothing lies above. */
  back: string;
  backWords: string;
  /** How lengths are shown. */
  chip: string;
  settings(): void;
}

export function header({ title, under, back, backWords, chip, settings }: Head): TemplateResult {
  return html`<header class="head">
    ${back
      ? html`<a class="sign back" href=${back} aria-label=${backWords}>${icon("back")}${crowsFoot()}</a>`
      : html`<span class="sign">${crowsFoot()}</span>`}
    <div class="titles">
      <h1>${typeset(title)}</h1>
      ${under ? html`<p class="under-name">${typeset(under)}</p>` : nothing}
    </div>
    <button
      type="button"
      class="chip units"
      aria-haspopup="dialog"
      aria-label="Units and settings: ${chip}"
      @click=${settings}
    >
      ${chip}
    </button>
  </header>`;
}

/** Returns the word of a newer version that waits. */
export function banner(reload: () => void, later: () => void): TemplateResult {
  return html`<section class="banner" role="status" aria-label="Update">
    <p>New version ready</p>
    <button type="button" class="primary" @click=${reload}>Reload</button>
    <button type="button" @click=${later}>Later</button>
  </section>`;
}

/** Returns what is said, in a popover that lies above open sheets too. */
export function saying(said: Toast | null, act: () => void): TemplateResult {
  return html`<div class="saying" role="status" popover="manual">
    ${said
      ? html`<p>${typeset(said.words)}</p>
          ${said.action ? html`<button type="button" @click=${act}>${said.action}</button>` : nothing}`
      : nothing}
  </div>`;
}
