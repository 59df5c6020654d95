/** How the person wants things shown. */
import type { Step, Units } from "../contract/contract";
import { openDocument } from "./documents";
import type { DocumentHandle } from "./handle";
import type { JsonObject } from "./json";

export interface Settings {
  units: Units;
  step: Step;
  place: string;
  /** Id of the open job; empty for none. */
  job: string;
  look: "auto" | "light" | "dark";
  /** Whether the screen stays on. */
  awake: boolean;
}

const FIRST: Settings = { units: "in", step: 16, place: "yard", job: "", look: "auto", awake: true };

const isOneOf =
  (...values: unknown[]) =>
  (value: unknown) =>
    values.includes(value);
const ALLOWED: { [Name in keyof Settings]: (value: unknown) => boolean } = {
  units: isOneOf("in", "mm"),
  step: isOneOf(8, 16, 32, 64, 1000),
  place: (value) => typeof value === "string",
  job: (value) => typeof value === "string",
  look: isOneOf("auto", "light", "dark"),
  awake: isOneOf(true, false),
};

/** Take the settings that this version knows; one that it cannot understand is as at first. */
function understood(body: JsonObject): Settings {
  const known = (Object.keys(ALLOWED) as (keyof Settings)[]).filter(
    (name) => Object.hasOwn(body, name) && ALLOWED[name](body[name]),
  );
  return { ...FIRST, ...Object.fromEntries(known.map((name) => [name, body[name]])) };
}

let kept: Promise<DocumentHandle> | undefined;

/** Opened once and for as long as the page lives. */
function opened(): Promise<DocumentHandle> {
  kept ??= openDocument("settings", "settings");
  return kept;
}

/** Returns the settings kept on this device, or those to start from. */
export async function loadSettings(): Promise<Settings> {
  return understood((await opened()).body);
}

/** Calls `listener` when the settings are changed in another window. */
export async function onSettings(listener: (settings: Settings) => void): Promise<void> {
  const document = await opened();
  document.onChange(({ paths }) => paths.length > 0 && listener(understood(document.body)));
}

/** Keeps what was changed, and nothing else: the others may be set in another window, or unread. */
export async function saveSettings(changed: Partial<Settings>): Promise<void> {
  const document = await opened();
  document.change({ ...document.body, ...changed }, document.units);
}
