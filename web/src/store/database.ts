/** The connection to the storage: opening, losing and regaining it, and its faults in words. */
import { openDB, type IDBPDatabase, type IDBPTransaction, type StoreNames } from "idb";
import { VERSION, type Tables } from "./tables";
import { moveVersion1 } from "./version-1";

/** Keeping or reading failed; the message is for the person. */
export class StoreFault extends Error {
  override name = "StoreFault";
}

type Database = IDBPDatabase<Tables>;
export type Names = StoreNames<Tables>[];
export type Reading = IDBPTransaction<Tables, Names, "readonly">;
export type Writing = IDBPTransaction<Tables, Names, "readwrite">;

let held: Promise<Database> | undefined;

function drop(): void {
  held?.then((database) => database.close()).catch(() => undefined);
  held = undefined;
}

function createTables(database: Database): void {
  const documents = database.createObjectStore("documents", { keyPath: ["kind", "id"] });
  documents.createIndex("deleted", "deleted");
  documents.createIndex("listed", "listed");
  database.createObjectStore("history", { keyPath: ["kind", "id", "step"] });
}

/** What is known of the shop's server; the index tells a document's revision without its body. */
function createShared(database: Database, tx: Upgrading): void {
  tx.objectStore("documents").createIndex("stands", ["kind", "id", "revision"]);
  database.createObjectStore("shared", { keyPath: ["kind", "id"] });
  database.createObjectStore("sharedStates", { keyPath: ["kind", "id", "role"] });
  database.createObjectStore("heard");
}

type Upgrading = IDBPTransaction<Tables, Names, "versionchange">;

/** All of it or nothing: an upgrade that fails leaves the database as it was. */
function upgrade(database: Database, from: number, tx: Upgrading): void {
  if (from < 2) createTables(database);
  createShared(database, tx);
  if (from !== 1) return;
  tx.done.catch(() => undefined); // whoever opens hears of it
  moveVersion1(database as IDBPDatabase<unknown>, tx).catch((error: unknown) => {
    console.error(error);
    tx.abort();
  });
}

const OTHER_TABS =
  "An older Longpoint is open in another tab: close that tab. What is typed here is kept once it is closed.";

const NOT_OPENED =
  "This device's storage does not open: close Longpoint's other tabs. What is typed here is kept once it opens.";
/** Another tab that is at work on the database itself keeps it shut without a word. */
const OPENS_WITHIN = 8000;

/**
 * Why the storage stays shut, in words, while another tab holds it: a further request to open would
 * only stand in line behind the first.
 */
let heldBack = "";
let onLate: () => void = () => undefined;

/** Calls `act` when the storage opens after all, once the tab that held it back is closed. */
export function whenOpenedLate(act: () => void): void {
  onLate = act;
}

function open(): Promise<Database> {
  return new Promise((resolve, reject) => {
    const giveUp = (words: string) => {
      heldBack = words;
      reject(new StoreFault(words));
    };
    const waiting = setTimeout(() => giveUp(NOT_OPENED), OPENS_WITHIN);
    const opening = openDB<Tables>("longpoint", VERSION, {
      upgrade: (made, from, _, tx) => {
        clearTimeout(waiting); // its own work may take long
        upgrade(made, from, tx);
      },
      blocked: () => giveUp(OTHER_TABS),
      // A newer version waits in another tab; this one reopens what it needs.
      blocking: drop,
      terminated: drop,
    });
    const settled = () => {
      clearTimeout(waiting);
      if (heldBack) openedLate(opening);
    };
    opening.finally(settled).then(resolve, reject);
  });
}

function openedLate(opening: Promise<Database>): void {
  heldBack = "";
  held = opening;
  opening.then(onLate, drop);
}

function database(): Promise<Database> {
  if (heldBack) return Promise.reject(new StoreFault(heldBack));
  if (!held) {
    const opening = open();
    opening.catch(() => held === opening && (held = undefined));
    held = opening;
  }
  return held;
}

const name = (error: unknown) => (error instanceof DOMException ? error.name : "");

/** Safari ends the connections of pages in the background; a used handle then fails for ever. */
function isLostConnection(error: unknown): boolean {
  return ["InvalidStateError", "UnknownError", "AbortError", "TransactionInactiveError"].includes(
    name(error),
  );
}

function inWords(error: unknown, doing: string): Error {
  if (error instanceof StoreFault) return error;
  const why: { [name: string]: string } = {
    QuotaExceededError: "This device has no room left: free some, then try again.",
    VersionError: "A newer version of Longpoint keeps its data here: reload this page.",
  };
  const message =
    why[name(error)] ?? `This device's storage could not be ${doing}. Reload the page.`;
  return new StoreFault(message, { cause: error });
}

async function retryOnce<T>(work: () => Promise<T>, doing: string): Promise<T> {
  try {
    return await work().catch((error: unknown) => {
      if (!isLostConnection(error)) throw error;
      drop();
      return work();
    });
  } catch (error) {
    throw inWords(error, doing);
  }
}

/** Run `work` in a transaction that reads `names`; throws a StoreFault, never "nothing there". */
export function reading<T>(names: Names, work: (tx: Reading) => Promise<T>): Promise<T> {
  return retryOnce(async () => {
    const tx = (await database()).transaction(names, "readonly");
    const [result] = await Promise.all([work(tx), tx.done]);
    return result;
  }, "read");
}

/** Undo what was begun; a transaction that has already ended needs no undoing. */
function abort(tx: Writing): void {
  try {
    tx.abort();
  } catch (error) {
    if (name(error) !== "InvalidStateError") throw error;
  }
}

/** Wait for both; of two reasons the telling one: requests cut short say only "AbortError". */
async function finish(tx: Writing, work: Promise<void>): Promise<void> {
  const undone = work.catch((error: unknown) => {
    abort(tx);
    throw error;
  });
  const failed = (await Promise.allSettled([undone, tx.done])).filter(
    (end) => end.status === "rejected",
  );
  const telling = failed.find(({ reason }) => name(reason) !== "AbortError") ?? failed[0];
  if (telling) throw telling.reason;
}

/**
 * Run `work` in a transaction that writes `names`, all of it or nothing.
 *
 * Resolves when the disk has it: not before the transaction is complete, with strict durability.
 */
export async function writing(names: Names, work: (tx: Writing) => Promise<void>): Promise<void> {
  await retryOnce(async () => {
    const tx = (await database()).transaction(names, "readwrite", { durability: "strict" });
    await finish(tx, work(tx));
  }, "written");
  askToPersist();
}

let asked = false;

/** Ask once, after the first save, that a browser short of space does not clear this site. */
function askToPersist(): void {
  if (asked) return;
  asked = true;
  navigator.storage?.persist?.().catch(() => undefined); // a refusal changes nothing
}

/** Find out whether the connection survived the background before a save depends on it. */
function probe(): void {
  if (document.visibilityState !== "visible" || !held) return;
  held.then((open) => open.count("documents")).catch(drop);
}

document.addEventListener("visibilitychange", probe);
