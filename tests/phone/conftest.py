"""A browser the size of a phone, and the app served to it."""

import os
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest
from playwright.sync_api import (
    Browser,
    BrowserContext,
    Page,
    Playwright,
    expect,
    sync_playwright,
)

from tests.phone.app import App

if TYPE_CHECKING:
    from tests.phone.shops import Shop

PHONE = {"width": 390, "height": 844}
# As long as what is waited for comes, it may: both processors have a browser of their own to serve.
expect.set_options(timeout=30_000)
FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-background-networking"]
RARELY_BETTER = "--js-flags=--wasm-tiering-budget=200000000"
"""Better code for the interpreter is made later than usual: most tests are over before it pays, and
together they take a fifth less of the processors."""


@pytest.fixture(scope="session")
def browser_path() -> str:
    """The browser that `tests/run` found; without one the tests fail, they are never skipped."""
    path = os.environ.get("LONGPOINT_BROWSER")
    if not path:
        pytest.fail("LONGPOINT_BROWSER names no browser: run the tests with `sh tests/run`.")
    return path


@pytest.fixture(scope="session", autouse=True)
def judged_everywhere() -> Iterator[None]:
    """Where LONGPOINT_AXE asks for it, axe looks at every state that tests come to."""
    if not os.environ.get("LONGPOINT_AXE"):
        yield
        return
    from tests.phone import every_state

    every_state.watch()
    yield
    print(f"\naxe: {len(every_state.seen)} states")
    if every_state.found:
        pytest.fail("\n".join(f"{place}: {said}" for place, said in every_state.found.items()))


@pytest.fixture(scope="session")
def playwright() -> Iterator[Playwright]:
    with sync_playwright() as playwright:
        yield playwright


@pytest.fixture(scope="session")
def browser(playwright: Playwright, browser_path: str) -> Iterator[Browser]:
    browser = playwright.chromium.launch(executable_path=browser_path, args=[*FLAGS, RARELY_BETTER])
    yield browser
    browser.close()


@pytest.fixture
def context(browser: Browser) -> Iterator[BrowserContext]:
    """A phone that has never seen the app: 390 x 844, touch, nothing kept."""
    context = browser.new_context(viewport=PHONE, has_touch=True, is_mobile=True)
    yield context
    context.close()


@pytest.fixture
def page(context: BrowserContext) -> Iterator[Page]:
    """A page whose errors fail the test."""
    page = context.new_page()
    errors: list[str] = []
    page.on("pageerror", lambda error: errors.append(str(error)))
    yield page
    assert errors == []


def page_of(browser: Browser, **options: Any) -> Page:
    """Return a page of a phone that keeps nothing yet; the service worker is not what is tried."""
    phone = {"viewport": PHONE, "has_touch": True, "is_mobile": True, "service_workers": "block"}
    return browser.new_context(**(phone | options)).new_page()


@pytest.fixture(scope="module")
def shared(browser: Browser, address: str) -> Iterator[App]:
    """One page for tests that leave nothing behind: addresses carry what it shows.

    Nothing moves on it, so that nothing is measured half way, and it keeps nothing for later.
    """
    page = page_of(browser, reduced_motion="reduce")
    errors: list[str] = []
    page.on("pageerror", lambda error: errors.append(str(error)))
    app = App(page, address)
    app.open()
    yield app
    page.context.close()
    assert errors == []


@pytest.fixture
def app(browser: Browser, address: str) -> Iterator[App]:
    """A page of a phone that keeps nothing yet, on which nothing moves."""
    page = page_of(browser, reduced_motion="reduce")
    errors: list[str] = []
    page.on("pageerror", lambda error: errors.append(str(error)))
    yield App(page, address)
    page.context.close()
    assert errors == []


@pytest.fixture
def shop(browser: Browser, tmp_path: Path) -> Iterator["Shop"]:
    """A shop's server in this process, and its people's phones."""
    from tests.phone.shops import Shop

    shop = Shop(browser, tmp_path)
    yield shop
    shop.close()
