/** The photos of an item: small, in a row; a tap shows one large. */
import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import type { Item } from "../job/document";
import type { Job } from "../job/job";
import { addPhotos, drawn, MOST_PHOTOS, photoOf, removePhoto } from "../job/photos";
import { Hearing } from "../parts/hearing";
import { icon } from "../parts/icons";
import { onWritten } from "../store/store";

const SMALL = 240;
const LARGE = 1600;

@customElement("lp-photos")
export class Photos extends LitElement {
  @property({ attribute: false }) job!: Job;
  @property({ attribute: false }) item!: Item;
  @state() private isBusy = false;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  private async add(event: Event): Promise<void> {
    const field = event.target as HTMLInputElement;
    const files = [...(field.files ?? [])];
    field.value = "";
    this.isBusy = true;
    await addPhotos(this.job, this.item, files);
    this.isBusy = false;
  }

  protected override render(): TemplateResult {
    const { photos = [] } = this.item;
    return html`<fieldset class="photos">
      <legend>Photos</legend>
      ${repeat(photos, ({ id }) => id, ({ id }, at) => html`<lp-photo
        .photo=${id}
        .name=${`Photo ${at + 1} of ${this.item.title || "the item"}`}
        .drop=${() => removePhoto(this.job, this.item.id, id)}
      ></lp-photo>`)}
      ${photos.length < MOST_PHOTOS
        ? html`<label class="filebutton"
            ><input type="file" accept="image/*" multiple ?disabled=${this.isBusy} @change=${(event: Event) => void this.add(event)} /><span
              >${icon("camera")} ${this.isBusy ? "Keeping it …" : "Take a photo"}</span
            ></label
          >`
        : nothing}
    </fieldset>`;
  }
}

@customElement("lp-photo")
export class PhotoView extends LitElement {
  @property({ attribute: false }) photo = "";
  @property({ attribute: false }) name = "";
  /** Deletes it. */
  @property({ attribute: false }) drop: () => void = () => undefined;
  @state() private isLarge = false;
  @state() private isGone = false;
  private picture: ImageBitmap | null = null;
  /** One that another of the shop's people took may come after its job. */
  protected readonly written = new Hearing(this, () =>
    onWritten((keys) => void (keys.some(([, id]) => id === this.photo) && this.read())));

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.read();
  }

  private async read(): Promise<void> {
    this.picture = await photoOf(this.photo).catch(() => null);
    this.isGone = this.picture === null;
    this.draw();
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.has("isLarge" as never)) this.draw();
  }

  private draw(): void {
    const canvas = this.querySelector("canvas");
    if (this.picture && canvas) drawn(this.picture, this.isLarge ? LARGE : SMALL, canvas);
  }

  protected override render(): TemplateResult {
    const { name, isLarge, isGone } = this;
    return html`<div class="photo ${isLarge ? "large" : ""}">
      <button
        type="button"
        class="plain"
        aria-label="${name}, ${isLarge ? "large" : "small"}"
        aria-pressed=${isLarge}
        @click=${() => (this.isLarge = !isLarge)}
      >
        ${isGone ? html`<span class="quiet">not on this phone</span>` : html`<canvas></canvas>`}
      </button>
      <button type="button" class="plain iconed" aria-label="Delete ${name}" @click=${() => this.drop()}>${icon("close")}</button>
    </div>`;
  }
}
