/** Single changes in a document's history. */
import type { Edit, Put } from "./edits";
import { isObject } from "./json";
import type { HistoryRecord } from "./tables";

/** Milliseconds in which keys typed into one field are one change. */
const TYPING = 2000;

/** Whether this is a step that can be gone; a damaged one can't. */
export function isStep(step: unknown): step is HistoryRecord {
  if (!isObject(step) || !Array.isArray(step["edits"])) return false;
  return step["edits"].every((edit) => isObject(edit) && Array.isArray(edit["path"]));
}

/** Returns both as one change where keys went on into the same field, else null. */
export function typedOn(last: HistoryRecord, next: HistoryRecord): HistoryRecord | null {
  const [one, other] = [onlyField(last.edits), onlyField(next.edits)];
  const isOne = one && other && JSON.stringify(one.path) === JSON.stringify(other.path);
  const isQuick = next.at - last.at < TYPING && next.at >= last.at;
  if (!isOne || !isQuick || last.by !== next.by || last.words !== next.words) return null;
  return { ...next, step: last.step, edits: [fromTo(one, other)] };
}

function onlyField(edits: Edit[]): Put | null {
  const [edit, ...more] = edits;
  return edit && more.length === 0 && !("at" in edit) ? edit : null;
}

function fromTo({ path, before }: Put, { after }: Put): Put {
  return { path, ...(before !== undefined && { before }), ...(after !== undefined && { after }) };
}
