/**
 * @import { Catalog, CatalogTool, FieldError, Input, Pattern, Scale, StepChoices } from "../src/contract/contract"
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
 * @param {string} slug
 * @returns {CatalogTool}
 */
function listing(ask, draw, slug) {
  const { tool } = demand(ask({ do: "declare", tool: slug }), `declaration of ${slug}`);
  const question = { do: "answer", tool: slug, inputs: tool.example, ...SCALE };
  const { answer } = demand(ask(question), `worked example of ${slug}`);
  if (!answer.drawing) throw new Error(`worked example of ${slug}: it has no drawing to show`);
  const options = { thumbnail: true, idPrefix: `thumbnail-${slug}` };
  // Sources come with an answer, and only then they are seen; what a tool gives concerns jobs.
  const { sources, gives, inputs, ...declaration } = tool;
  const { ok, answer: _, progress, search, ...form } = demand(
    ask({ do: "form", tool: slug, inputs: {}, ...SCALE }),
    `empty form of ${slug}`,
  );
  const shown = { ...declaration, inputs: inputs.map(shownInput) };
  return { declaration: shown, form, thumbnail: draw(answer.drawing, options) };
}

/** @typedef {{place: string, title: string, tools: string[]}} Place */

/**
 * Ask the core for everything that lists, forms and first drawings need.
 *
 * Throws when the shelf is empty or a tool cannot answer its own example.
 *
 * @param {Ask} ask
 * @param {Draw} draw
 * @returns {Catalog}
 */
export function makeCatalog(ask, draw) {
  /** @type {{places: Place[]}} */
  const { places } = demand(ask({ do: "shelf" }), "shelf");
  if (!places.some(({ tools }) => tools.length > 0)) throw new Error("shelf: no tool lies on it");
  /** @type {{patterns: Pattern[]}} */
  const { patterns } = demand(ask({ do: "patterns" }), "patterns");
  /** @type {{scales: StepChoices[]}} */
  const { scales } = demand(ask({ do: "scales" }), "scales");
  return {
    scales,
    patterns,
    places: places.map(({ place, title, tools }) => ({
      place,
      title,
      tools: tools.map((slug) => listing(ask, draw, slug)),
    })),
  };
}
