/** A sheet over the screen, with a title and a way out; the browser keeps the focus inside. */
import { html, type TemplateResult } from "lit";
import { ref } from "lit/directives/ref.js";
import { icon } from "./icons";

/** The element is told of before it stands in the page, where alone it can be shown. */
function opened(element?: Element): void {
  const dialog = element as HTMLDialogElement | undefined;
  queueMicrotask(() => {
    if (dialog?.isConnected && !dialog.open) dialog.showModal();
  });
}

/** Returns an open sheet; `close` hears of every way it is left. */
export function sheet(title: string, body: TemplateResult, close: () => void): TemplateResult {
  const end = (event: Event): void => {
    (event.currentTarget as HTMLElement).closest("dialog")?.close();
  };
  // A tap on the dimmed page around the sheet arrives at the dialog itself.
  const outside = (event: Event): void => {
    if (event.target === event.currentTarget) end(event);
  };
  return html`<dialog class="sheet" aria-label=${title} ${ref(opened)} @close=${close} @click=${outside}>
    <div class="sheetbody">
      <header>
        <h2>${title}</h2>
        <button type="button" class="plain iconed" aria-label="Close" @click=${end}>
          ${icon("close")}
        </button>
      </header>
      ${body}
    </div>
  </dialog>`;
}
