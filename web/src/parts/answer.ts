/** The answer card: the sentence that decides, the big number on its strip of rule, or what is awaited. */
import { html, nothing, type TemplateResult } from "lit";
import { guard } from "lit/directives/guard.js";
import type { Answer, Figure } from "../contract/contract";
import type { Session } from "../form/session";
import { waitingFor } from "../form/status-text";
import { spoken } from "../text/fraction-runs";
import { typeset, type Typeset } from "../text/typeset";
import { besides, chosenOf, figureKey, type Chosen } from "./chosen";
import { icon } from "./icons";
import { bigFigure, lineFigure } from "./length";
import { ruleStrip } from "./rule-strip";

export interface AnswerView {
  session: Session;
  chosen: string;
  choose(key: string): void;
  /** Takes the chosen number to another question. */
  use(chosen: Chosen): void;
  earlier(): void;
  /** Brings the field that is awaited onto the screen. */
  goTo(path: string): void;
}

/** Returns the card; an answer that no longer stands is shown withdrawn and silent. */
export function answerCard(view: AnswerView): TemplateResult {
  const { standing, last } = view.session;
  const answer = standing.state === "answered" ? standing.answer : null;
  return html`<section id="answer" class="card answer ${answer ? "" : "withdrawn"}" aria-label="Answer">
    <div class="headline">
      <p class="verdict" role="status">${headline(view, answer)}</p>
      <button class="plain iconed" type="button" aria-label="Earlier answers" @click=${view.earlier}>
        ${icon("earlier")}
      </button>
    </div>
    ${answer ? guard([answer, view.chosen], () => standingBody(answer, view)) : ghostBody(last, view)}
    ${standing.state === "answered" && standing.search !== null ? searching(view, standing.answer) : nothing}
    ${standing.state === "faulted" && standing.final
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

/** The live region holds the number too, so that a screen reader says the answer with its sentence. */
function headline(view: AnswerView, answer: Answer | null): Typeset {
  const chosen = answer && chosenOf(answer, view.chosen);
  if (answer && chosen) {
    return html`${typeset(answer.verdict)}<span class="unseen"> ${chosen.label}: ${spoken(chosen.text)}</span>`;
  }
  const { words, field } = waitingFor(view.session);
  if (!field) return typeset(words);
  return html`<button type="button" class="plain goto" @click=${() => view.goTo(field)}>
    ${typeset(words)}
  </button>`;
}

function standingBody(answer: Answer, view: AnswerView): TemplateResult {
  const chosen = chosenOf(answer, view.chosen);
  const beside = besides(answer, chosen);
  return html`<div class="lead">
      ${chosen
        ? html`<div class="leadfigure">
            <span class="label">${typeset(chosen.label)}</span>${bigFigure(chosen.text, chosen.also)}
          </div>`
        : nothing}
      <div class="besides">
        ${beside.map((figure) => besideButton(figure, view))}${chosen ? useButton(chosen, view) : nothing}
      </div>
    </div>
    ${chosen ? (ruleStrip(chosen, answer.units) ?? nothing) : nothing}`;
}

/** The big number beside it is what is used: only a screen reader needs it said again. */
function useButton(chosen: Chosen, view: AnswerView): TemplateResult | typeof nothing {
  if (typeof chosen.value !== "number" || chosen.kind === "money") return nothing;
  return html`<button type="button" class="plain use" aria-haspopup="dialog" @click=${() => view.use(chosen)}>
    Use <span class="unseen">${spoken(chosen.text)}</span> in …
  </button>`;
}

function besideButton(figure: Figure, view: AnswerView): TemplateResult {
  return html`<button
    type="button"
    class="plain besidefigure"
    aria-pressed="false"
    @click=${() => view.choose(figureKey(figure))}
  >
    ${besideWords(figure)}
  </button>`;
}

function besideWords(figure: Figure): TemplateResult {
  return html`<span class="label">${typeset(figure.short)}</span>
    <span class="medium">${lineFigure(figure.text)}</span>`;
}

/** The old answer as a ghost keeps the card's shape; before any answer a bare stretch of tape does. */
function ghostBody(last: Answer | null, view: AnswerView): TemplateResult {
  const chosen = last && chosenOf(last, view.chosen);
  if (!last || !chosen) return html`<div class="ghost" aria-hidden="true">${bareStrip()}</div>`;
  return html`<div class="ghost" aria-hidden="true" inert>
    <div class="lead">
      <div class="leadfigure">
        <span class="label">${typeset(chosen.label)}</span>${bigFigure(chosen.text, chosen.also)}
      </div>
      <div class="besides">
        ${besides(last, chosen).map((figure) => html`<div class="besidefigure">${besideWords(figure)}</div>`)}
      </div>
    </div>
    ${ruleStrip(chosen, last.units) ?? nothing}
  </div>`;
}

function bareStrip(): TemplateResult {
  return html`<svg class="strip" viewBox="0 0 340 72"><path class="edge" d="M10 22H340"></path></svg>`;
}

/** Returns the sentence that decides, or what is awaited, for where the card is out of sight. */
export function glance(session: Session): TemplateResult {
  const answer = session.standing.state === "answered" ? session.standing.answer : null;
  if (!answer) return html`<span class="awaited">${typeset(waitingFor(session).words)}</span>`;
  return html`<span class="verdict">${typeset(answer.verdict)}</span>`;
}
