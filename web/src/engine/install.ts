/** Chromium's event; other engines have none, and TypeScript's own types do not know it. */
interface InstallPrompt extends Event {
  prompt(): Promise<{ outcome: "accepted" | "dismissed" }>;
}

type Install = (() => Promise<boolean>) | null;

let offered: Install = null;
let tell: (install: Install) => void = () => undefined;

function offer(install: Install): void {
  offered = install;
  tell(offered);
}

// Listening from the first import: the browser offers once and does not wait.
addEventListener("beforeinstallprompt", (event) => {
  event.preventDefault();
  const prompt = event as InstallPrompt;
  offer(async () => {
    offer(null); // a prompt can be shown only once
    return (await prompt.prompt()).outcome === "accepted";
  });
});
addEventListener("appinstalled", () => offer(null));

/** Tell `on` how to install, now and on every change; null while the browser offers no way. */
export function watchInstall(on: (install: Install) => void): void {
  tell = on;
  tell(offered);
}

/** Whether the app was opened from the home screen. */
export function isInstalled(): boolean {
  const { standalone } = navigator as Navigator & { standalone?: boolean };
  return standalone === true || matchMedia("(display-mode: standalone)").matches;
}

/** Whether only words can help: iPhone and iPad install by their share menu, without a prompt. */
export function needsHomeScreenHint(): boolean {
  // An iPad calls itself a Mac; no Mac has a touch screen.
  const isIpad = navigator.platform === "MacIntel" && navigator.maxTouchPoints > 1;
  return !isInstalled() && (isIpad || /iPhone|iPad|iPod/.test(navigator.userAgent));
}
