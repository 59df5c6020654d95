/** Words for an answer that can't be given yet: what it waits for. */
import type { Declaration, FieldError } from "../contract";
import { listed, withArticle } from "../text/words";
import { inputAt, nameOf, valueAt } from "./paths";
import type { Session } from "./session";

/** An entry that stops in the middle, as every entry does while it is typed. */
const UNFINISHED = /[\s/+\u2212.-]$/;

/** Whether `path` is being typed and stops in the middle: no moment to complain. */
export function isUnfinished(session: Session, path: string, active: string): boolean {
  const value = valueAt(session.inputs, path);
  return path === active && typeof value === "string" && UNFINISHED.test(value);
}

/** Returns the message to stand under the field at `path`, empty for none. */
export function messageAt(session: Session, path: string, active: string): string {
  if (isUnfinished(session, path, active)) return "";
  const errors = session.errors.filter((error) => error.field === path && !error.missing);
  return errors.map((error) => error.message).join(" ");
}

/** Returns messages that belong to no field of the form. */
export function strayMessages(session: Session): string[] {
  return session.errors
    .filter((error) => !inputAt(session.declaration, error.field) && !error.missing)
    .filter((error) => nameOf(session.declaration, error.field) === "")
    .map((error) => error.message);
}

/** Returns the headline of an answer card without an answer. */
export function waitingFor(session: Session, active: string): string {
  const { standing, declaration } = session;
  if (standing.state === "asking") return "Working it out…";
  if (standing.state === "storageFault") return standing.words;
  if (standing.state === "answered") return "";
  const wrong = standing.errors.find((error) => !error.missing);
  if (wrong) return wrongWords(session, wrong, active);
  return `Waiting for ${listed(standing.errors.map((error) => missingName(declaration, error)))}`;
}

function wrongWords(session: Session, error: FieldError, active: string): string {
  const name = nameOf(session.declaration, error.field);
  if (!name) return error.message;
  if (isUnfinished(session, error.field, active)) return `Waiting for the rest of ${name}`;
  return `Waiting for ${withArticle(name)} that works`;
}

function missingName(declaration: Declaration, error: FieldError): string {
  const input = inputAt(declaration, error.field);
  if (input?.kind === "rows") return withArticle(input.row ?? "row");
  return nameOf(declaration, error.field) || error.field;
}
