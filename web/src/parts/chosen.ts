/** Which number of an answer stands big: its first lead figure until the person taps another. */
import type { Answer, Figure, Mark, Piece, Ticked } from "../contract/contract";

export interface Chosen extends Ticked {
  key: string;
  label: string;
  text: string;
  also: string;
  /** What sort of number it is: a figure's kind. */
  kind: Figure["kind"];
  /** In inches, degrees or as it is; a text where the kind is text. */
  value: unknown;
  /** Of the figure; empty for a piece or a mark. */
  figure: string;
}

export const figureKey = (figure: Figure): string => `figure ${figure.name}`;
export const pieceKey = (piece: Piece, at: number): string => `piece ${at} ${piece.tag}`;
export const markKey = (mark: Mark, at: number): string => `mark ${at} ${mark.from}`;

function ofFigure(figure: Figure): Chosen {
  const { label, text, also, tick, per, kind, value, name } = figure;
  return { key: figureKey(figure), label, text, also, tick, per, kind, value, figure: name };
}

function ofPiece(piece: Piece, at: number): Chosen {
  const { tick, per, text, length } = piece;
  const also = piece.short_text ? `short point ${piece.short_text}` : "";
  const label = `${piece.tag} ${piece.name}`;
  return { key: pieceKey(piece, at), label, text, also, tick, per, kind: "length", value: length, figure: "" };
}

function ofMark(mark: Mark, at: number): Chosen {
  const { tick, per, text, value } = mark;
  const label = `${mark.label}, from ${mark.from}`;
  return { key: markKey(mark, at), label, text, also: "", tick, per, kind: "length", value, figure: "" };
}

/** Returns the lead figures, or the first figure where none leads. */
export function leadsOf(answer: Answer): Figure[] {
  const leads = answer.figures.filter((figure) => figure.lead);
  return leads.length > 0 ? leads : answer.figures.slice(0, 1);
}

/** Returns what `key` names in `answer`, else its first lead. */
export function chosenOf(answer: Answer, key: string): Chosen | null {
  const all = [
    ...answer.figures.map(ofFigure), ...answer.pieces.map(ofPiece), ...answer.marks.map(ofMark),
  ];
  const lead = leadsOf(answer)[0];
  return all.find((each) => each.key === key) ?? (lead ? ofFigure(lead) : (all[0] ?? null));
}

/** Returns the lead figures that stand beside the chosen one. */
export function besides(answer: Answer, chosen: Chosen | null): Figure[] {
  return leadsOf(answer).filter((figure) => figureKey(figure) !== chosen?.key);
}
