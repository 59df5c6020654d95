/** A tool's screen, made wholly from its declaration and the core's answer. */
import { LitElement, html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { guard } from "lit/directives/guard.js";
import type { Answer, CatalogTool, Drawing, Input, RawInputs, Scale } from "../contract";
import type { Core } from "../engine/core";
import { answerCard, glance } from "../parts/answer";
import "../parts/drawing";
import { fieldGrid } from "../parts/fields";
import { icon } from "../parts/icons";
import { cautionBlock, noteBlock, numberLists, sourceFold, tableBlock } from "../parts/lists";
import { pad } from "../parts/pad";
import "../parts/rows";
import { slides } from "../parts/slides";
import { printSheets, sheetsOf } from "../print/print";
import { typeset } from "../text/typeset";
import { capital } from "../text/words";
import { forget } from "../address/address-bar";
import { FormController } from "../form/controller";
import { applying, folded, idOf, inputAt, isChanged, nameOf, rowsAt } from "../form/paths";
import { strayMessages } from "../form/status-text";

/** Part of the card above the bar at which its number can be read. */
const CARD_SEEN = 0.6;

@customElement("lp-tool")
export class ToolScreen extends LitElement {
  @property({ attribute: false }) tool!: CatalogTool;
  @property({ attribute: false }) start: RawInputs = {};
  @property({ attribute: false }) scale!: Scale;
  @property({ attribute: false }) core!: Core;
  @property({ attribute: false }) openEarlier: () => void = () => undefined;
  @state() private chosen = "";
  @state() private isCardSeen = true;
  /** The worked example's drawing, asked for once the form is seen empty. */
  @state() private example: Drawing | null = null;
  private isExampleAsked = false;
  form!: FormController;
  private readonly watch = new IntersectionObserver(
    (seen) => (this.isCardSeen = (seen[seen.length - 1]?.intersectionRatio ?? 1) >= CARD_SEEN),
    { threshold: [0, CARD_SEEN], rootMargin: "0px 0px -64px 0px" },
  );

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.form = new FormController(this, this.core, this.tool.declaration, this.start, this.scale);
    this.addEventListener("focusout", () => this.form.field.left());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    forget();
    void this.form.memory.keep();
    this.form.session.end();
    this.watch.disconnect();
    document.documentElement.classList.remove("padded");
  }

  protected override firstUpdated(): void {
    const card = this.querySelector("#answer");
    if (card) this.watch.observe(card);
  }

  protected override updated(): void {
    document.documentElement.classList.toggle("padded", this.padInput !== null);
    if (this.form.session.isEmpty && !this.isExampleAsked) void this.workExample();
  }

  private async workExample(): Promise<void> {
    this.isExampleAsked = true;
    const { slug, example } = this.tool.declaration;
    const reply = await this.core.answer(slug, example, this.scale).catch(() => null);
    if (reply?.ok) this.example = reply.answer.drawing;
  }

  private choose(key: string): void {
    this.chosen = key;
    this.querySelector("#answer")?.scrollIntoView({ block: "nearest" });
  }

  /** The input the pad is for; a text without offers is typed on the phone's own keyboard. */
  private get padInput(): Input | null {
    const input = this.form.active ? inputAt(this.tool.declaration, this.form.active) : undefined;
    const needsPad = input && (input.kind !== "text" || (input.offers?.length ?? 0) > 0);
    return needsPad ? input : null;
  }

  protected override render(): TemplateResult {
    const { session, active } = this.form;
    const answer = session.standing.state === "answered" ? session.standing.answer : null;
    const choose = (key: string): void => this.choose(key);
    const earlier = this.openEarlier;
    return html`<div class="tool">
        <form class="inputs" aria-label="Inputs" @submit=${(event: Event) => event.preventDefault()}>
          ${this.inputs()}
        </form>
        <div class="result">
          ${answerCard({ session, chosen: this.chosen, active, choose, earlier })}
          ${this.drawing(answer)} ${this.slides()}
        </div>
        <div class="rest">
          ${guard([answer, this.chosen], () => (answer ? this.answered(answer) : nothing))}
          ${guard([answer, session.isEmpty], () => this.about(answer))}
        </div>
      </div>
      ${this.padInput ? this.pad(this.padInput) : this.dock()}`;
  }

  private inputs(): TemplateResult {
    const { session, isUnfolded } = this.form;
    const { inputs, declaration } = session;
    const applied = applying(declaration.inputs, inputs);
    const [open, rest] = folded(applied);
    const isHeldOpen = rest.some(
      (input) => isChanged(input, inputs[input.name]) || this.form.message(input.name) !== "",
    );
    const isOpen = isUnfolded || isHeldOpen;
    const shown = isOpen ? applied : open;
    return html`${fieldGrid(shown, inputs, "", this.form, (input) => this.rows(input))}
    ${rest.length > 0 && !isHeldOpen ? this.foldButton(rest, isOpen) : nothing}
    ${strayMessages(session).map((words) => html`<p class="message">${typeset(words)}</p>`)}`;
  }

  private foldButton(rest: Input[], isOpen: boolean): TemplateResult {
    const names = rest.map((input) => input.label).join(", ");
    const toggle = (): void => {
      this.form.isUnfolded = !isOpen;
      this.requestUpdate();
    };
    return html`<button type="button" class="plain fold-inputs" aria-expanded=${isOpen} @click=${toggle}>
      ${icon(isOpen ? "less" : "more")}<span class="fold-name">${isOpen ? "Less" : "More"}</span>
      ${isOpen ? nothing : html`<span class="fold-names">${names}</span>`}
    </button>`;
  }

  private rows(input: Input): TemplateResult {
    const { session, opened, active, isTyping } = this.form;
    return html`<lp-rows
      .input=${input}
      .rows=${rowsAt(session.inputs, input.name)}
      .opened=${opened?.name === input.name ? opened.at : null}
      .host=${this.form}
      .active=${active}
      .isTyping=${isTyping}
      .errors=${session.errors}
    ></lp-rows>`;
  }

  /** Before any input the worked example shows what is meant; it can't be taken for an answer. */
  private drawing(answer: Answer | null): TemplateResult | typeof nothing {
    const { last, isEmpty, standing } = this.form.session;
    // An answer that is about to come would be drawn over an example that nobody has seen.
    if (standing.state === "asking" && !last && !isEmpty) return nothing;
    if (answer?.drawing) return html`<lp-drawing .drawing=${answer.drawing}></lp-drawing>`;
    const isExample = !last || isEmpty;
    const ghost = isExample ? this.example : last.drawing;
    if (answer || !ghost) return nothing;
    return html`<div class="ghosted">
      ${isExample ? html`<p class="example">Example</p>` : nothing}
      <lp-drawing class="ghost" aria-hidden="true" .drawing=${ghost}></lp-drawing>
    </div>`;
  }

  /** What can be dragged stands where its drawing does, once that is no mere example. */
  private slides(): TemplateResult[] {
    const { last, isEmpty, inputs } = this.form.session;
    if (!last || isEmpty) return [];
    const asked = applying(this.tool.declaration.inputs, inputs);
    return slides(asked, inputs, last, (name, value) => this.form.change(name, value));
  }

  private answered(answer: Answer): TemplateResult {
    const { figures, pieces, marks, notes, cautions } = answer;
    return html`${guard([figures, pieces, marks, this.chosen], () =>
      numberLists(answer, this.chosen, (key) => this.choose(key)),
    )}
    ${answer.details.map(
      (detail) => html`<section class="block" aria-label=${detail.title}>
        <h2>${typeset(detail.title)}</h2>
        <lp-drawing .drawing=${detail}></lp-drawing>
      </section>`,
    )}
    ${answer.tables.map((table) => guard([table], () => tableBlock(table)))}
    ${guard([notes], () => noteBlock(notes))} ${guard([cautions], () => cautionBlock(cautions))}`;
  }

  private about(answer: Answer | null): TemplateResult {
    const { declaration } = this.tool;
    const helped = declaration.inputs
      .flatMap((input) => [input, ...(input.columns ?? [])])
      .filter((input) => input.help);
    return html`${answer ? nothing : cautionBlock(declaration.cautions)}
      ${helped.length > 0
        ? html`<details class="fold">
            <summary>What is asked, in words</summary>
            <dl>
              ${helped.map((input) => html`<dt>${typeset(input.label)}</dt><dd>${typeset(input.help)}</dd>`)}
            </dl>
          </details>`
        : nothing}
      ${sourceFold(answer?.sources ?? [])}
      ${answer ? this.printing(answer) : nothing}
      <div class="actions">
        <button type="button" ?disabled=${this.form.session.isEmpty} @click=${() => this.form.startOver()}>
          Start over
        </button>
        <button type="button" @click=${this.openEarlier}>Earlier answers</button>
      </div>`;
  }

  /** Marks make a story stick, templates stand for themselves. */
  private printing(answer: Answer): TemplateResult | typeof nothing {
    const sheets = sheetsOf(answer, this.tool.declaration.title);
    if (sheets.length === 0) return nothing;
    const pages = sheets.length === 1 ? "1 page" : `${sheets.length} pages`;
    return html`<div class="actions">
      <button type="button" @click=${() => printSheets(sheets)}>
        Print at full size <span class="quiet">${pages}</span>
      </button>
    </div>`;
  }

  private pad(input: Input): TemplateResult {
    const { field, session, active } = this.form;
    const { declaration, inputs } = session;
    const [name = "", at] = active.split(".");
    return pad({
      input,
      name: at === undefined ? input.label : capital(nameOf(declaration, active)),
      entry: field.entry,
      reading: field.reading,
      message: this.form.message(active),
      isFresh: field.isFresh,
      isLast: field.isLast,
      scale: session.scale,
      given: at === undefined ? inputs : (rowsAt(inputs, name)[Number(at)] ?? {}),
      siblings: at === undefined ? declaration.inputs : (inputAt(declaration, name)?.columns ?? []),
      glance: glance(session, this.chosen, active),
      press: (entry) => field.press(entry),
      next: () => field.next(),
      close: () => field.close(),
      keyboard: () => this.ownKeyboard(),
    });
  }

  /** The phone decides at focus whether its keyboard comes up. */
  private ownKeyboard(): void {
    const field = document.getElementById(idOf(this.form.active));
    if (!(field instanceof HTMLInputElement)) return;
    field.blur();
    field.inputMode = "text";
    field.focus();
    field.addEventListener("blur", () => (field.inputMode = "none"), { once: true });
  }

  /** The number stays in sight while its card is off the screen. */
  private dock(): TemplateResult | typeof nothing {
    const { session, active } = this.form;
    if (this.isCardSeen || session.isEmpty) return nothing;
    const show = (): void => this.querySelector("#answer")?.scrollIntoView({ block: "center" });
    return html`<button type="button" class="plain dock" @click=${show}>
      ${glance(session, this.chosen, active)}
    </button>`;
  }
}
