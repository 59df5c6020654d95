/** What the page of an address opens with: the tool, and the form it starts from. */
import type { Route } from "../address/address";
import { isFromForm } from "../address/address-bar";
import type { CatalogTool, Units } from "../contract/contract";
import { toolNamed } from "../engine/catalog";
import type { Start } from "../form/controller";
import type { Job } from "../job/job";
import { toast } from "../parts/toast";
import { ToolDocuments } from "../store/store";

export interface Opened {
  tool: CatalogTool | null;
  start: Start | null;
}

/**
 * Opens the forms that an address leads to.
 *
 * An address with inputs beats the saved form, but for one: after a reload the address that the
 * form itself wrote may lack the last things typed.
 */
export async function startOf(route: Route, units: Units, isFirst: boolean, job: Job | null): Promise<Opened> {
  const { tool, inputs, unread, version } = route;
  if (unread.length > 0) toast(`Part of this address can't be read and was left out: ${unread.join(", ")}.`);
  if (route.job) return ofJob(route.job.part, units, job);
  if (!tool) return { tool, start: null };
  const documents = await ToolDocuments.open(tool.declaration, units);
  const isReload = isFirst && isFromForm() && documents.form.revision > 0;
  if (!inputs || isReload) {
    return { tool, start: { form: documents.kept(units), documents, isKept: true, entry: null } };
  }
  const form = {
    inputs: { ...inputs, ...documents.keptLists(route.units) }, typedIn: route.units, version, aside: [],
  };
  return { tool, start: { form, documents, isKept: false, entry: null } };
}

async function ofJob(part: string, units: Units, job: Job | null): Promise<Opened> {
  const tool = toolNamed(job?.toolOf(part) ?? "");
  const entry = tool && job?.entryForm(part, tool.declaration);
  if (!tool || !entry) return { tool: null, start: null };
  const documents = await ToolDocuments.open(tool.declaration, units, entry);
  return { tool, start: { form: documents.kept(units), documents, isKept: true, entry } };
}
