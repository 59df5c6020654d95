/**
 * What version 1 kept, as documents of today: its database, its saved file, what a page left.
 *
 * It kept forms (lists among them), answers and settings, each in a table of its own.
 */
import type { IDBPDatabase, IDBPTransaction, StoreNames } from "idb";
import { faultOf, isName, isTime, isUnits } from "./check";
import { heldUnder, isObject, type Json, type JsonObject } from "./json";
import type { DocumentRecord, Tables } from "./tables";

/** What version 1 kept, not yet looked at. */
export interface Kept1 {
  forms: unknown[];
  answers: unknown[];
  settings: unknown;
}

const LIST = "list ";

/** Returns the documents, and beside them what can't be read. */
export function documentsOf(
  { forms, answers, settings }: Kept1,
): { documents: DocumentRecord[]; damaged: unknown[] } {
  const damaged: unknown[] = [];
  const read = (value: unknown, made: (record: JsonObject) => DocumentRecord | null): DocumentRecord[] => {
    const document = isObject(value) && faultOf(value) === "" ? made(value) : null;
    if (!document) damaged.push(value);
    return document ? [document] : [];
  };
  const documents = [
    ...forms.flatMap((form) => read(form, formOf)),
    ...answersByTool(answers, damaged).flatMap((each) => read(each, answersOf)),
    ...(settings === null || settings === undefined ? [] : read(settings, settingsOf)),
  ];
  return { documents, damaged };
}

function documentOf(kind: string, id: string, units: unknown, body: JsonObject): DocumentRecord {
  const known = isUnits(units) ? units : "in";
  return { kind, id, units: known, revision: 1, schema: 1, step: 0, body };
}

/** A form's units stood among its inputs; a list was a form whose name began with "list". */
export function formOf({ slug, inputs, schema: _, ...others }: JsonObject): DocumentRecord | null {
  if (!isName(slug) || !isObject(inputs)) return null;
  const { units, ...typed } = inputs;
  const typed_in = isUnits(units) ? units : "in";
  if (!slug.startsWith(LIST)) {
    return documentOf("form", slug, typed_in, { ...others, inputs: typed, typed_in });
  }
  return documentOf("list", slug.slice(LIST.length), typed_in, { ...others, ...typed, typed_in });
}

function settingsOf({ schema: _, ...settings }: JsonObject): DocumentRecord {
  return documentOf("settings", "settings", settings["units"], settings);
}

function answersByTool(answers: unknown[], damaged: unknown[]): JsonObject[] {
  const tools = new Map<string, Json[]>();
  for (const answer of answers) {
    if (!isObject(answer) || !isName(answer["slug"]) || !isTime(answer["at"]) || faultOf(answer)) {
      damaged.push(answer);
      continue;
    }
    const { slug } = answer;
    tools.set(slug, [...(tools.get(slug) ?? []), named(answer)]);
  }
  return [...tools].map(([slug, kept]) => ({ slug, answers: kept.sort(byTime) }));
}

/** The number an answer had on its own phone means nothing on another; the time it was given does. */
function named({ id: _, schema: _schema, slug: _slug, ...answer }: JsonObject): JsonObject {
  return { ...answer, id: String(answer["at"]) };
}

const byTime = (one: Json, other: Json): number =>
  Number(heldUnder(one, "at")) - Number(heldUnder(other, "at"));

function answersOf({ slug, answers }: JsonObject): DocumentRecord | null {
  if (!isName(slug) || !Array.isArray(answers)) return null;
  const seen = new Set<Json | undefined>();
  const once = answers.filter((each) => {
    const id = heldUnder(each, "id");
    return seen.has(id) ? false : seen.add(id);
  });
  return documentOf("answers", slug, "in", { answers: once });
}

/** Something kept that can't be read stays in the storage and goes with a saved file. */
function damagedOf(value: unknown, at: number): DocumentRecord {
  return documentOf("damaged", `version 1, ${at + 1}`, "in", { kept: value as Json });
}

const TABLES = ["forms", "answers", "settings"];

type Old = IDBPDatabase<unknown>;
type Upgrading = IDBPTransaction<Tables, StoreNames<Tables>[], "versionchange">;

/** Moves everything from the tables of version 1 into documents, in the upgrade's transaction. */
export async function moveVersion1(database: Old, tx: Upgrading): Promise<void> {
  const old = tx as unknown as IDBPTransaction<unknown, string[], "versionchange">;
  const names = TABLES.filter((name) => database.objectStoreNames.contains(name));
  const read = async (name: string): Promise<unknown[]> =>
    names.includes(name) ? old.objectStore(name).getAll() : [];
  const [forms, answers, settings] = await Promise.all(TABLES.map(read));
  const { documents, damaged } = documentsOf({
    forms: forms ?? [], answers: answers ?? [], settings: settings?.[0] ?? null,
  });
  const records = [...documents, ...damaged.map(damagedOf)];
  await Promise.all(records.map((record) => tx.objectStore("documents").put(record)));
  for (const name of names) database.deleteObjectStore(name);
}

