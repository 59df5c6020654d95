/** What a field's message and an answer card's headline say while there is no answer. */
import type { Session } from "./session";
import { fieldAt, rowAt } from "./paths";

/** Whether the field at `path` is being typed and stops in the middle: no moment to complain. */
export function isUnfinished(session: Session, path: string): boolean {
  return path === session.active && session.field(path)?.unfinished === true;
}

/** Returns the message to stand under the field or the row at `path`, empty for none. */
export function messageAt(session: Session, path: string): string {
  if (session.standing.state === "answered" || isUnfinished(session, path)) return "";
  const isRow = path.split(".").length === 2;
  return (isRow ? rowAt(session.said, path) : fieldAt(session.said, path))?.message ?? "";
}

export interface Waiting {
  words: string;
  /** The field to go to; empty for none. */
  field: string;
}

/** Whether what an empty form waits for stands, as it came with the tool. */
function isKnownEmpty({ inputs, isEmpty, isHeard, said }: Session): boolean {
  return isEmpty && !isHeard && Object.keys(inputs).length === 0 && Boolean(said.waiting);
}

/** Returns the headline of an answer card without an answer. */
export function waitingFor(session: Session): Waiting {
  const { standing, said } = session;
  if (standing.state === "asking" && !isKnownEmpty(session)) return { words: "Working it out…", field: "" };
  if (standing.state === "faulted") return { words: standing.words, field: "" };
  const waiting = said.waiting ?? { words: "", field: "" };
  const isTyped = isUnfinished(session, waiting.field);
  return isTyped ? { words: "Waiting for the rest of this entry", field: "" } : waiting;
}
