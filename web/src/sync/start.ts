/** Begins to keep this phone and the shop's server alike, once the core has answered: no start waits for it. */
import type { Core } from "../engine/core";
import { noteStatus, onSyncStatus, whoWas } from "./status";

/** Whether this site's server keeps anything: it says so by a cookie, and no other is asked. */
const isShared = (): boolean => document.cookie.includes("longpoint-shares=1");

/** Tells `show` whenever something of it changes. */
export async function startSync(core: Core, show: () => void): Promise<void> {
  if (!isShared()) return;
  onSyncStatus(show);
  noteStatus(whoWas() ?? {});
  try {
    if (await core.answers()) new (await import("./sync")).Sync(core).start();
  } catch (error) {
    console.error(error);
  }
}
