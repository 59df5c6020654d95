/** What is done to a job from its screens, each with the words that its history says it in. */
import { moved, newId, withEntry, withItem, type Customer, type Item } from "./document";
import type { Job } from "./job";

export function rename(job: Job, title: string): void {
  job.change((body) => ({ ...body, title }), "Job renamed");
}

export function setCustomer(job: Job, customer: Customer): void {
  job.change((body) => ({ ...body, customer: { ...body.customer, ...customer } }), "Customer changed");
}

/** Changes an item: its title, count, note. */
export function changeItem(job: Job, id: string, part: Partial<Item>): void {
  job.change((body) => withItem(body, id, (item) => ({ ...item, ...part })), "Item changed");
}

export function moveItem(job: Job, id: string, by: number): void {
  job.change((body) => ({ ...body, items: moved(body.items, id, by) }), "Item moved");
}

/** Takes an item and its things away. */
export function deleteItem(job: Job, id: string, title: string): void {
  job.changeWithUndo(
    ({ things, ...body }) => ({
      ...body,
      items: body.items.filter((item) => item.id !== id),
      ...(things && { things: things.filter(({ item }) => item !== id) }),
    }),
    `${title || "Item"} deleted`,
  );
}

export function renameEntry(job: Job, id: string, title: string): void {
  job.change((body) => withEntry(body, id, (entry) => ({ ...entry, title })), "Question renamed");
}

export function moveEntry(job: Job, item: string, id: string, by: number): void {
  const edit = (one: Item): Item => ({ ...one, entries: moved(one.entries, id, by) });
  job.change((body) => withItem(body, item, edit), "Question moved");
}

export function deleteEntry(job: Job, item: string, id: string, title: string): void {
  const edit = (one: Item): Item => ({ ...one, entries: one.entries.filter((entry) => entry.id !== id) });
  job.changeWithUndo((body) => withItem(body, item, edit), `${title} deleted`);
}

/** Says what pieces of a question are cut from: a stock's id by the role of the piece. */
export function setStock(job: Job, id: string, role: string, stock: string): void {
  job.change(
    (body) => withEntry(body, id, (entry) => {
      const { [role]: _, ...others } = entry.stock ?? {};
      return { ...entry, stock: stock ? { ...others, [role]: stock } : others };
    }),
    "Stock chosen",
  );
}

/** Begins an item, from a pattern or empty; returns its id, or null. */
export async function beginItem(job: Job, pattern: string, title = ""): Promise<string | null> {
  const words = title ? `${title} begun` : "Item begun";
  return (await job.lay({ do: "begin item", id: newId(), pattern, title }, words))?.item ?? null;
}

/** Lays the same item into the job once more; returns its id, or null. */
export async function copyItem(job: Job, item: Item): Promise<string | null> {
  const title = `${item.title || "Item"}, the same again`;
  return (await job.lay({ do: "copy item", id: newId(), item: item.id, title }, "Item copied"))?.item ?? null;
}

/** Asks another question for an item; returns the question's id, or null. */
export async function addQuestion(job: Job, item: string, tool: string): Promise<string | null> {
  return (await job.lay({ do: "add entry", id: newId(), item, tool }, "Question added"))?.entries[0] ?? null;
}
