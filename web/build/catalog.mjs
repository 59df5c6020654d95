/**
 * @import { Catalog, CatalogTool, Declaration, FieldError, Input, Listing, Pattern, Scale, StepChoices } from "../src/contract/contract"
 * @import { drawingSvg } from "../src/drawing/svg"
 * @import { Ask } from "./core.mjs"
 * @typedef {typeof drawingSvg} Draw the app's own renderer
 */

/**
 * How the worked examples are shown until the person's own scale is known.
 * @type {Scale}
 */
const SCALE = { units: "in", step: 16 };

/**
 * @template {object} Reply
 * @param {Reply & {ok: boolean, errors?: FieldError[]}} reply
 * @param {string} what
 * @returns {Reply}
 */
function demand(reply, what) {
  if (reply.ok) return reply;
  const errors = (reply.errors ?? []).map(({ field, message }) => `${field}: ${message}`);
  throw new Error(`${what}: ${errors.join("; ")}`);
}

/**
 * Leave out of a declared input what only the core needs: conditions and defaults.
 *
 * @param {any} input
 * @returns {Input}
 */
function shownInput({ only_when, default: _, default_text, columns, choices, offers, ...input }) {
  const options = choices?.map((/** @type {any} */ { value, label }) => ({ value, label }));
  const rest = { ...(choices && { choices: options }), ...(columns && { columns: columns.map(shownInput) }) };
  return { ...input, ...rest };
}

/**
 * @param {Ask} ask
 * @param {Draw} draw
 * @param {Declaration} declaration
 * @returns {string}
 */
function picture(ask, draw, { slug, example }) {
  const question = { do: "answer", tool: slug, inputs: example, ...SCALE };
  const { answer } = demand(ask(question), `worked example of ${slug}`);
  if (!answer.drawing) throw new Error(`worked example of ${slug}: it has no drawing to show`);
  return draw(answer.drawing, { thumbnail: true, idPrefix: `thumbnail-${slug}` });
}

/**
 * @param {Ask} ask
 * @param {string} slug
 * @returns {CatalogTool}
 */
function ownFile(ask, slug) {
  const { tool } = demand(ask({ do: "declare", tool: slug }), `declaration of ${slug}`);
  // Sources come with an answer, and only then they are seen; what a tool gives concerns jobs.
  const { sources, gives, inputs, ...declaration } = tool;
  const { ok, answer: _, progress, search, ...form } = demand(
    ask({ do: "form", tool: slug, inputs: {}, ...SCALE }),
    `empty form of ${slug}`,
  );
  return { declaration: { ...declaration, inputs: inputs.map(shownInput) }, form };
}

/**
 * @param {Declaration} declaration
 * @returns {Listing}
 */
const listing = ({ slug, place, title, question, finds }) => ({ slug, place, title, question, finds });

/** @typedef {{place: string, title: string, tools: string[]}} Place */

/**
 * What lists, forms and first drawings need, by when it is loaded.
 *
 * @typedef {object} Shelf
 * @property {Catalog} catalog at each start
 * @property {{[tool: string]: CatalogTool}} tools with a tool's screen, and when something is looked for in all
 * @property {{[place: string]: {[tool: string]: string}}} pictures with a place's list, as SVG
 * @property {Pattern[]} patterns when an item of a job is begun
 */

/**
 * Ask the core for all of a shelf.
 *
 * Throws when the shelf is empty or a tool cannot answer its own example.
 *
 * @param {Ask} ask
 * @param {Draw} draw
 * @returns {Shelf}
 */
export function makeShelf(ask, draw) {
  /** @type {{places: Place[]}} */
  const { places } = demand(ask({ do: "shelf" }), "shelf");
  if (!places.some(({ tools }) => tools.length > 0)) throw new Error("shelf: no tool lies on it");
  /** @type {{patterns: Pattern[]}} */
  const { patterns } = demand(ask({ do: "patterns" }), "patterns");
  /** @type {{scales: StepChoices[]}} */
  const { scales } = demand(ask({ do: "scales" }), "scales");
  const own = new Map(places.flatMap(({ tools }) => tools.map((slug) => [slug, ownFile(ask, slug)])));
  const declared = (/** @type {Place} */ { tools }) =>
    tools.flatMap((slug) => own.get(slug)?.declaration ?? []);
  const lists = places.map((each) => ({ ...each, tools: declared(each).map(listing) }));
  const drawn = places.map((each) => [
    each.place,
    Object.fromEntries(declared(each).map((tool) => [tool.slug, picture(ask, draw, tool)])),
  ]);
  return {
    catalog: { scales, places: lists.map(({ place, title, tools }) => ({ place, title, tools })) },
    tools: Object.fromEntries(own),
    pictures: Object.fromEntries(drawn),
    patterns,
  };
}
