/** Where Python text can be cut into pieces that hold no half of a string or a comment. */
const PIECES = new RegExp(
  [
    /"""(?:\\[^]|(?!""")[^])*"""/, // a long string
    /'''(?:\\[^]|(?!''')[^])*'''/,
    /"(?:\\[^]|[^"\\\n])*"/,
    /'(?:\\[^]|[^'\\\n])*'/,
    /#[^\n]*/,
    /\\\n/, // a line that goes on
    /[ \t]+/,
    /[^]/,
  ]
    .map(({ source }) => source)
    .join("|"),
  "g",
);

const isDocstring = (/** @type {string} */ piece) => /^("""|''')/.test(piece);
const newlines = (/** @type {string} */ piece) => piece.replaceAll(/[^\n]/g, "");

/**
 * Take docstrings and comments out of Python source; every line keeps its number.
 *
 * They are a fifth of what the phone downloads of the core, and nobody reads them there. A
 * docstring leaves an empty string, since it may be all that a function's body holds.
 *
 * @param {string} source
 * @returns {string}
 */
export function stripped(source) {
  let depth = 0;
  let begins = true; // whether a statement begins here
  const pieces = (source.match(PIECES) ?? []).map((piece) => {
    const first = begins;
    if ("([{".includes(piece)) depth += 1;
    if (")]}".includes(piece)) depth -= 1;
    if (piece === "\n") begins = depth === 0;
    else if (!/^[ \t#]/.test(piece)) begins = false;
    if (piece.startsWith("#")) return "";
    return first && isDocstring(piece) ? `""${newlines(piece)}` : piece;
  });
  return pieces.join("").replaceAll(/[ \t]+$/gm, "");
}
