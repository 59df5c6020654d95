/** A place: its tools by the question each answers, and a filter over every place's. */
import { LitElement, html, nothing, type TemplateResult } from "lit";
import { customElement, property } from "lit/decorators.js";
import { live } from "lit/directives/live.js";
import { unsafeHTML } from "lit/directives/unsafe-html.js";
import { catalog, pictureOf } from "../engine/catalog";
import type { Listing } from "../contract/contract";
import { Growing } from "../parts/growing";
import { typeset } from "../text/typeset";
import { hashOf } from "../address/address";
import { saveFile } from "./backup-file";
import { Search } from "./search";

type Shelf = (typeof catalog.places)[number];

/** Questions that fill a phone's screen. */
const IN_VIEW = 8;
let isFirst = true;

@customElement("lp-place")
export class PlaceScreen extends LitElement {
  @property({ attribute: false }) place = "";
  /** The words that questions of every place are searched for; empty for this place's list. */
  @property({ attribute: false }) asked = "";
  @property({ attribute: false }) ask: (asked: string) => void = () => undefined;
  /** What the open job needs here; null where none is open. */
  @property({ attribute: false }) sheet: TemplateResult | null = null;
  @property({ attribute: false }) restore: (file: File) => void = () => undefined;

  /** A page's first screen is what is in view, or the job's sheet, where one is open: the rest is drawn after it. */
  private readonly growing = new Growing(this, isFirst ? IN_VIEW : Infinity, Infinity, () => Infinity);
  private readonly search = new Search(this);

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override updated(): void {
    isFirst = false;
  }

  private get isWhole(): boolean {
    return this.growing.most === Infinity;
  }

  protected override render(): TemplateResult {
    const isFound = this.search.finds(this.asked);
    return html`<div class="place">
      <label class="find"
        ><span class="unseen">Find a question</span>
        <input
          type="search"
          placeholder="Find a question…"
          autocomplete="off"
          enterkeyhint="search"
          .value=${live(this.asked)}
          @focus=${() => this.search.begin()}
          @input=${(event: Event) => this.ask((event.target as HTMLInputElement).value)}
        />
      </label>
      ${this.sheet && !isFound ? html`${this.sheet}<h2>Questions</h2>` : nothing}
      ${isFound ? this.found() : this.sheet && !this.isWhole ? nothing : this.questions()}
    </div>`;
  }

  private questions(): TemplateResult {
    return html`${this.shelf(catalog.places.find((each) => each.place === this.place))} ${this.isWhole ? this.keeping() : nothing}`;
  }

  /** Everything kept on this phone, to a file and back. */
  private keeping(): TemplateResult {
    const restore = (event: Event): void => {
      const field = event.target as HTMLInputElement;
      const file = field.files?.[0];
      if (file) this.restore(file);
      field.value = "";
    };
    return html`<section class="keeping" aria-label="Kept on this phone">
      <h2>Kept on this phone</h2>
      <div class="actions">
        <button type="button" @click=${() => void saveFile()}>Save to a file</button>
        <label class="filebutton"
          ><input type="file" accept="application/json,.json" @change=${restore} /><span
            >Restore from a file</span
          ></label
        >
      </div>
    </section>`;
  }

  private found(): TemplateResult {
    const here = catalog.places.filter(({ place }) => place === this.place);
    const elsewhere = catalog.places.filter(({ place }) => place !== this.place);
    const shelves = [...here, ...elsewhere]
      .map((shelf) => ({ ...shelf, tools: this.search.matching(shelf.tools, this.asked) }))
      .filter((shelf) => shelf.tools.length > 0);
    const count = shelves.reduce((sum, shelf) => sum + shelf.tools.length, 0);
    const said = count === 0 ? `No question holds “${this.asked.trim()}”.` : `${count} found`;
    return html`<p class="found ${count ? "unseen" : ""}" role="status">${said}</p>
      ${shelves.map((shelf) => html`<h2>${shelf.title}</h2>${this.shelf(shelf)}`)}`;
  }

  private shelf(shelf: Shelf | undefined): TemplateResult {
    const tools = shelf?.tools ?? [];
    if (tools.length === 0) return html`<p class="found">No questions here yet.</p>`;
    return html`<ul class="questions">
      ${tools.slice(0, this.growing.most).map((tool) => html`<li>${this.question(tool)}</li>`)}
    </ul>`;
  }

  private question({ place, slug, question, title }: Listing): TemplateResult {
    // The picture was drawn from the tool's example when the front end was built.
    const picture = pictureOf(slug);
    return html`<a class="card question" href=${hashOf(place, slug)}>
      ${picture ? unsafeHTML(picture) : nothing}
      <span class="named"
        ><span class="asks">${typeset(question)}</span> <span class="under-name">${typeset(title)}</span></span
      >
    </a>`;
  }
}
