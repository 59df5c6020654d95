/** What stands on a job and what is next, in a line, for lists. */
import type { JobReply } from "../contract/contract";
import type { JobBody } from "./document";

export interface Standing {
  words: string;
  /** Part of the pieces that is cut, 0 to 1; null where there are none. */
  share: number | null;
}

const DONE = ["cut", "fitted"];

/** Returns what a whole reply says of its job. */
export function standingOf(reply: JobReply): Standing {
  const cuts = reply.saw.groups.flatMap((group) => group.cuts);
  const ticked = cuts.filter(({ state }) => DONE.includes(state));
  const off = ticked.filter(({ stale }) => stale !== null).length;
  const cut = ticked.length - off;
  const toBuy = reply.yard.lines.filter(({ state, amount }) => state !== "bought" && amount > 0).length;
  const asking = reply.items.flatMap(({ entries }) => entries).filter(({ errors }) => errors.length > 0);
  const [first] = asking;
  const parts = [
    cuts.length > 0 ? `${cut} of ${cuts.length} cut` : "",
    off > 0 ? `${off} cut to an old size` : "",
    toBuy > 0 ? `${toBuy} still to buy` : "",
    first ? `next: ${first.title}${asking.length > 1 ? `, then ${asking.length - 1} more` : ""}` : "",
  ];
  return { words: parts.filter(Boolean).join(" · "), share: cuts.length > 0 ? cut / cuts.length : null };
}

/** Returns what the document alone says. */
export function saidIn(body: JobBody): string {
  const titles = body.items.map(({ title }) => title).filter(Boolean);
  return titles.length > 0 ? titles.join(", ") : "nothing on it yet";
}

const nameOf = (id: string): string => `longpoint job ${id}`;

/** Notes what stands on a job, for lists that don't work it out. A note only: it may be lost. */
export function noteStanding(id: string, standing: Standing): void {
  try {
    localStorage.setItem(nameOf(id), JSON.stringify(standing));
  } catch {
    // A full or blocked storage: the list then says less.
  }
}

/** Forgets what stood on a job that someone else changed: rather nothing than what was. */
export function forgetStanding(id: string): void {
  try {
    localStorage.removeItem(nameOf(id));
  } catch {
    // A blocked storage: nothing was noted in it.
  }
}

export function notedStanding(id: string): Standing | null {
  try {
    const noted = JSON.parse(localStorage.getItem(nameOf(id)) ?? "null") as Partial<Standing> | null;
    if (typeof noted?.words !== "string") return null;
    return { words: noted.words, share: typeof noted.share === "number" ? noted.share : null };
  } catch {
    return null;
  }
}
