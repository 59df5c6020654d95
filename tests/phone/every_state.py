"""Axe on every state that the phone's tests come to, in both looks:

    LONGPOINT_AXE=1 pytest tests/phone

After each tap, key and entry the page is judged, once for each state: one that differs in its tags,
classes, roles and ARIA attributes from all before. What is found is told at the end, as a failure.
The check itself judges the screens that `test_access.py` and `test_everybody.py` name.
"""

from collections.abc import Callable
from contextlib import suppress
from functools import wraps
from typing import Any

from playwright.sync_api import Error, Locator, Page

from tests.phone.test_access import AXE, COLORS, RUN

STATE = """
() => {
  const seen = [];
  const tells = /^(role|aria-\\w+|disabled|open|type)$/;
  const isOwn = /label|describedby|controls/;
  for (const each of document.body.querySelectorAll("*")) {
    if (!each.checkVisibility()) continue;
    const named = [...each.attributes].filter(({ name }) => tells.test(name));
    const said = named.map(({ name, value }) => (isOwn.test(name) ? name : name + value));
    seen.push([each.localName, each.getAttribute("class"), said].join());
  }
  return `${innerWidth} ${[...new Set(seen)].sort().join(" ")}`;
}
"""
# What moves or fades is looked at where it arrives, also what comes while axe looks.
STILL = """
(isStill) => {
  window.still ??= new CSSStyleSheet();
  const none = "animation: none !important; transition: none !important;";
  window.still.replaceSync(`*, *::before, *::after { ${none} }`);
  document.adoptedStyleSheets = isStill ? [window.still] : [];
}
"""
# An answer that no longer stands, and an example, are pale on purpose: nobody is to cut by them.
JUDGED = RUN.replace(
    "axe.run(document,", "axe.run({ exclude: ['.withdrawn', '.ghosted', '.ghost'] },"
)
# A control half under the foot of its sheet is scrolled to; sizes are judged by `test_access.py`.
HALF_SEEN = "insufficient size because it is partially obscured"
STEPS = ("tap", "click", "fill", "press", "check", "select_option")

seen: set[str] = set()
found: dict[str, str] = {}
"""What axe said of a place in a page, and in which state it said so first."""


def watch() -> None:
    """Judge pages after each step from now on."""
    for name in STEPS:
        setattr(Locator, name, _judged(getattr(Locator, name)))


def _judged(step: Callable[..., Any]) -> Callable[..., Any]:
    @wraps(step)
    def stepped(self: Locator, *values: Any, **named: Any) -> Any:
        done = step(self, *values, **named)
        with suppress(Error):  # The step led to another page, or ended this one.
            _look(self.page)
        return done

    return stepped


def _look(page: Page) -> None:
    # axe waits by timers: where a test turns the clock, or without scripts, it would wait for ever.
    state = page.evaluate(STATE)
    has_timers = "() => !('__pwClock' in window) && !matchMedia('(scripting: none)').matches"
    if state in seen or not page.evaluate(has_timers):
        return
    seen.add(state)
    if not page.evaluate("() => 'axe' in window"):
        page.evaluate(AXE.read_text())
    page.evaluate(STILL, True)
    for scheme, rules in (("light", None), ("dark", COLORS)):
        page.emulate_media(color_scheme=scheme)  # type: ignore[arg-type]
        for rule, place, words in page.evaluate(JUDGED, rules)["violations"]:
            if HALF_SEEN in words:
                continue
            found.setdefault(f"{rule} {place}", f"{scheme}, {page.url}: {words}")
    page.emulate_media(color_scheme="light")
    page.evaluate(STILL, False)
