/** A finish plan as it is done: each coat and sanding ticked with its time, and the days for a calendar. */
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { jobHash } from "../address/address";
import type { JobReply } from "../contract/contract";
import { giveFile, fileName } from "../job-file/give";
import { toast } from "../parts/toast";
import { typeset } from "../text/typeset";
import { type SheetView } from "./sheet-view";
import { tickBox } from "./tick-box";
import { localNow, withDone, withoutTick, withStart, type Ticked } from "./ticking";

type Plan = JobReply["finish"][number];
type Step = Plan["steps"][number];

function stepsOf(reply: JobReply): Step[] {
  return reply.finish.flatMap((plan) => plan.steps);
}

/** Returns the step that comes next; none where all is done. */
export function nextStep(reply: JobReply, ticked: Ticked): Step | undefined {
  return stepsOf(reply).find(({ of }) => !ticked.is(of));
}

/** Brings the row of a step into view. */
export function showStep({ of }: Step): void {
  document.getElementById(rowId(of))?.scrollIntoView({ block: "center" });
}

function rowId(of: string): string {
  return `step-${of}`;
}

/** Returns how far the plans of a job are; empty where there is none. */
export function finishGist({ reply, ticked }: SheetView): string {
  const steps = stepsOf(reply);
  const next = nextStep(reply, ticked);
  if (steps.length === 0) return "";
  return next ? `next: ${next.words}, ${next.when}` : "finished and hung";
}

/** Returns the plans of an item. */
export function finishPlans(questions: string[], view: SheetView): TemplateResult[] {
  return view.reply.finish.filter(({ entry }) => questions.includes(entry)).map((plan) => onePlan(plan, view));
}

function onePlan(plan: Plan, view: SheetView): TemplateResult {
  const { job } = view;
  const begin = (event: Event): void => {
    const day = (event.target as HTMLInputElement).value;
    job.changeWithUndo((body) => withStart(body, plan.entry, day), day ? `${plan.title} begins ${day}` : "No day is said");
  };
  return html`<h3><a href=${jobHash(job.id, plan.entry)}>${typeset(plan.title)}</a></h3>
    <label class="textfield begins"
      ><span class="label">Begins on</span
      ><input type="date" .value=${live(plan.begins)} @change=${begin}
    /></label>
    <ul class="card ticklist">
      ${plan.steps.map((step) => stepRow(step, view))}
    </ul>
    ${plan.begins
      ? html`<button type="button" class="tocalendar" @click=${() => void toCalendar(plan, view)}>Put it in the calendar</button>`
      : nothing}`;
}

function stepRow(step: Step, view: SheetView): TemplateResult {
  const { job, ticked } = view;
  const isOn = ticked.is(step.of);
  const turn = (): void => {
    if (isOn) job.changeWithUndo((body) => withoutTick(body, step.of), `Not done after all: ${step.words}`);
    else job.changeWithUndo((body) => withDone(body, step.of, localNow()), `Done: ${step.words}`);
  };
  return html`<li id=${rowId(step.of)} class="tickrow step ${isOn && !step.caution ? "ticked" : ""}">
    ${tickBox({ label: `Done: ${step.words}`, isOn, isWanting: isOn && step.caution !== "", turn })}
    <div class="what">
      <span class="name">${typeset(step.words)}</span>
      <span class="when">${typeset(step.when)}</span>
      ${step.window ? html`<span class="under-name">${typeset(`May begin ${step.window}`)}</span>` : nothing}
    </div>
    ${isOn && step.caution ? html`<p class="wide again" role="note">${typeset(step.caution)}</p>` : nothing}
    ${isOn ? doneAt(step, view) : nothing}
  </li>`;
}

/** When it was really done: ticked later, it is set right here, and the next coat's clock with it. */
function doneAt(step: Step, { job, ticked }: SheetView): TemplateResult {
  const put = (event: Event): void => {
    const at = (event.target as HTMLInputElement).value;
    if (at) job.change((body) => withDone(body, step.of, `${at}:00`), `${step.words} done at ${at.slice(11)}`);
  };
  return html`<label class="paid wide"
    ><span>Done at</span
    ><input
      type="datetime-local"
      aria-label="When it was done: ${step.words}"
      .value=${live(ticked.at(step.of).slice(0, 16))}
      @change=${put}
  /></label>`;
}

/** Hands the steps on as events of a calendar, each with its window. */
async function toCalendar({ item, steps }: Plan, { job }: SheetView): Promise<void> {
  const events = steps.map(({ of, begins, ends, words, window }) => ({ id: of, begins, ends, words, note: window }));
  const title = [job.body.title, item].filter(Boolean).join(", ");
  const said = await job.core.calendar(title, events, new Date().toISOString());
  if (!said.ok) return toast(said.errors[0]?.message ?? "The calendar could not be made.");
  await giveFile(new File([said.file], fileName(title, ".ics"), { type: "text/calendar" }));
}
