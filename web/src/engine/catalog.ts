/** The shelf: its list is here at once; what a list doesn't show is loaded when it is wanted. */
import { catalog } from "longpoint:catalog";
import { patterns, pictures, tools } from "longpoint:assets";
import type { CatalogTool, Listing, Pattern } from "../contract/contract";
import { jsonOf } from "./files";

export { catalog };

/** Returns what lists show of a tool; undefined where this version has none of that name. */
export function listed(slug: string): Listing | undefined {
  return catalog.places.flatMap((place) => place.tools).find((tool) => tool.slug === slug);
}

/** Returns what a question is called: by its own title, else by its tool's. */
export function calledAs({ title, tool }: { title?: string; tool: string }): string {
  return title || (listed(tool)?.title ?? tool);
}

/** Loads a tool's declaration and empty form; null where this version has none of that name. */
export async function toolNamed(slug: string): Promise<CatalogTool | null> {
  const path = tools[slug];
  return path === undefined ? null : jsonOf<CatalogTool>(path);
}

/** Loads every tool, to look for something in all of them; what doesn't come is left out. */
export async function allTools(): Promise<CatalogTool[]> {
  const loads = Object.values(tools).map((path) => jsonOf<CatalogTool>(path).catch(() => null));
  return (await Promise.all(loads)).filter((tool) => tool !== null);
}

/** Loads the kinds of item that a job can begin with. */
export function allPatterns(): Promise<Pattern[]> {
  return jsonOf<Pattern[]>(patterns);
}

const drawn: { [tool: string]: string } = {};

/** Loads the pictures of some places' tools, or of all; a list does without those that don't come. */
export async function bringPictures(places: readonly string[] = Object.keys(pictures)): Promise<void> {
  const bring = async (path = ""): Promise<void> => {
    if (path) Object.assign(drawn, await jsonOf<typeof drawn>(path));
  };
  await Promise.allSettled(places.map((place) => bring(pictures[place])));
}

/** Returns a tool's example as a small drawing, SVG; empty until it was brought. */
export function pictureOf(slug: string): string {
  return drawn[slug] ?? "";
}
