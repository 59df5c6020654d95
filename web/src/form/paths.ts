/** Reading and changing a form by path: `width`, or `walls.1.length` for a field in a row. */
import type { Declaration, Field, FormSaid, Input, Raw, RawInputs, RawRow, RowFields } from "../contract/contract";

/** Fields that stand open before the rest folds away under "More". */
const OPEN_FIELDS = 6;
export const TYPED = ["length", "angle", "number", "count", "text"];

/** Whether a bare number typed for an input means what the units in force say. */
export function hasTwoUnits({ kind, metric }: Input): boolean {
  return kind === "length" || metric !== undefined;
}

/** Returns the rows kept under `name`, none where there are none. */
export function rowsAt(inputs: RawInputs, name: string): RawRow[] {
  const rows = inputs[name];
  return Array.isArray(rows) ? rows : [];
}

/** Returns what stands at `path`, null for nothing. */
export function valueAt(inputs: RawInputs, path: string): Raw {
  const [name = "", index, column = ""] = path.split(".");
  if (index === undefined) return inputs[name] ?? null;
  return rowsAt(inputs, name)[Number(index)]?.[column] ?? null;
}

/** Returns a copy of `inputs` with `value` at `path`; nothing given takes the entry away. */
export function withValue(inputs: RawInputs, path: string, value: Raw): RawInputs {
  const [name = "", index, column = ""] = path.split(".");
  if (index === undefined) return entered({ ...inputs, [name]: value });
  const rows = rowsAt(inputs, name).map((row, i) =>
    i === Number(index) ? sameRow(row, entered({ ...row, [column]: value }) as RawRow) : row,
  );
  return { ...inputs, [name]: rows };
}

function entered(inputs: RawInputs): RawInputs {
  return Object.fromEntries(
    Object.entries(inputs).filter(([, value]) => value !== "" && value !== null),
  );
}

const rowKeys = new WeakMap<RawRow, number>();
let lastKey = 0;

/** Returns a key that stays with a row while it is edited and moved. */
export function keyOf(row: RawRow): number {
  const key = rowKeys.get(row) ?? (lastKey += 1);
  rowKeys.set(row, key);
  return key;
}

function sameRow(old: RawRow, changed: RawRow): RawRow {
  rowKeys.set(changed, keyOf(old));
  return changed;
}

/** Returns the field at `path` as the core said it; undefined for one that is not asked now. */
export function fieldAt(said: FormSaid, path: string): Field | undefined {
  const [name, index, column] = path.split(".");
  const field = said.fields.find((each) => each.name === name);
  if (index === undefined) return field;
  return rowAt(said, path)?.fields.find((each) => each.name === column);
}

/** Returns the row that `path` leads into, as the core said it. */
export function rowAt(said: FormSaid, path: string): RowFields | undefined {
  const [name, index] = path.split(".");
  return said.fields.find((each) => each.name === name)?.rows?.[Number(index)];
}

/** Returns the declared input a path leads to. */
export function inputAt(declaration: Declaration, path: string): Input | undefined {
  const [name, index, column] = path.split(".");
  const input = declaration.inputs.find((each) => each.name === name);
  return index === undefined ? input : input?.columns?.find((each) => each.name === column);
}

/**
 * Splits the fields that are asked into those that stand open and those that may fold away.
 *
 * Rows take the space of two fields. What must be filled stands open, and what the person changed
 * or has to look at (`isHeld`).
 */
export function folded(
  fields: Field[], inputs: Input[], isHeld: (field: Field) => boolean,
): [open: Field[], rest: Field[]] {
  const inputOf = (field: Field) => inputs.find((each) => each.name === field.name);
  const isRows = (field: Field): boolean => inputOf(field)?.kind === "rows";
  const most = OPEN_FIELDS - 2 * fields.filter(isRows).length;
  const single = fields.filter((field) => !isRows(field));
  const spare = single.filter((field, i) => i >= most && !inputOf(field)?.required && !field.missing);
  const rest = spare.filter((field) => !isHeld(field));
  return rest.length < 2 ? [fields, []] : [fields.filter((field) => !rest.includes(field)), rest];
}

/** Returns every typed field that is asked, rows' fields included, in the order of the screen. */
export function typedPaths(said: FormSaid, { inputs }: Declaration): string[] {
  return pathsOf(said.fields, inputs, "");
}

function pathsOf(fields: Field[], inputs: Input[], before: string): string[] {
  return fields.flatMap((field) => {
    const input = inputs.find((each) => each.name === field.name);
    const path = before + field.name;
    if (input?.kind === "rows") {
      return (field.rows ?? []).flatMap((row, at) =>
        pathsOf(row.fields, input.columns ?? [], `${path}.${at}.`),
      );
    }
    return TYPED.includes(input?.kind ?? "") ? [path] : [];
  });
}

/** Returns what a field is called: "Recess width", "Wall 2, Length". */
export function nameOf(declaration: Declaration, path: string): string {
  const [name = "", index, column] = path.split(".");
  const input = declaration.inputs.find((each) => each.name === name);
  if (!input) return "";
  if (index === undefined) return input.label;
  const field = input.columns?.find((each) => each.name === column);
  const word = input.row ?? "row";
  const row = `${word.charAt(0).toUpperCase()}${word.slice(1)} ${Number(index) + 1}`;
  return field ? `${row}, ${field.label}` : row;
}

/** Returns the DOM id of the control at `path`. */
export function idOf(path: string): string {
  return `field-${path.replaceAll(".", "-")}`;
}

/** Whether two values say the same. */
export function isAlike(one: Raw | object, other: Raw | object): boolean {
  return one === other || (typeof one === "object" && JSON.stringify(one) === JSON.stringify(other));
}

/** Returns the text of a value that the core has not spoken of yet. */
export function textOf(value: Raw): string {
  if (value === null || typeof value === "boolean" || Array.isArray(value)) return "";
  return typeof value === "object" ? value.text : String(value);
}

/** Returns what is said of a form with what is asked first in front. */
export function inOrder<Said extends FormSaid>(said: Said, asks: readonly string[]): Said {
  if (asks.length === 0) return said;
  const place = ({ name }: Field): number => (asks.includes(name) ? asks.indexOf(name) : asks.length);
  return { ...said, fields: [...said.fields].sort((one, other) => place(one) - place(other)) };
}
