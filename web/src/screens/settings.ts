/** The sheet behind the units: how lengths are shown, the look, the screen, copies, installing. */
import { html, nothing, type TemplateResult } from "lit";
import type { Scale, Step, Units } from "../contract/contract";
import { isInstalled, needsHomeScreenHint } from "../engine/install";
import type { Settings } from "../store/store";
import { sheet } from "../parts/sheet";
import { typeset } from "../text/typeset";

export interface SettingsView {
  settings: Settings;
  /** Asks the browser to install; null where it offers no way now. */
  install: (() => Promise<boolean>) | null;
  change(part: Partial<Settings>): void;
  close(): void;
}

interface Choice {
  units: Units;
  step: Step;
  words: string;
  chip: string;
}

const IN_INCHES: Choice[] = [
  { units: "in", step: 8, words: "1/8", chip: "1/8" },
  { units: "in", step: 16, words: "1/16", chip: "1/16" },
  { units: "in", step: 32, words: "1/32", chip: "1/32" },
  { units: "in", step: 64, words: "1/64", chip: "1/64" },
  { units: "in", step: 1000, words: "thousandths", chip: "0.001" },
];
const IN_MILLIMETERS: Choice[] = [
  { units: "mm", step: 16, words: "1", chip: "1" },
  { units: "mm", step: 32, words: "1/2", chip: "1/2" },
  { units: "mm", step: 64, words: "1/10", chip: "0.1" },
];
const LOOKS = [
  { look: "auto", words: "as the phone" },
  { look: "light", words: "light" },
  { look: "dark", words: "dark" },
] as const;

/** In millimeters each step of inches stands for the nearest of three. */
function chosenStep({ units, step }: Scale): Step {
  if (units === "in") return step;
  return step <= 16 ? 16 : step === 32 ? 32 : 64;
}

/** Returns what the chip in the header says: "in · 1/16". */
export function chipWords(scale: Scale): string {
  const step = chosenStep(scale);
  const all = [...IN_INCHES, ...IN_MILLIMETERS];
  const chosen = all.find((each) => each.units === scale.units && each.step === step);
  return `${scale.units} · ${chosen?.chip ?? ""}`;
}

/** Returns the sheet. */
export function settingsSheet(view: SettingsView): TemplateResult {
  return sheet(
    "How it is shown",
    html`${scales(view)} ${look(view)} ${screen(view)} <div class="doings">${installing(view)}</div>`,
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

function scales(view: SettingsView): TemplateResult {
  const { settings } = view;
  const group = (title: string, choices: Choice[]): TemplateResult => html`<fieldset class="options">
    <legend>${title}</legend>
    <div class="choices">
      ${choices.map(({ units, step, words }) =>
        option(
          "scale",
          settings.units === units && chosenStep(settings) === step,
          words,
          () => view.change({ units, step }),
        ),
      )}
    </div>
  </fieldset>`;
  return html`${group("Inches, to", IN_INCHES)} ${group("Millimeters, to", IN_MILLIMETERS)}`;
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
