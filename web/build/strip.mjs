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
    /\w+/,
    /->/,
    /[^]/,
  ]
    .map(({ source }) => source)
    .join("|"),
  "g",
);

const isDocstring = (/** @type {string} */ piece) => /^("""|''')/.test(piece);
const newlines = (/** @type {string} */ piece) => piece.replaceAll(/[^\n]/g, "");

const opens = (/** @type {string} */ piece) => "([{".includes(piece);
const closes = (/** @type {string} */ piece) => ")]}".includes(piece);

/**
 * Take docstrings, comments, wide indents and the types of parameters and results out of Python
 * source; every line keeps its number.
 *
 * They are a third of what the phone would download of the core and read at each start, and nobody
 * reads them there.
 *
 * @param {string} source
 * @returns {string}
 */
export function stripped(source) {
  const pieces = source.match(PIECES) ?? [];
  return untyped(unread(pieces)).join("").replaceAll(/[ \t]+$/gm, "");
}

/**
 * A docstring leaves an empty string, since it may be all that a function's body holds. Four spaces
 * of indent become one, and none where brackets are open.
 *
 * @param {string[]} pieces
 */
function unread(pieces) {
  let depth = 0;
  let begins = true; // whether a statement begins here
  let before = "\n";
  return pieces.map((piece) => {
    const first = begins;
    const isIndent = before === "\n" && piece.startsWith(" ");
    before = piece;
    if (opens(piece)) depth += 1;
    if (closes(piece)) depth -= 1;
    if (piece === "\n") begins = depth === 0;
    else if (!/^[ \t#]/.test(piece)) begins = false;
    if (piece.startsWith("#")) return "";
    if (isIndent) return " ".repeat(depth > 0 ? 0 : piece.length / 4);
    return first && isDocstring(piece) ? `""${newlines(piece)}` : piece;
  });
}

/**
 * A type stands after a parameter's name and its colon, up to a comma, a default or the closing
 * bracket; or after an arrow, up to the colon that ends the function's head.
 *
 * @param {string[]} pieces
 */
function untyped(pieces) {
  let depth = 0;
  let isHead = false;
  let isName = false; // whether a colon here would end a parameter's name
  let typed = -1; // the depth of the brackets round a type that is being left out
  return pieces.filter((piece) => {
    if (piece === "def" && depth === 0) isHead = true;
    if (closes(piece)) depth -= 1;
    if (typed === 1 && (depth < 1 || (depth === 1 && /^[,=]$/.test(piece)))) typed = -1;
    if (typed === 0 && depth === 0 && piece === ":") typed = -1;
    const isKept = typed === -1 || piece === "\n";
    if (typed === -1 && isHead && depth === 0 && piece === ":") isHead = false;
    if (opens(piece)) depth += 1;
    if (depth === 1 && /^[(,=]$/.test(piece)) isName = piece !== "=";
    const starts = isHead && typed === -1;
    if (starts && depth === 0 && piece === "->") typed = 0;
    else if (starts && depth === 1 && piece === ":" && isName) typed = 1;
    else return isKept;
    return false;
  });
}
