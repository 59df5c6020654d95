/** The core's parts, as server/phone_core.py makes them. */

/** A path below the interpreter's library folder, and what lies there: byte code or a source. */
export type File = [path: string, content: Uint8Array];

const NEWLINE = 10;

/** Return the files in a part: a line of JSON with their paths and lengths, then their contents. */
export function filesOf(part: ArrayBuffer | Uint8Array): File[] {
  const bytes = new Uint8Array(part);
  let at = bytes.indexOf(NEWLINE) + 1;
  const index = JSON.parse(new TextDecoder().decode(bytes.subarray(0, at))) as [string, number][];
  return index.map(([path, length]) => {
    const content = bytes.subarray(at, at + length);
    at += length;
    return [path, content];
  });
}
