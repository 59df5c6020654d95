"""A phone that lies at the saw for an hour: the app wakes it for nothing.

The hour is the page's own, on a clock that the test turns. Worker and service worker set no timers;
what the page asks of them and of the network is counted with its own.
"""

from playwright.sync_api import Page, expect

from tests.phone.app import FRAME, App, hash_of

_COUNT = """
window.woken = [];
let pending = 0;
let settled = () => undefined;
window.answered = () => new Promise((resolve) => {
  settled = () => pending === 0 && resolve();
  settled();
});
const heard = () => {
  pending -= 1;
  settled();
};
const workers = new WeakSet();
const post = Worker.prototype.postMessage;
Worker.prototype.postMessage = function (...given) {
  window.woken.push("postMessage");
  // Once: taken away and put back while a message is told, it would not hear that one.
  if (!workers.has(this)) this.addEventListener("message", heard);
  workers.add(this);
  pending += 1;
  return post.apply(this, given);
};
const ask = window.fetch;
window.fetch = (...given) => (window.woken.push("fetch"), ask(...given));
for (const name of ["setTimeout", "setInterval", "requestAnimationFrame"]) {
  const set = window[name];
  window[name] = (work, ...rest) =>
    set.call(window, (...given) => (window.woken.push(name), work(...given)), ...rest);
}
"""
SECOND, HOUR = 1_000, 3_600_000
QUIET = 60
"""Seconds in which nothing woke the page, after which nothing may."""
MOST = 600
"""Seconds until a page that is still woken is at fault."""


def wakes(page: Page, milliseconds: int) -> list[str]:
    """Return what woke the page while its clock ran on."""
    page.evaluate("window.woken = []")
    page.clock.run_for(milliseconds)
    woken: list[str] = page.evaluate("window.woken")
    return woken


def settle(page: Page) -> set[str]:
    """Let the clock run until all is answered and kept; return what woke the page meanwhile."""
    quiet, seen = 0, set()
    for _ in range(MOST):
        page.evaluate("window.answered()")  # a clock that ran on would call the core too slow
        woken = wakes(page, SECOND)
        seen |= set(woken)
        quiet = 0 if woken else quiet + 1
        if quiet == QUIET:
            return seen
    raise AssertionError(f"after {MOST} s the page is still woken by {seen}")


def test_an_hour_at_the_saw_wakes_nothing(app: App) -> None:
    page = app.page
    page.clock.install()
    page.add_init_script(_COUNT)
    app.open("#/job")
    page.get_by_role("button", name="Open the demo job").tap()
    expect(page.locator("lp-job")).to_be_visible()
    app.turn("saw")
    expect(page.locator(".tickbox").first).to_be_visible()
    page.evaluate("void setTimeout(() => 0, 20000)")
    assert "setTimeout" in settle(page), "what wakes a page is counted"
    assert wakes(page, HOUR) == []

    app.turn("saw", "mitered-frame", hash_of("saw", "mitered-frame", FRAME))
    app.expect_answer()
    app.field("Opening width").tap()
    expect(page.locator(".pad")).to_be_visible()
    settle(page)
    assert wakes(page, HOUR) == []
