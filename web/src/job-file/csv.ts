/** The buy list and the cut list for a spreadsheet: CSV as RFC 4180 has it. */
import type { JobReply } from "../contract/contract";

type Cell = string | number | null;

/** A text that a spreadsheet would take for a formula and run. */
const FORMULA = /^[=+\-@\t\r]/;

function cell(value: Cell): string {
  if (value === null) return "";
  if (typeof value === "number") return String(value);
  const text = FORMULA.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Every line ends in CR LF. The mark at the start tells spreadsheets that the text is UTF-8. */
function csv(rows: Cell[][]): string {
  return "\uFEFF" + rows.map((row) => row.map(cell).join(",") + "\r\n").join("");
}

const rounded = (value: number | null): number | null =>
  value === null ? null : Math.round(value * 10_000) / 10_000;

/** Returns the lines to buy. */
export function buyCsv({ yard }: JobReply): string {
  const head = ["Stock", "Sold by the", "Amount", "Unit", "Estimated cost", "Paid", "Bought", "How it is known"];
  const rows = yard.lines.map((line): Cell[] => [
    line.title, line.sold, rounded(line.amount), line.unit, rounded(line.cost), line.paid,
    line.state === "bought" ? "yes" : "", line.words,
  ]);
  return csv([head, ...rows]);
}

/** Returns every piece, in the order of the cut list. */
export function cutCsv({ saw, items }: JobReply): string {
  const titles = new Map(items.map(({ id, title }) => [id, title]));
  const head = [
    "Tag", "Item", "Piece", "Stock", "Saw setting", "Length", "Length in inches", "Section", "Ends", "State", "Note",
  ];
  const rows = saw.groups.flatMap(({ title, setting, cuts }) =>
    cuts.map((cut): Cell[] => [
      cut.tag, titles.get(cut.item) ?? "", cut.name, title, setting, cut.text, rounded(cut.length),
      cut.section_text, cut.ends_text, cut.state, cut.stale?.words ?? "",
    ]),
  );
  return csv([head, ...rows]);
}
