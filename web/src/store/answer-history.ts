/** The last answers of each tool, to be called back with their inputs. */
import type { RawInputs, Scale } from "../contract/contract";
import { isScale, isTime } from "./check";
import { openDocument } from "./documents";
import { sorted } from "./form-body";
import type { DocumentHandle } from "./handle";
import { heldUnder, isObject, isSame, type Json, type JsonObject } from "./json";
import { lastAnswers } from "./kinds";
import { flushed } from "./queue";
import { newId } from "./tabs";

/** One tool's answer as it was; `says` is its inputs in short, `at` milliseconds since 1970. */
export interface KeptAnswer {
  at: number;
  inputs: RawInputs;
  /** In whose units bare numbers among the inputs were typed. */
  scale: Scale;
  /** Of the form they were typed into. */
  version: number;
  lead: string;
  says: string;
}

async function withAnswers<T>(slug: string, work: (document: DocumentHandle) => T): Promise<T> {
  const document = await openDocument("answers", slug);
  try {
    return work(document);
  } finally {
    document.close();
  }
}

function answersIn({ body }: DocumentHandle): Json[] {
  const answers = heldUnder(body, "answers");
  return Array.isArray(answers) ? answers : [];
}

/**
 * Keeps an answer so that it can be called back.
 *
 * It replaces the newest one of its tool if the inputs are the same; beyond the last 20 of a tool
 * the oldest goes.
 */
export async function keepAnswer(slug: string, answer: KeptAnswer): Promise<void> {
  await withAnswers(slug, (document) => {
    const kept = answersIn(document);
    const newest = kept.at(-1);
    const isAgain = isSame(heldUnder(newest, "inputs"), answer.inputs as JsonObject);
    const id = isAgain ? (heldUnder(newest, "id") ?? newId()) : newId();
    const others = isAgain ? kept.slice(0, -1) : kept;
    const entry = { ...answer, id } as unknown as JsonObject;
    document.change({ ...document.body, answers: lastAnswers([...others, entry]) }, document.units);
  });
  await flushed();
}

/** Returns the kept answers of a tool, the newest first; what is no such answer is passed over. */
export function keptAnswers(slug: string): Promise<KeptAnswer[]> {
  return withAnswers(slug, (document) => answersIn(document).flatMap(readAnswer).reverse());
}

function readAnswer(value: Json): KeptAnswer[] {
  if (!isObject(value)) return [];
  const { at, inputs, scale, lead, says, version: of } = value;
  const isWhole = isTime(at) && isObject(inputs) && isScale(scale);
  if (!isWhole || typeof lead !== "string" || typeof says !== "string") return [];
  // Version 1 kept answers of no other forms than the first.
  const version = Number.isSafeInteger(of) ? Number(of) : 1;
  return [{ at, inputs: sorted(inputs).inputs, scale, version, lead, says }];
}
