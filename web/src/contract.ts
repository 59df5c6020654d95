/** The JSON that the trade core speaks, as types. DEVELOPERS.md describes each in words. */

export type Units = "in" | "mm";
export type Step = 8 | 16 | 32 | 64 | 1000;
export type InputKind =
  "length" | "angle" | "number" | "count" | "choice" | "flag" | "text" | "rows";
export type RawRow = { [name: string]: Raw };
/** A length with the units that its bare numbers were typed in, where those are not its form's. */
export type TypedIn = { text: string; units: Units };
export type Raw = string | number | boolean | null | TypedIn | RawRow[];
export type RawInputs = { [name: string]: Raw };

export interface Option {
  value: string;
  label: string;
}

export interface Input {
  name: string;
  label: string;
  kind: InputKind;
  required: boolean;
  help: string;
  unit: string;
  quantity: string;
  choices?: Option[];
  /** Degrees between which an angle can be dragged; null where it can't. */
  slide?: { from: number; to: number } | null;
  columns?: Input[];
  row?: string;
  /** Name of the list that the phone keeps for all tools that ask for it; empty for none. */
  kept?: string;
  min_rows?: number;
  max_rows?: number;
}

/** What the front end carries of a declaration; conditions, defaults and sources stay with the core. */
export interface Declaration {
  slug: string;
  place: string;
  title: string;
  question: string;
  /** Words of the trade to find it by, beyond those it shows. */
  finds: string[];
  version: number;
  inputs: Input[];
  cautions: string[];
  example: RawInputs;
}

/** A length lands on tick `tick` of a rule with `per` ticks to the inch (or millimeter). */
export interface Ticked {
  tick: number | null;
  per: number | null;
}

export interface Figure extends Ticked {
  name: string;
  label: string;
  short: string;
  kind: "length" | "angle" | "number" | "count" | "money" | "text";
  value: number | string | null;
  text: string;
  also: string;
  lead: boolean;
}

export interface End {
  joint: string;
  saw: number;
  bevel: number;
  note: string;
}

export interface Piece extends Ticked {
  tag: string;
  name: string;
  count: number;
  thickness: number | null;
  width: number | null;
  length: number;
  short_point: number | null;
  text: string;
  short_text: string;
  /** Width and thickness where they are known. */
  section_text: string;
  ends: End[];
  ends_text: string;
  stock: string;
}

export interface Mark extends Ticked {
  tag: string;
  label: string;
  from: string;
  value: number;
  text: string;
}

export interface Table {
  name: string;
  columns: string[];
  rows: string[][];
  pick: number | null;
}

export type Point = [number, number];
export type Role =
  "stock" | "panel" | "wall" | "metal" | "cut" | "waste" | "mark" | "clearance";
export type Shape =
  | { shape: "area"; role: Role; points: Point[] }
  | { shape: "line"; role: Role; from: Point; to: Point }
  | { shape: "arc"; role: Role; center: Point; radius: number; start: number; sweep: number }
  | { shape: "circle"; role: Role; center: Point; radius: number }
  | { shape: "dimension"; role: Role; from: Point; to: Point; lane: number; text: string }
  | { shape: "tag"; role: Role; at: Point; text: string }
  | { shape: "text"; role: Role; at: Point; text: string; anchor: "start" | "middle" | "end" };

export interface Drawing {
  title: string;
  description: string;
  box: [number, number, number, number];
  shapes: Shape[];
  /** A template, worth a print at its true size. */
  full_size: boolean;
}

export interface Answer {
  tool: string;
  units: Units;
  step: Step;
  inputs: { [name: string]: unknown };
  verdict: string;
  figures: Figure[];
  pieces: Piece[];
  marks: Mark[];
  tables: Table[];
  drawing: Drawing | null;
  details: Drawing[];
  notes: string[];
  cautions: string[];
  sources: string[];
  /** 1 when the answer is final; below, how far the search for a better one has come. */
  progress: number;
}

export interface FieldError {
  field: string;
  message: string;
  missing: boolean;
}

/** One field of a form as the core reads it; keys that say nothing are left out. */
export interface Field {
  name: string;
  /** What stands in the field. */
  shown?: string;
  /** What stands there while nothing is put in: the default as it is used. */
  empty?: string;
  chosen?: string;
  /** The choices offered now, where they are not all that are declared. */
  choices?: Option[];
  /** Texts that can be tapped instead of typed. */
  offers?: string[];
  from?: "typed" | "carried" | "default";
  /** The question a carried value is from. */
  of?: string;
  /** Whether the person put something other than the default here. */
  changed?: boolean;
  /** Degrees an angle stands at, for what can be dragged. */
  at?: number;
  /** A length as it reads in the units in force and in the other ones. */
  reads?: [string, string];
  missing?: boolean;
  message?: string;
  /** Texts that may have been meant. */
  instead?: string[];
  /** The entry stops in the middle, as every entry does while it is typed. */
  unfinished?: boolean;
  pad?: InchSplit;
  rows?: RowFields[];
}

export interface RowFields {
  fields: Field[];
  missing?: boolean;
  message?: string;
}

/** Where the last inch of an entry begins and ends; `share` is the fraction it has now. */
export interface InchSplit {
  before: string;
  share: number | null;
  after: string;
}

/** What this version could not use of a kept form. */
export interface SetAside {
  path: string;
  value: unknown;
}

export interface FormSaid {
  version: number;
  fields: Field[];
  /** Messages that belong to no field. */
  stray: string[];
  /** What the answer waits for, and the field to go to. */
  waiting: { field: string; words: string } | null;
  aside: SetAside[];
  /** The inputs without what was set aside, or brought up to this version; absent where they stand. */
  inputs?: RawInputs;
}

export type FormReply = FormSaid & {
  ok: true;
  answer: Answer | null;
  progress: number;
  search: number | null;
};

export interface Refused {
  ok: false;
  errors: FieldError[];
}

/** `answer` is null where the last one still stands after more looking. */
export type SearchReply =
  { ok: true; answer: Answer | null; progress: number; search: number | null } | Refused;
/** `search` is what to go on with where a better answer may be found. */
export type AnswerReply = { ok: true; answer: Answer; search: number | null } | Refused;

export interface CatalogTool {
  declaration: Declaration;
  /** The empty form as the core says it, so that the first screen waits for no worker. */
  form: FormSaid;
  thumbnail: string;
}

export interface Catalog {
  places: { place: string; title: string; tools: CatalogTool[] }[];
}

/** How lengths are read and shown. */
export interface Scale {
  units: Units;
  step: Step;
}
