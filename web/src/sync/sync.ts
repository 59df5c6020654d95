/**
 * Keeps this phone and the shop's server alike: hears what others changed, sends what was changed
 * here. What a document says where both changed it is the core's to decide (`meet`).
 *
 * Nothing is decided by a clock, and nothing is marked to be sent: what differs from what the server
 * is known to have goes up. So a page may end at any moment, and the next goes on.
 */
import type { Core, Met } from "../engine/core";
import { forgetStanding } from "../job/standing";
import { toast } from "../parts/toast";
import { faultOf, isUnits } from "../store/check";
import { listTitles } from "../store/collection";
import { flushed } from "../store/queue";
import { onWritten } from "../store/tabs";
import type { Key, State } from "../store/tables";
import { leftNow, leftWords, stillLeft } from "./left";
import {
  changes, me, NoServer, Restored, send, SignedOut, stateOf, Unreached, type Me, type ServerDocument,
} from "./server";
import {
  begun, hearAnew, heardSoFar, isShared, notGoneUp, noteHeard, notTaken, readBoth, settled, taken, type Pending,
} from "./shared";
import { nameOf, noteStatus, onOtherWho, onWake, rememberWho, sendLeft, syncStatus, whoWas } from "./status";
import { calledIn, keptAgainst, titleOf } from "./words";

/** Milliseconds: after a change here, between two looks at the server, and the longest wait after failures. */
const SOON = 1000;
const AGAIN = 30_000;
const LONGEST = 300_000;
const MOST_TRIES = 5;

/** A document's key by its name on the server. */
function keyOf(name: string): Key {
  const dot = name.indexOf(".");
  return [name.slice(0, dot), name.slice(dot + 1)];
}

/** What comes in by any door is looked at before it is kept. */
function isSound(change: ServerDocument): boolean {
  const state = stateOf(change);
  return change.deleted || (state !== null && isUnits(state.units) && faultOf(state.body) === "");
}

export class Sync {
  private timer = 0;
  /** Whether the look that is due is one of those from time to time: what was refused is not sent again by it. */
  private isAgain = false;
  private failures = 0;
  private isRunning = false;
  private isWanted = false;
  /** Whether the server turned out to keep nothing. */
  private isOver = false;
  /** What is being written as the server has it. */
  private settling = "";
  /** Who is signed in; asked at the start, and again where it may be another. */
  private known: Me | null = null;
  private readonly refused = new Map<string, string>();

  constructor(private readonly core: Core) {}

  /** Looks now, and again from time to time. */
  start(): void {
    addEventListener("online", () => this.soon(0));
    document.addEventListener("visibilitychange", () => this.seen());
    onOtherWho(() => (this.known = null));
    onWake(() => this.soon(0));
    onWritten((keys) => this.changed(keys.filter(isShared).map(nameOf)));
    this.soon(0);
  }

  /** Out of sight nothing is asked; what was just typed still goes up. */
  private seen(): void {
    if (document.visibilityState === "visible") this.soon(0);
    else if (syncStatus().toGo.size === 0) clearTimeout(this.timer);
  }

  /** What was typed has not gone up, from this moment on. */
  private changed(names: string[]): void {
    const typed = names.filter((name) => name !== this.settling);
    if (typed.length === 0) return;
    noteStatus({ toGo: new Set([...syncStatus().toGo, ...typed]) });
    // Whoever signs in comes back by a new page.
    if (syncStatus().is !== "out") this.soon();
  }

  /** Looks after a while; one look that is due sooner stays. */
  soon(after = SOON, isAgain = false): void {
    clearTimeout(this.timer);
    this.isAgain = isAgain;
    if (!this.isOver) this.timer = window.setTimeout(() => void this.run(), after);
  }

  /** One page of this browser at a time. */
  private async run(): Promise<void> {
    if (this.isRunning) return void (this.isWanted = true);
    this.isRunning = true;
    const look = (): Promise<void> => this.look();
    try {
      await ("locks" in navigator ? navigator.locks.request("longpoint sync", look) : look());
    } catch (error) {
      // The storage is not to be had: that was said where something was to be kept.
      console.warn(error);
      this.soon(AGAIN);
    }
    this.isRunning = false;
    if (this.isWanted) {
      this.isWanted = false;
      this.soon();
    }
  }

  private async look(): Promise<void> {
    try {
      await flushed();
      const known = (this.known ??= await this.whoIsIn());
      await this.count();
      noteStatus({ is: "in" });
      await this.exchange(known);
      this.failures = 0;
      noteStatus({ isWaiting: false, heard: new Date() });
      this.inSight(AGAIN);
    } catch (error) {
      await this.failed(error);
    }
    await this.count();
  }

  /** Asks who is signed in, and whether the server is the one that was heard. */
  private async whoIsIn(): Promise<Me> {
    const known = await me();
    if ((await heardSoFar()).epoch !== known.epoch) await hearAnew(known.epoch);
    await this.count();
    const person = known.person.name;
    const left = leftNow(whoWas(), person, [...syncStatus().toGo]);
    const who = { person, device: known.device.title, left };
    rememberWho(who);
    noteStatus(who);
    if (left) toast(leftWords(left, left.names.map((name) => syncStatus().called.get(name) ?? "")), "Send it up", sendLeft);
    return known;
  }

  /** Looks again after a while, unless nobody looks at the page: then when somebody does. */
  private inSight(after: number): void {
    if (document.visibilityState === "visible") this.soon(after, true);
  }

  private async failed(error: unknown): Promise<void> {
    this.isOver = error instanceof NoServer;
    if (this.isOver) return noteStatus({ is: "none" });
    if (error instanceof SignedOut || error instanceof Restored) this.known = null;
    if (error instanceof SignedOut) return noteStatus({ is: "out", isWaiting: false });
    if (!(error instanceof Unreached)) console.error(error);
    this.failures += 1;
    const wait = Math.min(LONGEST, SOON * 2 ** this.failures);
    noteStatus({ isWaiting: true, ...((await heardSoFar()).epoch ? { is: "in" as const } : {}) });
    this.inSight(wait * (0.5 + Math.random() / 2));
  }

  private async count(): Promise<void> {
    const keys = await notGoneUp();
    const names = keys.map(nameOf);
    for (const name of [...this.refused.keys()]) if (!names.includes(name)) this.refused.delete(name);
    const called = keys.length > 0 ? calledIn(keys, await listTitles("job")) : [];
    const { person, device, left: before } = syncStatus();
    const left = before && stillLeft(before, names);
    if (before?.names.length !== left?.names.length) rememberWho({ person, device, left });
    noteStatus({
      toGo: new Set(names), refused: new Map(this.refused), left,
      called: new Map(names.map((name, at) => [name, called[at] ?? ""])),
    });
  }

  private async exchange(known: Me): Promise<void> {
    // What was sent and not answered is known to the server, or it never will be: first of all.
    const { isAgain } = this;
    for (const key of await this.mayGo()) await this.sendPending(key, known);
    await this.hear(known);
    for (const key of await this.mayGo()) {
      if (!(isAgain && this.refused.has(nameOf(key)))) await this.sendAll(key, known);
    }
  }

  /** What has not gone up, without what somebody else left here. */
  private async mayGo(): Promise<Key[]> {
    const left = syncStatus().left?.names ?? [];
    return (await notGoneUp()).filter((key) => !left.includes(nameOf(key)));
  }

  private async hear(known: Me): Promise<void> {
    let heard = await heardSoFar();
    for (let more = true; more; ) {
      const page = await changes(heard);
      if (page.restored || page.epoch !== heard.epoch) {
        await hearAnew(page.epoch);
        // Told after what was heard before: all of it is told from the beginning, deletions too.
        heard = await heardSoFar();
        continue;
      }
      for (const change of page.changes) await this.receive(change, known);
      heard = { epoch: page.epoch, since: page.since, last: page.last };
      await noteHeard(heard);
      more = page.more;
    }
  }

  /** Takes in how a document stands on the server. */
  private async receive(change: ServerDocument, known: Me): Promise<void> {
    const key = keyOf(change.id);
    if (!isShared(key)) return;
    const fault = isSound(change) ? "" : "What the shop's server has of it can't be read here.";
    if (fault) return void this.refused.set(change.id, fault);
    for (let tries = 0; tries < MOST_TRIES; tries += 1) {
      if (await this.meet(key, change, known)) return;
    }
    // Typed in all the while: it meets at the next look.
    throw new Unreached("busy");
  }

  private async meet(key: Key, change: ServerDocument, { person }: Me): Promise<boolean> {
    const { revision, mine, shared, base, isNew } = await readBoth(key);
    if (shared.changeId === change.change_id) {
      if (shared.rev !== change.rev) await notTaken(key, { rev: change.rev });
      return true;
    }
    const isBehind = shared.seen.includes(change.change_id);
    const isClean = !isNew && shared.rev !== null && shared.revision === revision;
    const said = await this.core.meet({
      kind: change.kind,
      // After the server was restored, or for a picture, there is no version that both came from.
      base: isClean ? mine : shared.rev === null ? null : base,
      mine,
      theirs: stateOf(change),
      is_behind: isBehind,
      names: [person.name, change.by],
    });
    if (!said.ok) {
      this.refused.set(change.id, said.errors[0]?.message ?? "It can't be read here.");
      return true;
    }
    if (change.kind === "job") forgetStanding(key[1]);
    this.settling = change.id;
    const isDone = await settled(key, revision, {
      rev: change.rev, changeId: change.change_id, theirs: stateOf(change), document: said.document,
      isTheirs: said.is_theirs, by: change.by,
    });
    this.settling = "";
    if (isDone && change.kind === "job") this.sayDeleted(mine, said, change.by);
    return isDone;
  }

  /** Says that a job is gone, or that it stays against somebody's will. */
  private sayDeleted(mine: State | null, { document, collisions }: Met, by: string): void {
    const isKept = collisions.some(({ path }) => path.length === 0);
    if (isKept) toast(keptAgainst(document, mine === null, by));
    else if (mine && !document) toast(`${titleOf(mine)} was deleted by ${by}. The list of jobs has it for 30 days.`);
  }

  private async sendPending(key: Key, known: Me): Promise<void> {
    const { shared } = await readBoth(key);
    if (shared.pending) await this.sendOne(key, known);
  }

  private async sendAll(key: Key, known: Me): Promise<void> {
    for (let tries = 0; tries < MOST_TRIES && (await this.sendOne(key, known)); tries += 1);
  }

  /** Sends a change; tells whether there may be another one. */
  private async sendOne(key: Key, known: Me): Promise<boolean> {
    const pending = await begun(key);
    if (!pending) return false;
    const { epoch } = await heardSoFar();
    const sent = await send(nameOf(key), epoch, pending.rev, pending.changeId, pending.state);
    this.refused.delete(nameOf(key));
    if (sent.is === "taken") {
      await taken(key, pending, sent.rev);
      return true;
    }
    await this.notSent(key, pending, sent, known);
    return sent.is !== "refused";
  }

  private async notSent(key: Key, { state }: Pending, sent: Exclude<Awaited<ReturnType<typeof send>>, { is: "taken" }>, known: Me): Promise<void> {
    // Forgotten by the server: it is begun there anew, or it is gone as it should be.
    await notTaken(key, sent.is === "unknown" ? { rev: state ? null : 0 } : {});
    if (sent.is === "restored") throw new Restored("restored");
    if (sent.is === "moved") await this.receive(sent.current, known);
    if (sent.is === "refused") this.refused.set(nameOf(key), sent.words);
  }
}
