/** Text made small for an address, and large again: DEFLATE (RFC 1951), base64url (RFC 4648). */
import { StoreFault } from "../store/database";

const DAMAGED = "Part of this link is missing or changed: have it sent again, or as a file.";
const OLD_BROWSER = "This browser can't make or read such links: use the job file instead.";

async function through(bytes: Uint8Array<ArrayBuffer>, change: ReadableWritablePair): Promise<ReadableStream<Uint8Array>> {
  return new Blob([bytes]).stream().pipeThrough(change as ReadableWritablePair<Uint8Array, Uint8Array>);
}

/** Reads to the end, or gives up where more than `most` bytes come. */
async function read(stream: ReadableStream<Uint8Array>, most: number): Promise<Uint8Array<ArrayBuffer>> {
  const reader = stream.getReader();
  const parts: Uint8Array<ArrayBuffer>[] = [];
  let size = 0;
  for (let step = await reader.read(); !step.done; step = await reader.read()) {
    size += step.value.length;
    if (size > most) {
      await reader.cancel();
      throw new StoreFault(`This link holds more than ${most / 1_000_000} MB: no job is that large.`);
    }
    parts.push(step.value as Uint8Array<ArrayBuffer>);
  }
  return new Uint8Array(await new Blob(parts).arrayBuffer());
}

function base64url(bytes: Uint8Array): string {
  const text = Array.from(bytes, (byte) => String.fromCharCode(byte)).join("");
  return btoa(text).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
}

/** Throws a StoreFault where `text` is no base64url. */
function bytesOf(text: string): Uint8Array<ArrayBuffer> {
  try {
    const plain = atob(text.replaceAll("-", "+").replaceAll("_", "/"));
    return Uint8Array.from(plain, (letter) => letter.charCodeAt(0));
  } catch (cause) {
    throw new StoreFault(DAMAGED, { cause });
  }
}

/** Returns `text` as small as an address can carry it. */
export async function packed(text: string): Promise<string> {
  if (!("CompressionStream" in window)) throw new StoreFault(OLD_BROWSER);
  const bytes = new TextEncoder().encode(text);
  const small = await through(bytes, new CompressionStream("deflate-raw"));
  return base64url(await read(small, Infinity));
}

/**
 * Returns the text that was packed.
 *
 * Throws a StoreFault where that can't be read, or would have more than `most` bytes: a short link
 * can unpack to gigabytes.
 */
export async function unpacked(text: string, most: number): Promise<string> {
  if (!("DecompressionStream" in window)) throw new StoreFault(OLD_BROWSER);
  const bytes = bytesOf(text);
  try {
    const large = await through(bytes, new DecompressionStream("deflate-raw"));
    return new TextDecoder("utf-8", { fatal: true }).decode(await read(large, most));
  } catch (cause) {
    throw cause instanceof StoreFault ? cause : new StoreFault(DAMAGED, { cause });
  }
}
