/** What a job keeps of its quote, as types; declared in the core (`trade/job/quote_shape.py`). */
import type { Typed } from "../parts/typed-field";

/** A signature's strokes: whole points of the area signed on. */
export type Point = [x: number, y: number];
export type Stroke = Point[];

/** The shop's rates: dollars an hour, percents. */
export interface Rates {
  rate?: Typed;
  overhead_percent?: Typed;
  contingency_percent?: Typed;
  profit_of?: "price" | "cost";
  profit_percent?: Typed;
  round_up?: "cent" | "one" | "five" | "ten";
}

/** Minutes of one of an operation, by the operation's name. */
export interface Minutes {
  id: string;
  minutes?: Typed;
}

/** A line of the quote's own: delivery, measuring. */
export interface OwnLine {
  id: string;
  title?: string;
  material?: Typed;
  hours?: Typed;
}

export interface QuoteStage {
  id: string;
  name?: string;
  percent?: Typed;
}

/** A change order. */
export interface Extra extends Signed {
  id: string;
  title?: string;
  words?: string;
  price?: Typed;
  days?: Typed;
  state?: "offered" | "agreed" | "declined";
}

/** Who signed when: by name, by hand, or both. */
export interface Hand {
  at?: string;
  by?: string;
  strokes?: Stroke[];
}

/** The customer's signature, and the shop's beside it. */
export interface Signed extends Hand {
  shop?: Hand;
}

/** What both signed, in dollars: it stands, whatever hours, stock and rates do after that. */
export interface Agreed extends Signed {
  price?: number | null;
  /** What comes on top of the price. */
  tax?: number | null;
  lines?: { line: string; title?: string; count?: number; price: number }[];
}

/** Of the finished work. */
export interface SignedOff extends Signed {
  /** When something came up on the punch list after it: it is to be signed again. */
  came_up?: string;
}

export interface Payment {
  id: string;
  words?: string;
  amount?: Typed;
  at?: string;
}

/** A line of the punch list. */
export interface Punch {
  id: string;
  words?: string;
  state?: "open" | "done";
  at?: string;
}

export interface Quote {
  rates?: Rates;
  minutes?: Minutes[];
  lines?: OwnLine[];
  price_by?: "item" | "sum";
  tax_on?: "nothing" | "material" | "price" | "included";
  tax_percent?: Typed;
  stages?: QuoteStage[];
  date?: string;
  valid_until?: string;
  begins?: string;
  ends?: string;
  work?: string;
  exclusions?: string;
  terms?: string;
  agreed?: Agreed;
  extras?: Extra[];
  payments?: Payment[];
  punch?: Punch[];
  signed?: SignedOff;
}

/** The lists of a quote, whose rows each have an id. */
export interface QuoteLists {
  minutes: Minutes;
  lines: OwnLine;
  stages: QuoteStage;
  extras: Extra;
  payments: Payment;
  punch: Punch;
}
