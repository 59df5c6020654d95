"""A list of the person's own is kept once, for every tool that asks for it."""

import re
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, expect

from tests.phone.app import App
from tests.phone.conftest import page_of


@pytest.fixture
def app(browser: Browser, address: str) -> Iterator[App]:
    page = page_of(browser)
    yield App(page, address)
    page.context.close()


def put_on_the_list(app: App, label: str, thickness: str, width: str) -> None:
    """Note at the yard what the tape says about a label."""
    app.add_row(re.compile("^Add an? "), "yard-0")
    for name, text in (("label", label), ("thickness", thickness), ("width", width)):
        app.page.locator(f"#field-yard-0-{name}").fill(text)


def test_what_the_tape_said_is_there_again_and_goes_before_the_standard(app: App) -> None:
    """A yard's heavy 2x4 of 1 3/4: common practice, no source."""
    app.open("#/yard/stock-sizes?family=softwood&label=2x4")
    app.expect_answer("Thickness", "1 and 1/2")
    put_on_the_list(app, "2x4", "1 3/4", "3 1/2")
    app.expect_answer("Thickness", "1 and 3/4")
    app.page.keyboard.press("Escape")
    # A tap anywhere has the address written at once.
    app.page.get_by_role("heading", level=1).click()
    assert "yard=" not in app.page.evaluate("location.hash")
    app.page.get_by_role("button", name="Start over").click()
    app.open("#/yard/stock-sizes?family=softwood&label=2x4")
    app.expect_answer("Thickness", "1 and 3/4")
    app.open("#/yard/stock-sizes?family=softwood&label=2x6")
    app.expect_answer("Thickness", "1 and 1/2")


def test_a_row_nobody_filled_is_not_waited_for(app: App) -> None:
    """The standard's 1 1/2 stands (NIST PS 20) until the tape says something else."""
    app.open("#/yard/stock-sizes?family=softwood&label=2x4")
    app.add_row(re.compile("^Add an? "), "yard-0")
    app.expect_answer("Thickness", "1 and 1/2")
    app.page.locator("#field-yard-0-label").fill("2x4")
    app.expect_withdrawn()
    app.page.locator("#field-yard-0-thickness").fill("1 3/4")
    app.expect_answer("Thickness", "1 and 3/4")


def test_what_is_wrong_stays_under_its_own_row_past_an_empty_one(app: App) -> None:
    app.open("#/yard/stock-sizes?family=softwood&label=2x4")
    for at in range(2):
        app.add_row(re.compile("^Add an? "), f"yard-{at}")
        app.page.keyboard.press("Escape")
    app.page.locator("#field-yard-1-thickness").fill("abc")
    expect(app.page.locator("#field-yard-1-thickness-message")).to_contain_text("abc")


def test_a_row_says_what_its_other_numbers_are_and_nothing_it_does_not_have(app: App) -> None:
    app.open("#/yard/stock-sizes?family=softwood&label=2x4")
    put_on_the_list(app, "2x4", "1 3/4", "")
    summary = app.page.locator(".summary")
    expect(summary).to_contain_text("thickness 1 and 3/4")
    expect(summary).not_to_contain_text("width")


def test_sharing_says_that_the_list_stays_here(app: App) -> None:
    app.open("#/yard/stock-sizes?family=softwood&label=2x4")
    put_on_the_list(app, "2x4", "1 3/4", "3 1/2")
    app.page.keyboard.press("Escape")
    app.page.get_by_role("button", name="Share").click()
    expect(app.page.get_by_text("stays on this phone")).to_be_visible()
