/**
 * Lists of the person's own, such as what the tape said at the yard.
 *
 * A list is kept once, under the name its input declares, and given to every tool that asks for it.
 * It is no part of a tool's form, of its address or of its earlier answers.
 */
import type { Input, Raw, RawInputs, RawRow, Units } from "../contract/contract";
import { hasTwoUnits } from "../form/paths";

/** Returns what belongs to the form itself. */
export function ownInputs(asked: Input[], inputs: RawInputs): RawInputs {
  const lists = asked.filter((input) => input.kept).map((input) => input.name);
  return Object.fromEntries(Object.entries(inputs).filter(([name]) => !lists.includes(name)));
}

/** Returns the lists among the inputs. */
export function listInputs(asked: Input[], inputs: RawInputs): RawInputs {
  const own = ownInputs(asked, inputs);
  return Object.fromEntries(Object.entries(inputs).filter(([name]) => !(name in own)));
}

/** Returns the lists among `inputs`, typed in `from`, so that they mean the same in a form of `to`. */
export function listsIn(asked: Input[], inputs: RawInputs, from: Units, to: Units): RawInputs {
  const lists = listInputs(asked, inputs);
  if (from === to) return lists;
  const named = ({ name, columns = [] }: Input): [string, Raw] => {
    const rows = lists[name];
    return [name, Array.isArray(rows) ? rows.map((row) => rowIn(columns, row, from)) : []];
  };
  return Object.fromEntries(asked.filter(({ name }) => name in lists).map(named));
}

/** A text with two systems of units carries those it was typed in where they are not its form's. */
function rowIn(columns: Input[], row: RawRow, units: Units): RawRow {
  const lengths = columns.filter(hasTwoUnits).map(({ name }) => name);
  const carried = (name: string, value: Raw): Raw =>
    lengths.includes(name) && typeof value === "string" ? { text: value, units } : value;
  return Object.fromEntries(Object.entries(row).map(([name, value]) => [name, carried(name, value)]));
}
