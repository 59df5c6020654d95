/** Everything of an answer below its card: what is cut and marked, then folds with their gist. */
import { html, nothing, type TemplateResult } from "lit";
import type { Answer, Drawing, Figure, Input, Mark, Piece, SetAside, Table } from "../contract/contract";
import { typeset } from "../text/typeset";
import { capital } from "../text/words";
import { chosenOf, figureKey, leadsOf, markKey, pieceKey } from "./chosen";
import "./drawing";
import { lineFigure } from "./length";

type Choose = (key: string) => void;
type Drawn = TemplateResult | typeof nothing;

interface Line {
  key: string;
  tag: string;
  name: string;
  /** Small beside the name: what wood it is. */
  beside: string;
  under: string;
  text: string;
  second: string;
}

/** Lines of a list that stand open; the rest folds away behind their number. */
const OPEN_LINES = 5;

/** Characters of a fold's gist. */
const GIST = 60;

/** Returns pieces and marks, each a line that can be tapped onto the rule. */
export function cutAndMarked(answer: Answer, chosen: string, choose: Choose): TemplateResult {
  const pressed = chosenOf(answer, chosen)?.key ?? "";
  const marks = [...markGroups(answer.marks)].map(([from, lines]) => ({ title: `Mark from ${from}`, lines }));
  const groups = [{ title: "Cut", lines: answer.pieces.map(pieceLine) }, ...marks];
  const [first, ...others] = groups.filter(({ lines }) => lines.length > 0);
  return html`${first ? lineList(first.title, first.lines, pressed, choose) : nothing}
  ${others.map(({ title, lines }) => lineFold(title, lines, pressed, choose))}`;
}

/** Returns the figures that don't lead, folded. */
export function figureFold(answer: Answer, chosen: string, choose: Choose): Drawn {
  const leads = leadsOf(answer);
  const others = answer.figures.filter((figure) => !leads.includes(figure));
  if (others.length === 0) return nothing;
  const pressed = chosenOf(answer, chosen)?.key ?? "";
  const gist = others.slice(0, 3).map(({ short, text }) => `${short} ${text}`).join(" · ");
  return fold("More numbers", gist, lineItems(others.map(figureLine), pressed, choose));
}

function figureLine(figure: Figure): Line {
  const { label, text, also } = figure;
  return { key: figureKey(figure), tag: "", name: label, beside: "", under: "", text, second: also };
}

function pieceLine(piece: Piece, at: number): Line {
  const name = piece.count > 1 ? `${piece.name}, ${piece.count} pieces` : piece.name;
  const under = [piece.ends_text, piece.stock].filter(Boolean).join(" · ");
  const second = piece.short_text ? `short ${piece.short_text}` : "";
  return { key: pieceKey(piece, at), tag: piece.tag, name, beside: piece.section_text, under, text: piece.text, second };
}

function markGroups(marks: Mark[]): Map<string, Line[]> {
  const groups = new Map<string, Line[]>();
  marks.forEach((mark, at) => {
    const lines = groups.get(mark.from) ?? [];
    const { tag, label, text } = mark;
    lines.push({ key: markKey(mark, at), tag, name: label, beside: "", under: "", text, second: "" });
    groups.set(mark.from, lines);
  });
  return groups;
}

function lineList(title: string, lines: Line[], pressed: string, choose: Choose): TemplateResult {
  const more = lines.length - OPEN_LINES;
  const open = more > 1 ? lines.slice(0, OPEN_LINES) : lines;
  const rest = lines.slice(open.length);
  return html`<section class="block" aria-label=${title}>
    <h2>${typeset(capital(title))} <span class="gist">tap one to see it on the rule</span></h2>
    ${lineItems(open, pressed, choose)}
    ${rest.length > 0
      ? html`<details class="more" ?open=${rest.some(({ key }) => key === pressed)}>
          <summary>${rest.length} more</summary>
          ${lineItems(rest, pressed, choose)}
        </details>`
      : nothing}
  </section>`;
}

/** A further list folds, its gist its lengths; open while one of its lines is on the rule. */
function lineFold(title: string, lines: Line[], pressed: string, choose: Choose): TemplateResult {
  const gist = lines.map(({ text }) => text).join(" · ");
  const isOpen = lines.some(({ key }) => key === pressed);
  return fold(title, gist, lineItems(lines, pressed, choose), { isOpen });
}

function lineItems(lines: Line[], pressed: string, choose: Choose): TemplateResult {
  return html`<ul class="lines">
    ${lines.map((line) => html`<li>${lineButton(line, line.key === pressed, choose)}</li>`)}
  </ul>`;
}

function lineButton(line: Line, isPressed: boolean, choose: Choose): TemplateResult {
  return html`<button
    type="button"
    class="plain line"
    aria-pressed=${isPressed}
    @click=${() => choose(line.key)}
  >
    ${line.tag ? html`<span class="balloon">${line.tag}</span>` : nothing}
    <span class="named"
      ><span
        ><span class="name">${typeset(line.name)}</span>${line.beside
          ? html` <span class="under-name">${typeset(line.beside)}</span>`
          : nothing}</span
      >${line.under
        ? html` <span class="under-name">${typeset(line.under)}</span>`
        : nothing}</span
    >
    <span class="figures"
      ><span class="medium">${lineFigure(line.text)}</span>${line.second
        ? html` <span class="under-name">${typeset(line.second)}</span>`
        : nothing}</span
    >
  </button>`;
}

/** Returns a fold: its heading says what is in it and the gist of it. */
function fold(
  title: string, gist: string, body: TemplateResult, { isPrinted = true, isOpen = false } = {},
): TemplateResult {
  const short = gist.length > GIST ? `${gist.slice(0, GIST - 1).trimEnd()}…` : gist;
  return html`<details class="fold ${isPrinted ? "printed" : ""}" ?open=${isOpen}>
    <summary>
      <span class="foldname">${typeset(title)}</span> <span class="gist">${typeset(short)}</span>
    </summary>
    ${body}
  </details>`;
}

/** Returns a further view, folded. */
export function drawingFold(drawing: Drawing): TemplateResult {
  return fold(drawing.title, drawing.description, html`<lp-drawing .drawing=${drawing}></lp-drawing>`);
}

/** Returns a table, folded: each row as stacked lines on a phone, side by side where there is room. */
export function tableFold(table: Table): TemplateResult {
  const { name, columns, rows, pick } = table;
  const row = rows[pick ?? 0] ?? [];
  const gist = `${rows.length} ${rows.length === 1 ? "line" : "lines"}${pick === null ? "" : ` · ${row.slice(0, 2).join(" ")}`}`;
  return fold(
    name,
    gist,
    html`<div role="region" aria-label="${name}, table">
      <table class=${columns.length > 3 ? "stacked" : ""}>
        <thead>
          <tr>${columns.map((column) => html`<th scope="col">${typeset(column)}</th>`)}</tr>
        </thead>
        <tbody>${rows.map((cells, at) => tableRow(columns, cells, at === pick))}</tbody>
      </table>
    </div>`,
  );
}

function tableRow(columns: string[], cells: string[], isPicked: boolean): TemplateResult {
  return html`<tr class=${isPicked ? "picked" : ""} aria-current=${isPicked ? "true" : nothing}>
    ${cells.map((cell, at) =>
      at === 0
        ? html`<th scope="row">${typeset(cell)}</th>`
        : html`<td class=${cell ? "" : "blank"} data-column=${columns[at] ?? ""}>${typeset(cell)}</td>`,
    )}
  </tr>`;
}

/** Returns the notes, folded. */
export function noteFold(notes: string[]): Drawn {
  if (notes.length === 0) return nothing;
  const items = html`<ul class="notes">${notes.map((note) => html`<li>${typeset(note)}</li>`)}</ul>`;
  return fold("Notes", notes[0] ?? "", items);
}

/** Returns the first caution beside its bar, the others folded below it. */
export function cautionBlock(cautions: string[]): Drawn {
  const [first, ...others] = cautions;
  if (first === undefined) return nothing;
  const said = (words: string): TemplateResult => html`<p class="caution">${typeset(words)}</p>`;
  return html`<section class="cautions" aria-label="Cautions">
    ${said(first)}
    ${others.length > 0 ? fold("Take care", others.join(" "), html`${others.map(said)}`) : nothing}
  </section>`;
}

/** Returns what each field means, folded. */
export function wordFold(inputs: Input[]): Drawn {
  const helped = inputs.flatMap((input) => [input, ...(input.columns ?? [])]).filter(({ help }) => help);
  if (helped.length === 0) return nothing;
  const gist = helped.map(({ label }) => label).join(", ");
  const list = html`<dl>
    ${helped.map(({ label, help }) => html`<dt>${typeset(label)}</dt><dd>${typeset(help)}</dd>`)}
  </dl>`;
  return fold("What each field means", gist, list, { isPrinted: false });
}

/** Returns where the numbers come from, folded. */
export function sourceFold(sources: string[]): Drawn {
  if (sources.length === 0) return nothing;
  const items = html`<ul>${sources.map((source) => html`<li>${typeset(source)}</li>`)}</ul>`;
  return fold("Sources", sources[0] ?? "", items);
}

/** Returns what is kept of a form and not understood, folded. */
export function asideFold(aside: SetAside[]): Drawn {
  if (aside.length === 0) return nothing;
  return html`<details class="fold aside">
    <summary>Kept, and not used by this version <span class="gist">${aside.length}</span></summary>
    <ul>${aside.map(({ path, value }) => html`<li>${path}: ${JSON.stringify(value).slice(0, 80)}</li>`)}</ul>
  </details>`;
}
