/** The cut list: by stock, then by setting of the saw, longest first, each piece with its big tick. */
import { html, nothing, type TemplateResult } from "lit";
import { jobHash } from "../address/address";
import type { JobReply } from "../contract/contract";
import { lineFigure } from "../parts/length";
import { ruleStrip } from "../parts/rule-strip";
import { typeset } from "../text/typeset";
import { capital } from "../text/words";
import { settingsOf, sticksOf, type Cut, type Group } from "./cut-groups";
import { count, type SheetView } from "./sheet-view";
import { tickBox } from "./tick-box";
import { sizeOf, withFitted, withoutTick, withSize, withTick } from "./ticking";

type Order = "setting" | "stick";

/** Returns what stands over the list. */
export function cutGist(view: SheetView): string {
  const cuts = view.reply.saw.groups.flatMap((group) => group.cuts);
  const done = cuts.filter((cut) => !isLeft(cut, view)).length;
  return cuts.length === 0 ? "nothing to cut" : `${done} of ${cuts.length} cut`;
}

/** Returns how many rows the list has. */
export function cutRows({ saw }: JobReply): number {
  return saw.groups.reduce((sum, { cuts }) => sum + cuts.length, saw.steps.length);
}

/** Returns the list; with `isShort` what is cut already is left out. */
export function cutList(view: SheetView, order: Order, isShort: boolean): TemplateResult {
  const groups = order === "stick" ? sticksOf(view.reply) : settingsOf(view.reply);
  if (groups.length === 0 && view.reply.saw.steps.length === 0) {
    return html`<p class="card sheetsays">Nothing to cut yet: pieces come from the questions of the job.</p>`;
  }
  const left = groups
    .map((group) => ({ ...group, cuts: group.cuts.filter((cut) => !isShort || isLeft(cut, view)) }))
    .filter(({ cuts }) => cuts.length > 0);
  if (groups.length > 0 && left.length === 0) {
    return html`<p class="card sheetsays">All ${count(pieces(groups), "piece")} are cut.</p>`;
  }
  const steps = view.reply.saw.steps.filter(({ of }) => !isShort || !view.ticked.is(of)).slice(0, view.most);
  return html`${firstSteps(steps, view)} ${firstOf(left, view.most - steps.length).map((group) => cutGroup(group, view))}`;
}

/** Returns so many pieces, in their groups. */
function firstOf(groups: Group[], most: number): Group[] {
  let room = most;
  return groups.flatMap((group) => {
    const cuts = group.cuts.slice(0, Math.max(room, 0));
    room -= cuts.length;
    return cuts.length > 0 ? [{ ...group, cuts }] : [];
  });
}

/** Boards milled and strips glued up: what the crosscuts below need. */
function firstSteps(steps: Step[], view: SheetView): TemplateResult | typeof nothing {
  if (steps.length === 0) return nothing;
  return html`<section class="cutgroup" aria-label="First: milling and gluing up">
    <h2>First <span class="of">milling and gluing up</span></h2>
    <ul class="card ticklist">
      ${steps.map((step) => stepRow(step, view))}
    </ul>
  </section>`;
}

function stepRow({ of, entry, title, words }: Step, { job, ticked }: SheetView): TemplateResult {
  const isOn = ticked.is(of);
  const turn = (): void => {
    if (isOn) job.changeWithUndo((body) => withoutTick(body, of), `Not done after all: ${title}`);
    else job.changeWithUndo((body) => withTick(body, of, "done"), `Done: ${title}`);
  };
  const name = html`<span class="name">${typeset(title)}</span>
    <span class="under-name">${typeset(words)}</span>`;
  return html`<li class="tickrow ${isOn ? "ticked" : ""}">
    ${tickBox({ label: `Done: ${title}`, isOn, turn })}
    ${entry ? html`<a class="what" href=${jobHash(job.id, entry)}>${name}</a>` : html`<div class="what">${name}</div>`}
  </li>`;
}

type Step = SheetView["reply"]["saw"]["steps"][number];

const pieces = (groups: Group[]): number => groups.reduce((sum, { cuts }) => sum + cuts.length, 0);
const isLeft = (cut: Cut, { ticked }: SheetView): boolean => !ticked.is(cut.of) || cut.stale !== null;

function cutGroup({ title, of, cuts }: Group, view: SheetView): TemplateResult {
  return html`<section class="cutgroup" aria-label="${title}, ${of}">
    <h2>${typeset(title)} <span class="of">${typeset(of)}</span></h2>
    <ul class="card ticklist">
      ${cuts.map((cut) => cutRow(cut, view))}
    </ul>
  </section>`;
}

function cutRow(cut: Cut, view: SheetView): TemplateResult {
  const { job, ticked } = view;
  const isOn = ticked.is(cut.of);
  const stale = isOn ? cut.stale : null;
  const spoiled = isOn ? 0 : ticked.spoiled(cut.of);
  const isFitted = ticked.isFitted(cut.of);
  const turn = (): void => {
    if (isFitted) job.changeWithUndo((body) => withFitted(body, [cut.of], false), `${cut.tag} not fitted after all`);
    else if (isOn) job.changeWithUndo((body) => withoutTick(body, cut.of), `${cut.tag} not cut after all`);
    else job.changeWithUndo((body) => withTick(body, cut.of, "cut", sizeOf(cut)), `${cut.tag} cut`);
  };
  const isOpen = view.open === cut.of;
  return html`<li class="tickrow cut ${isOn && !stale ? "ticked" : ""}">
    ${tickBox({ label: `Cut: ${cut.tag} ${cut.name}`, isOn, isWanting: spoiled > 0 || stale !== null, turn })}
    <button type="button" class="plain what" aria-expanded=${isOpen} @click=${() => view.unfold(isOpen ? "" : cut.of)}>
      <span class="balloon">${cut.tag}</span>
      <span class="name">${typeset(cut.name)}</span>
      <span class="under-name">${typeset([cut.section_text, isFitted ? "fitted" : ""].filter(Boolean).join(" · "))}</span>
    </button>
    <span class="cutlength">${lineFigure(cut.text)}</span>
    ${spoiled > 0
      ? html`<p class="wide again">${typeset(spoiledWords(spoiled, cut.again))}</p>`
      : nothing}
    ${stale ? staleWords(cut, stale.by, stale.words, view) : nothing}
    ${isOpen ? details(cut, view) : nothing}
  </li>`;
}

function spoiledWords(spoiled: number, again: string): string {
  return `Spoiled ${spoiled === 1 ? "once" : `${spoiled} times`}: cut again${again ? `. ${again}` : ""}`;
}

/** A piece that was cut to an older number: taken down where it is too large, or cut anew. */
function staleWords(cut: Cut, by: number, words: string, { job }: SheetView): TemplateResult {
  const fits = (): void => job.changeWithUndo((body) => withSize(body, cut.of, sizeOf(cut)), `${cut.tag} fits now`);
  return html`<div class="wide again" role="note">
    <p>Cut to the old size: ${typeset(words)}</p>
    ${by > 0 ? html`<button type="button" @click=${fits}>Done: it fits now</button>` : nothing}
    <button type="button" @click=${() => spoilt(cut, job)}>Cut another</button>
  </div>`;
}

function spoilt(cut: Cut, job: SheetView["job"]): void {
  job.changeWithUndo((body) => withTick(body, cut.of, "spoiled", sizeOf(cut)), `${cut.tag} spoiled`);
}

function details(cut: Cut, { job, scale, ticked }: SheetView): TemplateResult {
  const fit = (): void => job.changeWithUndo((body) => withFitted(body, [cut.of], true), `${cut.tag} fitted`);
  const facts: [string, string][] = [
    ["Finished", [cut.text, cut.section_text].filter(Boolean).join(" · ")],
    ["First cut rough", cut.rough_text],
    ["Ends", capital(cut.ends_text)],
    ["Short point", cut.short_text],
  ];
  return html`<div class="wide cutdetails">
    ${ruleStrip(cut, scale.units) ?? nothing}
    <dl>
      ${facts.map(([name, text]) => (text ? html`<div><dt>${name}</dt><dd>${typeset(text)}</dd></div>` : nothing))}
    </dl>
    <div class="actions">
      ${ticked.is(cut.of) && !ticked.isFitted(cut.of)
        ? html`<button type="button" @click=${fit}>Fitted</button>`
        : nothing}
      <button type="button" @click=${() => spoilt(cut, job)}>Spoiled</button>
      <a class="button" href=${jobHash(job.id, cut.entry)}>Its question</a>
    </div>
  </div>`;
}
