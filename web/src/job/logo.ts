/** The shop's logo: a picture kept on the phone. It is shown by an `<img>` alone, where nothing in an SVG runs. */
import { toast } from "../parts/toast";
import { deleteDocument, openDocument, storageFault } from "../store/store";
import { dataOf, drawn, KIND, keepPhoto, unreadable } from "./photos";

const SIDE = 800;
/** Bytes of an SVG. */
const LARGEST = 200_000;
const SVG = "image/svg+xml";

/** Keeps a logo; returns its id, or says why not and returns nothing. */
export async function keepLogo(file: File): Promise<string> {
  try {
    return await (file.type === SVG ? keepSvg(file) : keepPicture(file));
  } catch {
    toast(unreadable(file));
    return "";
  }
}

/** Deletes a logo that is the shop's no longer; one that isn't there is no fault. */
export async function dropLogo(id: string | undefined): Promise<void> {
  if (id) await deleteDocument(KIND, id).catch(storageFault);
}

async function keepSvg(file: File): Promise<string> {
  if (file.size > LARGEST) {
    toast(`“${file.name.slice(0, 60)}” has ${Math.ceil(file.size / 1000)} kB: an SVG of at most ${LARGEST / 1000} kB will do.`);
    return "";
  }
  const bytes = new Uint8Array(await file.arrayBuffer());
  await check(new Blob([bytes], { type: SVG }));
  const data = btoa(Array.from(bytes, (each) => String.fromCharCode(each)).join(""));
  return keepPhoto({ job: "", item: "", type: SVG, data });
}

/** Rejects for what is no picture. */
async function check(blob: Blob): Promise<void> {
  const image = new Image();
  image.src = URL.createObjectURL(blob);
  await image.decode().finally(() => URL.revokeObjectURL(image.src));
}

/** Keeps it on white, as paper is. */
async function keepPicture(file: File): Promise<string> {
  const canvas = drawn(await createImageBitmap(file), SIDE);
  const context = canvas.getContext("2d");
  if (context) {
    context.globalCompositeOperation = "destination-over";
    context.fillStyle = "#fff";
    context.fillRect(0, 0, canvas.width, canvas.height);
  }
  return keepPhoto({ job: "", item: "", data: canvas.toDataURL("image/jpeg", 0.9).split(",")[1] ?? "" });
}

/** Returns an address of a kept logo, to be revoked when it is done with; empty where it is not on this phone. */
export async function logoUrl(id: string): Promise<string> {
  const data = id ? await dataOf(id) : "";
  if (!data) return "";
  const document = await openDocument(KIND, id);
  const type = document.body["type"] === SVG ? SVG : "image/jpeg";
  document.close();
  const bytes = Uint8Array.from(atob(data), (each) => each.charCodeAt(0));
  return URL.createObjectURL(new Blob([bytes], { type }));
}
