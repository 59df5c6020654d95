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
 * Return a script for the page's own HTML, and the hash by which its policy lets it run.
 *
 * @param {string} script
 */
export function inline(script) {
  const text = script.trim();
  return { inline: text, hash: createHash("sha256").update(text).digest("base64") };
}
