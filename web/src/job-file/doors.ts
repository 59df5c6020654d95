/** The ways in and out of a job: files, links, paper, each loaded when it is first opened. */
import type { Scale } from "../contract/contract";
import type { Core } from "../engine/core";
import type { Job } from "../job/job";
import { withStyle } from "../parts/style";
import { toast } from "../parts/toast";

const NOT_LOADED = "This part of Longpoint could not be loaded: connect once, then try again.";

/** Opens the sheet on which a job is handed on. */
export async function handOn(job: Job): Promise<void> {
  try {
    const [{ HandOn }] = await Promise.all([import("./hand-on"), withStyle("job")]);
    document.body.append(Object.assign(new HandOn(), { job }));
  } catch (error) {
    console.error(error);
    toast(NOT_LOADED);
  }
}

/** Opens the sheet from which a job is printed. */
export async function onPaper(job: Job, scale: Scale): Promise<void> {
  try {
    const [{ JobPaper }] = await Promise.all([import("../job-paper/job-paper"), withStyle("job")]);
    document.body.append(Object.assign(new JobPaper(), { job, scale }));
  } catch (error) {
    console.error(error);
    toast(NOT_LOADED);
  }
}

/**
 * Offers to take in the job of a file or of an address.
 *
 * @param done hears the id of the job to open, or nothing, once that is decided
 */
export async function takeIn(from: File | string, core: Core, done: (id: string) => void): Promise<void> {
  try {
    const [{ TakeIn }] = await Promise.all([import("./take-in"), withStyle("job")]);
    document.body.append(Object.assign(new TakeIn(), { from, core, done }));
  } catch (error) {
    console.error(error);
    toast(NOT_LOADED);
    done("");
  }
}
