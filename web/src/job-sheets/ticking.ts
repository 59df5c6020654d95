/** Ticks of a job as they stand in its document: the last one of each piece, mark or line counts. */
import type { JobBody, Tick } from "../job/document";

export type State = "cut" | "spoiled" | "bought" | "marked" | "done";

/** What is ticked, by what it is of. */
export class Ticked {
  private readonly last = new Map<string, Tick>();
  private readonly spoilt = new Map<string, number>();

  constructor(ticks: readonly Tick[] = []) {
    for (const tick of ticks) {
      this.last.set(tick.of, tick);
      if (tick.state === "spoiled") this.spoilt.set(tick.of, this.spoiled(tick.of) + 1);
    }
  }

  /** Whether it stands ticked; a piece that was spoiled does not. */
  is(of: string): boolean {
    const state = this.last.get(of)?.state;
    return state !== undefined && state !== "spoiled";
  }

  /** How many pieces were spoiled under this mark. */
  spoiled(of: string): number {
    return this.spoilt.get(of) ?? 0;
  }

  /** What was paid; null where nothing was said. */
  paid(of: string): number | null {
    return this.last.get(of)?.paid ?? null;
  }
}

const now = (): string => new Date().toISOString();

/** Returns the job with one more tick; `length` is what a piece is cut to. */
export function withTick(body: JobBody, of: string, state: State, length?: number): JobBody {
  const was = length === undefined ? {} : { was: { length } };
  return { ...body, ticks: [...(body.ticks ?? []), { of, state, at: now(), ...was }] };
}

/** Returns the job without the last tick of `of`: what stood before it counts again. */
export function withoutTick(body: JobBody, of: string): JobBody {
  const ticks = body.ticks ?? [];
  const at = ticks.map((tick) => tick.of).lastIndexOf(of);
  return { ...body, ticks: ticks.filter((_, each) => each !== at) };
}

/** Returns the job with a piece cut to today's length: its last tick says so now. */
export function withLength(body: JobBody, of: string, length: number): JobBody {
  return withTick(withoutTick(body, of), of, "cut", length);
}

/** Returns the job with what was paid for a line that is bought. */
export function withPaid(body: JobBody, of: string, paid: number | null): JobBody {
  const ticks = body.ticks ?? [];
  const at = ticks.map((tick) => tick.of).lastIndexOf(of);
  return { ...body, ticks: ticks.map((tick, each) => (each === at ? { ...tick, paid } : tick)) };
}
