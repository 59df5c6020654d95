/** The sheet behind the units: how lengths are shown, the look, the screen, copies, installing. */
import { html, nothing, type TemplateResult } from "lit";
import type { Scale } from "../contract/contract";
import { catalog } from "../engine/catalog";
import { isInstalled, needsHomeScreenHint } from "../engine/install";
import type { Settings } from "../store/store";
import { sheet } from "../parts/sheet";
import { shopSection } from "../sync/section";
import { typeset } from "../text/typeset";

export interface SettingsView {
  settings: Settings;
  /** Asks the browser to install; null where it offers no way now. */
  install: (() => Promise<boolean>) | null;
  change(part: Partial<Settings>): void;
  close(): void;
}

const LOOKS = [
  { look: "auto", words: "as the phone" },
  { look: "light", words: "light" },
  { look: "dark", words: "dark" },
] as const;

/** Returns what the chip in the header says: "in · 1/16". */
export function chipWords(scale: Scale): string {
  const choices = catalog.scales.find(({ units }) => units === scale.units)?.choices;
  const chosen = choices?.find(({ steps }) => steps.includes(scale.step));
  return `${scale.units} · ${chosen?.short ?? ""}`;
}

/** Returns the sheet. */
export function settingsSheet(view: SettingsView): TemplateResult {
  return sheet(
    "How it is shown",
    html`${scales(view)} ${look(view)} ${screen(view)} ${shopSection()} <div class="doings">${installing(view)}</div>`,
    view.close,
  );
}

function option(
  group: string, isChosen: boolean, words: string, choose: () => void,
): TemplateResult {
  return html`<label class="option"
    ><input type="radio" name=${group} .checked=${isChosen} @change=${choose} /><span>${typeset(words)}</span></label
  >`;
}

function scales(view: SettingsView): TemplateResult[] {
  const { settings } = view;
  return catalog.scales.map(({ units, title, choices }) => html`<fieldset class="options">
    <legend>${title}</legend>
    <div class="choices">
      ${choices.map(({ steps, words }) =>
        option(
          "scale",
          settings.units === units && steps.includes(settings.step),
          words,
          () => view.change({ units, step: steps[0] ?? settings.step }),
        ),
      )}
    </div>
  </fieldset>`);
}

function look(view: SettingsView): TemplateResult {
  return html`<fieldset class="options">
    <legend>Look</legend>
    <div class="choices">
      ${LOOKS.map((each) =>
        option("look", view.settings.look === each.look, each.words, () =>
          view.change({ look: each.look }),
        ),
      )}
    </div>
  </fieldset>`;
}

function screen(view: SettingsView): TemplateResult {
  const change = (event: Event): void =>
    view.change({ awake: (event.target as HTMLInputElement).checked });
  return html`<label class="option wide"
    ><input type="checkbox" role="switch" .checked=${view.settings.awake} @change=${change} /><span
      >Keep the screen awake</span
    ></label
  >`;
}

function installing({ install }: SettingsView): TemplateResult | typeof nothing {
  if (isInstalled()) return nothing;
  if (install) {
    return html`<button type="button" @click=${() => void install()}>Install on this phone</button>`;
  }
  if (!needsHomeScreenHint()) return nothing;
  return html`<p class="quiet">
    To install on this phone: open the share menu of the browser and choose “Add to Home Screen”.
  </p>`;
}
