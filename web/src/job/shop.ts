/** The shop's own list: what finished jobs left, with where it stands. One list for all jobs. */
import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { Raw, RawRow, Units } from "../contract/contract";
import { readRows } from "../store/form-body";
import type { JsonObject } from "../store/json";
import { openDocument, storageFault, type DocumentHandle } from "../store/store";
import type { JobBody, OnHand, Stock } from "./document";

const NAME = "offcuts";
/** How a job's history says that something on hand went to the shop's list. */
export const KEPT_FOR_SHOP = "Kept for the shop: jobs that can use it offer it";
/** Sizes on the list carry their marks, so that jobs in inches and in millimeters share it. */
const UNITS: Units = "in";

export class ShopOffcuts {
  private readonly listeners = new Set<() => void>();

  private constructor(readonly list: DocumentHandle) {
    list.onChange(() => this.tell());
  }

  static async open(): Promise<ShopOffcuts> {
    return new ShopOffcuts(await openDocument("list", NAME, { units: UNITS, body: { rows: [], typed_in: UNITS } }));
  }

  get rows(): RawRow[] {
    return readRows(this.list.body);
  }

  /** Calls `listener` when the list changes, here or in another page; returns how to stop that. */
  onChange(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => void this.listeners.delete(listener);
  }

  /** Puts what is left of a stock on the list, and returns the row. */
  keep(stock: Stock, left: OnHand, job: string, units: Units): RawRow {
    const kept = rowOf(stock, left, job, units);
    this.write([...this.rows, kept], "Offcut kept");
    return kept;
  }

  /** Takes a row that was kept off the list again; false where another job has taken it. */
  takeBack(kept: RawRow): boolean {
    const said = JSON.stringify(kept);
    const at = this.rows.map((row) => JSON.stringify(row)).lastIndexOf(said);
    if (at >= 0) this.write(this.rows.filter((_, place) => place !== at), "Offcut taken back");
    return at >= 0;
  }

  /** Takes a row off the list and returns it as what is on hand for a job. */
  take(at: number): OnHand {
    const { length, width, count, where } = this.rows[at] ?? {};
    this.write(this.rows.filter((_, place) => place !== at), "Offcut taken");
    const said = { length, width, count, where: typeof where === "string" ? where : undefined };
    return Object.fromEntries(Object.entries(said).filter(([, value]) => value !== undefined)) as OnHand;
  }

  private write(rows: RawRow[], words: string): void {
    this.list.change({ ...this.list.body, rows } as unknown as JsonObject, UNITS, words);
    this.tell();
  }

  private tell(): void {
    for (const listener of [...this.listeners]) listener();
  }
}

/**
 * Follows an undo, or a redo, of what was kept for the shop: the list is no part of the job, and a
 * piece lies in one place only.
 */
export async function followShop(before: JobBody, after: JobBody): Promise<void> {
  const shop = await shopOffcuts();
  for (const stock of shop ? before.stock ?? [] : []) {
    const now = after.stock?.find(({ id }) => id === stock.id)?.on_hand ?? [];
    const was = stock.on_hand ?? [];
    for (const row of missing(was, now)) shop?.keep(stock, row, before.title, before.units ?? "in");
    for (const row of missing(now, was)) shop?.takeBack(rowOf(stock, row, before.title, before.units ?? "in"));
  }
}

/** Returns the rows of one list that another lacks. */
function missing(rows: OnHand[], others: OnHand[]): OnHand[] {
  const left = others.map((row) => JSON.stringify(row));
  return rows.filter((row) => {
    const at = left.indexOf(JSON.stringify(row));
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

function rowOf(stock: Stock, { length, width, count, where }: OnHand, job: string, units: Units): RawRow {
  const row = { title: stock.title, sold: stock.sold, length: marked(length, units), width: marked(width, units), count, where, job };
  const says = Object.entries(row).filter(([, value]) => value !== undefined && value !== null && value !== "");
  return Object.fromEntries(says) as RawRow;
}

function marked(size: Raw | undefined, units: Units): Raw | undefined {
  if (typeof size !== "string" || !/^[\d\s/.-]+$/.test(size)) return size;
  return units === "in" ? `${size}"` : `${size} mm`;
}

/** Returns a row of the list in words: how many, how large, where. */
export function offcutWords({ length, width, count, where }: RawRow): string {
  const size = [length, width].filter(Boolean).join(" x ");
  return `${String(count ?? 1)} of ${size}${where ? `, ${String(where)}` : ""}`;
}

let shop: Promise<ShopOffcuts> | null = null;

/** Returns the list; null where the storage can't be read. */
export async function shopOffcuts(): Promise<ShopOffcuts | null> {
  shop ??= ShopOffcuts.open();
  return shop.catch((error: unknown) => {
    shop = null;
    storageFault(error);
    return null;
  });
}

/** The shop's list for as long as an element is on the page. */
export class ShopHearing implements ReactiveController {
  /** The list; null until it is read. */
  offcuts: ShopOffcuts | null = null;
  private isHere = false;
  private stop: () => void = () => undefined;

  /** @param changed told of every change of the list */
  constructor(
    private readonly host: ReactiveControllerHost,
    private readonly changed: () => void,
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    this.isHere = true;
    void shopOffcuts().then((shop) => {
      this.offcuts = shop;
      this.host.requestUpdate();
      if (!shop || !this.isHere) return;
      this.stop();
      this.stop = shop.onChange(this.changed);
    });
  }

  hostDisconnected(): void {
    this.isHere = false;
    this.stop();
  }
}
