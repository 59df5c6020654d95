import { reading, SCHEMA, writing, type KeptAnswer, type KeptRecord } from "./database";

/** How many answers of one tool are kept. */
export const KEPT = 20;

const same = (a: unknown, b: unknown) => inOrder(a) === inOrder(b);

/** Write inputs as text that does not depend on the order in which fields were filled. */
function inOrder(value: unknown): string {
  return JSON.stringify(value, (_, part: unknown) =>
    part && typeof part === "object" && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
}

export function isSameAnswer(
  a: Omit<KeptRecord, "schema">,
  b: Omit<KeptRecord, "schema">,
): boolean {
  return a.slug === b.slug && same(a.inputs, b.inputs);
}

/**
 * Keep an answer so that it can be called back.
 *
 * It replaces the newest one of its tool if the inputs are the same; beyond the last 20 of a tool
 * the oldest goes.
 */
export function keepAnswer(entry: Omit<KeptAnswer, "id">): Promise<void> {
  return writing(["answers"], async (tx) => {
    const store = tx.objectStore("answers");
    const kept = await store.index("slug").getAll(entry.slug);
    const newest = kept.at(-1);
    const again = newest?.id !== undefined && isSameAnswer(newest, entry);
    await store.put({ ...(again ? newest : {}), ...entry, schema: SCHEMA });
    const spare = again ? kept.length - KEPT : kept.length + 1 - KEPT;
    await Promise.all(kept.slice(0, Math.max(0, spare)).map(({ id }) => id && store.delete(id)));
  });
}

/** Return the kept answers of a tool, the newest first. */
export async function keptAnswers(slug: string): Promise<KeptAnswer[]> {
  const kept = await reading(["answers"], (tx) =>
    tx.objectStore("answers").index("slug").getAll(slug),
  );
  return (kept as KeptAnswer[]).reverse();
}
