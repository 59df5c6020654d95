/** Begins to keep this phone and the shop's server alike, once the core has answered: no start waits for it. */
import type { Core } from "../engine/core";
import { onSyncStatus } from "./status";

/** Tells `show` whenever something of it changes. */
export async function startSync(core: Core, show: () => void): Promise<void> {
  onSyncStatus(show);
  try {
    if (await core.answers()) new (await import("./sync")).Sync(core).start();
  } catch (error) {
    console.error(error);
  }
}
