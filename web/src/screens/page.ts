/** The open page: which one it is, what it is called, and where it leads back to. */
import { hashOf, jobHash, type Route } from "../address/address";
import type { CatalogTool } from "../contract/contract";
import { catalog } from "../engine/catalog";
import type { Start } from "../form/controller";
import type { Job } from "../job/job";
import type { Head } from "./frame";

export interface Page {
  /** Counts openings, so that a tool opened anew starts anew. */
  number: number;
  route: Route;
  tool: CatalogTool | null;
  /** What the tool starts with; null for a page without one. */
  start: Start | null;
}

/** Screens of a job that are no question. */
const PARTS: { [part: string]: string } = { stock: "Stock", quote: "Quote" };

/** Whether a part of a job is a screen of its own, not a question. */
export function isPart(part: string): boolean {
  return Object.hasOwn(PARTS, part);
}

/** Names a page that is a list, to find the place in it again. */
export function listOf({ route }: Page): string {
  return route.job ? jobHash(route.job.id, route.job.part) : hashOf(route.place);
}

export function titleOf({ route, tool, start }: Page, job: Job | null, isFound: boolean): string {
  if (tool) return start?.entry?.title ?? tool.declaration.title;
  if (route.job?.part) return PARTS[route.job.part] ?? "";
  if (route.job) return route.job.id ? job?.body.title || "Job" : "Jobs";
  const shelf = catalog.places.find((each) => each.place === route.place);
  return isFound ? "Found" : (shelf?.title ?? "");
}

/** Returns what the header says beside the title. */
export function headOf({ route, tool, start }: Page, job: Job | null): Pick<Head, "under" | "back" | "backWords"> {
  const { id = "", part = "" } = route.job ?? {};
  if (part) {
    const under = start?.entry?.belongs ?? job?.body.title ?? "";
    return { under, back: jobHash(id), backWords: "Back to the job" };
  }
  if (id) return { under: "", back: jobHash(), backWords: "Back to the jobs" };
  return { under: "", back: tool ? hashOf(route.place) : "", backWords: "Back to the questions" };
}
