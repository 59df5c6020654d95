/**
 * Addresses: `#/saw`, `#/saw/mitered-frame?width=27+13%2F16`; `#/job`, `#/job/<id>`,
 * `#/job/<id>/stock`, `#/job/<id>/<id of a question>`.
 *
 * Everything is in the fragment, so that any static host serves deep links. A tool's address carries
 * its inputs as typed. A bare number means inches unless the address says `units=mm`.
 */
import { catalog } from "../engine/catalog";
import type { Declaration, Listing, RawInputs, Units } from "../contract/contract";
import { isName, MOST, parsed } from "../store/check";
import { sorted } from "../store/form-body";
import { ownInputs } from "../store/lists";

export const JOB = "job";

export interface Route {
  place: string;
  tool: Listing | null;
  /** A job's id, empty for the list of jobs, and which part of it; null for a tool's own address. */
  job: { id: string; part: string } | null;
  /** What the address carries for the tool; null where it carries nothing. */
  carried: URLSearchParams | null;
  units: Units;
  /** Of the form that wrote the address. */
  version: number;
  /** Whether the address is too long to be read. */
  isTooLong: boolean;
}

/** Names the version of a form in an address; the first needs no name. */
const VERSION = "form";
const UNITS = "units";

/** Returns where `hash` leads, or null where nothing of that name exists. */
export function routeOf(hash: string): Route | null {
  const [path = "", query = ""] = hash.replace(/^#\/?/, "").split(/\?(.*)/s);
  const [place = "", slug = "", part = ""] = path.split("/");
  if (place === JOB) return jobRoute(slug, part);
  const shelf = catalog.places.find((each) => each.place === place);
  if (!shelf) return null;
  const tool = shelf.tools.find((each) => each.slug === slug) ?? null;
  if (slug && !tool) return null;
  const isTooLong = query.length > MOST.address;
  const asked = new URLSearchParams(isTooLong ? "" : query);
  return {
    place,
    tool,
    job: null,
    carried: tool && asked.size > 0 ? asked : null,
    units: asked.get(UNITS) === "mm" ? "mm" : "in",
    version: Number(asked.get(VERSION)) || 1,
    isTooLong,
  };
}

function jobRoute(id: string, part: string): Route | null {
  try {
    const job = { id: decodeURIComponent(id), part: decodeURIComponent(part) };
    return { place: JOB, tool: null, job, carried: null, units: "in", version: 1, isTooLong: false };
  } catch {
    return null; // a broken escape
  }
}

/** Returns the fragment of the list of jobs, of a job, or of a part of one. */
export function jobHash(id = "", part = ""): string {
  return [`#/${JOB}`, id, part].filter(Boolean).map((each, at) => (at ? encodeURIComponent(each) : each)).join("/");
}

/** Returns the fragment of a place or, with a slug, of a tool without inputs. */
export function hashOf(place: string, slug = ""): string {
  return slug ? `#/${place}/${slug}` : `#/${place}`;
}

/** Returns the fragment of a tool with its inputs. */
export function hashWith(declaration: Declaration, inputs: RawInputs, units: Units): string {
  const carried = new URLSearchParams();
  const own = ownInputs(declaration.inputs, inputs);
  for (const { name } of declaration.inputs) {
    const value = own[name];
    if (value === undefined || value === null || value === "") continue;
    carried.set(name, typeof value === "object" ? JSON.stringify(value) : String(value));
  }
  if (carried.size > 0 && units === "mm") carried.set("units", units);
  if (carried.size > 0 && declaration.version > 1) carried.set(VERSION, String(declaration.version));
  const query = carried.toString();
  // An address that no page would read again is not written.
  if (query.length > MOST.address) return hashOf(declaration.place, declaration.slug);
  return hashOf(declaration.place, declaration.slug) + (query ? `?${query}` : "");
}

/**
 * Returns the inputs that an address carries, and the names of those that can't be read.
 *
 * Names that no form has now are carried too: the core knows what an older form meant by them.
 */
export function inputsOf(
  { inputs: asked }: Declaration,
  given: URLSearchParams,
): { inputs: RawInputs; unread: string[] } {
  const isOwn = (name: string): boolean => name !== UNITS && name !== VERSION;
  const flags = asked.filter(({ kind }) => kind === "flag").map(({ name }) => name);
  const values = [...given].filter(([name]) => isOwn(name)).map(([name, text]): [string, unknown] => {
    if (flags.includes(name)) return [name, text === "true"];
    return [name, valueOf(text)];
  });
  const { inputs, aside } = sorted(Object.fromEntries(values));
  return { inputs: ownInputs(asked, inputs), unread: aside.map(({ path }) => (isName(path) ? path : "a name")) };
}

/** Rows, and lengths with units of their own, are carried as JSON; what is damaged can't be read. */
function valueOf(text: string): unknown {
  return /^[[{]/.test(text) ? parsed(text) : text;
}
