/** The ways in and out of a job: files, links, paper. They are loaded when one is first opened. */
import type { Scale } from "../contract/contract";
import type { Core } from "../engine/core";
import type { Job } from "../job/job";
import { withStyle } from "../parts/style";
import { toast } from "../parts/toast";

const NOT_LOADED = "This part of Longpoint could not be loaded: connect once, then try again.";

type Rooms = typeof import("./rooms");

/** Puts over the page what `make` makes; false, and a sentence, where its part can't be loaded. */
async function open(make: (rooms: Rooms) => HTMLElement): Promise<boolean> {
  try {
    const [rooms] = await Promise.all([import("./rooms"), withStyle("job")]);
    document.body.append(make(rooms));
    return true;
  } catch (error) {
    console.error(error);
    toast(NOT_LOADED);
    return false;
  }
}

/** Opens the sheet on which a job is handed on. */
export function handOn(job: Job): Promise<boolean> {
  return open(({ HandOn }) => Object.assign(new HandOn(), { job }));
}

/** Opens the sheet from which a job is printed; `first` is the paper that is chosen already. */
export function onPaper(job: Job, scale: Scale, first = "cut"): Promise<boolean> {
  return open(({ JobPaper }) => Object.assign(new JobPaper(), { job, scale, chosen: new Set([first]) }));
}

/**
 * Offers to take in the job of a file or of an address.
 *
 * @param done hears the id of the job to open, or nothing, once that is decided
 */
export async function takeIn(from: File | string, core: Core, done: (id: string) => void): Promise<void> {
  const isOpen = await open(({ TakeIn }) => Object.assign(new TakeIn(), { from, core, done }));
  if (!isOpen) done("");
}
