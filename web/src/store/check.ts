/**
 * What comes in by any door (a file, an address, the storage, a field) is looked at here first.
 *
 * These are checks of shape and size; what a form's values mean is the core's to judge.
 */
import type { Scale, Units } from "../contract/contract";
import { isObject, type Json, type JsonObject } from "./json";

/** The most of each that is taken: bytes of a file, else characters, levels or pieces. */
export const MOST = {
  file: 100_000_000,
  address: 200_000,
  document: 1_000_000,
  text: 10_000,
  name: 200,
  levels: 16,
};

/** Milliseconds since 1970 that a calendar can say, as a browser's own does. */
const LAST_TIME = 8.64e15;

const many = (count: number): string => count.toLocaleString("en-US");

/** Returns why `value` can't be kept, in a sentence, or nothing where it can. */
export function faultOf(value: unknown): string {
  const look = new Look();
  look.at(value, 0);
  return look.fault;
}

export function isKeepable(value: unknown): value is Json {
  return faultOf(value) === "";
}

/** Walks a value until something in it can't be kept. */
class Look {
  fault = "";
  private size = 0;

  at(value: unknown, level: number): void {
    if (level > MOST.levels) this.fault ||= "This has lists within lists, too deep to be kept.";
    else if (typeof value === "string") this.text(value);
    else if (typeof value === "number") this.number(value);
    else if (Array.isArray(value)) this.list(value, level);
    else if (isObject(value)) this.object(value, level);
    else if (value !== null && typeof value !== "boolean") this.fault ||= "This is no text and no number.";
  }

  private add(characters: number): void {
    this.size += characters;
    if (this.size <= MOST.document) return;
    this.fault ||= `This is too much to keep in one piece: at most ${many(MOST.document)} characters.`;
  }

  private text(text: string): void {
    if (text.length > MOST.text) {
      this.fault ||=
        `A text of ${many(text.length)} characters is too long to keep: ` +
        `use at most ${many(MOST.text)}.`;
    }
    this.add(text.length + 2);
  }

  private number(value: number): void {
    if (!Number.isFinite(value)) this.fault ||= "This holds a number without end.";
    this.add(8);
  }

  private list(list: unknown[], level: number): void {
    this.add(2);
    for (const item of list) {
      if (this.fault) return;
      this.at(item, level + 1);
    }
  }

  private object(object: JsonObject, level: number): void {
    this.add(2);
    for (const [name, item] of Object.entries(object)) {
      if (this.fault) return;
      this.name(name);
      this.at(item, level + 1);
    }
  }

  private name(name: string): void {
    if (!isName(name)) this.fault ||= "This holds something under a name that can't be used.";
    this.add(name.length + 4);
  }
}

/** Whether something can be kept under `name`. */
export function isName(name: unknown): name is string {
  // Assigned to an object this name would change what the object is, and keep nothing.
  return typeof name === "string" && name.length <= MOST.name && name !== "__proto__";
}

export function isUnits(value: unknown): value is Units {
  return value === "in" || value === "mm";
}

const STEPS: unknown[] = [8, 16, 32, 64, 1000];

export function isScale(value: unknown): value is Scale {
  return isObject(value) && isUnits(value["units"]) && STEPS.includes(value["step"]);
}

/** Whether a calendar has a date for it. */
export function isTime(value: unknown): value is number {
  return typeof value === "number" && Math.abs(value) <= LAST_TIME;
}

/** Returns what JSON text says, or undefined where it is none. */
export function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
