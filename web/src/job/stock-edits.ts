/** What a job's pieces are cut from, and what is bought by count: changes, with their words. */
import type { Raw, RawRow, Units } from "../contract/contract";
import { isObject, type Json } from "../store/json";
import { newId, type JobBody, type OnHand, type Sold, type SoldSheet, type Stock, type Thing } from "./document";
import type { Job } from "./job";

export const SOLD: { sold: Sold; words: string }[] = [
  { sold: "board", words: "boards" },
  { sold: "stick", words: "sticks" },
  { sold: "sheet", words: "sheets" },
  { sold: "each", words: "pieces" },
  { sold: "volume", words: "cans" },
];

/** What is sold by the length or the sheet, and what lies in the shop already: lists of a stock. */
export type StockList = "lengths" | "sheets" | "on_hand";
export type StockRow = SoldSheet & OnHand;

export function addStock(job: Job, stock: Omit<Stock, "id">): string {
  const id = newId();
  job.change((body) => ({ ...body, stock: [...(body.stock ?? []), { ...stock, id }] }), "Stock added");
  return id;
}

export function withStock(body: JobBody, id: string, edit: (stock: Stock) => Stock): JobBody {
  return { ...body, stock: (body.stock ?? []).map((stock) => (stock.id === id ? edit(stock) : stock)) };
}

/** Changes a stock; a part that is undefined or empty is taken away. */
export function changeStock(job: Job, id: string, part: Partial<Stock>): void {
  job.change((body) => withStock(body, id, (stock) => filled({ ...stock, ...part })), "Stock changed");
}

/** Takes a stock away; what was cut from it has none then. */
export function deleteStock(job: Job, id: string, title: string): void {
  job.changeWithUndo(
    (body) => ({ ...body, stock: (body.stock ?? []).filter((stock) => stock.id !== id) }),
    `${title || "Stock"} deleted`,
  );
}

export function rowsOf(stock: Stock, list: StockList): StockRow[] {
  return (stock[list] ?? []) as StockRow[];
}

/** Changes a row of a stock's list; null takes it away, a place past the end adds one. */
export function changeRow(job: Job, stock: Stock, list: StockList, at: number, part: StockRow | null): void {
  const rows = [...rowsOf(stock, list)];
  if (part === null) rows.splice(at, 1);
  else rows[at] = filled({ ...rows[at], ...part });
  changeStock(job, stock.id, { [list]: rows });
}

/** Leaves out what says nothing, but for a title, which may be empty. */
function filled<Part extends object>(part: Part): Part {
  const says = ([name, value]: [string, unknown]): boolean =>
    name === "title" || (value !== "" && value !== undefined && value !== null);
  return Object.fromEntries(Object.entries(part).filter(says)) as Part;
}

export function addThing(job: Job): string {
  const id = newId();
  const thing: Thing = { id, title: "", count: 1 };
  job.change((body) => ({ ...body, things: [...(body.things ?? []), thing] }), "Thing added");
  return id;
}

/** Changes a thing; without a count it is counted by its question again. */
export function changeThing(job: Job, id: string, part: Partial<Thing>): void {
  const edit = (thing: Thing): Thing => (thing.id === id ? filled({ ...thing, ...part }) : thing);
  job.change((body) => ({ ...body, things: (body.things ?? []).map(edit) }), "Thing changed");
}

export function deleteThing(job: Job, id: string, title: string): void {
  job.changeWithUndo(
    (body) => ({ ...body, things: (body.things ?? []).filter((thing) => thing.id !== id) }),
    `${title || "Thing"} deleted`,
  );
}

/** Returns a size as it stands in a job typed in `units`: one of other units carries their mark. */
function sizeIn(raw: Raw | undefined, from: Units, units: Units): Raw | undefined {
  if (raw === null || raw === undefined || typeof raw === "boolean" || Array.isArray(raw)) return undefined;
  const [text, typed] = isObject(raw as Json)
    ? [(raw as { text: string }).text, (raw as { units: Units }).units]
    : [raw as string | number, from];
  if (typeof text === "number" || typed === units) return text;
  return typed === "in" ? `${text}"` : `${text} mm`;
}

/** Returns a row of the yard's own list as a stock: the sizes that the tape said, and the price. */
export function stockOfRow(row: RawRow, from: Units, units: Units): Omit<Stock, "id"> {
  const text = (name: string): string => (typeof row[name] === "string" ? (row[name] as string) : "");
  const family = text("family") || "softwood";
  const per = text("per") || "board-foot";
  const sold: Sold = family === "sheet" ? "sheet" : per === "board-foot" ? "board" : "stick";
  const price = Number(row["price"]);
  const isPriced = Number.isFinite(price) && price > 0;
  const length = sizeIn(row["length"], from, units);
  return filled({
    title: [text("label"), family === "sheet" ? "" : family].filter(Boolean).join(" "),
    sold,
    thickness: sizeIn(row["thickness"], from, units),
    width: sold === "sheet" ? undefined : sizeIn(row["width"], from, units),
    price: isPriced && (sold === "board" || per === "lineal-foot") ? price : undefined,
    lengths: sold === "stick" && length ? [filled({ length, price: isPriced && per === "each" ? price : null })] : undefined,
  } as Omit<Stock, "id">);
}
