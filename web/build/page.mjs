import { createHash } from "node:crypto";

/**
 * Put values in the places of their `%name%`; a place without a value, or the reverse, is an error.
 *
 * @param {string} page
 * @param {{[name: string]: string}} values
 */
export function fill(page, values) {
  const unused = new Set(Object.keys(values));
  const filled = page.replaceAll(/%(\w+)%/g, (place, name) => {
    const value = values[name];
    if (value === undefined) throw new Error(`index.html asks for ${place}, which is not made`);
    unused.delete(name);
    return value;
  });
  if (unused.size > 0) throw new Error(`index.html has no place for ${[...unused].join(", ")}`);
  return filled;
}

/**
 * Return how a policy names what stands in the page's own HTML between two tags.
 *
 * @param {string} text
 */
export function hashOf(text) {
  return `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
}
