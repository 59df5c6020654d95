/** Dates as they are said; kept as `2026-11-26`. */

/** Returns a kept date in words, `Nov 26, 2026`; what is none stays as it is. */
export function dateWords(kept: string | undefined): string {
  if (!kept || !/^\d{4}-\d\d-\d\d$/.test(kept)) return kept ?? "";
  const day = new Date(`${kept}T12:00`);
  return Number.isNaN(day.getTime()) ? kept : day.toLocaleDateString("en-US", { dateStyle: "medium" });
}
