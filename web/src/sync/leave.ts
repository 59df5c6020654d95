/** What the shop's server has goes from this phone; what it lacks stays. */
import { writing } from "../store/database";
import { readAgain } from "../store/documents";
import { inTurn } from "../store/queue";
import type { Key } from "../store/tables";
import { tellOthers } from "../store/tabs";
import { notGoneUp } from "./shared";
import { nameOf } from "./status";

/** Returns the names of the documents that stay, since the server lacks them as they are here. */
export async function takeOff(): Promise<string[]> {
  const gone: Key[] = [];
  await inTurn(() => writing(["documents", "history", "shared", "sharedStates", "heard"], async (tx) => {
    for (const { kind, id, rev, revision, pending } of await tx.objectStore("shared").getAll()) {
      const record = await tx.objectStore("documents").get([kind, id]);
      const isThere = rev !== null && !pending && revision === (record?.revision ?? 0);
      if (isThere) gone.push([kind, id]);
    }
    for (const key of gone) {
      await tx.objectStore("documents").delete(key);
      await tx.objectStore("history").delete(IDBKeyRange.bound([...key, -Infinity], [...key, Infinity]));
    }
    for (const name of ["shared", "sharedStates", "heard"] as const) await tx.objectStore(name).clear();
  }));
  tellOthers(gone);
  readAgain(gone, true);
  return (await notGoneUp()).map(nameOf);
}
