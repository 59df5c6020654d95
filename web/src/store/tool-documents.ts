/** What is kept for one open tool: its form, and the person's lists that it asks for. */
import type { Declaration, Raw, RawInputs, RawRow, SetAside, Units } from "../contract/contract";
import { isUnits } from "./check";
import { openDocument } from "./documents";
import type { Path } from "./edits";
import type { Collision, DocumentChange, DocumentHandle } from "./handle";
import { asideIn, readForm, readRows, writtenForm, type KeptForm } from "./form-body";
import { heldUnder, isSame, type Json, type JsonObject } from "./json";
import { listsIn, ownInputs } from "./lists";
import type { State } from "./tables";

/** What a form hears when what is kept of it is no longer what its page put there. */
export interface FormChange {
  /** Whether it says something else now, not only that undo or redo came or went. */
  isOther: boolean;
  collision: FormCollision | null;
}

export interface FormCollision extends Collision {
  /** Paths of the fields (`walls.1.length`); none where it is the form as a whole. */
  fields: string[];
}

/** What a tool's form is kept in: a document of its own, or a question of a job. */
export type FormDocument = Pick<
  DocumentHandle,
  "body" | "bodySchema" | "revision" | "canUndo" | "canRedo" | "change" | "undo" | "redo" | "onChange" | "close"
>;

export class ToolDocuments {
  /** What a list was when it was read or written last: only one that the person changed is written. */
  private readonly known = new Map<string, Raw>();

  private constructor(
    private readonly declaration: Declaration,
    readonly form: FormDocument,
    /** The person's lists, by the names of their inputs. */
    readonly lists: ReadonlyMap<string, DocumentHandle>,
  ) {}

  /**
   * Opens a tool's form and the lists among its inputs; blank ones are to be typed in `units`.
   *
   * @param own what the form is kept in where that is no document of its own
   */
  static async open(declaration: Declaration, units: Units, own?: FormDocument): Promise<ToolDocuments> {
    const { slug, version, inputs } = declaration;
    const blank = (body: JsonObject): Partial<State> => ({ units, body: { ...body, typed_in: units } });
    const named = inputs.filter(({ kept }) => kept);
    const [form, ...lists] = await Promise.all([
      own ?? openDocument("form", slug, { ...blank({ inputs: {} }), schema: version }),
      ...named.map(({ kept = "" }) => openDocument("list", kept, blank({ rows: [] }))),
    ]);
    return new ToolDocuments(declaration, form, new Map(named.map(({ name }, at) => [name, lists[at]!])));
  }

  /** Returns the form as it is kept, lists included; an empty one is to be typed in `units`. */
  kept(units: Units): KeptForm {
    const { inputs: asked, version } = this.declaration;
    const knows = (name: string): boolean => asked.some((input) => input.name === name);
    const kept = readForm(this.form.body, this.form.bodySchema, knows);
    const isBlank = Object.keys(kept.inputs).length === 0;
    const form = isBlank ? { ...kept, typedIn: units, version } : kept;
    return { ...form, inputs: { ...form.inputs, ...this.keptLists(form.typedIn) } };
  }

  /** Returns the lists as they are kept, for a form typed in `units`. */
  keptLists(units: Units): RawInputs {
    const lists = [...this.lists].map(([name, { body }]) => {
      const typedIn = heldUnder(body, "typed_in");
      const from = isUnits(typedIn) ? typedIn : "in";
      return listsIn(this.declaration.inputs, rowsUnder(name, body), from, units);
    });
    const inputs = Object.assign({}, ...lists) as RawInputs;
    for (const name of this.lists.keys()) this.known.set(name, inputs[name] ?? []);
    return inputs;
  }

  /** Keeps the form as the person has it now, and each list that was changed. */
  edited(form: KeptForm): void {
    const { inputs, typedIn } = form;
    const own = {
      ...form,
      inputs: ownInputs(this.declaration.inputs, inputs),
      aside: [...form.aside, ...this.forgotten(form)],
    };
    const schema = form.version || this.declaration.version;
    this.form.change(writtenForm(this.form.body, own), typedIn, "", schema);
    for (const [name, list] of this.lists) {
      const rows = inputs[name] ?? [];
      if (isSame(rows as Json, this.known.get(name) as Json)) continue;
      this.known.set(name, rows);
      list.change({ ...list.body, rows: rows as Json, typed_in: typedIn }, typedIn);
    }
  }

  /**
   * What is kept, not understood, and no part of a form that came from an address or an earlier
   * answer. Under older rules names have other meanings: such a form gives way whole.
   */
  private forgotten({ inputs, aside }: KeptForm): SetAside[] {
    const { version, inputs: asked } = this.declaration;
    const { body, bodySchema } = this.form;
    const names = asked.map(({ name }) => name);
    const known = [...aside.map(({ path }) => path), ...names, ...Object.keys(inputs)];
    const kept = bodySchema === version ? Object.entries(readForm(body, version, isNone).inputs) : [];
    const unknown = [...asideIn(body), ...kept.map(([path, value]) => ({ path, value }))];
    return unknown.filter(({ path }) => !known.includes(path));
  }

  /** Calls `listener` when form or list is changed other than by `edited`; returns how to stop that. */
  onChange(listener: (change: FormChange) => void): () => void {
    const stops = [this.form.onChange((change) => listener(inForm(change, fieldOfForm)))];
    for (const [name, list] of this.lists) {
      stops.push(list.onChange((change) => listener(inForm(change, (path) => fieldOfList(name, path)))));
    }
    return () => stops.forEach((stop) => stop());
  }

  close(): void {
    for (const document of [this.form, ...this.lists.values()]) document.close();
  }
}

/** `["body", "inputs", "walls", 1, "length"]` is the field `walls.1.length`. */
function fieldOfForm([, part, ...field]: Path): string {
  return part === "inputs" ? field.join(".") : "";
}

function fieldOfList(name: string, [, part, ...field]: Path): string {
  return part === "rows" ? [name, ...field].join(".") : "";
}

function inForm({ paths, collision }: DocumentChange, fieldAt: (path: Path) => string): FormChange {
  const isOther = paths.length > 0;
  if (!collision) return { isOther, collision };
  const fields = [...new Set(collision.paths.map(fieldAt))].filter(Boolean);
  return { isOther, collision: { ...collision, fields } };
}

const isNone = (): boolean => false;

function rowsUnder(name: string, body: JsonObject): RawInputs {
  const rows: RawRow[] = readRows(body);
  return rows.length > 0 ? { [name]: rows } : {};
}
