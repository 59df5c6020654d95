"""A search that goes on: its progress is seen, it can be stopped, and what it found stands.

The searches here go on only as far as a test lets them, step by step, so that nothing depends on
how fast the machine is. CPython's core, run to its end, is what the phone's answer is held against.
"""

import json
import re
from collections.abc import Iterator
from typing import Any

import pytest
from playwright.sync_api import Browser, Locator, Page, expect

from longpoint.trade.calls import call
from tests.phone.app import App, hash_of
from tests.phone.conftest import page_of

# The watchdog counts by intervals: without any, a search that waits for the test is no hung core.
STEPS = """
(() => {
  window.setInterval = () => 0;
  const post = Worker.prototype.postMessage;
  const waiting = [];
  let free = 0;
  const go = () => {
    for (; free > 0 && waiting.length > 0; free -= 1) waiting.shift()();
  };
  window.asked = 0;
  window.letGo = (steps) => { free += steps; go(); };
  window.breakStep = () => waiting.shift()(true);
  Worker.prototype.postMessage = function (message, ...rest) {
    const text = message.text ?? "";
    if (!text.startsWith('{"do":"continue"')) return post.call(this, message, ...rest);
    window.asked += 1;
    const broken = { ...message, text: 0 };
    waiting.push((isBroken) => post.call(this, isBroken ? broken : message, ...rest));
    go();
  };
})();
"""
ALL = 10_000

PIECES = [{"length": f"{15 + i * 13 % 61} {1 + 2 * (i * 5 % 8)}/16", "count": 3} for i in range(14)]
STICKS = [
    {"length": "96", "price": "11.50"},
    {"length": "120", "price": "15.25"},
    {"length": "144", "price": "18.75"},
]
PARTS = [
    {"length": 9 + i * 11 % 53, "width": 5 + i * 11 % 23, "count": 3, "grain": "any"}
    for i in range(10)
]
# 42 pieces out of three lengths of stick; 30 parts out of sheets of one size.
SEARCHES: list[tuple[str, str, dict[str, Any]]] = [
    ("saw", "stick-plan", {"pieces": PIECES, "sticks": STICKS, "kerf": "1/8"}),
    (
        "yard",
        "sheet-plan",
        {"parts": PARTS, "sheets": [{"length": 96, "width": 48}], "kerf": "1/8"},
    ),
]


@pytest.fixture
def app(browser: Browser, address: str) -> Iterator[App]:
    page = page_of(browser, reduced_motion="reduce")
    errors: list[str] = []
    page.on("pageerror", lambda error: errors.append(str(error)))
    page.add_init_script(STEPS)
    yield App(page, address)
    page.context.close()
    assert errors == []


def start(app: App, place: str, slug: str, inputs: dict[str, Any]) -> None:
    typed = {key: v if isinstance(v, str) else json.dumps(v) for key, v in inputs.items()}
    app.open(hash_of(place, slug, typed))
    app.expect_answer()
    expect(bar(app)).to_be_visible()


def bar(app: App) -> Locator:
    return app.answer.get_by_role("progressbar")


def progress(app: App) -> float:
    return float(bar(app).evaluate("(bar) => bar.value"))


def button(app: App, name: str) -> Locator:
    return app.answer.get_by_role("button", name=name, exact=True)


def asked(page: Page) -> int:
    return int(page.evaluate("window.asked"))


def let_go(page: Page, steps: int) -> None:
    page.evaluate("(steps) => window.letGo(steps)", steps)


def leads_at_last(slug: str, inputs: dict[str, Any]) -> list[str]:
    """Return the lead figures of CPython's core once it has nothing better to look for."""
    request = {"do": "answer", "tool": slug, "inputs": inputs, "units": "in", "step": 16}
    reply = json.loads(call(json.dumps(request)))
    while reply["search"] is not None:
        reply = json.loads(call(json.dumps({"do": "continue", "search": reply["search"]})))
    return [figure["text"] for figure in reply["answer"]["figures"] if figure["lead"]]


@pytest.mark.parametrize(("place", "slug", "inputs"), SEARCHES, ids=["sticks", "sheets"])
def test_its_progress_is_seen_and_stop_stops_it(
    app: App, place: str, slug: str, inputs: dict[str, Any]
) -> None:
    start(app, place, slug, inputs)
    expect(app.answer.get_by_text("Looking for a better answer")).to_be_visible()
    first = progress(app)
    let_go(app.page, 3)
    expect(bar(app)).not_to_have_js_property("value", first)
    assert first < progress(app) < 1

    button(app, "Stop").tap()
    expect(app.answer.get_by_text("Stopped: a better answer may exist")).to_be_visible()
    let_go(app.page, ALL)
    # The core answers in turn: once it has read the kerf, the step under way has come home too.
    app.field("Kerf").tap()
    expect(app.pad).to_contain_text("3 mm")
    stopped, steps = progress(app), asked(app.page)
    app.pad.get_by_role("button", name="Close the pad").tap()
    app.expect_answer()
    assert asked(app.page) == steps
    assert progress(app) == stopped < 1

    button(app, "Go on").tap()
    expect(bar(app)).to_have_count(0)
    assert asked(app.page) > steps
    for text in leads_at_last(slug, inputs):
        expect(app.answer).to_contain_text(text)


def test_another_form_is_answered_while_the_old_one_is_searched(app: App) -> None:
    place, slug, inputs = SEARCHES[0]
    start(app, place, slug, inputs)
    app.enter("Kerf", "1/4")
    let_go(app.page, ALL)
    expect(bar(app)).to_have_count(0)
    for text in leads_at_last(slug, inputs | {"kerf": "1/4"}):
        expect(app.answer).to_contain_text(text)


def test_a_search_that_breaks_leaves_the_answer_it_had(app: App) -> None:
    """A step past the watchdog's patience cost the good answer before it: all began anew."""
    start(app, *SEARCHES[0])
    had = app.headline.text_content() or ""
    app.page.evaluate("window.breakStep()")
    expect(bar(app)).to_have_count(0)
    app.expect_answer(had)


# 70 rows out of three lengths of stick: what is cut takes longer to say than to plan.
MANY = [{"length": f"{20 + i * 7 % 61} {1 + i % 15}/16"} for i in range(70)]
LONG_LIST = ("saw", "stick-plan", {"pieces": MANY, "sticks": STICKS})


def begin_long_list(app: App) -> str:
    """Open a long list and return its verdict, which stands before what is cut."""
    place, slug, inputs = LONG_LIST
    app.open(hash_of(place, slug, {key: json.dumps(value) for key, value in inputs.items()}))
    expect(app.answer).not_to_have_class(re.compile("withdrawn"))
    expect(app.headline).to_contain_text("Buy ")
    expect(pieces(app)).to_have_count(0)
    return (app.answer.locator(".verdict .unseen").first.text_content() or "").strip()


def pieces(app: App) -> Locator:
    return app.page.locator(".below:not([hidden]) .line")


def test_of_a_long_list_the_verdict_comes_first_and_what_is_cut_with_the_next_answer(
    app: App,
) -> None:
    verdict = begin_long_list(app)
    assert verdict.startswith("Buy "), "the whole sentence"
    let_go(app.page, 1)
    app.expect_answer(verdict)
    expect(app.page.locator(".result lp-drawing")).to_be_visible()
    expect(pieces(app)).not_to_have_count(0)


def test_who_stops_the_search_at_once_has_what_is_cut_all_the_same(app: App) -> None:
    begin_long_list(app)
    button(app, "Stop").tap()
    expect(app.answer.get_by_text("Stopped: a better answer may exist")).to_be_visible()
    let_go(app.page, 1)
    expect(pieces(app)).not_to_have_count(0)
    steps = asked(app.page)
    let_go(app.page, ALL)
    button(app, "Go on").tap()
    expect(bar(app)).to_have_count(0)
    assert asked(app.page) > steps


def test_a_long_list_that_breaks_before_it_is_whole_is_asked_again(app: App) -> None:
    begin_long_list(app)
    app.page.evaluate("window.breakStep()")
    let_go(app.page, ALL)
    expect(pieces(app)).not_to_have_count(0)
    expect(bar(app)).to_have_count(0)
