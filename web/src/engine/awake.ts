let wanted = false;
let lock: WakeLockSentinel | null = null;

async function take(): Promise<void> {
  if (lock || document.visibilityState !== "visible" || !("wakeLock" in navigator)) return;
  const taken = await navigator.wakeLock.request("screen").catch(() => null); // low battery refuses
  if (!taken) return;
  lock = taken;
  taken.addEventListener("release", () => {
    if (lock === taken) lock = null;
  });
  if (!wanted) await release();
}

async function release(): Promise<void> {
  const held = lock;
  lock = null;
  await held?.release();
}

// The browser lets go of the lock whenever the page is hidden.
document.addEventListener("visibilitychange", () => {
  if (wanted) void take();
});

/** Keep the screen on while `on`; a browser or battery that refuses is left in peace. */
export async function keepAwake(on: boolean): Promise<void> {
  wanted = on;
  await (on ? take() : release());
}
