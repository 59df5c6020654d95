/** What page and worker say to each other. Only text and the interpreter's own bytes cross. */

export interface CoreAssets {
  wasm: ArrayBuffer;
  parts: ArrayBuffer[];
}

/** To start with, then parts that a request needs and requests, answered in this order. */
export type Message = { boot: CoreAssets } | { parts: ArrayBuffer[] } | { text: string };

export type ToWorker = { id: number } & Message;
export type FromWorker = { id: number; text: string } | { id: number; fault: string };
