/** Reading and changing a form by path: `width`, or `walls.1.length` for a field in a row. */
import type { Declaration, Input, OnlyWhen, Raw, RawInputs, RawRow } from "../contract";
import { inSentence } from "../text/words";

/** Fields that stand open before the rest folds away under "More". */
const OPEN_FIELDS = 6;
export const TYPED = ["length", "angle", "number", "count", "text"];

export interface Place {
  input: Input;
  path: string;
  value: Raw;
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

/** Whether a condition holds, `given` and `siblings` being the inputs it may speak of. */
export function holds(when: OnlyWhen | null, given: RawInputs, siblings: Input[]): boolean {
  if (!when) return true;
  const other = siblings.find((input) => input.name === when.input);
  if (!other) return false;
  const asked = asAsked(other, given, siblings);
  const value = asked.kind === "choice" ? chosenValue(asked, given[when.input]) : given[when.input];
  return when.is.includes(value ?? asked.default ?? (asked.kind === "flag" ? false : null));
}

/** Returns the inputs that apply, in declared order, each with the choices that it offers now. */
export function applying(inputs: Input[], given: RawInputs): Input[] {
  return inputs
    .filter((input) => holds(input.only_when, given, inputs))
    .map((input) => asAsked(input, given, inputs));
}

/** Where choices depend on another input, only those that hold are offered, the first by default. */
function asAsked(input: Input, given: RawInputs, siblings: Input[]): Input {
  if (!input.choices?.some((choice) => choice.only_when)) return input;
  const choices = input.choices.filter((choice) => holds(choice.only_when, given, siblings));
  return { ...input, choices, default: choices[0]?.value ?? null };
}

/** Returns the value of a choice as asked; one that is not offered now gives way to the default. */
export function chosenValue(input: Input, value: Raw | undefined): Raw {
  const isOffered = input.choices?.some((choice) => choice.value === value);
  return isOffered ? (value ?? null) : input.default;
}

/** Returns what the form says now: choices that are not offered any more are kept but not said. */
export function said(inputs: Input[], given: RawInputs): RawInputs {
  const lapsed = applying(inputs, given).filter(
    (input) => input.kind === "choice" && chosenValue(input, given[input.name]) !== given[input.name],
  );
  const names = lapsed.map((input) => input.name);
  const kept = Object.entries(given).filter(([name]) => !names.includes(name));
  const full = inputs.filter((input) => isOptionalList(input) && input.name in given).map((input) => {
    const rows = rowsAt(given, input.name);
    return [input.name, saidRows(input, given).map((at) => rows[at] ?? {})];
  });
  return Object.fromEntries([...kept, ...full]) as RawInputs;
}

function isOptionalList(input: Input): boolean {
  return input.kind === "rows" && input.min_rows === 0;
}

/** Returns which rows the form says: a list that may be empty waits for no row nobody filled. */
function saidRows(input: Input, given: RawInputs): number[] {
  const rows = [...rowsAt(given, input.name).entries()];
  const isFilled = (row: RawRow): boolean => Object.values(row).some((value) => value !== "" && value !== null);
  return rows.filter(([, row]) => !isOptionalList(input) || isFilled(row)).map(([at]) => at);
}

/** Returns the path in the form of a path in what `said` made of it. */
export function formPath(inputs: Input[], given: RawInputs, path: string): string {
  const [name, at, ...rest] = path.split(".");
  const input = inputs.find((each) => each.name === name);
  if (!input || at === undefined) return path;
  return [name, saidRows(input, given)[Number(at)] ?? at, ...rest].join(".");
}

/** Whether the person has put something other than the default here. */
export function isChanged(input: Input, value: Raw | undefined): boolean {
  return value !== undefined && value !== null && value !== "" && value !== input.default;
}

/**
 * Splits the applying inputs into those that stand open and those that may fold away.
 *
 * Rows take the space of two fields; an even number stands open, since they stand two by two.
 */
export function folded(inputs: Input[]): [open: Input[], rest: Input[]] {
  const isRows = (input: Input): boolean => input.kind === "rows";
  const most = OPEN_FIELDS - 2 * inputs.filter(isRows).length;
  const fields = inputs.filter((input) => !isRows(input));
  const rest = fields.filter((input, i) => i >= most && !input.required);
  return rest.length < 2 ? [inputs, []] : [inputs.filter((input) => !rest.includes(input)), rest];
}

/** Returns every typed field that applies, rows' fields included, in the order of the screen. */
export function typedPaths(inputs: Input[], given: RawInputs): string[] {
  return applying(inputs, given).flatMap((input) => {
    if (input.kind === "rows") {
      return rowsAt(given, input.name).flatMap((row, i) =>
        typedPaths(input.columns ?? [], row).map((column) => `${input.name}.${i}.${column}`),
      );
    }
    return TYPED.includes(input.kind) ? [input.name] : [];
  });
}

/** Returns the declared input a path leads to. */
export function inputAt(declaration: Declaration, path: string): Input | undefined {
  const [name, index, column] = path.split(".");
  const input = declaration.inputs.find((each) => each.name === name);
  return index === undefined ? input : input?.columns?.find((each) => each.name === column);
}

/** Returns what a field is called inside a sentence: "recess width", "wall 2 length". */
export function nameOf(declaration: Declaration, path: string): string {
  const [name = "", index, column] = path.split(".");
  const input = declaration.inputs.find((each) => each.name === name);
  if (!input) return "";
  if (index === undefined) return inSentence(input.label);
  const field = input.columns?.find((each) => each.name === column);
  const row = `${input.row ?? "row"} ${Number(index) + 1}`;
  return field ? `${row} ${inSentence(field.label)}` : row;
}

/** Returns a value as the card shows it: typed text, a choice's label, yes or no. */
export function shownValue(input: Input, value: Raw): string {
  if (input.kind === "flag") return (value ?? input.default) === true ? "yes" : "no";
  if (input.kind === "choice") {
    const chosen = chosenValue(input, value);
    return input.choices?.find((choice) => choice.value === chosen)?.label ?? "";
  }
  return value === null || typeof value === "object" ? "" : String(value);
}

/** Returns the DOM id of the control at `path`. */
export function idOf(path: string): string {
  return `field-${path.replaceAll(".", "-")}`;
}
