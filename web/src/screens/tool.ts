/** A tool's screen, made wholly from its declaration and what the core says of its form. */
import { LitElement, html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { guard } from "lit/directives/guard.js";
import { forget } from "../address/address-bar";
import type { Answer, CatalogTool, Drawing, Field, Input, Keep, RawRow, Scale } from "../contract/contract";
import type { Core } from "../engine/core";
import { FormController, type Start } from "../form/controller";
import { folded, inputAt, rowsAt } from "../form/paths";
import { answerCard, glance } from "../parts/answer";
import type { Chosen } from "../parts/chosen";
import type { Room } from "../parts/drawing";
import "../parts/drawing";
import { fieldGrid } from "../parts/fields";
import { icon } from "../parts/icons";
import {
  asideFold, cautionBlock, cutAndMarked, drawingFold, figureFold, noteFold, sourceFold, tableFold, wordFold,
} from "../parts/lists";
import "../parts/rows";
import { slides } from "../parts/slides";
import { printButton } from "../print/print-button";
import { listQuestions } from "../sync/questions";
import { typeset } from "../text/typeset";
import { formPad } from "./form-pad";
import { Rest } from "./rest";

/** Part of the card above the bar at which its number can be read. */
const CARD_SEEN = 0.6;

@customElement("lp-tool")
export class ToolScreen extends LitElement {
  @property({ attribute: false }) tool!: CatalogTool;
  @property({ attribute: false }) start!: Start;
  @property({ attribute: false }) scale!: Scale;
  @property({ attribute: false }) core!: Core;
  @property({ attribute: false }) openEarlier: () => void = () => undefined;
  @property({ attribute: false }) share: () => void = () => undefined;
  @property({ attribute: false }) keep: () => void = () => undefined;
  @property({ attribute: false }) use: (chosen: Chosen) => void = () => undefined;
  @state() private chosen = "";
  @state() private isCardSeen = true;
  /** The worked example's drawing, asked for once the form is seen empty. */
  @state() private example: Drawing | null = null;
  private isExampleAsked = false;
  private isSeen = false;
  form!: FormController;
  private readonly watch = new IntersectionObserver(
    (seen) => (this.isCardSeen = (seen[seen.length - 1]?.intersectionRatio ?? 1) >= CARD_SEEN),
    { threshold: [0, CARD_SEEN], rootMargin: "0px 0px -64px 0px" },
  );
  private readonly rest = new Rest(this, () => this.isSeen);

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.form = new FormController(this, this.core, this.tool, this.start, this.scale);
    this.addEventListener("focusout", () => this.form.field.left());
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    forget();
    void this.form.recorder.keep();
    this.form.end();
    this.watch.disconnect();
    document.documentElement.classList.remove("padded");
  }

  /**
   * Draws what was typed together with its answer where that comes at once: to lay the page out
   * twice takes longer than the core. A core that still starts takes longer yet: then the form is
   * drawn first, in a task of its own.
   */
  protected override async scheduleUpdate(): Promise<void> {
    if (this.core.isUp) await this.form.session.soon;
    else if (!this.hasUpdated) await new Promise((next) => setTimeout(next));
    super.scheduleUpdate();
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
    const { active, session } = this.form;
    const input = active ? inputAt(this.tool.declaration, active) : undefined;
    const needsPad = input && (input.kind !== "text" || (session.field(active)?.offers?.length ?? 0) > 0);
    return needsPad ? input : null;
  }

  protected override render(): TemplateResult {
    const { session } = this.form;
    const given = session.standing.state === "answered" ? session.standing.answer : null;
    // What a brief answer lacks is not there yet; the card has what it says.
    const answer = given?.is_brief ? null : given;
    const choose = (key: string): void => this.choose(key);
    const goTo = (path: string): void => this.form.field.take(path);
    // What a first reply would move is not seen before it; what was seen stays, with the field in hand.
    this.isSeen ||= session.isEmpty || session.isHeard;
    return html`<div class="tool ${this.isSeen ? "" : "coming"}">
        <form class="inputs" aria-label="Inputs" @submit=${(event: Event) => event.preventDefault()}>
          ${listQuestions(this.form.documents, this.tool.declaration, this.core)} ${this.inputs()}
        </form>
        <div class="result">
          ${answerCard({ session, chosen: this.chosen, choose, use: this.use, earlier: this.openEarlier, goTo })}
          ${this.drawing(answer)} ${this.slides()}
        </div>
        ${this.rest.isDrawn ? this.belowCard(answer) : nothing}
      </div>
      ${this.padInput ? formPad(this.form, this.padInput) : this.dock()}`;
  }

  private inputs(): TemplateResult {
    const { form } = this;
    const { said, declaration, aside } = form.session;
    const [open, rest] = folded(said.fields, declaration.inputs, form.isHeld);
    const shown = form.isUnfolded ? said.fields : open;
    const block = (input: Input, field: Field): TemplateResult =>
      form.entry && field.from === "carried" ? html`` : this.rows(input, field);
    return html`${fieldGrid(shown, declaration.inputs, "", form, block)}
    ${form.entry ? this.takers(said.fields) : nothing}
    ${rest.length > 0 ? this.foldButton(rest, form.isUnfolded) : nothing}
    ${said.stray.map((words) => html`<p class="message">${typeset(words)}</p>`)}
    ${asideFold(aside)}`;
  }

  /** Inputs that pieces of the job can fill. */
  private takers(fields: Field[]): TemplateResult[] {
    const { entry } = this.form;
    return this.tool.declaration.inputs.flatMap((input) => {
      const field = input.takes ? fields.find(({ name }) => name === input.name) : undefined;
      return field ? [html`<lp-take-pieces .entry=${entry} .input=${input} .field=${field}></lp-take-pieces>`] : [];
    });
  }

  private foldButton(rest: Field[], isOpen: boolean): TemplateResult {
    const names = rest.map(({ name }) => inputAt(this.tool.declaration, name)?.label).join(", ");
    const toggle = (): void => {
      this.form.isUnfolded = !isOpen;
      this.requestUpdate();
    };
    return html`<button type="button" class="plain fold-inputs" aria-expanded=${isOpen} @click=${toggle}>
      ${icon(isOpen ? "less" : "more")}<span class="fold-name">${isOpen ? "Less" : "More"}</span>
      ${isOpen ? nothing : html`<span class="fold-names">${names}</span>`}
    </button>`;
  }

  private rows(input: Input, field: Field): TemplateResult {
    const { session, opened, active, isTyping } = this.form;
    return html`<lp-rows
      .input=${input}
      .rows=${rowsAt(session.inputs, input.name)}
      .said=${field.rows ?? []}
      .opened=${opened?.name === input.name ? opened.at : null}
      .host=${this.form}
      .active=${active}
      .isTyping=${isTyping}
      .isStanding=${session.standing.state === "answered"}
    ></lp-rows>`;
  }

  /**
   * Before any input the worked example shows what is meant; it can't be taken for an answer. Its place
   * is kept for it, so that it moves nothing as it comes.
   */
  private drawing(answer: Answer | null): TemplateResult | typeof nothing {
    const { lastWhole: last, isEmpty, standing } = this.form.session;
    // An answer that is about to come would be drawn over an example that nobody has seen.
    if (standing.state === "asking" && !last && !isEmpty) return nothing;
    if (answer?.drawing) return html`<lp-drawing .drawing=${answer.drawing} .room=${this.room}></lp-drawing>`;
    const isExample = !last || isEmpty;
    const ghost = isExample ? this.example : last.drawing;
    // An example is asked for where a form was seen empty, never for one that is half filled.
    const isComing = isExample && (isEmpty || this.isExampleAsked);
    if (answer || !(ghost || isComing)) return nothing;
    return html`<div class="ghosted">
      ${isExample ? html`<p class="example">Example</p>` : nothing}
      <lp-drawing class="ghost" aria-hidden="true" .drawing=${ghost}></lp-drawing>
    </div>`;
  }

  /** The place of the first drawing, which is laid out by then: so it is drawn with its answer. */
  private get room(): Room | null {
    const place = this.querySelector("lp-drawing") ? null : this.querySelector(".result");
    return place && { width: place.clientWidth, screenHeight: innerHeight };
  }

  /** What can be dragged stands where its drawing does, once that is no mere example. */
  private slides(): TemplateResult[] {
    const { last, isEmpty, said } = this.form.session;
    if (!last || isEmpty) return [];
    const { inputs } = this.tool.declaration;
    const shown = (name: string): string => this.form.shown(name);
    return slides(said.fields, inputs, shown, (name, value) => this.form.change(name, value));
  }

  private belowCard(answer: Answer | null): TemplateResult {
    const { isEmpty, lastWhole } = this.form.session;
    const lower = this.rest.listed(answer ?? lastWhole);
    return html`<div class="rest">
      ${this.below(lower, answer !== null)}
      ${guard([answer && lower, isEmpty, this.form.canUndo, this.form.canRedo], () => this.about(answer && lower))}
    </div>`;
  }

  /** What stood below an answer is hidden with it, so that what was unfolded is so again below the next. */
  private below(lower: Answer | null, isStanding: boolean): TemplateResult {
    const { standing } = this.form.session;
    const isBehind = standing.state === "answered" && standing.answer !== lower;
    return html`<div class="below" ?hidden=${!isStanding} aria-busy=${isBehind}>
      ${guard([lower, this.chosen], () => (lower ? this.answered(lower) : nothing))}
    </div>`;
  }

  /** First what is cut or marked; the rest folded, each fold with its gist in its heading. */
  private answered(answer: Answer): TemplateResult {
    const { figures, pieces, marks, notes, cautions, details, tables, keeps } = answer;
    const choose = (key: string): void => this.choose(key);
    return html`${guard([pieces, marks, this.chosen], () => cutAndMarked(answer, this.chosen, choose))}
    ${this.form.entry ? html`<lp-in-job .entry=${this.form.entry} .pieces=${pieces}></lp-in-job>` : nothing}
    ${guard([cautions], () => cautionBlock(cautions))}
    ${guard([figures, this.chosen], () => figureFold(answer, this.chosen, choose))}
    ${keeps.map((keep) => this.keepButton(keep))}
    ${details.map((detail) => guard([detail], () => drawingFold(detail)))}
    ${tables.map((table) => guard([table], () => tableFold(table)))}
    ${guard([notes], () => noteFold(notes))}`;
  }

  /** Puts a row on a list of the person's own: a measured size on the yard's list. */
  private keepButton(keep: Keep): TemplateResult {
    const list = inputAt(this.tool.declaration, keep.input)?.label ?? "";
    return html`<div class="actions">
      <button type="button" @click=${() => this.form.keep(keep.input, keep.row as RawRow, keep.words)}>
        Keep ${typeset(keep.words)} <span class="quiet">${list}</span>
      </button>
    </div>`;
  }

  private about(answer: Answer | null): TemplateResult {
    const { declaration } = this.tool;
    const { isEmpty } = this.form.session;
    return html`${answer ? nothing : cautionBlock(declaration.cautions)}
      <div class="beside-folds">
        ${wordFold(declaration.inputs)} ${sourceFold(answer?.sources ?? [])}
      </div>
      <div class="actions">
        ${answer && !this.start.entry ? html`<button type="button" @click=${this.keep}>Keep on a job</button>` : nothing}
        ${answer ? printButton(answer, declaration.title) : nothing}
        ${this.start.entry ? nothing : html`<button type="button" @click=${this.share}>Share</button>`}
        ${this.form.canUndo
          ? html`<button type="button" @click=${() => this.form.undo()}>Undo</button>`
          : nothing}
        ${this.form.canRedo
          ? html`<button type="button" @click=${() => this.form.redo()}>Redo</button>`
          : nothing}
        <button type="button" ?disabled=${isEmpty} @click=${() => this.form.startOver()}>Start over</button>
      </div>`;
  }

  /** The sentence stays in sight while its card is off the screen. */
  private dock(): TemplateResult | typeof nothing {
    const { session } = this.form;
    if (this.isCardSeen || session.isEmpty) return nothing;
    const show = (): void => this.querySelector("#answer")?.scrollIntoView({ block: "center" });
    return html`<button type="button" class="plain dock" @click=${show}>${glance(session)}</button>`;
  }
}
