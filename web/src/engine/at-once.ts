/**
 * The script within the page's own HTML: where the app is kept, the core starts while the page's
 * scripts are still being read. A host whose policy forbids it makes a start slower, nothing else.
 */
import { CoreWorker, fetchAssets } from "./core-worker";
import { isKept } from "./site-url";

declare global {
  var coreAtOnce: CoreWorker | undefined;
}

if (isKept()) {
  try {
    globalThis.coreAtOnce = new CoreWorker(fetchAssets());
  } catch {
    // The engine tries again, and says it.
  }
}
