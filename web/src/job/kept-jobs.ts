/** The jobs kept on this phone: listed, begun, deleted, had back. */
import type { Scale } from "../contract/contract";
import type { JsonObject } from "../store/json";
import { deleteDocument, listAll, listTitles, openDocument, undeleteDocument } from "../store/store";
import { blankJob, isJob, newId, SCHEMA, type JobBody } from "./document";
import { dropReply } from "./last-reply";
import { markPhotos } from "./photos";

export const KIND = "job";

/** Returns the jobs kept here, those worked on last first; no job is read. */
export const listJobs = (): ReturnType<typeof listTitles> => listTitles(KIND);

/** Keeps a new job and returns its id. */
export async function newJob(title: string, scale: Scale): Promise<string> {
  return keepJob(blankJob(newId(), title, scale.units, scale.step), "New job");
}

/** Keeps a whole job under its own id and returns it. */
export async function keepJob(body: JobBody, words: string): Promise<string> {
  const document = await openDocument(KIND, body.id, { schema: SCHEMA });
  document.change(body as unknown as JsonObject, body.units ?? "in", words);
  document.close();
  return body.id;
}

/** Deletes a job and its photos; for 30 days all can be had back. */
export async function deleteJob(id: string): Promise<void> {
  const body = await bodyOf(id);
  await deleteDocument(KIND, id);
  await dropReply(id);
  if (body) await markPhotos(body, true);
}

/** Has a job back, its photos first: one that is listed again has them all. */
export async function undeleteJob(id: string): Promise<void> {
  const [, deleted] = await listAll(KIND);
  const body = deleted.find((record) => record.id === id)?.body;
  if (body && isJob(body)) await markPhotos(body as unknown as JobBody, false);
  await undeleteDocument(KIND, id);
}

async function bodyOf(id: string): Promise<JobBody | null> {
  const document = await openDocument(KIND, id, { schema: SCHEMA });
  const { body } = document;
  document.close();
  return isJob(body) ? (body as unknown as JobBody) : null;
}
