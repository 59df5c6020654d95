/** What page and worker say to each other. Only text and the interpreter's own bytes cross. */

export interface CoreAssets {
  wasm: ArrayBuffer;
  parts: ArrayBuffer[];
}

/** To start with, then parts that a request needs and requests, answered in this order. */
export type Message = { boot: CoreAssets } | { parts: ArrayBuffer[] } | { text: string };

export type ToWorker = { id: number } & Message;
export type FromWorker = { id: number; text: string } | { id: number; fault: string };

/** The id under which a worker says that its script has run and that it listens. */
export const LISTENING = 0;
