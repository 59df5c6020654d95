/** What of an answer is printed at full size, and how the browser is asked to. */
import type { Answer } from "../contract/contract";
import { sheetSvg, type Sheet } from "./paper";
import { stickSheets } from "./story-stick";
import { templateSheets } from "./template";

/** Returns the sheets of all templates and of the story stick; none where nothing is to print. */
export function sheetsOf(answer: Answer, tool: string): Sheet[] {
  const drawings = answer.drawing ? [answer.drawing, ...answer.details] : answer.details;
  const templates = drawings.filter((drawing) => drawing.full_size);
  return [
    ...templates.flatMap((drawing) => templateSheets(drawing, tool)),
    ...stickSheets(answer.marks, tool),
  ];
}

/** Opens the browser's print dialog on sheets at their true size, in the page's stead. */
export function printSheets(sheets: Sheet[]): void {
  const view = document.createElement("div");
  view.append(sheetsView(sheets));
  printView(view);
}

/** Returns the sheets, numbered, as they are printed. */
export function sheetsView(sheets: Sheet[]): HTMLElement {
  const view = document.createElement("div");
  view.className = "sheets";
  view.innerHTML = sheets.map((sheet, at) => sheetSvg(sheet, at + 1, sheets.length)).join("");
  return view;
}

/**
 * Puts `view` in the page's stead and opens the browser's print dialog.
 *
 * It stays until the page is next touched: several phones say that printing is over while the
 * dialog has yet to ask the page what it looks like, so the end of printing can't be waited for.
 */
export function printView(view: HTMLElement): void {
  const root = document.documentElement;
  document.body.append(view);
  root.classList.add("full-size");
  print();
  const touches = ["pointerdown", "keydown", "hashchange"];
  const end = (): void => {
    view.remove();
    root.classList.remove("full-size");
    for (const touch of touches) removeEventListener(touch, end, true);
  };
  for (const touch of touches) addEventListener(touch, end, true);
}

/** Opens what a screen folds away before the page itself is printed, and folds it again after. */
export function unfoldForPrint(): void {
  let folded: HTMLDetailsElement[] = [];
  addEventListener("beforeprint", () => {
    folded = [...document.querySelectorAll<HTMLDetailsElement>("details.printed:not([open])")];
    for (const fold of folded) fold.open = true;
  });
  addEventListener("afterprint", () => {
    for (const fold of folded) fold.open = false;
  });
}
