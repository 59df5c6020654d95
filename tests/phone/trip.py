"""What a person does on the phone all day long: open a question, fill it in, read the number."""

import re
from collections.abc import Iterator
from contextlib import contextmanager

from playwright.sync_api import Browser, Locator, expect

from longpoint.trade.shelf import tool_named
from tests.phone.app import App
from tests.phone.conftest import PHONE


@contextmanager
def away_from_the_network(browser: Browser, address: str) -> Iterator[App]:
    """A phone that visited the app once, and has no signal any more."""
    context = browser.new_context(viewport=PHONE, has_touch=True, is_mobile=True)
    page = context.new_page()
    errors: list[str] = []
    page.on("pageerror", lambda error: errors.append(str(error)))
    app = App(page, address)
    app.install()
    context.set_offline(True)
    yield app
    context.close()
    assert errors == []


def ask(app: App, place: str, slug: str, **inputs: str) -> None:
    """Tap a place and a tool's question there, and fill the form in."""
    app.go(place)
    app.page.get_by_role("link", name=tool_named(slug).question).click()
    expect(app.page).to_have_title(f"{tool_named(slug).title} · Longpoint")
    fill(app, "", **inputs)
    app.page.keyboard.press("Escape")


def fill(app: App, row: str, **inputs: str) -> None:
    """Enter values under the contract's names, unfolding what is folded away."""
    for name, value in inputs.items():
        app.put(f"#field-{row}{name}", value)


def add(app: App, rows: str, at: int, **inputs: str) -> None:
    """Tap "Add a …" and fill the new row in."""
    app.add_row(re.compile("^Add an? "), f"{rows}-{at}")
    fill(app, f"{rows}-{at}-", **inputs)
    app.page.keyboard.press("Escape")


def line(app: App, block: str, name: str) -> Locator:
    """Return the line of a list below the answer that begins with these words."""
    lines = app.block(block).get_by_role("listitem")
    return lines.filter(has=app.page.locator(".name", has_text=re.compile(f"^{name}$")))


def table_row(app: App, table: str, first: str) -> Locator:
    """Return the row of a table whose first cell says these words."""
    rows = app.block(table).get_by_role("row")
    return rows.filter(has=app.page.locator(":scope > :first-child", has_text=first)).first
