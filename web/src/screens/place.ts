/** A place: its tools by the question each answers, and a filter over every place's. */
import { LitElement, html, nothing, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { unsafeHTML } from "lit/directives/unsafe-html.js";
import { catalog } from "../engine/catalog";
import type { CatalogTool } from "../contract";
import { typeset } from "../text/typeset";
import { hashOf } from "../address/address";
import { matching } from "./search";

type Shelf = (typeof catalog.places)[number];

@customElement("lp-place")
export class PlaceScreen extends LitElement {
  @property({ attribute: false }) place = "";
  /** Told whether questions of every place are shown, not those of this one. */
  @property({ attribute: false }) finding: (isFinding: boolean) => void = () => undefined;
  @state() private asked = "";

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override render(): TemplateResult {
    return html`<div class="place">
      <label class="find"
        ><span class="unseen">Find a question</span>
        <input
          type="search"
          placeholder="Find a question…"
          autocomplete="off"
          enterkeyhint="search"
          @input=${(event: Event) => this.find((event.target as HTMLInputElement).value.trim())}
        />
      </label>
      ${this.asked ? this.found() : this.shelf(catalog.places.find((each) => each.place === this.place))}
    </div>`;
  }

  private find(asked: string): void {
    this.asked = asked;
    this.finding(asked !== "");
  }

  private found(): TemplateResult {
    const shelves = catalog.places
      .map((shelf) => ({ ...shelf, tools: matching(shelf.tools, this.asked) }))
      .filter((shelf) => shelf.tools.length > 0);
    const count = shelves.reduce((sum, shelf) => sum + shelf.tools.length, 0);
    const said = count === 0 ? `No question holds “${this.asked}”.` : `${count} found`;
    return html`<p class="found ${count ? "unseen" : ""}" role="status">${said}</p>
      ${shelves.map((shelf) => html`<h2>${shelf.title}</h2>${this.shelf(shelf)}`)}`;
  }

  private shelf(shelf: Shelf | undefined): TemplateResult {
    const tools = shelf?.tools ?? [];
    if (tools.length === 0) return html`<p class="found">No questions here yet.</p>`;
    return html`<ul class="questions">
      ${tools.map((tool) => html`<li>${this.question(tool)}</li>`)}
    </ul>`;
  }

  private question(tool: CatalogTool): TemplateResult {
    const { place, slug, question, title } = tool.declaration;
    // The picture was drawn from the tool's example when the front end was built.
    return html`<a class="card question" href=${hashOf(place, slug)}>
      ${tool.thumbnail ? unsafeHTML(tool.thumbnail) : nothing}
      <span class="named"
        ><span class="asks">${typeset(question)}</span> <span class="under-name">${typeset(title)}</span></span
      >
    </a>`;
  }
}
