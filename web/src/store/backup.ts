import { isSameAnswer, KEPT } from "./answer-history";
import {
  reading,
  SCHEMA,
  StoreFault,
  writing,
  type Form,
  type KeptRecord,
  type SettingsRecord,
  type Writing,
} from "./database";
import { KEY } from "./settings";

/** Everything kept on this device, as one value. */
interface Copy {
  longpoint: "copy";
  schema: number;
  forms: Form[];
  answers: KeptRecord[];
  settings: SettingsRecord | null;
}

/** Return everything kept on this device as one JSON text. */
export function exportAll(): Promise<string> {
  return reading(["forms", "answers", "settings"], async (tx) => {
    const [forms, answers, settings] = await Promise.all([
      tx.objectStore("forms").getAll(),
      tx.objectStore("answers").getAll(),
      tx.objectStore("settings").get(KEY),
    ]);
    const copy: Copy = {
      longpoint: "copy",
      schema: SCHEMA,
      forms,
      answers,
      settings: settings ?? null,
    };
    return JSON.stringify(copy);
  });
}

type Thing = Record<string, unknown>;

function isThing(value: unknown): value is Thing {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

const isForm = (value: unknown) =>
  isThing(value) && typeof value["slug"] === "string" && isThing(value["inputs"]);

const isKept = (value: unknown) =>
  isForm(value) &&
  isThing(value) &&
  Number.isFinite(value["at"]) &&
  isThing(value["scale"]) &&
  typeof value["lead"] === "string" &&
  typeof value["says"] === "string";

const areAll = (values: unknown, is: (value: unknown) => boolean) =>
  Array.isArray(values) && values.every(is);

function isCopy(value: unknown): value is Copy {
  return (
    isThing(value) &&
    value["longpoint"] === "copy" &&
    typeof value["schema"] === "number" &&
    areAll(value["forms"], isForm) &&
    areAll(value["answers"], isKept) &&
    (value["settings"] === null || isThing(value["settings"]))
  );
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function readCopy(text: string): Copy {
  const copy = parse(text);
  if (!isCopy(copy)) {
    throw new StoreFault(
      "This is not a whole copy made by Longpoint. What is kept here is untouched.",
    );
  }
  if (copy.schema > SCHEMA) {
    throw new StoreFault(
      "A newer Longpoint made this copy: reload for the update, then try again.",
    );
  }
  return copy;
}

/** Join answers from here and from the copy, oldest first, the last 20 of each tool. */
function joined(here: KeptRecord[], added: KeptRecord[]): KeptRecord[] {
  const known = (one: KeptRecord) =>
    here.some((old) => old.at === one.at && isSameAnswer(old, one));
  const all = [...here, ...added.filter((one) => !known(one))].sort((a, b) => a.at - b.at);
  const later = (one: KeptRecord, index: number) =>
    all.slice(index + 1).filter(({ slug }) => slug === one.slug).length;
  return all.filter((one, index) => later(one, index) < KEPT);
}

async function writeAnswers(tx: Writing, added: KeptRecord[]): Promise<void> {
  const store = tx.objectStore("answers");
  const answers = joined(await store.getAll(), added);
  await store.clear();
  // New numbers, in order of time: the newest answer of a tool is the one with the highest.
  await Promise.all(answers.map(({ id: _, ...answer }) => store.add(answer)));
}

/**
 * Bring a copy in, all of it or nothing.
 *
 * Its forms and settings take the place of those here, its answers join them; forms of other tools
 * stay. Throws a StoreFault for a text that is no such copy.
 */
export async function importAll(text: string): Promise<void> {
  const { forms, answers, settings } = readCopy(text);
  await writing(["forms", "answers", "settings"], async (tx) => {
    await Promise.all(forms.map((form) => tx.objectStore("forms").put(form)));
    if (settings) await tx.objectStore("settings").put(settings, KEY);
    await writeAnswers(tx, answers);
  });
}
