/** Everything of an answer below its card: figures, pieces, marks, tables, notes, sources. */
import { html, nothing, type TemplateResult } from "lit";
import type { Answer, Figure, Mark, Piece, Table } from "../contract";
import { typeset } from "../text/typeset";
import { capital } from "../text/words";
import { chosenOf, figureKey, leadsOf, markKey, pieceKey } from "./chosen";
import { lineFigure } from "./length";

type Choose = (key: string) => void;

interface Line {
  key: string;
  tag: string;
  name: string;
  under: string;
  text: string;
  second: string;
}

/** Returns figures that don't lead, pieces and marks, each a line that can be tapped to be big. */
export function numberLists(answer: Answer, chosen: string, choose: Choose): TemplateResult {
  const pressed = chosenOf(answer, chosen)?.key ?? "";
  const list = (title: string, lines: Line[]): TemplateResult | typeof nothing =>
    lines.length > 0 ? lineList(title, lines, pressed, choose) : nothing;
  const leads = leadsOf(answer);
  const others = answer.figures.filter((figure) => !leads.includes(figure));
  return html`${list("Pieces", answer.pieces.map(pieceLine))}
  ${[...markGroups(answer.marks)].map(([from, lines]) => list(`From ${from}`, lines))}
  ${list("Figures", others.map(figureLine))}`;
}

function figureLine(figure: Figure): Line {
  const { label, text, also } = figure;
  return { key: figureKey(figure), tag: "", name: label, under: "", text, second: also };
}

function pieceLine(piece: Piece, at: number): Line {
  const name = piece.count > 1 ? `${piece.name}, ${piece.count} pieces` : piece.name;
  const under = [piece.ends_text, piece.stock].filter(Boolean).join(" · ");
  const second = piece.short_text ? `short ${piece.short_text}` : "";
  return { key: pieceKey(piece, at), tag: piece.tag, name, under, text: piece.text, second };
}

function markGroups(marks: Mark[]): Map<string, Line[]> {
  const groups = new Map<string, Line[]>();
  marks.forEach((mark, at) => {
    const lines = groups.get(mark.from) ?? [];
    const { tag, label, text } = mark;
    lines.push({ key: markKey(mark, at), tag, name: label, under: "", text, second: "" });
    groups.set(mark.from, lines);
  });
  return groups;
}

function lineList(title: string, lines: Line[], pressed: string, choose: Choose): TemplateResult {
  return html`<section class="block" aria-label=${title}>
    <h2>${typeset(capital(title))}</h2>
    <ul class="lines">
      ${lines.map((line) => html`<li>${lineButton(line, line.key === pressed, choose)}</li>`)}
    </ul>
  </section>`;
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
      ><span class="name">${typeset(line.name)}</span>${line.under
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

/** Returns a table that scrolls sideways within itself; the row the answer used is marked. */
export function tableBlock(table: Table): TemplateResult {
  return html`<section class="block" aria-label=${table.name}>
    <h2>${typeset(table.name)}</h2>
    <div class="scroller" role="region" aria-label="${table.name}, table" tabindex="0">
      <table>
        <thead>
          <tr>${table.columns.map((column) => html`<th scope="col">${typeset(column)}</th>`)}</tr>
        </thead>
        <tbody>${table.rows.map((row, at) => tableRow(row, at === table.pick))}</tbody>
      </table>
    </div>
  </section>`;
}

function tableRow(row: string[], isPicked: boolean): TemplateResult {
  return html`<tr class=${isPicked ? "picked" : ""} aria-current=${isPicked ? "true" : nothing}>
    ${row.map((cell, at) =>
      at === 0 ? html`<th scope="row">${typeset(cell)}</th>` : html`<td>${typeset(cell)}</td>`,
    )}
  </tr>`;
}

/** Returns the notes as paragraphs of one block. */
export function noteBlock(notes: string[]): TemplateResult | typeof nothing {
  if (notes.length === 0) return nothing;
  return html`<section class="block" aria-label="Notes">
    <h2>Notes</h2>
    <ul class="notes">${notes.map((note) => html`<li>${typeset(note)}</li>`)}</ul>
  </section>`;
}

/** Returns each caution beside its bar. */
export function cautionBlock(cautions: string[]): TemplateResult | typeof nothing {
  if (cautions.length === 0) return nothing;
  return html`<section class="cautions" aria-label="Cautions">
    ${cautions.map((words) => html`<p class="caution">${typeset(words)}</p>`)}
  </section>`;
}

/** Returns the folded list of sources. */
export function sourceFold(sources: string[]): TemplateResult | typeof nothing {
  if (sources.length === 0) return nothing;
  return html`<details class="fold printed">
    <summary>Where these numbers come from</summary>
    <ul>${sources.map((source) => html`<li>${typeset(source)}</li>`)}</ul>
  </details>`;
}
