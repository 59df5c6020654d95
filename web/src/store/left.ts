/**
 * What a page that goes leaves in a place that is written at once, since the storage is not.
 *
 * The next page writes it, as a change made to the revision that the page before it knew.
 */
import { faultOf, isTime, isUnits, parsed } from "./check";
import { unwritten, readAgain } from "./documents";
import { StoreFault } from "./database";
import { isObject } from "./json";
import { hasHistory } from "./kinds";
import { inTurn, storageFault } from "./queue";
import type { DocumentRecord, Key, State } from "./tables";
import { PAGE, tellOthers } from "./tabs";
import { formOf } from "./version-1";
import { EMPTY, type Change, type Stored } from "./opened";
import { readStored, writeChanges } from "./writes";

const PREFIX = "longpoint unwritten";
const OWN = `${PREFIX} ${PAGE}`;

interface Left {
  key: Key;
  schema: number;
  base: Stored | null;
  changes: Change[];
}

/**
 * Leaves what is not surely written yet, and takes away what has been written since.
 *
 * Every change that waits is left, since the first of them may be written already; where there is
 * no room for them all, the last, which says everything.
 */
function leave(): void {
  const left = unwritten();
  const last = left.map((each) => ({ ...each, changes: each.changes.slice(-1) }));
  if (!isPut(left)) isPut(last);
}

function isPut(left: Left[]): boolean {
  try {
    if (left.length > 0) localStorage.setItem(OWN, JSON.stringify(left));
    else localStorage.removeItem(OWN);
    return true;
  } catch (error) {
    console.warn(error);
    return false;
  }
}

/** Writes what other pages left, then takes it away; what can't be written stays. */
function takeUp(): void {
  try {
    for (const name of Object.keys(localStorage)) {
      if (name.startsWith(PREFIX) && name !== OWN) void inTurn(() => writeLeft(name)).catch(storageFault);
    }
  } catch (error) {
    console.warn(error);
  }
}

async function writeLeft(name: string): Promise<void> {
  const text = localStorage.getItem(name) ?? "[]";
  const left = name === PREFIX ? await leftBy1(text) : leftIn(text);
  for (const each of left) await writeOne(each);
  // Whoever goes on typing in a page that is there again leaves it anew.
  if (localStorage.getItem(name) === text) localStorage.removeItem(name);
  tellOthers(left.map(({ key }) => key));
  readAgain(left.map(({ key }) => key));
}

const OTHER_STANDS =
  "A window that was closed while it was typed in left something else than stands here. Undo brings that back.";

/**
 * What was typed in another window since is later: it stands, and what was left comes before it in
 * the history.
 */
async function writeOne({ key: [kind, id], schema, base, changes }: Left): Promise<void> {
  const { collisions, revision, state, other } = await writeChanges({
    kind, id, schema, base, changes, isLeft: true,
  });
  if (collisions.length === 0) return;
  const later = { state: other, words: "", by: PAGE, count: 0, at: Date.now() };
  const moved = { revision, state };
  await writeChanges({ kind, id, schema, base: moved, changes: [later], isLeft: false });
  if (hasHistory(kind)) storageFault(new StoreFault(OTHER_STANDS));
}

function leftIn(text: string): Left[] {
  const left = parsed(text);
  return Array.isArray(left) ? left.filter(isLeft) : [];
}

function isLeft(value: unknown): value is Left {
  if (!isObject(value)) return false;
  const { key, schema, base, changes } = value;
  const isKey = Array.isArray(key) && key.length === 2 && key.every((part) => typeof part === "string");
  const isBase = base === null || (isObject(base) && isState(base["state"]));
  return isKey && Number.isSafeInteger(schema) && isBase && Array.isArray(changes) && changes.every(isChange);
}

function isChange(value: unknown): boolean {
  return (
    isObject(value) && isState(value["state"]) && isTime(value["at"]) &&
    typeof value["words"] === "string" && typeof value["by"] === "string" &&
    Number.isSafeInteger(value["count"])
  );
}

function isState(value: unknown): value is State {
  return (
    isObject(value) && isUnits(value["units"]) && Number.isSafeInteger(value["schema"]) &&
    isObject(value["body"]) && faultOf(value["body"]) === ""
  );
}

/** Version 1 left forms alone, each with its name, as they were to be written over what was kept. */
async function leftBy1(text: string): Promise<Left[]> {
  const pairs = parsed(text);
  const forms = Array.isArray(pairs) ? pairs.filter((pair) => Array.isArray(pair)) : [];
  return Promise.all(forms.flatMap(([slug, inputs]: unknown[]) => {
    const form = formOf({ slug, inputs } as never);
    return form && faultOf(form.body) === "" ? [replaced(form)] : [];
  }));
}

async function replaced({ kind, id, units, schema, body }: DocumentRecord): Promise<Left> {
  const { isDamaged: _, ...base } = await readStored([kind, id], EMPTY);
  const change = { state: { units, schema, body }, words: "", by: PREFIX, count: 0, at: Date.now() };
  return { key: [kind, id], schema, base, changes: [change] };
}

takeUp();
addEventListener("pagehide", leave);
document.addEventListener("visibilitychange", leave);
