/** What page and worker say to each other. Only text and the interpreter's own bytes cross. */

export interface CoreAssets {
  wasm: ArrayBuffer;
  /** Python sources: path below /lib, text. */
  sources: { [path: string]: string };
}

export type ToWorker = { id: number; boot: CoreAssets } | { id: number; text: string };
export type FromWorker = { id: number; text: string } | { id: number; fault: string };

/** The id under which a worker says that its script has run and that it listens. */
export const LISTENING = 0;
