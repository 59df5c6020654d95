/** The open job's sheet as a place shows it; its element comes with the rooms of jobs. */
import { html, type TemplateResult } from "lit";
import type { Scale } from "../contract/contract";
import type { Job } from "../job/job";

export function sheetOf(job: Job, place: string, scale: Scale, putAway: () => void): TemplateResult {
  return html`<lp-job-sheet .job=${job} .place=${place} .scale=${scale} .putAway=${putAway}></lp-job-sheet>`;
}
