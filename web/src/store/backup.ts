/** Everything kept here as one text, and back again. No kind of document is named here. */
import { faultOf, isName, isTime, isUnits, MOST, parsed } from "./check";
import { reading, StoreFault, writing, type Writing } from "./database";
import { readAgain } from "./documents";
import { isObject, isSame, type JsonObject } from "./json";
import { broughtBack } from "./kinds";
import { flushed, inTurn } from "./queue";
import type { DocumentRecord, Key } from "./tables";
import { PAGE, tellOthers } from "./tabs";
import { documentsOf } from "./version-1";
import { Opened } from "./opened";

/** By which rules a file is written. Later rules only add, and read all older files. */
const FILE = 2;

/** Returns everything kept on this device as one JSON text, and how many things can't be read. */
export async function exportAll(): Promise<{ text: string; leftOut: number }> {
  await flushed();
  const texts = (await allRecords()).map(textOf);
  const whole = texts.filter((text) => text !== null);
  const text = `{"longpoint":"copy","schema":${FILE},"documents":[\n${whole.join(",\n")}\n]}`;
  return { text, leftOut: texts.length - whole.length };
}

/** No record that was taken in has more; one from before there was a limit would make a file too large. */
const MOST_OF_ONE = 2 * MOST.document;

/** One record that can't be written out must not keep back the others. */
function textOf(record: unknown): string | null {
  try {
    const text = JSON.stringify(record) ?? null;
    return text && text.length <= MOST_OF_ONE ? text : null;
  } catch (error) {
    console.error(error);
    return null;
  }
}

async function allRecords(): Promise<unknown[]> {
  try {
    return await reading(["documents"], (tx) => tx.objectStore("documents").getAll());
  } catch (error) {
    console.error(error);
    return eachRecord();
  }
}

/** Where reading all at once fails, each record is read by itself; undefined where that fails too. */
async function eachRecord(): Promise<unknown[]> {
  const keys = await reading(["documents"], (tx) => tx.objectStore("documents").getAllKeys());
  const read = (key: Key): Promise<unknown> =>
    reading(["documents"], (tx) => tx.objectStore("documents").get(key)).catch(() => undefined);
  return Promise.all((keys as Key[]).map(read));
}

export interface BroughtBack {
  /** How many documents were in the file and are kept here now. */
  kept: number;
  /** How many things in it can't be read. */
  leftOut: number;
}

const NO_COPY = "This is not a whole copy made by Longpoint. What is kept here is untouched.";
const NEWER_COPY = "A newer Longpoint made this copy: reload for the update, then try again.";

/** Throws a StoreFault where a file is too large to be looked at. */
export function checkFile(size: number): void {
  if (size <= MOST.file) return;
  const most = `${MOST.file / 1_000_000} MB`;
  throw new StoreFault(
    `This file has ${Math.ceil(size / 1_000_000)} MB; a copy made by Longpoint has at most ${most}. ` +
      "What is kept here is untouched.",
  );
}

interface Copy {
  documents: DocumentRecord[];
  leftOut: number;
}

function readCopy(text: string): Copy {
  checkFile(text.length);
  const copy = parsed(text);
  if (!isObject(copy) || copy["longpoint"] !== "copy" || typeof copy["schema"] !== "number") {
    throw new StoreFault(NO_COPY);
  }
  if (copy["schema"] > FILE) throw new StoreFault(NEWER_COPY);
  return copy["schema"] === 1 ? readCopy1(copy) : readDocuments(copy["documents"]);
}

function readCopy1({ forms, answers, settings }: JsonObject): Copy {
  if (!Array.isArray(forms) || !Array.isArray(answers)) throw new StoreFault(NO_COPY);
  const { documents, damaged } = documentsOf({ forms, answers, settings });
  return { documents, leftOut: damaged.length };
}

function readDocuments(values: unknown): Copy {
  if (!Array.isArray(values)) throw new StoreFault(NO_COPY);
  const documents = values.filter(isDocument);
  return { documents, leftOut: values.length - documents.length };
}

function isDocument(value: unknown): value is DocumentRecord {
  if (!isObject(value) || faultOf(value) !== "") return false;
  const { kind, id, units, schema, body, deleted } = value;
  const isKept = deleted === undefined || isTime(deleted);
  return isName(kind) && isName(id) && isUnits(units) && Number.isSafeInteger(schema) && isObject(body) && isKept;
}

/**
 * Brings a copy in, all that can be read of it, or nothing where it can't be kept.
 *
 * Its documents take the place of those here, which stay in their history; answers join those here.
 * Throws a StoreFault for a text that is no such copy.
 */
export async function importAll(text: string): Promise<BroughtBack> {
  const { documents, leftOut } = readCopy(text);
  await inTurn(() =>
    writing(["documents", "history", "shared", "sharedStates"], async (tx) => {
      for (const document of documents) await bringBack(tx, document);
    }),
  );
  const keys = documents.map(({ kind, id }): Key => [kind, id]);
  tellOthers(keys);
  readAgain(keys, true);
  await flushed();
  return { kept: documents.length, leftOut };
}

async function bringBack(tx: Writing, document: DocumentRecord): Promise<void> {
  const { kind, id, units, schema, body, deleted, revision: _, step: __, listed: ___, ...others } = document;
  const opened = await Opened.of(tx, { kind, id, schema: Infinity });
  const isHere = opened.revision > 0 && !opened.isDeleted;
  if (isHere && deleted !== undefined) return;
  const said = isHere ? broughtBack(kind, opened.state.body, body) : body;
  if (isHere && units === opened.state.units && isSame(said, opened.state.body)) return;
  // It says what another day said: with the shop's server it meets as if for the first time.
  await tx.objectStore("shared").delete([kind, id]);
  await tx.objectStore("sharedStates").delete(IDBKeyRange.bound([kind, id], [kind, id, []]));
  opened.add(others as JsonObject);
  opened.setDeleted(deleted ?? null);
  const how = { words: "Brought back from a file", by: PAGE, count: 0, at: Date.now() };
  await opened.goTo({ units, schema, body: said }, how);
  await opened.put();
}
