import type { Step, Units } from "../contract/contract";
import { reading, SCHEMA, writing, type SettingsRecord } from "./database";

export interface Settings {
  units: Units;
  step: Step;
  place: string;
  look: "auto" | "light" | "dark";
  /** Whether the screen stays on. */
  awake: boolean;
}

export const KEY = "settings";
const FIRST: Settings = { units: "in", step: 16, place: "yard", look: "auto", awake: true };

const isOneOf =
  (...values: unknown[]) =>
  (value: unknown) =>
    values.includes(value);
const ALLOWED: { [Name in keyof Settings]: (value: unknown) => boolean } = {
  units: isOneOf("in", "mm"),
  step: isOneOf(8, 16, 32, 64, 1000),
  place: (value) => typeof value === "string",
  look: isOneOf("auto", "light", "dark"),
  awake: isOneOf(true, false),
};

/** Take the settings that this version knows; one that it cannot understand is as at first. */
function understood(record: Record<string, unknown>): Settings {
  const known = Object.entries(record).filter(([name, value]) =>
    ALLOWED[name as keyof Settings]?.(value),
  );
  return { ...FIRST, ...Object.fromEntries(known) };
}

/** Return the settings kept on this device, or those to start from. */
export async function loadSettings(): Promise<Settings> {
  return understood((await reading(["settings"], (tx) => get(tx.objectStore("settings")))) ?? {});
}

function get(store: {
  get(key: string): Promise<SettingsRecord | undefined>;
}): Promise<SettingsRecord | undefined> {
  return store.get(KEY);
}

/** Keep the settings. What a newer version has written beside them stays. */
export function saveSettings(settings: Settings): Promise<void> {
  return writing(["settings"], async (tx) => {
    const store = tx.objectStore("settings");
    await store.put({ ...(await get(store)), schema: SCHEMA, ...settings }, KEY);
  });
}
