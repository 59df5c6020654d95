/** How the worked examples are shown until the person's own scale is known. */
const SCALE = { units: "in", step: 16 };

function demand(reply, what) {
  if (reply.ok) return reply;
  const errors = reply.errors.map(({ field, message }) => `${field}: ${message}`).join("; ");
  throw new Error(`${what}: ${errors}`);
}

function listing(ask, drawingSvg, slug) {
  const { tool } = demand(ask({ do: "declare", tool: slug }), `declaration of ${slug}`);
  const question = { do: "answer", tool: slug, inputs: tool.example, ...SCALE };
  const { answer } = demand(ask(question), `worked example of ${slug}`);
  if (!answer.drawing) throw new Error(`worked example of ${slug}: it has no drawing to show`);
  const options = { thumbnail: true, idPrefix: `thumbnail-${slug}-` };
  return { declaration: tool, thumbnail: drawingSvg(answer.drawing, options), example: answer };
}

/**
 * Ask the core for everything that lists, forms and first drawings need.
 *
 * @param {(request: object) => any} ask the running core
 * @param {(drawing: object, options: object) => string} drawingSvg the app's own renderer
 * @returns the Catalog of src/contract.ts; throws when a tool cannot answer its own example
 */
export function makeCatalog(ask, drawingSvg) {
  const { places } = demand(ask({ do: "shelf" }), "shelf");
  return {
    places: places.map(({ place, title, tools }) => ({
      place,
      title,
      tools: tools.map((slug) => listing(ask, drawingSvg, slug)),
    })),
  };
}
