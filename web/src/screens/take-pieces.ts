/** On a question of a job: an input filled with pieces of the job, which stay the job's. */
import { LitElement, html, nothing, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Field, Input } from "../contract/contract";
import { calledAs } from "../engine/catalog";
import { entryOf, withEntry, type Entry } from "../job/document";
import type { EntryForm } from "../job/entry-form";
import { Hearing } from "../parts/hearing";
import { typeset } from "../text/typeset";

@customElement("lp-take-pieces")
export class TakePieces extends LitElement {
  @property({ attribute: false }) entry!: EntryForm;
  @property({ attribute: false }) input!: Input;
  @property({ attribute: false }) field!: Field;
  protected readonly hearing = new Hearing(this, () => this.entry.job.onChange(() => this.requestUpdate()));

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  private get source(): string {
    const { job, id } = this.entry;
    return entryOf(job.body, id)?.ties?.[this.input.name]?.pieces ?? "";
  }

  /** A tie takes the place of what was typed; without one it is typed by hand again. */
  private take(pieces: string): void {
    const { job, id } = this.entry;
    const { name, label } = this.input;
    const edit = (entry: Entry): Entry => {
      const { [name]: _, ...ties } = entry.ties ?? {};
      const { [name]: typed, ...inputs } = entry.inputs;
      if (!pieces) return { ...entry, ties };
      return { ...entry, inputs, ties: { ...ties, [name]: { pieces } } };
    };
    job.change((body) => withEntry(body, id, edit), `${label} taken from the job`);
  }

  protected override render(): TemplateResult {
    const { input, field, source } = this;
    const { errors = [], carried = [] } = this.entry.job.entries.find(({ id }) => id === this.entry.id) ?? {};
    const fault = source ? errors.find((error) => error.field === input.name)?.message : "";
    // What is left out, and how what isn't known was taken.
    const how = source ? carried.find((each) => each.input === input.name)?.from : "";
    const rows = field.from === "carried" ? (field.rows ?? []) : [];
    return html`<label class="textfield"
        ><span class="label">${typeset(input.label)}, from this job</span>
        <select @change=${(event: Event) => this.take((event.target as HTMLSelectElement).value)}>
          ${option("", "typed by hand", source)}
          ${this.sources().map(([id, words]) => option(id, words, source))}
        </select>
      </label>
      ${fault ? html`<p class="message">${typeset(fault)}</p>` : nothing}
      ${how ? html`<p class="quiet">${typeset(how)}</p>` : nothing}
      ${rows.length > 0
        ? html`<ol class="takenrows">
            ${rows.map(({ fields }) => html`<li>${typeset(fields.map((each) => this.said(each)).filter(Boolean).join(" · "))}</li>`)}
          </ol>`
        : nothing}`;
  }

  /** A size with its label, at the scale; a choice and a name speak for themselves. */
  private said({ name, shown = "", reads }: Field): string {
    const column = this.input.columns?.find((each) => each.name === name);
    const isPlain = !column || column.kind === "choice" || column.kind === "text";
    return isPlain || !shown ? shown : `${column.label} ${reads?.[0] ?? shown}`;
  }

  /** What has pieces: the whole job first, stocks, items, then single questions. */
  private sources(): [id: string, words: string][] {
    const { body, entries } = this.entry.job;
    const withPieces = (entry: Entry): boolean =>
      entry.id !== this.entry.id && (entries.find(({ id }) => id === entry.id)?.pieces ?? 0) > 0;
    return [
      ["job", "the whole job"],
      ...(body.stock ?? []).map(({ id, title }): [string, string] => [id, title || "Stock"]),
      ...body.items.map(({ id, title }): [string, string] => [id, title || "Item"]),
      ...body.items.flatMap((item) =>
        item.entries.filter(withPieces).map((entry): [string, string] => [entry.id, `${entry.letter} ${calledAs(entry)}`]),
      ),
    ];
  }
}

function option(value: string, words: string, chosen: string): TemplateResult {
  return html`<option value=${value} ?selected=${value === chosen}>${words}</option>`;
}
