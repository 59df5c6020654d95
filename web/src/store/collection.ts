/** All documents of a kind: listing them, deleting one, having it back. */
import { reading, writing } from "./database";
import { readAgain } from "./documents";
import { inTurn } from "./queue";
import type { DocumentRecord, Key } from "./tables";
import { tellOthers } from "./tabs";
import { isWhole, Opened } from "./opened";

/** Milliseconds for which a deleted document can be had back. */
export const KEPT_DELETED = 30 * 24 * 3600 * 1000;

/** Returns the documents of a kind as they are kept, by id. */
export async function listDocuments(kind: string): Promise<DocumentRecord[]> {
  const [kept] = await listAll(kind);
  return kept;
}

/** Returns the documents of a kind, and beside them those deleted, read together. */
export function listAll(kind: string): Promise<[kept: DocumentRecord[], deleted: DocumentRecord[]]> {
  return inTurn(async () => {
    const all = IDBKeyRange.bound([kind], [kind, []]);
    const records = await reading(["documents"], (tx) => tx.objectStore("documents").getAll(all));
    const whole = (records as DocumentRecord[]).filter(isWhole);
    const isDeleted = ({ deleted }: DocumentRecord): boolean => deleted !== undefined;
    return [whole.filter((record) => !isDeleted(record)), whole.filter(isDeleted)];
  });
}

/** Returns the documents of a kind that were written last, the last first; no other is read. */
export function listLatest(kind: string, most: number): Promise<DocumentRecord[]> {
  return inTurn(async () => {
    const all = IDBKeyRange.bound([kind], [kind, []]);
    const records = await reading(["documents"], async (tx) => {
      const documents = tx.objectStore("documents");
      const keys = await documents.index("listed").getAllKeys(all);
      return Promise.all(keys.slice(-most).reverse().map((key) => documents.get(key)));
    });
    return (records as DocumentRecord[]).filter(isWhole);
  });
}

export interface Title {
  id: string;
  title: string;
  /** When it was written last, in milliseconds since 1970. */
  at: number;
}

/** Returns what documents of a kind are called, those written last first; no body is read. */
export function listTitles(kind: string): Promise<Title[]> {
  return inTurn(() =>
    reading(["documents"], async (tx) => {
      const titles: Title[] = [];
      const all = IDBKeyRange.bound([kind], [kind, []]);
      let cursor = await tx.objectStore("documents").index("listed").openKeyCursor(all, "prev");
      for (; cursor; cursor = await cursor.continue()) {
        const [[, at, title], [, id]] = [cursor.key, cursor.primaryKey];
        titles.push({ id, title, at });
      }
      return titles;
    }),
  );
}

/** Deletes a document; for 30 days it can be had back. */
export function deleteDocument(kind: string, id: string): Promise<void> {
  return mark([kind, id], Date.now());
}

/** Has a deleted document back. */
export function undeleteDocument(kind: string, id: string): Promise<void> {
  return mark([kind, id], null);
}

function mark([kind, id]: Key, deleted: number | null): Promise<void> {
  return inTurn(async () => {
    await writing(["documents", "history"], async (tx) => {
      const opened = await Opened.of(tx, { kind, id, schema: Infinity });
      opened.setDeleted(deleted);
      if (opened.revision > 0) await opened.put();
    });
    tellOthers([[kind, id]]);
    readAgain([[kind, id]], true);
  });
}

/** Lets go of what was deleted long ago, with its history. */
export function purgeDeleted(now = Date.now()): Promise<void> {
  return inTurn(() =>
    writing(["documents", "history"], async (tx) => {
      const documents = tx.objectStore("documents");
      const old = IDBKeyRange.upperBound(now - KEPT_DELETED);
      for (const [kind, id] of await documents.index("deleted").getAllKeys(old)) {
        await documents.delete([kind, id]);
        await tx.objectStore("history").delete(IDBKeyRange.bound([kind, id, -Infinity], [kind, id, Infinity]));
      }
    }),
  );
}
