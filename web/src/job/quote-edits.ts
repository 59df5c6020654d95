/** What is done to a job's quote, each with the words that its history says it in. */
import { newId, withItem, type JobBody } from "./document";
import type { Job } from "./job";
import type { Typed } from "../parts/typed-field";
import type { Extra, Hand, Quote, QuoteLists, Rates, SignedOff, Stroke } from "./quote-body";

function withQuote(body: JobBody, edit: (quote: Quote) => Quote): JobBody {
  return { ...body, quote: edit(body.quote ?? {}) };
}

/** Returns an object without what says nothing. */
function filled<Part extends object>(part: Part): Part {
  const says = ([, value]: [string, unknown]): boolean => value !== "" && value !== undefined && value !== null;
  return Object.fromEntries(Object.entries(part).filter(says)) as Part;
}

/** Begins the quote with the shop's rates, as far as they are kept. */
export function beginQuote(job: Job, rates: Rates, minutes: QuoteLists["minutes"][]): void {
  job.change((body) => withQuote(body, (quote) => ({ rates, minutes, ...quote })), "Quote begun");
}

export function changeQuote(job: Job, part: Partial<Quote>, words = "Quote changed"): void {
  job.change((body) => withQuote(body, (quote) => filled({ ...quote, ...part })), words);
}

export function changeRates(job: Job, part: Rates): void {
  const edit = (quote: Quote): Quote => ({ ...quote, rates: filled({ ...quote.rates, ...part }) });
  job.change((body) => withQuote(body, edit), "Rates changed");
}

/** Says how many hours an item takes, or took; null leaves it to what is counted. */
export function setHours(job: Job, item: string, name: "hours" | "actual_hours", hours: Typed): void {
  job.change((body) => withItem(body, item, (each) => filledItem({ ...each, [name]: hours }, name)), "Hours changed");
}

function filledItem<Each extends object>(item: Each, name: string): Each {
  const kept = Object.entries(item).filter(([own, value]) => own !== name || value !== null);
  return Object.fromEntries(kept) as Each;
}

type Lists = keyof QuoteLists;

/** Adds a row to one of the quote's lists and returns its id. */
export function addRow<Name extends Lists>(job: Job, list: Name, row: Omit<QuoteLists[Name], "id">): string {
  const id = newId();
  const edit = (quote: Quote): Quote => ({ ...quote, [list]: [...(quote[list] ?? []), { ...row, id }] });
  job.change((body) => withQuote(body, edit), "Line added");
  return id;
}

function withRow<Name extends Lists>(quote: Quote, list: Name, id: string, edit: (row: QuoteLists[Name]) => QuoteLists[Name]): Quote {
  const rows = (quote[list] ?? []) as QuoteLists[Name][];
  const isThere = rows.some((row) => row.id === id);
  const all = isThere ? rows : [...rows, { id } as QuoteLists[Name]];
  return { ...quote, [list]: all.map((row) => (row.id === id ? filled(edit(row)) : row)) };
}

/** Changes a row of one of the quote's lists; one that isn't there yet is added. */
export function changeRow<Name extends Lists>(job: Job, list: Name, id: string, part: Partial<QuoteLists[Name]>): void {
  const edit = (quote: Quote): Quote => withRow(quote, list, id, (row) => ({ ...row, ...part }));
  job.change((body) => withQuote(body, edit), "Line changed");
}

/** Returns what was signed with a signature under it; without strokes with none. */
export function signedWith<Part extends Hand>(part: Part, strokes: Stroke[]): Part {
  const { strokes: _, ...rest } = part;
  return (strokes.length > 0 ? { ...rest, strokes } : rest) as Part;
}

/** Signs a change order; one that was only offered is agreed by that. */
export function signOrder(job: Job, id: string, strokes: Stroke[]): void {
  const sign = (row: Extra): Extra => {
    const isAgreed = strokes.length > 0 && row.state !== "declined";
    return { ...signedWith(row, strokes), ...(isAgreed ? { state: "agreed", at: today() } : {}) };
  };
  job.change((body) => withQuote(body, (quote) => withRow(quote, "extras", id, sign)), "Change order signed");
}

/** Changes what a change order says. Signatures were for what stood there: they go, and that is said. */
export function changeOrder(job: Job, { id, strokes, shop }: Extra, part: Partial<Extra>): void {
  if (!strokes && !shop?.strokes) return changeRow(job, "extras", id, part);
  const edit = ({ shop: own, ...row }: Extra): Extra => ({
    ...signedWith({ ...row, ...part }, []), ...(row.state === "agreed" ? { state: "offered" } : {}), ...(own ? { shop: signedWith(own, []) } : {}),
  });
  const words = "Changed after it was signed: what was signed is taken off, it is offered again";
  job.changeWithUndo((body) => withQuote(body, (quote) => withRow(quote, "extras", id, edit)), words);
}

/** Says that something is to be put right, or that it is; what was signed off before is signed again then. */
export function putRight(job: Job, id: string, isDone: boolean): void {
  const part = isDone ? { state: "done" as const, at: today() } : { state: "open" as const, at: "" };
  job.change((body) => withQuote(body, (quote) => openedAgain(withRow(quote, "punch", id, (row) => ({ ...row, ...part })), isDone)), "Punch list changed");
}

function openedAgain(quote: Quote, isDone: boolean): Quote {
  const { signed } = quote;
  const isSigned = Boolean(signed?.by || signed?.strokes);
  return isSigned && !isDone ? { ...quote, signed: { ...signed, came_up: today() } } : quote;
}

/** Signs the finished work off, or signs it again. */
export function signOff(job: Job, { came_up: came, ...signed }: SignedOff): void {
  const at = came ? today() : (signed.at ?? today());
  changeQuote(job, { signed: { ...signed, at } }, "Signed off");
}

/** Signs the finished work off anew, under the same name; hands draw anew. */
export function signOffAgain(job: Job, signed: SignedOff): void {
  const { shop: _, ...rest } = signedWith(signed, []);
  signOff(job, rest);
}

export function deleteRow(job: Job, list: Lists, id: string, words: string): void {
  const edit = (quote: Quote): Quote => ({
    ...quote,
    [list]: (quote[list] ?? []).filter((row: { id: string }) => row.id !== id),
  });
  job.changeWithUndo((body) => withQuote(body, edit), words);
}

/** Takes over the minutes that finished items took. */
export function learnMinutes(job: Job, learned: { operation: string; minutes: number }[]): QuoteLists["minutes"][] {
  const kept = (job.body.quote?.minutes ?? []).filter(({ id }) => !learned.some(({ operation }) => operation === id));
  const minutes = [...kept, ...learned.map(({ operation, minutes: each }) => ({ id: operation, minutes: each }))];
  changeQuote(job, { minutes }, "Minutes taken over");
  return minutes;
}

/** Returns today's date as a document keeps it: `2026-11-26`. */
export function today(): string {
  const now = new Date();
  const two = (number: number): string => String(number).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
