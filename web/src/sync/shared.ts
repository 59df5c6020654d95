/** What is known here of the shop's server, written together with the documents it is about. */
import { reading, writing, type Writing } from "../store/database";
import { readAgain } from "../store/documents";
import { newId, PAGE, tellOthers } from "../store/tabs";
import { isSame } from "../store/json";
import { json, Opened, stateIn } from "../store/opened";
import { inTurn } from "../store/queue";
import { nameOf } from "./status";
import type { DocumentRecord, Heard, Key, SharedRecord, SharedState, State } from "../store/tables";

const KINDS = ["job", "list", "settings", "photo"];
/** This phone's own. */
const OWN = "settings.settings";
/** Ids of the server's changes that are remembered of a document. */
const MOST_SEEN = 20;
const ALL = ["documents", "history", "shared", "sharedStates"] as const;

const NOT_YET = (kind: string, id: string): SharedRecord => ({
  kind, id, rev: null, changeId: "", revision: -1, seen: [], pending: null,
});

export function isShared([kind, id]: Key): boolean {
  return KINDS.includes(kind) && nameOf([kind, id]) !== OWN;
}

export async function heardSoFar(): Promise<Heard> {
  const found = await reading(["heard"], (tx) => tx.objectStore("heard").get("heard"));
  return found ?? { epoch: "", since: 0, last: "" };
}

export async function noteHeard({ epoch, since, last }: Heard): Promise<void> {
  await writing(["heard"], async (tx) => void (await tx.objectStore("heard").put({ epoch, since, last }, "heard")));
}

/**
 * The server is another one, or was restored from a backup: it is not known to have anything, until
 * all that it has is heard anew.
 */
export async function hearAnew(epoch: string): Promise<void> {
  await writing(["shared", "heard"], async (tx) => {
    const shared = tx.objectStore("shared");
    for (const record of await shared.getAll()) await shared.put({ ...record, rev: null, pending: null });
    await tx.objectStore("heard").put({ epoch, since: 0, last: "" }, "heard");
  });
}

/** A document here and what is known of it there. */
export interface Both {
  revision: number;
  /** Null where it is not here, or deleted. */
  mine: State | null;
  shared: SharedRecord;
  base: State | null;
  isNew: boolean;
}

export async function readBoth([kind, id]: Key): Promise<Both> {
  return reading(["documents", "shared", "sharedStates"], async (tx) => {
    const record = await tx.objectStore("documents").get([kind, id]);
    const shared = await tx.objectStore("shared").get([kind, id]);
    const base = await tx.objectStore("sharedStates").get([kind, id, "base"]);
    const mine = record && record.deleted === undefined ? stateIn(record) : null;
    return {
      revision: record?.revision ?? 0, mine, shared: shared ?? NOT_YET(kind, id), base: base?.state ?? null,
      isNew: !shared,
    };
  });
}

/** Returns the documents that say something else here than the server is known to have. */
export async function notGoneUp(): Promise<Key[]> {
  return reading(["documents", "shared"], async (tx) => {
    const here = new Map<string, [Key, number]>();
    for (const kind of KINDS) {
      const all = IDBKeyRange.bound([kind], [kind, []]);
      let cursor = await tx.objectStore("documents").index("stands").openKeyCursor(all);
      for (; cursor; cursor = await cursor.continue()) {
        const [, id, revision] = cursor.key;
        here.set(nameOf([kind, id]), [[kind, id], revision]);
      }
    }
    const known = new Map((await tx.objectStore("shared").getAll()).map((each) => [nameOf([each.kind, each.id]), each]));
    for (const [name, { kind, id }] of known) if (!here.has(name)) here.set(name, [[kind, id], 0]);
    const isToGo = ([key, revision]: [Key, number]): boolean => {
      const shared = known.get(nameOf(key));
      return isShared(key) && (!shared || shared.rev === null || shared.revision !== revision || shared.pending !== null);
    };
    const kindAt = ([kind]: Key): number => KINDS.indexOf(kind);
    return [...here.values()].filter(isToGo).map(([key]) => key).sort((one, other) => kindAt(one) - kindAt(other));
  });
}

function put(tx: Writing, record: SharedRecord, states: { [Role in SharedState["role"]]?: State | null }): Promise<unknown> {
  const { kind, id } = record;
  // One picture never changes: its revision alone says whether it is the server's.
  const puts = kind === "photo" ? [] : Object.entries(states).map(([role, state]) =>
    tx.objectStore("sharedStates").put({ kind, id, role: role as SharedState["role"], state }));
  return Promise.all([tx.objectStore("shared").put(record), ...puts]);
}

const heardOf = (seen: string[], changeId: string): string[] =>
  [...seen.filter((each) => each !== changeId), changeId].slice(-MOST_SEEN);

/** A change that was begun: what it says, and by which id it is known. */
export interface Pending {
  changeId: string;
  rev: number | null;
  revision: number;
  state: State | null;
}

/** Returns the change that is to be sent: the one that was not answered yet, else a new one. Null where nothing is. */
export async function begun([kind, id]: Key): Promise<Pending | null> {
  let pending: Pending | null = null;
  await writing([...ALL], async (tx) => {
    const record = await tx.objectStore("documents").get([kind, id]);
    const shared = (await tx.objectStore("shared").get([kind, id])) ?? NOT_YET(kind, id);
    const state = record && record.deleted === undefined ? stateIn(record) : null;
    if (shared.pending) {
      const sent = await tx.objectStore("sharedStates").get([kind, id, "pending"]);
      pending = { ...shared.pending, state: sent ? sent.state : state };
      return;
    }
    const revision = record?.revision ?? 0;
    if (shared.rev !== null && shared.revision === revision) return;
    // It was never there, or it is not known to be: what is deleted here is nothing to it.
    if (!state && shared.rev === null) return void (await put(tx, { ...shared, rev: 0, revision }, {}));
    const change = { changeId: newId(), rev: shared.rev || null, revision };
    await put(tx, { ...shared, pending: change }, { pending: state });
    pending = { ...change, state };
  });
  return pending;
}

/** The server has a change that was sent. */
export async function taken([kind, id]: Key, { changeId, revision, state }: Pending, rev: number): Promise<void> {
  await writing([...ALL], async (tx) => {
    const shared = await tx.objectStore("shared").get([kind, id]);
    // A file was taken in meanwhile: it meets what the server has as if for the first time.
    if (shared?.pending?.changeId !== changeId) return;
    const seen = heardOf(shared.seen, changeId);
    await put(tx, { ...shared, rev, changeId, revision, seen, pending: null }, { base: state });
    await tx.objectStore("sharedStates").delete([kind, id, "pending"]);
  });
}

/** The server does not take a change that was sent, and never will. */
export async function notTaken([kind, id]: Key, part: Partial<SharedRecord> = {}): Promise<void> {
  await writing([...ALL], async (tx) => {
    const shared = await tx.objectStore("shared").get([kind, id]);
    if (shared) await put(tx, { ...shared, ...part, pending: null }, {});
    await tx.objectStore("sharedStates").delete([kind, id, "pending"]);
  });
}

export interface Met {
  rev: number;
  changeId: string;
  theirs: State | null;
  /** What both are to have. */
  document: State | null;
  isTheirs: boolean;
  /** Whose change it is, for the history. */
  by: string;
}

/**
 * Puts what a document says after it has met the server's. Returns false, and changes nothing, where
 * it was changed here meanwhile.
 */
export async function settled([kind, id]: Key, revision: number, met: Met): Promise<boolean> {
  let isDone = false;
  await inTurn(() => writing([...ALL], async (tx) => {
    const record = await tx.objectStore("documents").get([kind, id]);
    isDone = (record?.revision ?? 0) === revision;
    if (!isDone) return;
    const stands = await written(tx, [kind, id], record, met);
    const shared = (await tx.objectStore("shared").get([kind, id])) ?? NOT_YET(kind, id);
    const seen = heardOf(shared.seen, met.changeId);
    const known = { rev: met.rev, changeId: met.changeId, seen, revision: met.isTheirs ? stands : -1, pending: null };
    await put(tx, { ...shared, ...known }, { base: met.theirs });
  }));
  if (isDone) {
    tellOthers([[kind, id]]);
    // A colleague's change is no other window's: it shows, and is undone, like one's own.
    readAgain([[kind, id]], true);
  }
  return isDone;
}

/** Writes the document where it says something else now; returns its revision. */
async function written(
  tx: Writing, [kind, id]: Key, record: DocumentRecord | undefined, { document, by }: Met,
): Promise<number> {
  const isHere = record !== undefined && record.deleted === undefined;
  if (!isHere && !document) return record?.revision ?? 0;
  const opened = await Opened.of(tx, { kind, id, schema: Infinity });
  const before = json(opened.state);
  if (document) await opened.goTo(document, { words: `From ${by}`, by: `${PAGE} sync`, count: 0, at: Date.now() });
  const saysTheSame = isHere && document !== null && isSame(json(opened.state), before);
  if (saysTheSame) return opened.revision;
  opened.setDeleted(document ? null : Date.now());
  return (await opened.put()).revision;
}
