/** How the answer to an open form stands. */
import type { Answer } from "../contract/contract";

export type Standing =
  | { state: "asking" }
  | { state: "answered"; answer: Answer; search: number | null }
  | { state: "withdrawn" }
  | { state: "faulted"; words: string; final: boolean };
