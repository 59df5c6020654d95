/** The job on paper: job sheet, buy list, cut list, mark list and finish plan, ink on white. */
import { html, nothing, type TemplateResult } from "lit";
import type { JobReply } from "../contract/contract";
import type { JobBody } from "../job/document";
import { typesetSilently } from "../text/typeset";
import { dollars } from "../text/words";

export type Paper = "job" | "buy" | "cut" | "mark" | "finish";

interface Printed {
  body: JobBody;
  reply: JobReply;
}

/** Columns of a table that has room in half a page. */
const MOST_NARROW = 5;
/** Rows of a table that is kept on one page with its title. */
const MOST_KEPT = 12;

export type Cells = (string | TemplateResult)[];

export const box = html`<span class="paperbox"></span>`;
const set = (text: string): TemplateResult => typesetSilently(text);

/** Returns one paper; each begins on a page of its own. */
export function paperOf(paper: Paper, printed: Printed): TemplateResult {
  const [title, inside] = { job: jobSheet, buy: buySheet, cut: cutSheet, mark: markSheet, finish: finishSheet }[paper](printed);
  const { body } = printed;
  const where = [body.customer?.name, body.customer?.address, body.customer?.phone].filter(Boolean).join(" · ");
  return html`<article class="paper">
    <header><h1>${body.title}</h1><p>${title}${where ? ` · ${where}` : ""}</p></header>
    ${inside}
  </article>`;
}

export type Made = [title: string, inside: TemplateResult];

function jobSheet({ body, reply }: Printed): Made {
  const items = reply.items.map((item, at) => {
    const { count = 1, note = "", photos = [] } = body.items[at] ?? {};
    const shown = photos.map(({ words }, number) => words || `photo ${number + 1}`);
    const rows = item.entries.map((entry): Cells => [
      entry.letter, set(entry.title), set(entry.verdict || (entry.errors[0]?.message ?? "Not answered yet")),
    ]);
    return html`<section>
      <h2>${item.title}${count > 1 ? ` × ${count}` : ""}</h2>
      ${note ? html`<p>${note}</p>` : nothing}
      ${shown.length > 0 ? html`<p>On the phone: ${shown.join(", ")}</p>` : nothing}
      ${table(["", "Question", "Answer"], rows)}
    </section>`;
  });
  const note = body.customer?.note ?? "";
  return ["Job sheet", html`${note ? html`<p>${note}</p>` : nothing}${items}`];
}

function buySheet({ reply: { yard } }: Printed): Made {
  const rows = yard.lines.map((line): Cells => [
    line.state === "bought" ? ticked : line.amount > 0 ? box : "", set(line.title),
    line.amount > 0 ? set(line.amount_text) : "none",
    set([line.words, ...line.on_hand.map((hand) => `on hand ${hand}`)].filter(Boolean).join("; ")),
    line.cost_text, line.paid === null ? "" : dollars(line.paid),
  ]);
  const sum: Cells = ["", "Together", "", "", yard.cost_text, yard.paid_text];
  const plans = yard.lines.flatMap((line) => line.layout.map((plan) => ({ title: line.title, plan })));
  return [
    "Buy list",
    html`${table(["", "Stock", "Amount", "How it is known", "About", "Paid"], [...rows, sum])}
    <div class="plans">${plans.map(
      ({ title, plan }) => html`<section class="kept ${plan.columns.length > MOST_NARROW ? "broad" : ""}"><h2>${set(`${title}: ${plan.name}`)}</h2>
        ${table(plan.columns, plan.rows.map((row) => row.map(set)))}</section>`,
    )}</div>`,
  ];
}

export const ticked = html`<span class="paperbox done"></span>`;

function cutSheet({ reply: { saw } }: Printed): Made {
  const steps = saw.steps.map(({ state, title, words }): Cells => [state ? ticked : box, set(title), set(words)]);
  const groups = saw.groups.map((group) => {
    const rows = group.cuts.map((cut): Cells => [
      cut.state === "cut" || cut.state === "fitted" ? ticked : box,
      html`<b>${cut.tag}</b>`, set(cut.name), html`<b>${set(cut.text)}</b>`, set(cut.section_text),
      set(cut.rough_text), set(cut.stale?.words ?? ""),
    ]);
    return html`<section class=${rows.length > MOST_KEPT ? "" : "kept"}>
      <h2>${set(`Saw ${group.setting} · ${group.title || "no stock named"}`)}</h2>
      ${table(["", "Tag", "Piece", "Length", "Section", "Rough", "Note"], rows)}
    </section>`;
  });
  const first = steps.length > 0 ? html`<section><h2>First: milling and gluing up</h2>${table([], steps)}</section>` : nothing;
  return ["Cut list", html`${first}${groups}`];
}

function markSheet({ reply: { site } }: Printed): Made {
  const items = site.items.map((item) => {
    const marks = item.marks.map((mark): Cells => [
      mark.state === "marked" ? ticked : box, html`<b>${mark.tag}</b>`, set(mark.label),
      html`<b>${set(mark.text)}</b>`, set(`from ${mark.from}`), set(mark.title),
    ]);
    const checks = item.checks.map((check): Cells => [check.state === "done" ? ticked : box, set(check.words)]);
    return html`<section>
      <h2>${set(item.title)}</h2>
      ${marks.length > 0 ? table(["", "Tag", "Mark", "At", "From", "Question"], marks) : nothing}
      <h3>Before you leave</h3>
      ${table([], checks)}
    </section>`;
  });
  return ["Mark list", html`${items}`];
}

/** Each plan with a box and a line for the time at which a coat was done. */
function finishSheet({ reply: { finish } }: Printed): Made {
  const plans = finish.map(({ item, title, steps }) => {
    const rows = steps.map(({ state, words, when, window, caution }): Cells => [
      state ? ticked : box, html`<b>${set(when)}</b>`, set(words), set(window), set(caution), state ? "" : "______",
    ]);
    return html`<section>
      <h2>${set([item, title].filter(Boolean).join(": "))}</h2>
      ${table(["", "When", "What", "May begin", "Note", "Done at"], rows)}
    </section>`;
  });
  return ["Finish plan", html`${plans}`];
}

/** Columns that hold nothing in any row are left out; of money the last one ends with the line. */
export function table(columns: string[], rows: Cells[], kind: "" | "sums" = ""): TemplateResult {
  const isUsed = (at: number): boolean => rows.some((row) => row[at] !== undefined && !isBlank(row[at]));
  const used = (row: Cells): Cells => row.filter((_, at) => isUsed(at));
  return html`<table class=${kind}>
    ${columns.some(Boolean)
      ? html`<thead><tr>${used(columns).map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>`
      : nothing}
    <tbody>${rows.map((row) => html`<tr>${used(row).map((cell) => html`<td>${cell}</td>`)}</tr>`)}</tbody>
  </table>`;
}

function isBlank(cell: string | TemplateResult): boolean {
  return cell === "" || (typeof cell !== "string" && JSON.stringify(cell.values) === "[[]]");
}
