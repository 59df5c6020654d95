/** What two people said differently: both stand here until one of them says which. */
import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import { toolNamed } from "../engine/catalog";
import { withStyle } from "../parts/style";
import { toast } from "../parts/toast";
import { typeset } from "../text/typeset";
import { inWords } from "./asked-words";
import { toolsAsked, type Asking, type Question } from "./places";
import { openQuestions, type Subject } from "./questions";
import { syncStatus } from "./status";

@customElement("lp-questions")
export class QuestionsCard extends LitElement {
  @property({ attribute: false }) subject!: Subject;
  /** Declarations by slug; null until they are there. */
  @state() private tools: Asking["tools"] | null = null;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("subject")) void this.bring();
  }

  /** Brings the words of the tools; a tool that this version lacks has none. */
  private async bring(): Promise<void> {
    const { body } = this.subject;
    const known = this.tools ?? {};
    await withStyle("job").catch(console.warn);
    const wanted = toolsAsked(body, openQuestions(body)).filter((slug) => !(slug in known));
    if (this.tools && wanted.length === 0) return;
    const came = await Promise.all(wanted.map((slug) => toolNamed(slug).catch(() => null)));
    const pairs = came.flatMap((tool) => (tool ? [[tool.declaration.slug, tool.declaration] as const] : []));
    this.tools = { ...known, ...Object.fromEntries(pairs) };
  }

  protected override render(): TemplateResult | typeof nothing {
    const { subject, tools } = this;
    const asked = openQuestions(subject.body);
    if (!tools || asked.length === 0) return nothing;
    return html`<section class="card item questions" aria-label="Said differently">
      <h2>Said differently</h2>
      <p class="quiet">This was said in two ways. Say which is right; it then stands for both.</p>
      ${repeat(asked, ({ id }) => id, (question) => this.one({ ...subject, tools }, question))}
    </section>`;
  }

  private one(asking: Asking, question: Question): TemplateResult {
    const { what, within, values, isNews } = inWords(asking, question);
    const place = within.join(" › ");
    const settle = (side: number | null): void => void this.settle(question.id, side);
    const side = (words: string, at: number): TemplateResult => html`<button type="button" @click=${() => settle(at)}>
      ${typeset(words)} <span class="quiet">${question.sides[at]?.by || "one of you"}</span>
    </button>`;
    return html`<div class="asked" role="group" aria-label=${[what, place].filter(Boolean).join(", ")}>
      <p>${typeset(what)}${place ? html`<span class="under-name">${typeset(place)}</span>` : nothing}</p>
      <div class="actions">
        ${isNews ? nothing : values.map(side)}
        <button type="button" @click=${() => settle(null)}>${isNews ? "Seen" : "As it stands"}</button>
      </div>
    </div>`;
  }

  private async settle(question: string, side: number | null): Promise<void> {
    const { body, core, put } = this.subject;
    const said = await core.settle(body, question, side, syncStatus().person);
    if (said.ok) put(said.document as never);
    else toast(said.errors[0]?.message ?? "");
  }
}
