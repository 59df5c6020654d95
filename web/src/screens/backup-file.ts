/** Everything to a file and back, and an address to hand on. */
import { checkFile, exportAll, importAll } from "../store/store";
import { toast } from "../parts/toast";

function failed(error: unknown): void {
  console.error(error);
  toast(error instanceof Error ? error.message : "That did not work.");
}

const things = (count: number): string => (count === 1 ? "1 thing" : `${count} things`);

/** Offers everything kept on this device as one file. */
export async function saveFile(): Promise<void> {
  try {
    const { text, leftOut } = await exportAll();
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
    link.download = `longpoint-${new Date().toISOString().slice(0, 10)}.json`;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
    if (leftOut === 0) toast("Everything kept here is in the file.");
    else toast(`Everything kept here is in the file, but for ${things(leftOut)} that can't be read.`);
  } catch (error) {
    failed(error);
  }
}

/** Takes back what a file of `saveFile` holds; true when it is all kept here again. */
export async function bringBack(file: File): Promise<boolean> {
  try {
    checkFile(file.size);
    const { leftOut } = await importAll(await file.text());
    if (leftOut === 0) toast("Everything in the file is kept here again.");
    else toast(`The file is kept here again, but for ${things(leftOut)} in it that can't be read.`);
    return true;
  } catch (error) {
    failed(error);
    return false;
  }
}

/**
 * Hands on the address of this page, by the phone's own way or the clipboard.
 *
 * @param unshared names of the person's own lists that no address holds
 */
export async function share(title: string, unshared: string[]): Promise<void> {
  const url = location.href;
  const left = unshared.map((list) => ` “${list}” stays on this phone.`).join("");
  try {
    if ("share" in navigator) {
      await navigator.share({ title, url });
      if (left) toast(left.trim());
    } else {
      await (navigator as Navigator).clipboard.writeText(url);
      toast(`The address is copied.${left}`);
    }
  } catch (error) {
    // Closing the phone's list of ways to share is no failure.
    if (!(error instanceof DOMException && error.name === "AbortError")) toast(`Copy this: ${url}${left}`);
  }
}
