/** Files and links handed on: by the phone's own share sheet where it takes them, else saved. */
import { toast } from "../parts/toast";

const KEPT_FOR_SAVING = 60_000;

/** Returns a name that every phone's storage takes, such as `boot-room.longpoint.json`. */
export function fileName(title: string, ending: string): string {
  const plain = title.toLowerCase().replace(/[^\p{Letter}\p{Number}]+/gu, "-").replace(/^-+|-+$/g, "");
  return `${plain.slice(0, 60) || "job"}${ending}`;
}

/** Saves a file among the downloads. */
export function save(file: File): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), KEPT_FOR_SAVING);
  toast(`${file.name} is saved.`);
}

/** Whether the person closed the phone's list of ways to share, which is no failure. */
function isClosed(error: unknown): boolean {
  return error instanceof DOMException && error.name === "AbortError";
}

/** Hands a file on; a phone that shares no such file saves it. */
export async function giveFile(file: File): Promise<void> {
  const what = { files: [file], title: file.name };
  try {
    if (!("canShare" in navigator) || !navigator.canShare(what)) return save(file);
    await navigator.share(what);
  } catch (error) {
    // Some browsers say yes to every file and refuse those of a kind they don't know.
    if (!isClosed(error)) save(file);
  }
}

/** Hands a link on, or puts it on the clipboard. */
export async function giveLink(title: string, url: string): Promise<void> {
  try {
    if ("share" in navigator) await navigator.share({ title, url });
    else {
      await (navigator as Navigator).clipboard.writeText(url);
      toast("The link is copied.");
    }
  } catch (error) {
    if (!isClosed(error)) toast("The link could not be handed on: use the file instead.");
  }
}
