/** @import { Catalog } from "../src/contract/contract" */

const capital = (/** @type {string} */ word) => word.charAt(0).toUpperCase() + word.slice(1);

/**
 * Return the links to the places, jobs first, for the page's own HTML.
 *
 * @param {Catalog} catalog
 * @param {{[icon: string]: string}} lines
 * @returns {string}
 */
export function placeLinks({ places }, lines) {
  const link = (/** @type {string} */ place) =>
    `<a href="#/${place}"><svg class="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">` +
    `<path d="${lines[place]}"></path></svg><span>${capital(place)}</span></a>`;
  return ["job", ...places.map(({ place }) => place)].map(link).join("");
}
