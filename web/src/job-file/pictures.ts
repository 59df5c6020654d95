/** The photos of a job in its file: beside the document, in base 64, by their ids. */
import type { Item, JobBody, Photo } from "../job/document";
import { dataOf, keepPhoto, pictureIn } from "../job/photos";
import { heldUnder, isObject } from "../store/json";

/** The name under which a file holds them. */
const NAME = "pictures";

export const photosOf = (body: JobBody): Photo[] => body.items.flatMap(({ photos = [] }) => photos);

/** Returns a job with its photos, as far as they are on this phone; one without any as it is. */
export async function withPictures(body: JobBody): Promise<object> {
  const photos = photosOf(body);
  if (photos.length === 0) return body;
  const data = await Promise.all(photos.map(({ id }) => dataOf(id)));
  const found = photos.flatMap(({ id }, at): [string, string][] => (data[at] ? [[id, data[at]]] : []));
  return { ...body, [NAME]: Object.fromEntries(found) };
}

/** Splits what a file says into the document and its photos. */
export function split(value: unknown): { body: unknown; pictures: Map<string, string> } {
  const pictures = new Map<string, string>();
  if (!isObject(value) || !Object.hasOwn(value, NAME)) return { body: value, pictures };
  const { [NAME]: held, ...body } = value;
  for (const id of isObject(held) ? Object.keys(held) : []) {
    const data = heldUnder(held, id);
    if (typeof data === "string") pictures.set(id, data);
  }
  return { body, pictures };
}

/**
 * Keeps the photos that came with a job, each under a new id: a job that stands here already keeps
 * its own. Returns the job with those ids; a photo that can't be read is left out of it.
 */
export async function keepPictures(body: JobBody, pictures: Map<string, string>): Promise<JobBody> {
  if (pictures.size === 0) return body;
  const items = await Promise.all(body.items.map((item) => withPhotos(item, body.id, pictures)));
  return { ...body, items };
}

async function withPhotos(item: Item, job: string, pictures: Map<string, string>): Promise<Item> {
  if (!item.photos) return item;
  const photos: Photo[] = [];
  for (const photo of item.photos) {
    const data = pictures.get(photo.id) ?? "";
    const isPicture = await pictureIn(data).then(() => true, () => false);
    const id = isPicture ? await keepPhoto({ job, item: item.id, data }) : "";
    if (id) photos.push({ ...photo, id });
  }
  return { ...item, photos };
}
