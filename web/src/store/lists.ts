/**
 * Lists of the person's own, such as what the tape said at the yard.
 *
 * A list is kept once, under the name its input declares, and given to every tool that asks for it.
 * It is no part of a tool's form, of its address or of its earlier answers.
 */
import { loadForm } from "./store";
import type { Core } from "../engine/core";
import type { Input, Raw, RawInputs, Scale } from "../contract";
import { storageFault, unpacked } from "./autosave";
import { respelled } from "../form/respell";

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

/** Returns the lists that a tool asks for, in the units in force; one that can't be read is said. */
export async function loadLists(asked: Input[], to: Scale, core: Core): Promise<RawInputs> {
  const lists: RawInputs = {};
  for (const input of asked) {
    if (!input.kept) continue;
    const saved = await loadForm(keptUnder(input.kept)).catch(storageFault);
    const { inputs, units } = unpacked(saved ?? {});
    const rows = inputs[ROWS];
    const named: RawInputs = rows ? { [input.name]: rows } : {};
    Object.assign(lists, await respelled([input], named, { ...to, units }, to.units, core));
    known.set(input.kept, lists[input.name]);
  }
  return lists;
}

/** Returns the lists that the person changed, each with the name to keep it under. */
export function changedLists(asked: Input[], inputs: RawInputs): [name: string, kept: RawInputs][] {
  const changed = asked.filter((input) => input.kept && inputs[input.name] !== known.get(input.kept));
  return changed.map(({ name, kept = "" }) => {
    known.set(kept, inputs[name]);
    return [keptUnder(kept), { [ROWS]: inputs[name] ?? [] }];
  });
}
