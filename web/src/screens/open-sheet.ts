/** The sheet that lies over the page. */
import { html, nothing, type TemplateResult } from "lit";
import type { Scale } from "../contract/contract";
import type { Core } from "../engine/core";
import type { Job } from "../job/job";
import type { Chosen } from "../parts/chosen";
import type { KeptAnswer, Settings } from "../store/store";
import { earlierSheet } from "./earlier-answers";
import { settingsSheet } from "./settings";
import type { ToolScreen } from "./tool";

/** Which sheet is open; empty for none. */
export type SheetName = "" | "settings" | "earlier" | "keep" | "use";

export interface SheetView {
  sheet: SheetName;
  settings: Settings;
  install: (() => Promise<boolean>) | null;
  kept: KeptAnswer[] | string | null;
  job: Job | null;
  core: Core;
  scale: Scale;
  /** The number that is taken to another question. */
  chosen: Chosen | null;
  screen: ToolScreen | null;
  change(part: Partial<Settings>): void;
  recall(entry: KeptAnswer): void;
  close(): void;
}

export function openSheet(view: SheetView): TemplateResult | typeof nothing {
  const { sheet, settings, install, kept, job, core, scale, chosen, screen, change, close } = view;
  const { session, entry } = screen?.form ?? {};
  if (sheet === "earlier") return earlierSheet(kept, view.recall, close);
  if (sheet === "settings") return settingsSheet({ settings, install, change, close });
  if (sheet === "keep") {
    return html`<lp-keep .job=${job} .session=${session} .scale=${scale} .close=${close}></lp-keep>`;
  }
  if (sheet !== "use") return nothing;
  const [tool, from] = [session?.declaration.slug, entry?.id ?? ""];
  return html`<lp-use .job=${job} .core=${core} .tool=${tool} .from=${from} .chosen=${chosen} .close=${close}></lp-use>`;
}
