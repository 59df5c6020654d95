/** The JSON that the trade core speaks, as types. DEVELOPERS.md describes each in words. */

export type Units = "in" | "mm";
export type Step = 8 | 16 | 32 | 64 | 1000;
export type InputKind =
  "length" | "angle" | "number" | "count" | "choice" | "flag" | "text" | "rows";
export type RawRow = { [name: string]: Raw };
export type Raw = string | number | boolean | null | RawRow[];
export type RawInputs = { [name: string]: Raw };

export interface OnlyWhen {
  input: string;
  is: Raw[];
}

export interface Input {
  name: string;
  label: string;
  kind: InputKind;
  required: boolean;
  default: Raw;
  default_text: string;
  help: string;
  unit: string;
  only_when: OnlyWhen | null;
  choices?: { value: string; label: string; only_when: OnlyWhen | null }[];
  offers?: { value: string; only_when: OnlyWhen | null }[];
  /** Degrees between which an angle can be dragged; null where it can't. */
  slide?: { from: number; to: number } | null;
  columns?: Input[];
  row?: string;
  /** Name of the list that the phone keeps for all tools that ask for it; empty for none. */
  kept?: string;
  min_rows?: number;
  max_rows?: number;
}

/** What the front end carries of a declaration; sources stay with the core. */
export interface Declaration {
  slug: string;
  place: string;
  title: string;
  question: string;
  /** Words of the trade to find it by, beyond those it shows. */
  finds: string[];
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

/** `answer` is null where the last one still stands after more looking. */
export type SearchReply =
  | { ok: true; answer: Answer | null; progress: number; search: number | null }
  | { ok: false; errors: FieldError[] };
/** `search` is what to go on with where a better answer may be found. */
export type AnswerReply =
  { ok: true; answer: Answer; search: number | null } | { ok: false; errors: FieldError[] };
export type ReadReply =
  { ok: true; value: number; text: string; other: string } | { ok: false; errors: FieldError[] };

export interface CatalogTool {
  declaration: Declaration;
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
