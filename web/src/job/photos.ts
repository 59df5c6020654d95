/** Photos of a job's items: scaled on the phone, kept as documents of their own. */
import { toast } from "../parts/toast";
import { MOST } from "../store/check";
import { deleteDocument, openDocument, storageFault, undeleteDocument } from "../store/store";
import { newId, withItem, type Item, type JobBody } from "./document";
import type { Job } from "./job";

export const KIND = "photo";
export const MOST_PHOTOS = 12;
/** Pixels of a kept photo's longer side. */
const SIDE = 1600;
const LARGEST = 20_000_000;
/** Tried in turn until the photo fits a document. */
const QUALITIES = [0.8, 0.6, 0.4, 0.2];
const ROOM = MOST.document - 50_000;

/** Adds photos to an item; each that can't be kept is said. */
export async function addPhotos(job: Job, item: Item, files: File[]): Promise<void> {
  const free = Math.max(0, MOST_PHOTOS - (item.photos ?? []).length);
  for (const file of files.slice(0, free)) {
    const fault = await addPhoto(job, item.id, file).catch(() => unreadable(file));
    if (fault) toast(fault);
  }
  if (files.length > free) toast(`An item holds ${MOST_PHOTOS} photos: ${files.length - free} left out.`);
}

export const unreadable = ({ name }: File): string => `“${name.slice(0, 60)}” is no picture that this phone can read.`;

/** Returns why it can't be kept; empty where it is. */
async function addPhoto(job: Job, item: string, file: File): Promise<string> {
  if (!file.type.startsWith("image/")) return unreadable(file);
  if (file.size > LARGEST) {
    return `“${file.name.slice(0, 60)}” has ${Math.ceil(file.size / 1e6)} MB: a photo of at most ${LARGEST / 1e6} MB will do.`;
  }
  const data = await scaled(file);
  const id = await keepPhoto({ job: job.id, item, data });
  if (!id) return `“${file.name.slice(0, 60)}” can't be made small enough to keep.`;
  const edit = (one: Item): Item => ({ ...one, photos: [...(one.photos ?? []), { id }] });
  job.change((body) => withItem(body, item, edit), "Photo added");
  return "";
}

/** Keeps a picture as a text in base 64; returns its id, empty where it can't be kept. */
export async function keepPhoto({ data, ...of }: { job: string; item: string; type?: string; data: string }): Promise<string> {
  const id = newId();
  const document = await openDocument(KIND, id);
  const isKept = data !== "" && document.change({ ...of, data: pieces(data) }, "in", "Photo taken");
  document.close();
  return isKept ? id : "";
}

/** Takes a photo from its item; undo brings it back for 30 days. */
export function removePhoto(job: Job, item: string, id: string): void {
  const edit = (one: Item): Item => ({ ...one, photos: (one.photos ?? []).filter((photo) => photo.id !== id) });
  job.changeWithUndo((body) => withItem(body, item, edit), "Photo deleted");
  deleteDocument(KIND, id).catch(storageFault);
}

/** Deletes a job's photos with it, or has them back. */
export async function markPhotos(body: JobBody, isDeleted: boolean): Promise<void> {
  const mark = isDeleted ? deleteDocument : undeleteDocument;
  const photos = body.items.flatMap((item) => item.photos ?? []);
  await Promise.all(photos.map(({ id }) => mark(KIND, id)));
}

/** Returns a photo's picture; null where it is not on this phone. */
export async function photoOf(id: string): Promise<ImageBitmap | null> {
  const data = (await dataOf(id)) || (await undeleteDocument(KIND, id), await dataOf(id));
  return data ? pictureIn(data) : null;
}

/** Returns the picture that a text in base 64 says; rejects for one that is none. */
export async function pictureIn(data: string): Promise<ImageBitmap> {
  const bytes = Uint8Array.from(atob(data), (each) => each.charCodeAt(0));
  return createImageBitmap(new Blob([bytes], { type: "image/jpeg" }));
}

/** Returns a kept photo as a text in base 64; empty where it is not on this phone. */
export async function dataOf(id: string): Promise<string> {
  const document = await openDocument(KIND, id);
  const { data } = document.body;
  document.close();
  return Array.isArray(data) ? data.map(String).join("") : "";
}

/** Returns a picture of at most `SIDE` pixels as a text in base 64; empty where none is small enough. */
async function scaled(file: File): Promise<string> {
  const picture = await createImageBitmap(file);
  const canvas = drawn(picture, SIDE);
  for (const quality of QUALITIES) {
    const data = canvas.toDataURL("image/jpeg", quality).split(",")[1] ?? "";
    if (data.length <= ROOM) return data;
  }
  return "";
}

/** Returns a picture drawn so that its longer side has at most `side` pixels. */
export function drawn(picture: ImageBitmap, side: number, canvas = document.createElement("canvas")): HTMLCanvasElement {
  const scale = Math.min(1, side / Math.max(picture.width, picture.height));
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  canvas.getContext("2d")?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return canvas;
}

/** Splits a text into pieces as long as a document takes. */
function pieces(text: string): string[] {
  return Array.from({ length: Math.ceil(text.length / MOST.text) }, (_, at) =>
    text.slice(at * MOST.text, (at + 1) * MOST.text),
  );
}
