/**
 * What was made of documents, kept so that it need not be made anew before it can be shown.
 *
 * None of it is the person's: it has a database of its own, which may be lost without harm, goes
 * into no saved file and needs no moving to a newer version.
 */
import { openDB, type DBSchema, type IDBPDatabase, type IDBPObjectStore } from "idb";

/** Documents of which something is kept, those made of last. */
const MOST_KEPT = 5;
/** Characters of what is kept of one document; what is longer is made anew each time. */
const MOST_LONG = 3_000_000;
/** Milliseconds after which it is made anew instead. */
const PATIENCE = 1000;

interface Made {
  id: string;
  at: number;
  /** The whole text that it was made of. */
  of: string;
  text: string;
}

interface Tables extends DBSchema {
  made: { key: string; value: Made; indexes: { at: number } };
}

type Writable = IDBPObjectStore<Tables, ["made"], "made", "readwrite">;

let held: Promise<IDBPDatabase<Tables>> | undefined;

function drop(): void {
  held?.then((open) => open.close()).catch(() => undefined);
  held = undefined;
}

function database(): Promise<IDBPDatabase<Tables>> {
  if (!held) {
    held = openDB<Tables>("longpoint made", 1, {
      upgrade: (made) => void made.createObjectStore("made", { keyPath: "id" }).createIndex("at", "at"),
      terminated: drop,
    });
    held.catch(drop);
  }
  return held;
}

/** Returns what was made of just this text of a document; null for nothing, and where it can't be read. */
export async function madeOf(id: string, of: string): Promise<string | null> {
  const late = new Promise<undefined>((resolve) => setTimeout(resolve, PATIENCE));
  try {
    const found = await Promise.race([database().then((open) => open.get("made", id)), late]);
    return found?.of === of && typeof found.text === "string" ? found.text : null;
  } catch (error) {
    console.warn(error);
    drop();
    return null;
  }
}

/** Keeps what was made of a text of a document, in the place of what was; a device without room keeps nothing. */
export async function keepMade(id: string, of: string, text: string): Promise<void> {
  if (of.length + text.length > MOST_LONG) return dropMade(id);
  await changed(async (made) => {
    await made.put({ id, at: Date.now(), of, text });
    let cursor = await made.index("at").openCursor();
    for (let more = (await made.count()) - MOST_KEPT; more > 0 && cursor; more -= 1) {
      await cursor.delete();
      cursor = await cursor.continue();
    }
  });
}

/** Lets go of what was made of a document. */
export function dropMade(id: string): Promise<void> {
  return changed((made) => made.delete(id));
}

async function changed(work: (made: Writable) => Promise<void>): Promise<void> {
  try {
    const tx = (await database()).transaction("made", "readwrite", { durability: "relaxed" });
    await Promise.all([work(tx.store), tx.done]);
  } catch (error) {
    console.warn(error);
    drop();
  }
}
