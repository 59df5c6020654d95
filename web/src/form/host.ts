/** What a form's cards and rows ask of the form they stand in. */
import type { Option, Raw } from "../contract/contract";

export interface FieldHost {
  /** Path of the field in hand, empty for none. */
  readonly active: string;
  /** Whether a hardware keyboard edits it, so that its caret must be seen. */
  readonly isTyping: boolean;
  message(path: string): string;
  /** What stands in the field. */
  shown(path: string): string;
  /** The value chosen, empty for none. */
  chosen(path: string, offered: Option[]): string;
  isOn(path: string): boolean;
  /** Texts that may have been meant by it. */
  instead(path: string): string[];
  /** The address of the question that carries a number to the field; empty for none. */
  wayTo(path: string): string;
  change(path: string, value: Raw): void;
  typed(path: string, text: string): void;
  focused(path: string): void;
  key(event: KeyboardEvent, path: string): void;
}

export interface FormHost extends FieldHost {
  openRow(name: string, at: number | null): void;
  add(name: string): void;
  copy(name: string, at: number): void;
  remove(name: string, at: number): void;
  move(name: string, from: number, to: number): void;
}
