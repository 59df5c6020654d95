/** What two people said differently in a document: its card, loaded where there is something to ask. */
import { html, nothing, type TemplateResult } from "lit";
import { jobHash } from "../address/address";
import type { Declaration, Input } from "../contract/contract";
import type { Core } from "../engine/core";
import type { Job } from "../job/job";
import type { JsonObject } from "../store/json";
import type { DocumentHandle, ToolDocuments } from "../store/store";
import type { Question } from "./places";

/** A document that may ask. */
export interface Subject {
  kind: string;
  id: string;
  body: JsonObject;
  core: Core;
  /** The input that a list is kept for, where it is a tool's. */
  list?: Input;
  /** Puts a body in which a question is settled. */
  put(body: JsonObject): void;
}

export function openQuestions(body: JsonObject): Question[] {
  const asked = (body as { questions?: Question[] }).questions;
  return (Array.isArray(asked) ? asked : []).filter(({ path, sides }) => path && sides);
}

export function questions(subject: Subject): TemplateResult | typeof nothing {
  if (openQuestions(subject.body).length === 0) return nothing;
  import("./questions-card").catch(console.warn);
  return html`<lp-questions .subject=${subject}></lp-questions>`;
}

export const WHICH = "Which is right";

export function jobQuestions(job: Job): TemplateResult | typeof nothing {
  const put = (body: JsonObject): void => void job.change(() => body as never, WHICH);
  return questions({ kind: "job", id: job.id, body: job.body as unknown as JsonObject, core: job.core, put });
}

/** Leads to them from where the job's numbers are used. */
export function unsettled(job: Job): TemplateResult | typeof nothing {
  const count = openQuestions(job.body as unknown as JsonObject).length;
  if (count === 0) return nothing;
  const what = count === 1 ? "One thing of this job was" : `${count} things of this job were`;
  return html`<p class="caution"><a class="partlink" href=${jobHash(job.id)}>${what} said in two ways: settle that before you cut</a></p>`;
}

/** Of a list or of settings; nothing until they are read. */
export function documentQuestions(document: DocumentHandle | null, core: Core, list?: Input): TemplateResult | typeof nothing {
  if (!document) return nothing;
  const [kind, id] = document.key;
  const put = (body: JsonObject): void => document.changeForAll(body, WHICH);
  return questions({ kind, id, body: document.body, core, put, ...(list && { list }) });
}

/** Of the lists that a tool asks for. */
export function listQuestions({ lists }: ToolDocuments, { inputs }: Declaration, core: Core): unknown[] {
  return inputs.filter(({ kept }) => kept).map((input) => documentQuestions(lists.get(input.name) ?? null, core, input));
}
