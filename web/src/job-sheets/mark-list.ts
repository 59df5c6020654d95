/** The mark list: by item what is pencilled, each from its datum, and the checks before leaving. */
import { html, nothing, type TemplateResult } from "lit";
import type { JobReply } from "../contract/contract";
import { lineFigure } from "../parts/length";
import { typeset } from "../text/typeset";
import { itemOf } from "../job/document";
import { finishGist, finishPlans } from "./finish-plan";
import { type SheetView } from "./sheet-view";
import { tickBox } from "./tick-box";
import { withFitted, withoutTick, withTick, type State } from "./ticking";

type Item = JobReply["site"]["items"][number];
type Mark = Item["marks"][number];
type Check = Item["checks"][number];

/** Returns what stands over the list. */
export function markGist(view: SheetView): string {
  const { reply, ticked } = view;
  const marks = reply.site.items.flatMap((item) => item.marks);
  const checks = reply.site.items.flatMap((item) => item.checks);
  const left = (all: { of: string }[]): number => all.filter(({ of }) => !ticked.is(of)).length;
  const said = marks.length === 0 ? "nothing to mark" : `${marks.length - left(marks)} of ${marks.length} marked`;
  const finish = finishGist(view);
  return `${said}, ${left(checks) === 0 ? "all checked" : `${left(checks)} to check`}${finish ? `; ${finish}` : ""}`;
}

const rowsOf = ({ marks, checks }: Item): number => marks.length + checks.length;

/** Returns how many rows the list has. */
export function markRows({ site }: JobReply): number {
  return site.items.reduce((sum, item) => sum + rowsOf(item), 0);
}

/** Returns the list. */
export function markList(view: SheetView): TemplateResult {
  let room = view.most;
  const items = view.reply.site.items.filter((item) => (room -= rowsOf(item)) + rowsOf(item) > 0);
  if (items.length === 0) {
    return html`<p class="card sheetsays">Nothing to mark yet: marks come from the questions of the job.</p>`;
  }
  return html`${items.map((item) => markItem(item, view))}`;
}

function markItem(item: Item, view: SheetView): TemplateResult {
  return html`<section class="markitem" aria-label=${item.title}>
    <h2 class="itemname">${typeset(item.title)}</h2>
    ${groupsOf(item.marks).map(
      ({ title, from, marks }) => html`<h3>${typeset(title)} <span class="of">from ${typeset(from)}</span></h3>
        <ul class="card ticklist">
          ${marks.map((mark) => markRow(mark, view))}
        </ul>`,
    )}
    ${finishPlans(itemOf(view.job.body, item.item)?.entries.map(({ id }) => id) ?? [], view)}
    <h3>Before you leave</h3>
    <ul class="card ticklist">
      ${fittedRow(item, view)} ${item.checks.map((check) => checkRow(check, view))}
    </ul>
  </section>`;
}

/** All cut pieces of an item at once: they are fitted, or hung, together. */
function fittedRow({ item, title }: Item, { job, reply, ticked }: SheetView): TemplateResult | typeof nothing {
  const cuts = reply.saw.groups.flatMap((group) => group.cuts.filter((cut) => cut.item === item));
  const cut = cuts.map(({ of }) => of).filter((of) => ticked.is(of));
  if (cut.length === 0) return nothing;
  const fitted = cut.filter((of) => ticked.isFitted(of));
  const isOn = fitted.length === cut.length;
  const turn = (): void =>
    job.changeWithUndo((body) => withFitted(body, cut, !isOn), isOn ? `Not fitted after all: ${title}` : `Fitted: ${title}`);
  return html`<li class="tickrow ${isOn ? "ticked" : ""}">
    ${tickBox({ label: `Fitted: ${title}`, isOn, turn })}
    <div class="what">
      <span class="name">Fitted and hung</span>
      <span class="under-name">${fitted.length} of ${cuts.length} pieces${cut.length < cuts.length ? `, ${cuts.length - cut.length} still to cut` : ""}</span>
    </div>
  </li>`;
}

interface Group {
  title: string;
  from: string;
  marks: Mark[];
}

/** Marks of one question from one datum stand together, in their order. */
function groupsOf(marks: Mark[]): Group[] {
  const groups: Group[] = [];
  for (const mark of marks) {
    const own = groups.find(({ title, from }) => title === mark.title && from === mark.from);
    if (own) own.marks.push(mark);
    else groups.push({ title: mark.title, from: mark.from, marks: [mark] });
  }
  return groups;
}

function turned({ job, ticked }: SheetView, of: string, state: State, words: string): () => void {
  if (ticked.is(of)) return () => job.changeWithUndo((body) => withoutTick(body, of), `Not ${words} after all`);
  return () => job.changeWithUndo((body) => withTick(body, of, state), `Ticked: ${words}`);
}

function markRow(mark: Mark, view: SheetView): TemplateResult {
  const isOn = view.ticked.is(mark.of);
  const turn = turned(view, mark.of, "marked", mark.label);
  return html`<li class="tickrow cut ${isOn ? "ticked" : ""}">
    ${tickBox({ label: `Marked: ${mark.label}`, isOn, turn })}
    <div class="what">
      ${mark.tag ? html`<span class="balloon">${mark.tag}</span>` : nothing}
      <span class="name">${typeset(mark.label)}</span>
    </div>
    <span class="cutlength">${lineFigure(mark.text)}</span>
  </li>`;
}

function checkRow(check: Check, view: SheetView): TemplateResult {
  const isOn = view.ticked.is(check.of);
  return html`<li class="tickrow ${isOn ? "ticked" : ""}">
    ${tickBox({ label: `Checked: ${check.words}`, isOn, turn: turned(view, check.of, "done", check.words) })}
    <div class="what"><span class="name">${typeset(check.words)}</span></div>
  </li>`;
}
