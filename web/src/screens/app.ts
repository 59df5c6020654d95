/** The frame around every screen: header, places, sheets, and what is said at the foot. */
import { LitElement, html, nothing, type TemplateResult } from "lit";
import { state } from "lit/decorators.js";
import { keyed } from "lit/directives/keyed.js";
import type { Scale } from "../contract/contract";
import { keepAwake } from "../engine/awake";
import { catalog } from "../engine/catalog";
import { Core } from "../engine/core";
import { watchInstall } from "../engine/install";
import { firstScreenStands } from "../engine/prestart-worker";
import {
  flushed, keptAnswers, loadSettings, onSettings, onStorageFault, purgeDeleted, saveSettings,
  storageFault, type KeptAnswer, type Settings,
} from "../store/store";
import { startUpdates } from "../engine/updates";
import { markPlace } from "../parts/nav";
import { unfoldForPrint } from "../print/print";
import { hashOf, JOB, jobHash, routeOf } from "../address/address";
import { arrived } from "../address/address-bar";
import { isLayerChange, Layer } from "../address/layers";
import { bringBack, share } from "./backup-file";
import { banner, header } from "./frame";
import { openSheet, type SheetName } from "./open-sheet";
import { headOf, isPart, listOf, titleOf, type Page } from "./page";
import "./place";
import { bringRooms } from "../job/bring";
import type { Job } from "../job/job";
import { takeIn } from "../job-file/doors";
import { holdsJob } from "../job-file/way";
import { sheetOf } from "../job-sheets/sheet-of";
import type { Chosen } from "../parts/chosen";
import { startSync } from "../sync/start";
import { toast } from "../parts/toast";
import { sayNotReady, sayReadyOnce } from "./ready";
import { Said } from "./said";
import { chipWords } from "./settings";
import { NOT_HERE, startOf } from "./start";
import type { ToolScreen } from "./tool";

/** Asked for before there is a screen, so that the storage opens meanwhile. */
const kept = loadSettings();

export class App extends LitElement {
  @state() private page: Page | null = null;
  @state() private settings!: Settings;
  @state() private sheet: SheetName = "";
  @state() private kept: KeptAnswer[] | string | null = null;
  /** The words that questions are searched for. */
  @state() private asked = "";
  @state() private newer: (() => Promise<void>) | null = null;
  @state() private install: (() => Promise<boolean>) | null = null;
  protected readonly layer = new Layer(this, () => this.sheet !== "", () => (this.sheet = ""));
  private readonly core = new Core();
  private readonly said = new Said(this);
  /** The open job, once anything of jobs was opened. */
  private job: Job | null = null;
  /** The number that is taken to another question. */
  private chosen: Chosen | null = null;
  private pages = 0;
  /** Whether the screen within the frame is drawn too. */
  @state() private isWhole = false;
  private listLeft: { at: string; top: number } | null = null;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    onStorageFault((words) => toast(words));
    watchInstall((install) => (this.install = install));
    unfoldForPrint();
    // To look through all that is kept takes the processor that the core starts on.
    void this.core.settled().then(() => startUpdates({
      // Files that are all here are no use where the core can't start.
      ready: () => void this.core.answers().then((answers) => answers && sayReadyOnce()),
      failed: sayNotReady,
      waiting: (apply) => (this.newer = apply),
    }));
    void startSync(this.core, () => this.sheet === "settings" && this.requestUpdate());
    void this.begin();
  }

  private async begin(): Promise<void> {
    this.wear(await kept);
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
    if (settings.units !== last?.units || settings.step !== last.step) {
      for (const each of [this.toolScreen?.form, this.job]) each?.rescale(this.scale);
    }
    document.documentElement.dataset["look"] = this.settings.look;
    void keepAwake(this.settings.awake);
  }

  private get scale(): Scale {
    const { units, step } = this.settings;
    return { units, step };
  }

  private get toolScreen(): ToolScreen | null {
    return this.querySelector("lp-tool");
  }

  /** Opens what the address names; an unknown address leads to the place last used. */
  private async open(): Promise<void> {
    arrived();
    this.said.left();
    const number = (this.pages += 1);
    const { hash } = location;
    // A job in the address is offered over the list of jobs.
    const route = routeOf(holdsJob(hash) ? jobHash() : hash);
    if (!route) return this.goHome();
    if (route.job && !(await this.openJob(route.job.id, route.job.part))) return this.goHome(this.job ? JOB : "");
    const starting = startOf(route, this.settings.units, this.page === null, this.job);
    // Over the questions of a place stands what the open job needs there.
    if (!route.job && !route.tool) await this.openOwn();
    const { tool, start } = await starting;
    if (number !== this.pages) return start?.documents.close();
    if (route.job?.part && !tool && !isPart(route.job.part)) return this.goHome(JOB, route.job.id);
    await this.turn({ number, route, tool, start });
    if (holdsJob(hash)) void takeIn(hash, this.core, (id) => location.replace(jobHash(id)));
    if (route.tool) await this.openOwn();
  }

  /** Turns to a page; a list that is come back to stands where it was left. */
  private async turn(page: Page): Promise<void> {
    const left = this.page;
    if (left && !left.tool) this.listLeft = { at: listOf(left), top: scrollY };
    const isBack = Boolean(left?.tool) && !page.tool && this.listLeft?.at === listOf(page);
    if (!isBack && !page.tool) this.asked = "";
    this.sheet = "";
    this.page = page;
    await this.updateComplete;
    if (!left) await this.drawScreen();
    scrollTo(0, isBack ? (this.listLeft?.top ?? 0) : 0);
    document.title = `${this.called} · Longpoint`;
    const screen = this.querySelector<LitElement>("main > *");
    void Promise.resolve(screen?.updateComplete).then(firstScreenStands);
    const { place } = page.route;
    markPlace(place);
    if (place !== this.settings.place) this.change({ place });
  }

  /** At a start the screen is drawn apart from its frame: a tap is heard in between. */
  private async drawScreen(): Promise<void> {
    await new Promise((next) => setTimeout(next));
    this.isWhole = true;
    await this.updateComplete;
  }

  private goHome(to = this.settings.place, job = ""): void {
    const places = catalog.places.map((each) => each.place);
    const place = [JOB, ...places].includes(to) ? to : (places[0] ?? "");
    history.replaceState(null, "", place === JOB ? jobHash(job) : hashOf(place));
    void this.open();
  }

  /** Brings the rooms of jobs, and opens one; an empty id leaves the open one as it is. */
  private async openJob(id: string, part = "", isAsked = true): Promise<boolean> {
    try {
      const rooms = await bringRooms(part);
      this.job ??= this.hear(new rooms.Job(this.core, this.scale));
      if (!id || (await this.job.open(id))) return true;
      if (isAsked && !this.job.isUnread) toast("That job is not on this phone.");
    } catch (error) {
      console.error(error);
      toast(NOT_HERE);
    }
    return false;
  }

  private async openOwn(): Promise<void> {
    if (this.settings.job) await this.openJob(this.settings.job, "", false);
  }

  /** A job that goes, or a question of it, takes its screen with it. */
  private hear(job: Job): Job {
    job.onChange(() => {
      if (job.id && job.id !== this.settings.job) this.change({ job: job.id });
      const { page } = this;
      const isGone = page?.route.job?.id && (!job.isOpen || (page.start?.entry && !page.start.entry.isThere));
      if (isGone && page?.number === this.pages) this.goHome(JOB, job.id);
      else this.requestUpdate();
    });
    return job;
  }

  private change(part: Partial<Settings>): void {
    this.wear({ ...this.settings, ...part });
    void saveSettings(part);
  }

  private async showEarlier(): Promise<void> {
    const slug = this.page?.tool?.declaration.slug;
    if (!slug) return;
    this.kept = null;
    this.sheet = "earlier";
    await this.toolScreen?.form.recorder.keep();
    this.kept = await keptAnswers(slug).catch((error: Error) => error.message);
  }

  /** Opens a sheet that an answer, or a number of it, goes on from. */
  private async showJobs(sheet: "keep" | "use", chosen: Chosen | null = null): Promise<void> {
    if (!(await this.openJob(""))) return;
    if (this.settings.job && !this.job?.isOpen) await this.job?.open(this.settings.job);
    this.chosen = chosen;
    this.sheet = sheet;
  }

  private async reload(): Promise<void> {
    const apply = this.newer;
    this.newer = null;
    await this.toolScreen?.form.recorder.keep();
    await flushed();
    await apply?.();
  }

  private get called(): string {
    return this.page ? titleOf(this.page, this.job, this.asked !== "") : "";
  }

  protected override render(): TemplateResult | typeof nothing {
    const { page } = this;
    if (!page) return nothing;
    return html`<div class="frame">
        <div class="page">
          ${this.header(page)}
          ${this.newer ? banner(() => void this.reload(), () => (this.newer = null)) : nothing}
          <main>${this.isWhole ? this.screen(page) : nothing}</main>
        </div>
      </div>
      ${this.said.render()} ${this.openSheet()}`;
  }

  private header(page: Page): TemplateResult {
    const settings = (): void => void (this.sheet = "settings");
    return header({ title: this.called, ...headOf(page, this.job), chip: chipWords(this.settings), settings });
  }

  private screen(page: Page): TemplateResult {
    return page.tool ? this.toolPage(page) : page.route.job ? this.jobPage(page) : this.placePage(page);
  }

  private toolPage({ number, tool, start }: Page): TemplateResult {
    return html`${keyed(
      number,
      html`<lp-tool
        .tool=${tool}
        .start=${start}
        .scale=${this.scale}
        .core=${this.core}
        .openEarlier=${() => void this.showEarlier()}
        .share=${() => void share(this.called, this.toolScreen?.form.unshared ?? [])}
        .keep=${() => void this.showJobs("keep")}
        .use=${(chosen: Chosen) => void this.showJobs("use", chosen)}
      ></lp-tool>`,
    )}`;
  }

  private jobPage({ route }: Page): TemplateResult {
    const { id = "", part = "" } = route.job ?? {};
    const { job, scale, core } = this;
    if (!id) return html`<lp-jobs .job=${job} .scale=${scale}></lp-jobs>`;
    if (part === "quote") return html`<lp-quote .job=${job} .scale=${scale}></lp-quote>`;
    if (part) return html`<lp-stock .job=${job} .core=${core} .scale=${scale}></lp-stock>`;
    return html`${keyed(id, html`<lp-job .job=${job} .scale=${scale}></lp-job>`)}`;
  }

  private placePage({ route: { place } }: Page): TemplateResult {
    return html`${keyed(
      place,
      html`<lp-place
        .place=${place}
        .asked=${this.asked}
        .ask=${(asked: string) => (this.asked = asked)}
        .restore=${(file: File) => void this.bringBack(file)}
        .sheet=${this.job?.isOpen ? sheetOf(this.job, place, this.scale, () => this.putAway()) : null}
      ></lp-place>`,
    )}`;
  }

  private putAway(): void {
    const { id = "", body } = this.job ?? {};
    this.job?.close();
    this.change({ job: "" });
    toast(`${body?.title || "The job"} is put away.`, "Open again", () => void this.openJob(id));
  }

  private openSheet(): TemplateResult | typeof nothing {
    const { sheet, settings, install, kept, job, core, scale, chosen, toolScreen: screen } = this;
    return openSheet({
      ...{ sheet, settings, install, kept, job, core, scale, chosen, screen },
      change: (part) => this.change(part),
      recall: (entry) => this.recall(entry),
      close: () => void (this.sheet = ""),
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
    const { route, tool } = this.page ?? {};
    if (route && tool && !route.job) history.replaceState(null, "", hashOf(route.place, tool.declaration.slug));
    await this.open();
  }
}
