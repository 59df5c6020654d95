"""One invented room, trimmed out from the phone's screen with no signal.

The numbers were worked out by hand; `by_hand` in the demo fixture says how.
"""

import json
import re
from collections.abc import Iterator
from typing import Any

import pytest
from playwright.sync_api import Browser, expect

from longpoint.trade.rows import Rows
from longpoint.trade.shelf import tool_named
from tests.cases import FIXTURES, inches
from tests.phone.app import App
from tests.phone.conftest import PHONE
from tests.trade.asking import answer

ROOM: dict[str, Any] = json.loads((FIXTURES / "demo.json").read_text(encoding="utf-8"))
JOBS = [name for name in ROOM if name != "about"]


@pytest.fixture(scope="module")
def app(browser: Browser, address: str) -> Iterator[App]:
    """The app on a phone that has it all kept, and then loses the network."""
    context = browser.new_context(viewport=PHONE, has_touch=True, is_mobile=True)
    app = App(context.new_page(), address)
    app.install()
    context.set_offline(True)
    yield app
    context.close()


def fill_in(app: App, tool: str, inputs: dict[str, Any], path: str = "field-") -> None:
    """Type a form through its own controls, rows added one by one."""
    words = {each.name: each.row for each in tool_named(tool).inputs if isinstance(each, Rows)}
    for name, value in inputs.items():
        if isinstance(value, list):
            add = re.compile(f"^Add an? {words[name]}$")
            for at, row in enumerate(value):
                app.add_row(add, f"{name}-{at}")
                fill_in(app, tool, row, f"{path}{name}-{at}-")
        else:
            app.put(f"#{path}{name}", value)


@pytest.mark.parametrize("name", JOBS)
def test_the_core_agrees_with_the_hand(name: str) -> None:
    job = ROOM[name]
    found = answer(job["tool"], **job["inputs"])
    figures = {figure["name"]: figure["value"] for figure in found["figures"]}
    for figure, value in job["figures"].items():
        assert figures[figure] == pytest.approx(inches(value), abs=5e-5), figure
    lengths = [piece["text"] for piece in found["pieces"]]
    assert lengths[: len(job["pieces"])] == job["pieces"]


@pytest.mark.parametrize("name", JOBS)
def test_the_screen_says_what_the_hand_said(app: App, name: str) -> None:
    job = ROOM[name]
    app.page.keyboard.press("Escape")
    app.go({"saw": "Saw", "site": "Site"}[job["place"]])
    question = tool_named(job["tool"]).question
    app.page.get_by_role("link", name=question).click()
    fill_in(app, job["tool"], job["inputs"])
    app.page.keyboard.press("Escape")
    found = answer(job["tool"], **job["inputs"])
    lead = next(figure for figure in found["figures"] if figure["lead"])
    app.expect_answer(lead["label"], lead["text"].split()[0])
    if job["pieces"]:
        pieces = app.block("Cut").get_by_role("listitem")
        expect(pieces).to_have_count(len(job["pieces"]))
        for at, length in enumerate(job["pieces"]):
            expect(pieces.nth(at)).to_contain_text(length.replace(" ", " and ", 1))
