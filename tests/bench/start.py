"""Offline cold start: from opening a tool's address to its answer on the screen.

The app is kept by the service worker, the server is ended and the network cut, the browser is
closed. Each round starts the browser anew, so nothing of the app is in its memory. The clock is
the page's own, which starts with the navigation, before the service worker is woken.
"""

from pathlib import Path

from playwright.sync_api import Playwright

from tests.bench.browser import Pace, phone

# Shown: the answer stands and its drawing is no ghost. The frame that holds them is asked for then,
# and a message posted within that frame is heard when the page has handed it to the screen.
_WATCH = """
window.shown = new Promise((resolve) => {
  const isShown = () =>
    document.querySelector("#answer:not(.withdrawn)") &&
    document.querySelector(".result lp-drawing:not(.ghost) svg");
  const watch = new MutationObserver(() => {
    if (!isShown()) return;
    watch.disconnect();
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => resolve(performance.now());
      port2.postMessage(0);
    });
  });
  watch.observe(document, { subtree: true, childList: true, attributes: true });
});
"""


def cold_start(playwright: Playwright, folder: Path, address: str, pace: Pace, tool: str) -> float:
    """Return the milliseconds from opening a tool, by its address in the app, to its answer."""
    with phone(playwright, folder) as context:
        context.set_offline(True)
        context.add_init_script(_WATCH)
        page = context.new_page()
        with pace(page, folder):
            page.goto(f"{address}/{tool}", wait_until="commit")
            return float(page.evaluate("() => window.shown"))
