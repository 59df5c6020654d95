/** Every tool's declaration, thumbnail and worked example, there before the core has started. */
import { catalog } from "longpoint:catalog";
import type { CatalogTool } from "../contract/contract";

export { catalog };

/** Returns what a question is called: by its own title, else by its tool's. */
export function calledAs({ title, tool }: { title?: string; tool: string }): string {
  return title || (toolNamed(tool)?.declaration.title ?? tool);
}

/** Returns the tool of that name; undefined where this version has none. */
export function toolNamed(slug: string): CatalogTool | undefined {
  return catalog.places.flatMap(({ tools }) => tools).find(({ declaration }) => declaration.slug === slug);
}
