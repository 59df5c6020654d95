/** Angles that can be dragged: figure and drawing follow the thumb. */
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import type { Answer, Input, RawInputs } from "../contract";
import { typeset } from "../text/typeset";

/** Returns a range control for each input that declares one; `last` says how its text was read. */
export function slides(
  inputs: Input[], given: RawInputs, last: Answer, change: (name: string, value: string) => void,
): TemplateResult[] {
  return inputs
    .filter((input) => input.slide)
    .map((input) => slide(input, degreesOf(input, given, last), (value) => change(input.name, value)));
}

function slide(input: Input, at: number, change: (value: string) => void): TemplateResult {
  const { from, to } = input.slide ?? { from: 0, to: 0 };
  const id = `slide-${input.name}`;
  return html`<div class="slide">
    <label for=${id}>${typeset(input.label)}</label><output for=${id}>${at}°</output>
    <input
      id=${id}
      type="range"
      min=${from}
      max=${to}
      step="1"
      aria-valuetext="${at} degrees"
      aria-describedby=${input.help ? `${id}-help` : nothing}
      .value=${live(String(Math.round(at)))}
      @input=${(event: Event) => change((event.target as HTMLInputElement).value)}
    />
    ${input.help ? html`<span class="unseen" id="${id}-help">${typeset(input.help)}</span>` : nothing}
  </div>`;
}

/** The thumb is ahead of the answer, so a plain number counts as it stands; else as it was read. */
function degreesOf(input: Input, given: RawInputs, last: Answer): number {
  const typed = given[input.name] ?? input.default;
  const plain = typed === null || typed === "" ? NaN : Number(typed);
  return Number.isNaN(plain) ? Number(last.inputs[input.name] ?? input.slide?.from) : plain;
}
