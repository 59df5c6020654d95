/** Keeps answers that have stood a while, so that "what was that number?" has an answer. */
import type { Answer } from "../contract/contract";
import { ownInputs } from "../store/lists";
import { keepAnswer, storageFault } from "../store/store";
import type { Session } from "./session";

/** Milliseconds after which an answer was read, not passed through. */
const STOOD = 2000;
const SAID_INPUTS = 5;

export class AnswerRecorder {
  private timer = 0;
  private kept: Answer | null = null;

  constructor(private readonly session: Session) {}

  /** The session's standing changed: only an answer that stays is kept. */
  watch(): void {
    clearTimeout(this.timer);
    if (this.session.standing.state !== "answered") return;
    this.timer = window.setTimeout(() => void this.keep(), STOOD);
  }

  /** Keeps the answer that stands now; the tool is being left, or its list asked for. */
  async keep(): Promise<void> {
    clearTimeout(this.timer);
    const { standing, declaration, scale, isEmpty, typedIn, version } = this.session;
    const inputs = ownInputs(declaration.inputs, this.session.inputs);
    if (standing.state !== "answered" || standing.answer === this.kept || isEmpty) return;
    this.kept = standing.answer;
    const lead = standing.answer.verdict;
    const entry = {
      at: Date.now(), inputs, scale: { ...scale, units: typedIn }, version, lead,
      says: saidInputs(this.session),
    };
    await keepAnswer(declaration.slug, entry).catch(storageFault);
  }
}

/** Returns what was entered, in a line: "Recess width 27 13/16 · Recess height 60 1/8". */
function saidInputs({ declaration, said }: Session): string {
  const parts = said.fields.flatMap((field) => {
    const input = declaration.inputs.find((each) => each.name === field.name);
    if (field.rows) return field.rows.length > 0 ? [`${field.rows.length} × ${input?.row ?? "row"}`] : [];
    return field.changed ? [`${input?.label ?? ""} ${field.shown ?? ""}`] : [];
  });
  return parts.slice(0, SAID_INPUTS).join(" · ");
}
