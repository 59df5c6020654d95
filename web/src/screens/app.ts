/** The frame around every screen: header, places, sheets, and what is said at the foot. */
import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from "lit";
import { customElement, state } from "lit/decorators.js";
import { keyed } from "lit/directives/keyed.js";
import type { Scale } from "../contract/contract";
import { keepAwake } from "../engine/awake";
import { catalog } from "../engine/catalog";
import { Core } from "../engine/core";
import { watchInstall } from "../engine/install";
import {
  flushed, keptAnswers, loadSettings, onSettings, onStorageFault, purgeDeleted, saveSettings,
  storageFault, ToolDocuments, type KeptAnswer, type Settings,
} from "../store/store";
import { startUpdates } from "../engine/updates";
import { crowsFoot, icon } from "../parts/icons";
import { nav } from "../parts/nav";
import { unfoldForPrint } from "../print/print";
import { typeset } from "../text/typeset";
import { hashOf, routeOf, type Route } from "../address/address";
import { arrived, isFromForm } from "../address/address-bar";
import { isLayerChange, layerClosed, layerOpened } from "../address/layers";
import { bringBack, share } from "./backup-file";
import { earlierSheet } from "./earlier-answers";
import "./place";
import type { Start } from "../form/controller";
import { onToast, toast, type Toast } from "../parts/toast";
import { sayReadyOnce } from "./ready";
import { chipWords, settingsSheet } from "./settings";
import "./tool";
import type { ToolScreen } from "./tool";

interface Page {
  /** Counts openings, so that a tool opened anew starts anew. */
  number: number;
  route: Route;
  /** What the tool starts with; null for a place. */
  start: Start | null;
}

/** Milliseconds that plain words stay. */
const SAID = 6000;

@customElement("lp-app")
export class App extends LitElement {
  @state() private page: Page | null = null;
  @state() private settings!: Settings;
  @state() private sheet: "" | "settings" | "earlier" = "";
  @state() private kept: KeptAnswer[] | string | null = null;
  /** The words that questions are searched for. */
  @state() private asked = "";
  @state() private said: Toast | null = null;
  @state() private newer: (() => Promise<void>) | null = null;
  @state() private install: (() => Promise<boolean>) | null = null;
  private readonly core = new Core();
  private pages = 0;
  private listLeft: { place: string; top: number } | null = null;
  private timer = 0;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    onToast((said) => this.show(said));
    onStorageFault((words) => toast(words));
    watchInstall((install) => (this.install = install));
    unfoldForPrint();
    startUpdates({ ready: () => sayReadyOnce(), waiting: (apply) => (this.newer = apply) });
    void this.begin();
  }

  private async begin(): Promise<void> {
    this.wear(await loadSettings());
    void onSettings((settings) => this.wear(settings));
    // Where a list was left is remembered here, with the words it was searched for.
    history.scrollRestoration = "manual";
    addEventListener("hashchange", () => void (isLayerChange() || this.open()));
    await this.open();
    await purgeDeleted().catch(storageFault);
  }

  /** Shows everything as these settings say. */
  private wear(settings: Settings): void {
    const last: Settings | undefined = this.settings;
    this.settings = settings;
    const isRescaled = settings.units !== last?.units || settings.step !== last.step;
    if (isRescaled) this.toolScreen?.form.rescale(this.scale);
    document.documentElement.dataset["look"] = this.settings.look;
    void keepAwake(this.settings.awake);
  }

  private get scale(): Scale {
    return { units: this.settings.units, step: this.settings.step };
  }

  private get toolScreen(): ToolScreen | null {
    return this.querySelector("lp-tool");
  }

  /** Opens what the address names; an unknown address leads to the place last used. */
  private async open(): Promise<void> {
    arrived();
    // What was offered to undo belongs to the tool that is being left.
    if (this.said?.action) this.said = null;
    const number = (this.pages += 1);
    const route = routeOf(location.hash);
    if (!route) return this.goHome();
    const start = await this.startOf(route);
    if (number !== this.pages) return start?.documents.close();
    const left = this.page?.route;
    if (left && !left.tool) this.listLeft = { place: left.place, top: scrollY };
    this.page = { number, route, start };
    this.sheet = "";
    const isBack = Boolean(left?.tool) && !route.tool && this.listLeft?.place === route.place;
    if (!isBack && !route.tool) this.asked = "";
    await this.updateComplete;
    scrollTo(0, isBack ? (this.listLeft?.top ?? 0) : 0);
    const place = catalog.places.find((each) => each.place === route.place);
    document.title = `${route.tool?.declaration.title ?? place?.title ?? ""} · Longpoint`;
    if (route.place !== this.settings.place) this.change({ place: route.place });
  }

  private goHome(): void {
    const known = catalog.places.some((each) => each.place === this.settings.place);
    const place = known ? this.settings.place : (catalog.places[0]?.place ?? "");
    if (!place) return;
    history.replaceState(null, "", hashOf(place));
    void this.open();
  }

  /**
   * An address with inputs beats the saved form, but for one: after a reload the address that the
   * form itself wrote may lack the last things typed.
   */
  private async startOf({ tool, inputs, units, version, unread }: Route): Promise<Start | null> {
    if (unread.length > 0) toast(`Part of this address can't be read and was left out: ${unread.join(", ")}.`);
    if (!tool) return null;
    const documents = await ToolDocuments.open(tool.declaration, this.settings.units);
    const isReload = this.page === null && isFromForm() && documents.form.revision > 0;
    if (!inputs || isReload) return { form: documents.kept(this.settings.units), documents, isKept: true };
    const lists = documents.keptLists(units);
    return { form: { inputs: { ...inputs, ...lists }, typedIn: units, version, aside: [] }, documents, isKept: false };
  }

  private change(part: Partial<Settings>): void {
    this.wear({ ...this.settings, ...part });
    void saveSettings(part);
  }

  private show(said: Toast): void {
    clearTimeout(this.timer);
    this.said = said;
    if (!said.action) this.timer = window.setTimeout(() => (this.said = null), SAID);
  }

  private async showEarlier(): Promise<void> {
    const slug = this.page?.route.tool?.declaration.slug;
    if (!slug) return;
    this.kept = null;
    this.sheet = "earlier";
    await this.toolScreen?.form.recorder.keep();
    this.kept = await keptAnswers(slug).catch((error: Error) => error.message);
  }

  private async reload(): Promise<void> {
    const apply = this.newer;
    this.newer = null;
    await this.toolScreen?.form.recorder.keep();
    await flushed();
    await apply?.();
  }

  protected override render(): TemplateResult | typeof nothing {
    const { page } = this;
    if (!page) return nothing;
    const { place, tool } = page.route;
    const shelf = catalog.places.find((each) => each.place === place);
    const title = tool?.declaration.title ?? (this.asked ? "Found" : shelf?.title);
    return html`<div class="frame">
        <div class="page">
          ${this.header(place, title ?? "", tool !== null)} ${this.banner()}
          <main>
            ${tool
              ? keyed(
                  page.number,
                  html`<lp-tool
                    .tool=${tool}
                    .start=${page.start}
                    .scale=${this.scale}
                    .core=${this.core}
                    .openEarlier=${() => void this.showEarlier()}
                    .share=${() => void share(title ?? "", this.toolScreen?.form.unshared ?? [])}
                  ></lp-tool>`,
                )
              : keyed(place, html`<lp-place
                    .place=${place}
                    .asked=${this.asked}
                    .ask=${(asked: string) => (this.asked = asked)}
                    .restore=${(file: File) => void this.bringBack(file)}
                  ></lp-place>`)}
          </main>
        </div>
        ${nav(place)}
      </div>
      ${this.saying()} ${this.openSheet()}`;
  }

  private header(place: string, title: string, isTool: boolean): TemplateResult {
    return html`<header class="head">
      ${isTool
        ? html`<a class="sign back" href=${hashOf(place)} aria-label="Back to the questions"
            >${icon("back")}${crowsFoot()}</a
          >`
        : html`<span class="sign">${crowsFoot()}</span>`}
      <h1>${typeset(title)}</h1>
      <button
        type="button"
        class="chip units"
        aria-haspopup="dialog"
        aria-label="Units and settings: ${chipWords(this.settings)}"
        @click=${() => (this.sheet = "settings")}
      >
        ${chipWords(this.settings)}
      </button>
    </header>`;
  }

  private banner(): TemplateResult | typeof nothing {
    if (!this.newer) return nothing;
    return html`<section class="banner" role="status" aria-label="Update">
      <p>New version ready</p>
      <button type="button" class="primary" @click=${() => void this.reload()}>Reload</button>
      <button type="button" @click=${() => (this.newer = null)}>Later</button>
    </section>`;
  }

  private saying(): TemplateResult {
    const { said } = this;
    const act = (): void => {
      this.said = null;
      said?.act();
    };
    // A popover lies above open sheets too.
    return html`<div class="saying" role="status" popover="manual">
      ${said
        ? html`<p>${typeset(said.words)}</p>
            ${said.action ? html`<button type="button" @click=${act}>${said.action}</button>` : nothing}`
        : nothing}
    </div>`;
  }

  protected override updated(changed: PropertyValues): void {
    // Words said before the first page is there are shown with it.
    if (changed.has("said" as never) || changed.get("page" as never) === null) this.raise();
    if (changed.has("sheet" as never)) {
      if (this.sheet) layerOpened(() => (this.sheet = ""));
      else if (changed.get("sheet" as never)) layerClosed();
    }
  }

  /** Shows what is said above whatever was opened last. */
  private raise(): void {
    const saying = this.querySelector<HTMLElement>(".saying");
    if (saying?.matches(":popover-open")) saying.hidePopover();
    if (this.said) saying?.showPopover();
  }

  private openSheet(): TemplateResult | typeof nothing {
    const close = (): void => void (this.sheet = "");
    if (this.sheet === "earlier") return earlierSheet(this.kept, (entry) => this.recall(entry), close);
    if (this.sheet !== "settings") return nothing;
    return settingsSheet({
      settings: this.settings,
      install: this.install,
      change: (part) => this.change(part),
      close,
    });
  }

  private recall(entry: KeptAnswer): void {
    this.sheet = "";
    const { inputs, scale, version } = entry;
    this.toolScreen?.form.recall({ inputs, typedIn: scale.units, version, aside: [] });
  }

  /** What came back may be another form for the open tool: it is opened anew from what is kept. */
  private async bringBack(file: File): Promise<void> {
    if (!(await bringBack(file))) return;
    const { route } = this.page ?? {};
    if (route?.tool) history.replaceState(null, "", hashOf(route.place, route.tool.declaration.slug));
    await this.open();
  }
}
