/**
 * Addresses: `#/saw`, `#/saw/mitered-frame?width=27+13%2F16`.
 *
 * Everything is in the fragment, so that any static host serves deep links. A tool's address carries
 * its inputs as typed. A bare number means inches unless the address says `units=mm`.
 */
import { catalog } from "../engine/catalog";
import type { CatalogTool, Declaration, Input, Raw, RawInputs, Units } from "../contract/contract";
import { ownInputs } from "../store/lists";

export interface Route {
  place: string;
  tool: CatalogTool | null;
  /** The inputs the address carries; null where it carries none. */
  inputs: RawInputs | null;
  units: Units;
  /** Of the form that wrote the address. */
  version: number;
}

/** Names the version of a form in an address; the first needs no name. */
const VERSION = "form";

/** Returns where `hash` leads, or null where nothing of that name exists. */
export function routeOf(hash: string): Route | null {
  const [path = "", query = ""] = hash.replace(/^#\/?/, "").split(/\?(.*)/s);
  const [place = "", slug = ""] = path.split("/");
  const shelf = catalog.places.find((each) => each.place === place);
  if (!shelf) return null;
  const tool = shelf.tools.find((each) => each.declaration.slug === slug) ?? null;
  if (slug && !tool) return null;
  const asked = new URLSearchParams(query);
  const inputs = tool && [...asked].length > 0 ? inputsOf(tool.declaration, asked) : null;
  const version = Number(asked.get(VERSION)) || 1;
  return { place, tool, inputs, units: asked.get("units") === "mm" ? "mm" : "in", version };
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
  return hashOf(declaration.place, declaration.slug) + (query ? `?${query}` : "");
}

function inputsOf(declaration: Declaration, asked: URLSearchParams): RawInputs {
  const found: RawInputs = {};
  for (const input of declaration.inputs) {
    const text = asked.get(input.name);
    const value = text === null ? null : rawOf(input, text);
    if (value !== null) found[input.name] = value;
  }
  return ownInputs(declaration.inputs, found);
}

function rawOf(input: Input, text: string): Raw {
  if (input.kind === "flag") return text === "true";
  return /^[[{]/.test(text) ? parsed(text) : text;
}

/** A damaged address gives no rows, not a broken screen; the core sets aside what they can't hold. */
function parsed(text: string): Raw {
  try {
    return JSON.parse(text) as Raw;
  } catch {
    return null;
  }
}
