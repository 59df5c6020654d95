/** A link that holds a whole job: `#/take/1/<packed>`, where 1 says how it is packed. */
import { StoreFault } from "../store/database";
import type { JsonObject } from "../store/json";
import { packed, unpacked } from "./deflate";
import { WAY } from "./way";

const PACKING = "1";
/** Bytes of the text of a job; a kept document has at most as many characters. */
const MOST = 2_000_000;

const NEWER = "A newer Longpoint made this link: update, then open it again.";

/** Returns the link of a job; what is after the # never reaches a server. */
export async function linkOf(job: JsonObject): Promise<string> {
  const [page = ""] = location.href.split("#");
  return `${page}${WAY}${PACKING}/${await packed(JSON.stringify(job))}`;
}

/** Returns the text of the job in an address; throws a StoreFault where there is none to read. */
export async function jobTextIn(hash: string): Promise<string> {
  const [packing = "", data = ""] = hash.slice(WAY.length).split("/");
  if (Number(packing) > Number(PACKING)) throw new StoreFault(NEWER);
  return unpacked(data, MOST);
}
