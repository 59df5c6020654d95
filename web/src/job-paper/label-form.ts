/** What is asked of a sheet of labels, and its usual answers. */
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import type { FieldError } from "../contract/contract";

export type LabelFields = { [name: string]: string } & { paper: string };

/** Lengths carry their own units, so that they mean the same whatever the screen shows. */
export const LABELS = {
  // 30 to a Letter sheet: 3 of 2 5/8 and two gaps of 1/8 leave 3/16 at each side.
  letter: {
    paper: "letter", width: '2 5/8"', height: '1"', left: '3/16"', top: '1/2"', gap_across: '1/8"', gap_down: '0"',
    across: "3", down: "10", first: "1", only: "all", outlines: "no",
  },
  // 24 to an A4 sheet: 3 of 70 mm are its width, 8 of 37 mm leave 1/2 mm at top and foot.
  a4: {
    paper: "a4", width: "70 mm", height: "37 mm", left: "0 mm", top: "0.5 mm", gap_across: "0 mm", gap_down: "0 mm",
    across: "3", down: "8", first: "1", only: "all", outlines: "no",
  },
} satisfies { [paper: string]: LabelFields };

const ASKED: [name: string, label: string][] = [
  ["width", "Label width"],
  ["height", "Label height"],
  ["across", "Labels across"],
  ["down", "Labels down"],
  ["left", "Left of the first"],
  ["top", "Above the first"],
  ["gap_across", "Gap across"],
  ["gap_down", "Gap down"],
  ["first", "Begin at label"],
];
const COUNTS = ["across", "down", "first"];

export interface LabelForm {
  fields: LabelFields;
  errors: FieldError[];
  change(fields: LabelFields): void;
  print(): void;
}

/** Returns the form. */
export function labelForm(form: LabelForm): TemplateResult {
  const { print } = form;
  return html`<section class="labelform" aria-label="Labels for pieces">
    <h3>Labels for pieces</h3>
    <div class="choices">
      ${paper(form, "letter", "Letter sheet")} ${paper(form, "a4", "A4 sheet")}
    </div>
    <div class="labelgrid">${ASKED.map(([name, label]) => field(form, name, label))}</div>
    ${turn(form, "only", "left", "all", "Only pieces not cut yet")}
    ${turn(form, "outlines", "yes", "no", "Outlines, for a trial on plain paper")}
    <p class="quiet">Measure the sheet from its top left corner; inches or mm. Print at 100 %, not fitted to the page.</p>
    <button type="button" @click=${print}>Print labels</button>
  </section>`;
}

function paper({ fields, change }: LabelForm, name: "letter" | "a4", words: string): TemplateResult {
  return html`<label class="option"
    ><input type="radio" name="labelpaper" .checked=${live(fields.paper === name)} @change=${() => change(LABELS[name])} /><span
      >${words}</span
    ></label
  >`;
}

function field({ fields, errors, change }: LabelForm, name: string, label: string): TemplateResult {
  const fault = errors.find((error) => error.field === name)?.message ?? "";
  const enter = (event: Event): void => change({ ...fields, [name]: (event.target as HTMLInputElement).value });
  return html`<label class="labelfield"
      ><span class="label">${label}</span
      ><input
        type="text"
        inputmode=${COUNTS.includes(name) ? "numeric" : "text"}
        autocomplete="off"
        maxlength="40"
        aria-invalid=${fault !== ""}
        .value=${live(fields[name] ?? "")}
        @input=${enter}
    /></label>
    ${fault ? html`<p class="message" role="alert">${fault}</p>` : nothing}`;
}

function turn({ fields, change }: LabelForm, name: string, on: string, off: string, words: string): TemplateResult {
  return html`<label class="option wide"
    ><input
      type="checkbox"
      role="switch"
      .checked=${fields[name] === on}
      @change=${(event: Event) => change({ ...fields, [name]: (event.target as HTMLInputElement).checked ? on : off })}
    /><span>${words}</span></label
  >`;
}
