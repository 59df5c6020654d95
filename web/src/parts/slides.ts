/** Angles that can be dragged: figure and drawing follow the thumb. */
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import type { Field, Input } from "../contract/contract";
import { typeset } from "../text/typeset";

/**
 * Returns a range control for each field that can be dragged.
 *
 * The thumb is ahead of the answer: a plain number counts as it stands in the field (`shown`).
 */
export function slides(
  fields: Field[], inputs: Input[], shown: (name: string) => string,
  change: (name: string, value: string) => void,
): TemplateResult[] {
  return fields.flatMap((field) => {
    const input = inputs.find((each) => each.name === field.name);
    if (!input?.slide || field.at === undefined || field.at === null) return [];
    const typed = Number(shown(input.name) || NaN);
    const at = Number.isNaN(typed) ? field.at : typed;
    return [slide(input, at, (value) => change(input.name, value))];
  });
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
