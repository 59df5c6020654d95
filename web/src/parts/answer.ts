/** The answer card: the big number, its ruleStrip of rule, what stands beside it, or what is awaited. */
import { html, nothing, type TemplateResult } from "lit";
import { guard } from "lit/directives/guard.js";
import type { Answer, Figure } from "../contract";
import type { Session } from "../form/session";
import { waitingFor } from "../form/status-text";
import { typeset } from "../text/typeset";
import { spoken } from "../text/fraction-runs";
import { besides, chosenOf, figureKey, shortLabel, type Chosen } from "./chosen";
import { icon } from "./icons";
import { bigFigure, lineFigure } from "./length";
import { ruleStrip } from "./rule-strip";

export interface AnswerView {
  session: Session;
  chosen: string;
  active: string;
  choose(key: string): void;
  earlier(): void;
}

/** Returns the card; an answer that no longer stands is shown withdrawn and silent. */
export function answerCard(view: AnswerView): TemplateResult {
  const { standing, last } = view.session;
  const answer = standing.state === "answered" ? standing.answer : null;
  return html`<section id="answer" class="card answer ${answer ? "" : "withdrawn"}" aria-label="Answer">
    <div class="headline">
      <p class="label" role="status">${headline(view, answer)}</p>
      <button class="plain iconed" type="button" aria-label="Earlier answers" @click=${view.earlier}>
        ${icon("earlier")}
      </button>
    </div>
    ${answer ? guard([answer, view.chosen], () => standingBody(answer, view)) : ghostBody(last, view)}
    ${standing.state === "answered" && standing.search !== null ? searching(view, standing.answer) : nothing}
    ${standing.state === "storageFault" && standing.final
      ? html`<button type="button" class="wide" @click=${() => view.session.ask()}>Try again</button>`
      : nothing}
  </section>`;
}

/** The answer is good to use while a better one is looked for; the person decides how long. */
function searching({ session }: AnswerView, answer: Answer): TemplateResult {
  const { isPaused } = session;
  return html`<div class="searching">
    <label
      >${isPaused ? "Stopped: a better answer may exist" : "Looking for a better answer"}
      <progress max="1" .value=${answer.progress}></progress
    ></label>
    <button type="button" @click=${() => session.pause(!isPaused)}>${isPaused ? "Go on" : "Stop"}</button>
  </div>`;
}

/** The live region holds the number too, so that a screen reader says the answer, not its label. */
function headline(view: AnswerView, answer: Answer | null): TemplateResult {
  const chosen = answer && chosenOf(answer, view.chosen);
  if (!chosen) return typeset(waitingFor(view.session, view.active));
  return html`${typeset(chosen.label)}<span class="unseen">: ${spoken(chosen.text)}</span>`;
}

function standingBody(answer: Answer, view: AnswerView): TemplateResult {
  const chosen = chosenOf(answer, view.chosen);
  const beside = besides(answer, chosen);
  return html`<div class="lead">
      ${chosen ? bigFigure(chosen.text, chosen.also) : nothing}
      ${beside.length > 0
        ? html`<div class="besides">${beside.map((figure) => besideButton(figure, view))}</div>`
        : nothing}
    </div>
    ${chosen ? (ruleStrip(chosen, answer.units) ?? nothing) : nothing}`;
}

function besideButton(figure: Figure, view: AnswerView): TemplateResult {
  return html`<button
    type="button"
    class="plain besidefigure"
    aria-pressed="false"
    @click=${() => view.choose(figureKey(figure))}
  >
    <span class="label">${typeset(shortLabel(figure.label))}</span>
    <span class="medium">${lineFigure(figure.text)}</span>
  </button>`;
}

/** The old answer as a ghost keeps the card's shape; before any answer a bare stretch of tape does. */
function ghostBody(last: Answer | null, view: AnswerView): TemplateResult {
  const chosen = last && chosenOf(last, view.chosen);
  if (!last || !chosen) return html`<div class="ghost" aria-hidden="true">${bareStrip()}</div>`;
  return html`<div class="ghost" aria-hidden="true" inert>
    <div class="lead">
      ${bigFigure(chosen.text, chosen.also)}
      <div class="besides">${besides(last, chosen).map(ghostBeside)}</div>
    </div>
    ${ruleStrip(chosen, last.units) ?? nothing}
  </div>`;
}

function ghostBeside(figure: Figure): TemplateResult {
  return html`<div class="besidefigure">
    <span class="label">${typeset(shortLabel(figure.label))}</span>
    <span class="medium">${lineFigure(figure.text)}</span>
  </div>`;
}

function bareStrip(): TemplateResult {
  return html`<svg class="ruleStrip" viewBox="0 0 340 72"><path class="edge" d="M10 22H340"></path></svg>`;
}

/** Returns one line with the number that stands big, for where the card is out of sight. */
export function glance(session: Session, key: string, active: string): TemplateResult {
  const answer = session.standing.state === "answered" ? session.standing.answer : null;
  const chosen: Chosen | null = answer && chosenOf(answer, key);
  if (!answer || !chosen) {
    return html`<span class="awaited">${typeset(waitingFor(session, active))}</span>`;
  }
  const beside = besides(answer, chosen)[0];
  return html`<span class="label">${typeset(shortLabel(chosen.label))}</span>
    <span class="medium">${lineFigure(chosen.text)}</span>
    ${beside ? html`<span class="medium second">${lineFigure(beside.text)}</span>` : nothing}`;
}
