/** What the three sheets of a job share. */
import type { JobReply, Scale } from "../contract/contract";
import type { Job } from "../job/job";
import type { Ticked } from "./ticking";

export interface SheetView {
  job: Job;
  reply: JobReply;
  ticked: Ticked;
  scale: Scale;
  /** What stands unfolded: the name of one line, or empty. */
  open: string;
  unfold(name: string): void;
  /** Rows that are drawn: a start draws what fits the screen first. */
  most: number;
  /** Texts of prices that can't be read, by their line; they stay as typed. */
  prices: Map<string, string>;
  refresh(): void;
}

/** Returns "1 piece" or "3 pieces". */
export function count(number: number, one: string): string {
  return `${number} ${one}${number === 1 ? "" : "s"}`;
}
