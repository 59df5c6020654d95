/** Ticks of a job as they stand in its document: the last one of each piece, mark or line counts. */
import { newId, type JobBody, type Tick } from "../job/document";

/** What a piece is cut to, in inches; a size that is not known is left out. */
export type Size = NonNullable<Tick["was"]>;
export type State = "cut" | "fitted" | "spoiled" | "bought" | "marked" | "done";

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

  /** Whether a piece was fitted, or hung. */
  isFitted(of: string): boolean {
    return this.last.get(of)?.state === "fitted";
  }

  /** What a piece was cut to; undefined where nothing was said. */
  cutTo(of: string): Size | undefined {
    return this.last.get(of)?.was;
  }

  /** How many pieces were spoiled under this mark. */
  spoiled(of: string): number {
    return this.spoilt.get(of) ?? 0;
  }

  /** When it was ticked, as it was written; empty where nothing was. */
  at(of: string): string {
    return this.last.get(of)?.at ?? "";
  }

  /** What was paid; null where nothing was said. */
  paid(of: string): number | null {
    return this.last.get(of)?.paid ?? null;
  }
}

/** To the second, and an id of 48 bits: a job with all its ticks is to fit into a code. */
const now = (): string => `${new Date().toISOString().slice(0, 19)}Z`;
const tickId = (): string => newId().replaceAll("-", "").slice(0, 12);

/** Ticks that came without an id get one by their place, the same in every window. */
const named = (ticks: readonly Tick[]): Tick[] => ticks.map((tick, at) => ({ id: `tick ${at}`, ...tick }));

/** Returns the size that a piece is cut to now. */
export function sizeOf({ length, width, thickness }: { length: number; width: number | null; thickness: number | null }): Size {
  return { length, ...(width === null ? {} : { width }), ...(thickness === null ? {} : { thickness }) };
}

/**
 * Returns the job with one more tick; `size` is what a piece is cut to.
 *
 * Each has an id of its own, by which what was ticked in two windows at once is joined.
 */
export function withTick(body: JobBody, of: string, state: State, size?: Size): JobBody {
  const was = size === undefined ? {} : { was: size };
  return { ...body, ticks: [...named(body.ticks ?? []), { id: tickId(), of, state, at: now(), ...was }] };
}

/** The moment on the wall clock, with its distance from UTC: `2026-11-30T07:45:00-05:00`. */
export function localNow(now = new Date()): string {
  const ahead = -now.getTimezoneOffset();
  const wall = new Date(now.getTime() + ahead * 60_000).toISOString().slice(0, 19);
  const two = (number: number): string => String(Math.trunc(number)).padStart(2, "0");
  return `${wall}${ahead < 0 ? "-" : "+"}${two(Math.abs(ahead) / 60)}:${two(Math.abs(ahead) % 60)}`;
}

/** Returns the job with a step of a finish plan done at a moment of the wall clock. */
export function withDone(body: JobBody, of: string, at: string): JobBody {
  const { ticks = [] } = withoutTick(body, of);
  return { ...body, ticks: [...ticks, { id: tickId(), of, state: "done", at }] };
}

/** Returns the job with the day that a finish plan begins on; empty for none. */
export function withStart(body: JobBody, plan: string, begins: string): JobBody {
  const others = (body.finish?.starts ?? []).filter(({ id }) => id !== plan);
  const starts = begins ? [...others, { id: plan, begins }] : others;
  return { ...body, finish: { ...body.finish, starts } };
}

/** Returns the job with `of` not ticked; what was spoiled under it stays. */
export function withoutTick(body: JobBody, of: string): JobBody {
  const ticks = named(body.ticks ?? []);
  const spoiled = ticks.map((tick) => tick.of === of && tick.state === "spoiled").lastIndexOf(true);
  return { ...body, ticks: ticks.filter((tick, at) => tick.of !== of || at <= spoiled) };
}

/** Returns the job with pieces fitted, or cut and not fitted after all; each keeps the size that it was cut to. */
export function withFitted(body: JobBody, pieces: readonly string[], isFitted: boolean): JobBody {
  const ticked = new Ticked(body.ticks);
  const state = isFitted ? "fitted" : "cut";
  return pieces.reduce((made, of) => withTick(withoutTick(made, of), of, state, ticked.cutTo(of)), body);
}

/** Returns the job with a piece cut to today's size: its tick says so now. */
export function withSize(body: JobBody, of: string, size: Size): JobBody {
  return withTick(withoutTick(body, of), of, "cut", size);
}

/** Returns the job with what was paid for a line that is bought. */
export function withPaid(body: JobBody, of: string, paid: number | null): JobBody {
  const ticks = named(body.ticks ?? []);
  const at = ticks.map((tick) => tick.of).lastIndexOf(of);
  return { ...body, ticks: ticks.map((tick, each) => (each === at ? { ...tick, paid } : tick)) };
}
