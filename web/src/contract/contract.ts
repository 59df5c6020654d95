/**
 * The JSON that the trade core speaks, as types.
 *
 * What the core says is generated from the API's own schemas. What a person typed, and what the
 * build makes of it all, is written here.
 */
import type { components } from "./generated";

type Schemas = components["schemas"];

export type Answer = Schemas["Answer"];
export type Figure = Schemas["Figure"];
export type Piece = Schemas["Piece"];
export type Mark = Schemas["Mark"];
export type Table = Schemas["Table"];
export type Keep = Schemas["Keep"];
export type Drawing = Schemas["Drawing"];
export type Shape = Drawing["shapes"][number];
export type Role = Shape["role"];
export type Point = [number, number];

export type FieldError = Schemas["FieldError"];
export type Refused = Schemas["Refused"] & { ok: false };
export type InchSplit = Schemas["InchSplit"];
export type Field = Schemas["Field"];
export type RowFields = Schemas["RowFields"];
export type SetAside = Schemas["SetAside"];
export type Option = Schemas["Offered"];
export type FormSaid = Omit<Schemas["FormSaid"], "ok" | "inputs"> & { inputs?: RawInputs };
export type FormReply = FormSaid & Omit<Schemas["FormReply"], keyof FormSaid> & { ok: true };
/** `answer` is null where the last one still stands after more looking. */
export type SearchReply = (Schemas["SearchReply"] & { ok: true }) | Refused;
export type JobReply = Schemas["Job"];
export type JobEntryReply = Schemas["JobEntry"];
export type CarriedNumber = Schemas["CarriedNumber"];
/** `work` is what to go on with; until it is null the job's reply may lack its parts. */
export type JobSaid = { ok: true; job: Partial<JobReply>; work: number | null } | Refused;
/** Each size's text as it reads, or a message. */
export type SizesSaid = { ok: true; sizes: { [name: string]: { text?: string; message?: string } } } | Refused;
/** What is laid into a job, under an id of its own. */
export type Laying =
  | { do: "begin item"; id: string; pattern: string; title?: string }
  | { do: "copy item"; id: string; item: string; title?: string }
  | ({ do: "add entry"; id: string; item: string; tool: string; after?: string } & LaidEntry);
export interface LaidEntry {
  inputs?: RawInputs;
  ties?: { [input: string]: { entry?: string; pieces?: string; figure?: string; input?: string; offset?: string } };
  typed_in?: Units;
  version?: number;
  title?: string;
}
/** The whole document anew, and the ids of what was laid into it. */
export type Laid = { ok: true; document: object; item: string; entries: string[] };
/** Where the labels of a sheet lie, in inches from its top left corner. */
export interface LabelGrid {
  width: number;
  height: number;
  paper: [width: number, height: number];
  spots: [left: number, top: number][];
}
export type LabelSaid = { ok: true; grid: LabelGrid };
/** `search` is what to go on with where a better answer may be found. */
export type AnswerReply = { ok: true; answer: Answer; search: number | null } | Refused;

export type Units = Answer["units"];
/** Parts of an inch that lengths are shown to; the core refuses others. */
export type Step = number;
export type Ticked = Pick<Figure, "tick" | "per">;

/** How lengths are read and shown. */
export interface Scale {
  units: Units;
  step: Step;
}

/** A length with the units that its bare numbers were typed in, where those are not its form's. */
export type TypedIn = { text: string; units: Units };
export type RawRow = { [name: string]: Raw };
export type Raw = string | number | boolean | null | TypedIn | RawRow[];
export type RawInputs = { [name: string]: Raw };

type AskedInput = Schemas["AskedInput"];

/** An input as the front end carries it: conditions and defaults stay with the core. */
export type Input = Omit<
  AskedInput, "only_when" | "default" | "default_text" | "choices" | "offers" | "columns"
> & { choices?: Option[]; columns?: Input[] };
export type InputKind = Input["kind"];

export type GivenFigure = Schemas["GivenFigure"];
export type Declared = { ok: true; tool: { gives: GivenFigure[] } } | Refused;

/** What the front end carries of a declaration; sources and what it gives stay with the core. */
export type Declaration = Omit<Schemas["Declaration"], "inputs" | "gives" | "sources" | "example"> & {
  inputs: Input[];
  example: RawInputs;
};

/** What lists show of a tool. */
export type Listing = Pick<Declaration, "slug" | "place" | "title" | "question" | "finds">;

/** What a tool's own screen starts with. */
export interface CatalogTool {
  declaration: Declaration;
  /** The empty form as the core says it, so that the first screen waits for no worker. */
  form: FormSaid;
}


/** A kind of item that a job can begin with. */
export type Pattern = Omit<Schemas["Pattern"], "questions"> & { questions: PatternQuestion[] };
export type PatternQuestion = Omit<Schemas["PatternQuestion"], "presets"> & { presets: RawInputs };

/** How lengths can be shown in one system of units. */
export type StepChoices = Schemas["StepChoices"];

export interface Catalog {
  scales: StepChoices[];
  places: { place: string; title: string; tools: Listing[] }[];
}
