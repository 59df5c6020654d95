/** The pad's keys for each kind of input: what they show, what they are called, what they do. */
import type { InputKind, Units } from "../contract/contract";
import { backspace, plusMinus, type, unit } from "../text/entry";

export interface Key {
  label: string;
  name: string;
  /** Set small below the label. */
  under?: string;
  /** Returns the entry after the key; null where the pad itself acts. */
  act: ((entry: string) => string) | null;
  look: "digit" | "quiet" | "action";
  /** Whether it starts a new entry when the old one was just taken in hand. */
  isFresh: boolean;
}

function typing(character: string, name = character): Key {
  const isFresh = /[\d.]/.test(character);
  const look = isFresh ? "digit" : "quiet";
  return { label: character, name, act: (entry) => type(entry, character), look, isFresh };
}

function doing(label: string, name: string, act: (entry: string) => string): Key {
  return { label, name, act, look: "quiet", isFresh: false };
}

const ERASE = doing("erase", "Erase the last character", backspace);
const CLEAR = doing("Clear", "Clear", () => "");
const SPACE = { ...typing(" ", "Space"), label: "space" };
const SLASH = { ...typing("/", "Fraction slash"), label: "/" };
const DEGREES = typing("°", "Degrees");
const PLUS_MINUS = {
  ...doing("+", "+ then −: plus, tapped again minus", plusMinus),
  under: "then −",
};
const NEXT: Key = { label: "Next", name: "Next", act: null, look: "action", isFresh: false };

/** What is said aloud begins with what is seen, so that who speaks to the phone can name the key. */
const unitKey = (word: string, name: string): Key =>
  doing(word, `${word}, ${name}`, (entry) => unit(entry, word));

function stepped(by: number): (entry: string) => string {
  return (entry) => {
    const count = /^\d+$/.test(entry) ? Number(entry) : 0;
    return String(Math.max(count + by, 0));
  };
}

const [D0, D1, D2, D3, D4, D5, D6, D7, D8, D9] = [..."0123456789"].map((digit) => typing(digit)) as [
  Key, Key, Key, Key, Key, Key, Key, Key, Key, Key,
];
const POINT = typing(".", "Point");

/** Returns the rows of keys for an input of this kind; Next, the last, may be two keys wide. */
export function keysFor(kind: InputKind, units: Units): Key[][] {
  if (kind === "length") {
    const other = units === "in" ? unitKey("mm", "millimeters") : unitKey("in", "inches");
    return [
      [D1, D2, D3, ERASE, CLEAR],
      [D4, D5, D6, unitKey("ft", "feet"), other],
      [D7, D8, D9, SPACE, SLASH],
      [POINT, D0, PLUS_MINUS, NEXT],
    ];
  }
  if (kind === "count") {
    return [
      [D1, D2, D3, ERASE],
      [D4, D5, D6, doing("+1", "+1, one more", stepped(1))],
      [D7, D8, D9, doing("−1", "−1, one less", stepped(-1))],
      [CLEAR, D0, NEXT],
    ];
  }
  return [
    [D1, D2, D3, ERASE],
    [D4, D5, D6, CLEAR],
    [D7, D8, D9, kind === "angle" ? DEGREES : SLASH],
    [POINT, D0, PLUS_MINUS, NEXT],
  ];
}
