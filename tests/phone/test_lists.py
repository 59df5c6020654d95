"""A list of the person's own is kept once, for every tool that asks for it."""

import re
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser

from tests.phone.app import App
from tests.phone.conftest import PHONE


@pytest.fixture
def app(browser: Browser, address: str) -> Iterator[App]:
    context = browser.new_context(viewport=PHONE, has_touch=True, is_mobile=True)
    yield App(context.new_page(), address)
    context.close()


def put_on_the_list(app: App, label: str, thickness: str, width: str) -> None:
    """Note at the yard what the tape says about a label."""
    app.page.get_by_role("button", name=re.compile("^Add an? ")).click()
    for name, text in (("label", label), ("thickness", thickness), ("width", width)):
        app.page.locator(f"#field-yard-0-{name}").fill(text)


def test_what_the_tape_said_is_there_again_and_goes_before_the_standard(app: App) -> None:
    """A yard's heavy 2x4 of 1 3/4: common practice, no source."""
    app.open("#/yard/stock-sizes?family=softwood&label=2x4")
    app.expect_answer("Thickness", "1 and 1/2")
    put_on_the_list(app, "2x4", "1 3/4", "3 1/2")
    app.expect_answer("Thickness", "1 and 3/4")
    assert "yard=" not in app.page.url
    app.page.keyboard.press("Escape")
    app.page.get_by_role("button", name="Start over").click()
    app.open("#/yard/stock-sizes?family=softwood&label=2x4")
    app.expect_answer("Thickness", "1 and 3/4")
    app.open("#/yard/stock-sizes?family=softwood&label=2x6")
    app.expect_answer("Thickness", "1 and 1/2")
