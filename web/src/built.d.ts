/** What the build puts into the bundles; build/bundles.mjs writes these modules. */

declare module "longpoint:catalog" {
  export const catalog: import("./contract/contract").Catalog;
}

/** What every core starts with; addresses relative to the page. */
declare module "longpoint:core" {
  export const worker: string;
  export const wasm: string;
  /** The part of the core that all others need. */
  export const frame: string;
}

/** Addresses relative to the page. */
declare module "longpoint:assets" {
  /** Tells the core of one build from that of another. */
  export const core: string;
  /** The core's further parts, by name: those of tools and of folders that tools share. */
  export const parts: { [room: string]: string };
  /** The parts that a tool needs beside the frame; "" stands for the core without a tool. */
  export const needs: { [tool: string]: string[] };
  /** What a tool's own screen starts with, by tool. */
  export const tools: { [tool: string]: string };
  /** The pictures in a place's list, by place. */
  export const pictures: { [place: string]: string };
  /** The kinds of item that a job can begin with. */
  export const patterns: string;
  /** A job to try, invented: its document as JSON. */
  export const demo: string;
  /** Styles that are loaded later, by what wears them. */
  export const styles: { [name: string]: string };
}

/** The complete site: path relative to the service worker's scope and SHA-256 in hex. */
declare module "longpoint:files" {
  export const version: string;
  export const files: [path: string, sha256: string, inPack: number][];
  /** One file that holds those with a length `inPack`, end to end, for a first visit to fetch. */
  export const pack: string;
}

declare module "@micropython/micropython-webassembly-pyscript" {
  export interface MicroPython {
    FS: { mkdirTree(path: string): void; writeFile(path: string, content: string | Uint8Array): void };
    pyimport(module: "gc"): { threshold(bytes: number): void };
    pyimport(module: string): { call(text: string): string };
  }
  export function loadMicroPython(options: {
    url: string;
    heapsize?: number;
    stdout?: (line: string) => void;
    stderr?: (line: string) => void;
    linebuffer?: boolean;
  }): Promise<MicroPython>;
}
