/** What stands in a document is called, as the screens that it is typed on call it. */
import type { Declaration, Input } from "../contract/contract";

/** What a value of a document is called, and what lies in it. */
export interface Named {
  /** As its field is labeled. */
  label?: string;
  /** The part of the document that it is in, where its label alone would not tell. */
  within?: string;
  names?: { [name: string]: Named };
  /** What lies under a name that is not among these. */
  each?: Named;
  /** In which list of the job stands what its value is the id of. */
  refers?: "stock" | "items";
  /** A row of the list, and what it is called where it has no title of its own. */
  one?: Named;
  row?: string;
  /** How its choices read. */
  choices?: { [value: string]: string };
  /** Where bare numbers in it are in the form's units; or the sign that they are read with. */
  unit?: "length" | "$" | "%" | "°";
}

const called = (label: string): Named => ({ label });
const length = (label: string): Named => ({ label, unit: "length" });
const money = (label: string): Named => ({ label, unit: "$" });
const share = (label: string): Named => ({ label, unit: "%" });
const rows = (label: string, row: string, names: { [name: string]: Named }): Named => ({ label, row, one: { names } });

const UNITS = { label: "Units", choices: { in: "inches", mm: "millimeters" } };
const SOLD = {
  label: "Sold as",
  choices: { board: "boards", stick: "sticks", sheet: "sheets", each: "pieces", volume: "cans" },
};
const SIZES = { length: length("Length"), width: length("Width") };
const HAND = { by: called("Signed by"), at: called("On"), strokes: called("Signature") };
const SIGNED = { ...HAND, shop: { within: "The shop signs", label: "The shop signs", names: HAND } };
const RATES: Named = {
  label: "Rates",
  names: {
    rate: money("What an hour costs you, $"),
    overhead_percent: share("Overhead, % of the direct cost"),
    contingency_percent: share("Contingency, % of direct cost and overhead"),
    profit_of: { label: "Profit as", choices: { price: "margin: % of the price", cost: "markup: % of the cost" } },
    profit_percent: share("Profit"),
    round_up: { label: "Price rounded", choices: { cent: "to the cent", one: "up to $1", five: "up to $5", ten: "up to $10" } },
  },
};
const OPERATIONS: { [id: string]: string } = {
  leaf: "Make a leaf", panel: "Raise a panel", hinge: "Let in a hinge", hang: "Hang a leaf",
  lock: "Bore a lock and its strike", pull: "Bore for pulls on a leaf", jamb: "Set a jamb", casing: "Case an opening",
  trim: "Fit a piece of trim", frame: "Fit a piece of a wall frame", scribe: "Scribe a piece", cut: "Cut a piece to length",
};
const MINUTES = rows("Minutes", "Work", { minutes: called("Minutes each") });

const QUOTE: Named = {
  label: "Quote",
  within: "Quote",
  names: {
    rates: RATES,
    minutes: MINUTES,
    lines: rows("Lines of its own", "A line of the quote", {
      title: called("What it is for"), material: money("Cost beside the hours, $"), hours: called("Hours"),
    }),
    price_by: { label: "Price", choices: { item: "item by item", sum: "in one sum" } },
    tax_on: {
      label: "Sales tax",
      choices: { nothing: "none", material: "on the material", price: "on the price", included: "the price holds it" },
    },
    tax_percent: share("Tax, %"),
    stages: rows("Stages", "Stage", { name: called("Paid when"), percent: share("Of the total, %") }),
    date: called("Date"),
    valid_until: called("Good until"),
    begins: called("Work begins"),
    ends: called("Work is done"),
    work: called("What is done, of what material"),
    exclusions: called("Not in it"),
    terms: called("Terms"),
    agreed: {
      label: "What both agreed to",
      names: {
        price: money("Price"), tax: money("Tax"),
        lines: rows("Lines", "Line", { title: called("What it is for"), count: called("How many"), price: money("Price"), line: called("Line") }),
        ...SIGNED,
      },
    },
    extras: rows("Change orders", "A change order", {
      title: called("What changes"), words: called("In more words"), price: money("By how much, $"),
      days: called("Days later"), state: called("It is"), ...SIGNED,
    }),
    payments: rows("Payments", "A payment", { words: called("For what, how"), amount: money("Amount, $"), at: called("On") }),
    punch: rows("Punch list", "To put right", { words: called("To put right"), state: called("It is"), at: called("On") }),
    signed: { label: "Sign-off", within: "Sign-off", names: { ...SIGNED, came_up: called("Something came up on") } },
  },
};

const STOCK: { [name: string]: Named } = {
  title: called("Name of the stock"),
  sold: SOLD,
  thickness: length("Thickness"),
  width: length("Width"),
  lengths: rows("Lengths sold", "Length sold", { length: length("Length"), price: money("Price, $") }),
  sheets: rows("Sheets sold", "Sheet sold", { ...SIZES, price: money("Price, $") }),
  on_hand: rows("On hand, used first", "On hand", { ...SIZES, count: called("How many"), where: called("Where it stands") }),
  made_of: called("Made of"),
  species: called("Species"),
  price: money("Price, $"),
  waste: share("Waste, %"),
  kerf: length("Kerf"),
  trim: length("Trim"),
  extra_length: length("Rough length over finished"),
  extra_width: length("Rough width over finished"),
};

const ENTRY: { [name: string]: Named } = {
  title: called("Its own name on this job"),
  letter: called("Its letter"),
  tool: called("Question"),
  version: called("Version of the question"),
  typed_in: UNITS,
  inputs: called("Numbers"),
  ties: called("Numbers taken from elsewhere"),
  stock: { label: "Cut from", each: { label: "Cut from", refers: "stock" } },
  note: called("Note"),
};

const ITEM: { [name: string]: Named } = {
  title: called("Name of the item"),
  count: called("How many alike"),
  entries: rows("Questions", "Question", ENTRY),
  note: called("Note"),
  photos: rows("Photos", "Photo", { words: called("Words to the photo") }),
  hours: called("Hours, all of it"),
  actual_hours: called("Hours worked, when it is done"),
  pattern: called("Began as"),
  pattern_version: called("Began as"),
};

const JOB: Named = {
  names: {
    title: called("Name of the job"),
    customer: {
      label: "Customer",
      within: "Job and customer",
      names: { name: called("Customer"), address: called("Address"), phone: called("Phone"), note: called("Note") },
    },
    units: UNITS,
    step: called("Shown to"),
    items: rows("Items", "Item", ITEM),
    stock: rows("Stock", "Stock", STOCK),
    things: rows("Bought by count", "Bought by count", {
      title: called("What"), count: called("How many"), price: money("Price each, $"), item: { label: "For the item", refers: "items" },
      from: called("How many, from"), times: called("How many, times"),
    }),
    finish: { label: "Finish plans", names: { starts: rows("Finish plans", "Finish plan", { begins: called("Begins on") }) } },
    quote: QUOTE,
  },
};

const OFFCUTS: Named = {
  names: {
    rows: rows("Offcuts in the shop", "Offcut", {
      title: called("Stock"), sold: SOLD, ...SIZES, count: called("How many"), where: called("Where it stands"),
      job: called("Left by the job"),
    }),
    typed_in: UNITS,
  },
};

const SHOP: Named = {
  names: {
    name: called("Name of the shop"), address: called("Address"), phone: called("Phone"), license: called("License number"),
    logo: called("Logo"), rates: { ...RATES, within: "Rates" }, minutes: { ...MINUTES, within: "The shop's minutes" },
  },
};

const PAPER: Named = {
  names: {
    paper: { label: "Sheet of labels", choices: { letter: "Letter sheet", a4: "A4 sheet" } },
    width: called("Label width"), height: called("Label height"), across: called("Labels across"),
    down: called("Labels down"), left: called("Left of the first"), top: called("Above the first"),
    gap_across: called("Gap across"), gap_down: called("Gap down"), first: called("Begin at label"),
    only: { label: "Only pieces not cut yet", choices: { left: "yes", all: "no" } },
    outlines: called("Outlines, for a trial on plain paper"),
  },
};

const DOCUMENTS: { [name: string]: Named } = {
  job: JOB, "list.offcuts": OFFCUTS, "settings.shop": SHOP, "settings.labels": PAPER,
};

/** Returns what a document's values are called; `list` is the input that a list of a tool's is kept for. */
export function namedIn(kind: string, id: string, list?: Input): Named {
  if (list) return { names: { rows: namedInput(list), typed_in: UNITS } };
  return DOCUMENTS[kind] ?? DOCUMENTS[`${kind}.${id}`] ?? {};
}

/** Returns what a question of a job says, by its tool's declaration. */
export function namedEntry({ inputs }: Declaration): Named {
  const names = Object.fromEntries(inputs.map((input) => [input.name, namedInput(input)]));
  const from = inputs.map(({ name, label }) => [name, called(`${label}, where it is from`)]);
  return {
    names: { ...ENTRY, inputs: { ...ENTRY["inputs"], names }, ties: { ...ENTRY["ties"], names: Object.fromEntries(from) } },
  };
}

function namedInput({ label, kind, unit, row, columns, choices }: Input): Named {
  const read = kind === "length" ? "length" : kind === "angle" ? "°" : unit === "$" ? "$" : undefined;
  return {
    label,
    ...(read && { unit: read }),
    ...(choices && { choices: Object.fromEntries(choices.map(({ value, label: words }) => [value, words])) }),
    ...(columns && { row: row || "row", one: { names: Object.fromEntries(columns.map((each) => [each.name, namedInput(each)])) } }),
  };
}

/** Returns what the shop's minutes are for, by an operation's id; empty for one not known here. */
export function operationNamed(id: string): string {
  return OPERATIONS[id] ?? "";
}
