/**
 * Lists of the person's own, such as what the tape said at the yard.
 *
 * A list is kept once, under the name its input declares, and given to every tool that asks for it.
 * It is no part of a tool's form, of its address or of its earlier answers.
 */
import { loadForm } from "./store";
import type { Input, Raw, RawInputs, RawRow, Units } from "../contract/contract";
import { rowsAt } from "../form/paths";
import { storageFault, unpacked } from "./autosave";

const ROWS = "rows";
/** The rows as last read or written: only a list that the person changed is written. */
const known = new Map<string, Raw | undefined>();

function keptUnder(list: string): string {
  return `list ${list}`;
}

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

/** Returns the lists that a tool asks for, as a form of `typedIn` holds them; one that can't be read is said. */
export async function loadLists(asked: Input[], typedIn: Units): Promise<RawInputs> {
  const lists: RawInputs = {};
  for (const input of asked) {
    if (!input.kept) continue;
    const saved = await loadForm(keptUnder(input.kept)).catch(storageFault);
    const { inputs, units } = unpacked(saved ?? {});
    const rows = inputs[ROWS];
    if (rows) Object.assign(lists, listsIn([input], { [input.name]: rows }, units, typedIn));
    known.set(input.kept, lists[input.name]);
  }
  return lists;
}

/** Returns the lists among `inputs`, typed in `from`, so that they mean the same in a form of `to`. */
export function listsIn(asked: Input[], inputs: RawInputs, from: Units, to: Units): RawInputs {
  const lists = listInputs(asked, inputs);
  if (from === to) return lists;
  const named = (input: Input): [string, Raw] => [
    input.name,
    rowsAt(lists, input.name).map((row) => rowIn(input.columns ?? [], row, from)),
  ];
  return Object.fromEntries(asked.filter(({ name }) => name in lists).map(named));
}

/** A length's text carries its units where they are not its form's. */
function rowIn(columns: Input[], row: RawRow, units: Units): RawRow {
  const lengths = columns.filter(({ kind }) => kind === "length").map(({ name }) => name);
  const carried = (name: string, value: Raw): Raw =>
    lengths.includes(name) && typeof value === "string" ? { text: value, units } : value;
  return Object.fromEntries(Object.entries(row).map(([name, value]) => [name, carried(name, value)]));
}

/** Returns the lists that the person changed, each with the name to keep it under. */
export function changedLists(asked: Input[], inputs: RawInputs): [name: string, kept: RawInputs][] {
  const changed = asked.filter((input) => input.kept && inputs[input.name] !== known.get(input.kept));
  return changed.map(({ name, kept = "" }) => {
    known.set(kept, inputs[name]);
    return [keptUnder(kept), { [ROWS]: inputs[name] ?? [] }];
  });
}
