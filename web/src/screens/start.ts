/** What the page of an address opens with: the tool, and the form it starts from. */
import { inputsOf, type Route } from "../address/address";
import { isFromForm } from "../address/address-bar";
import type { CatalogTool, Declaration, RawInputs, Units } from "../contract/contract";
import { allPatterns, bringPictures, listed, toolNamed } from "../engine/catalog";
import type { Start } from "../form/controller";
import type { Job } from "../job/job";
import { toast } from "../parts/toast";
import { ToolDocuments } from "../store/store";

export interface Opened {
  tool: CatalogTool | null;
  start: Start | null;
}

export const NOT_HERE = "This part of Longpoint isn't here yet: it needs a signal once.";

/** Opens what an address leads to; where a tool's own files can't be had, its place stands in for it. */
export async function startOf(route: Route, units: Units, isFirst: boolean, job: Job | null): Promise<Opened> {
  try {
    return await opened(route, units, isFirst, job);
  } catch (error) {
    console.error(error);
    toast(NOT_HERE);
    return { tool: null, start: null };
  }
}

/**
 * Opens the forms that an address leads to.
 *
 * An address with inputs beats the saved form, but for one: after a reload the address that the
 * form itself wrote may lack the last things typed.
 */
async function opened(route: Route, units: Units, isFirst: boolean, job: Job | null): Promise<Opened> {
  if (route.job) return ofJob(route.job.part, units, job);
  const tool = route.tool && (await withScreen(route.tool.slug));
  if (!tool) {
    await bringPictures([route.place]); // with them the list stands as it stays
    return { tool, start: null };
  }
  const inputs = carriedBy(route, tool.declaration);
  const documents = await ToolDocuments.open(tool.declaration, units);
  const isReload = isFirst && isFromForm() && documents.form.revision > 0;
  if (!inputs || isReload) {
    return { tool, start: { form: documents.kept(units), documents, isKept: true, entry: null } };
  }
  const form = {
    inputs: { ...inputs, ...documents.keptLists(route.units) }, typedIn: route.units, version: route.version, aside: [],
  };
  return { tool, start: { form, documents, isKept: false, entry: null } };
}

/** Loads a tool, and the screen of tools where none was open yet. */
async function withScreen(slug: string): Promise<CatalogTool | null> {
  const [tool] = await Promise.all([toolNamed(slug), listed(slug) && import("./tool")]);
  return tool;
}

/** Returns the inputs in an address, null where there are none; what can't be read is said. */
function carriedBy({ carried, isTooLong }: Route, declaration: Declaration): RawInputs | null {
  const { inputs, unread } = carried ? inputsOf(declaration, carried) : { inputs: null, unread: [] };
  const lost = isTooLong ? ["all of it, since it is too long"] : unread;
  if (lost.length > 0) toast(`Part of this address can't be read and was left out: ${lost.join(", ")}.`);
  return inputs;
}

async function ofJob(part: string, units: Units, job: Job | null): Promise<Opened> {
  const tool = await withScreen(job?.toolOf(part) ?? "");
  // Without its pattern a question stands in its tool's own order.
  const patterns = tool ? await allPatterns().catch(() => []) : [];
  const entry = tool && job?.entryForm(part, tool.declaration, patterns);
  if (!tool || !entry) return { tool: null, start: null };
  const documents = await ToolDocuments.open(tool.declaration, units, entry);
  return { tool, start: { form: documents.kept(units), documents, isKept: true, entry } };
}
