/**
 * What the core last made of a job, shown before the core has started.
 *
 * It stands for the very document, scale, shop's list and core that it was made of. Of the document
 * only its ticks may be others: the sheets show those that stand in the document, here as in a page
 * whose core is still at work on the last of them.
 */
import { core } from "longpoint:assets";
import type { JobReply, RawRow, Scale } from "../contract/contract";
import { parsed } from "../store/check";
import { dropMade, keepMade, madeOf } from "../store/made";
import type { JobBody } from "./document";

/** All that a reply depends on. */
export interface Asked {
  id: string;
  body: JobBody;
  scale: Scale;
  offcuts: RawRow[];
}

/** Milliseconds without a newer reply after which one is kept. */
const QUIET = 500;

function textOf({ body, scale, offcuts }: Asked): string {
  const { ticks: _, ...job } = body;
  return JSON.stringify([core, scale.units, scale.step, job, offcuts]);
}

/** Returns what the core last said of a job that it was asked just so; null for nothing. */
export async function lastReply(asked: Asked): Promise<JobReply | null> {
  const text = await madeOf(asked.id, textOf(asked));
  return text === null ? null : ((parsed(text) ?? null) as JobReply | null);
}

let waiting: { asked: Asked; reply: JobReply } | null = null;
let timer = 0;

/** Keeps a whole reply, once no newer one has come for a moment or the page is left. */
export function keepReply(asked: Asked, reply: JobReply): void {
  waiting = { asked, reply };
  clearTimeout(timer);
  timer = window.setTimeout(keepNow, QUIET);
}

function keepNow(): void {
  if (!waiting) return;
  const { asked, reply } = waiting;
  waiting = null;
  void keepMade(asked.id, textOf(asked), JSON.stringify(reply));
}

/** Lets go of the reply of a job that goes. */
export function dropReply(id: string): Promise<void> {
  if (waiting?.asked.id === id) waiting = null;
  return dropMade(id);
}

document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "hidden") keepNow();
});
