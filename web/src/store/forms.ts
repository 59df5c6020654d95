import type { RawInputs } from "../contract/contract";
import { reading, SCHEMA, writing } from "./database";

/** Return what was last typed into a tool's form, or undefined if it was never touched. */
export async function loadForm(slug: string): Promise<RawInputs | undefined> {
  return (await reading(["forms"], (tx) => tx.objectStore("forms").get(slug)))?.inputs;
}

/** Keep what is typed into a tool's form, as typed, readable or not. */
export function saveForm(slug: string, inputs: RawInputs): Promise<void> {
  return writing(["forms"], async (tx) => {
    const store = tx.objectStore("forms");
    await store.put({ ...(await store.get(slug)), slug, schema: SCHEMA, inputs });
  });
}
