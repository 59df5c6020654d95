/**
 * Addresses: `#/saw`, `#/saw/mitered-frame?width=27+13%2F16`; `#/job`, `#/job/<id>`,
 * `#/job/<id>/stock`, `#/job/<id>/<id of a question>`.
 *
 * Everything is in the fragment, so that any static host serves deep links. A tool's address carries
 * its inputs as typed. A bare number means inches unless the address says `units=mm`.
 */
import { catalog } from "../engine/catalog";
import type { CatalogTool, Declaration, RawInputs, Units } from "../contract/contract";
import { isName, MOST, parsed } from "../store/check";
import { sorted } from "../store/form-body";
import { ownInputs } from "../store/lists";

export const JOB = "job";

export interface Route {
  place: string;
  tool: CatalogTool | null;
  /** A job's id, empty for the list of jobs, and which part of it; null for a tool's own address. */
  job: { id: string; part: string } | null;
  /** The inputs the address carries; null where it carries none. */
  inputs: RawInputs | null;
  units: Units;
  /** Of the form that wrote the address. */
  version: number;
  /** Names of what the address carries that can't be read. */
  unread: string[];
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
  const tool = shelf.tools.find((each) => each.declaration.slug === slug) ?? null;
  if (slug && !tool) return null;
  const isShort = query.length <= MOST.address;
  const asked = new URLSearchParams(isShort ? query : "");
  const isCarrying = tool && [...asked].length > 0;
  const { inputs, unread } = isCarrying ? inputsOf(tool.declaration, asked) : NOTHING;
  return {
    place,
    tool,
    job: null,
    inputs,
    units: asked.get(UNITS) === "mm" ? "mm" : "in",
    version: Number(asked.get(VERSION)) || 1,
    unread: isShort ? unread : ["all of it, since it is too long"],
  };
}

function jobRoute(id: string, part: string): Route | null {
  try {
    const job = { id: decodeURIComponent(id), part: decodeURIComponent(part) };
    return { place: JOB, tool: null, job, inputs: null, units: "in", version: 1, unread: [] };
  } catch {
    return null; // a broken escape
  }
}

/** Returns the fragment of the list of jobs, of a job, or of a part of one. */
export function jobHash(id = "", part = ""): string {
  return [`#/${JOB}`, id, part].filter(Boolean).map((each, at) => (at ? encodeURIComponent(each) : each)).join("/");
}

type Carried = Pick<Route, "inputs" | "unread">;
const NOTHING: Carried = { inputs: null, unread: [] };

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

/** Names that no form has now are carried too: the core knows what an older form meant by them. */
function inputsOf({ inputs: asked }: Declaration, given: URLSearchParams): Carried {
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
