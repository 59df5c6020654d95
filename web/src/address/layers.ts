/**
 * The browser's Back closes an open pad or sheet before it leaves the page.
 *
 * While a layer is open an entry of its own stands in the browser's history. A layer that is closed
 * in another way leaves that entry there, and the next Back passes over it.
 */
import type { ReactiveController, ReactiveControllerHost } from "lit";
import { entryState, rewrite } from "./address-bar";

let close: (() => void) | null = null;
/** Whether the history stands at a layer's entry. */
let isAtLayer = entryState().layer;
let isSwallowed = false;

addEventListener("popstate", () => {
  const wasAtLayer = isAtLayer;
  isAtLayer = entryState().layer;
  // A link or an address typed above is heard here too: it leads to an entry that bears no layer.
  if (!wasAtLayer || !entryState().bears) return;
  // The entry below was written before the layer opened: it takes over what was typed since.
  isSwallowed = rewrite();
  const closing = close;
  close = null;
  if (closing) closing();
  else history.back();
});

/** A layer opens; `closing` closes it when Back is pressed. */
export function layerOpened(closing: () => void): void {
  close = closing;
  if (isAtLayer) return;
  isAtLayer = true;
  history.replaceState({ ...entryState(), bears: true }, "", location.hash);
  history.pushState({ ...entryState(), bears: false, layer: true }, "", location.hash);
}

/** The layer was closed otherwise. */
export function layerClosed(): void {
  close = null;
}

/** Whether the change of address just heard of was only a layer's entry going. */
export function isLayerChange(): boolean {
  const was = isSwallowed;
  isSwallowed = false;
  if (!was) isAtLayer = entryState().layer;
  return was;
}

/** Has Back close what a screen opened over itself, for as long as it is open. */
export class Layer implements ReactiveController {
  private isOpen = false;

  constructor(
    host: ReactiveControllerHost,
    private readonly isWanted: () => boolean,
    private readonly close: () => void,
  ) {
    host.addController(this);
  }

  hostUpdated(): void {
    const isOpen = this.isWanted();
    if (isOpen === this.isOpen) return;
    this.isOpen = isOpen;
    if (isOpen) layerOpened(this.close);
    else layerClosed();
  }

  hostDisconnected(): void {
    if (this.isOpen) layerClosed();
    this.isOpen = false;
  }
}
