"""People come in by the shop's own pages, in a browser without scripts: from the first owner on.

Sources: WCAG 2.2 as axe-core judges it, 7:1 by its 1.4.6; codes are read by zxing-cpp from a
picture of the screen.
"""

import re
import urllib.request
from collections.abc import Iterator
from contextlib import contextmanager
from io import BytesIO

import pytest
import zxingcpp
from PIL import Image
from playwright.sync_api import Browser, BrowserContext, Page, expect

from tests.phone.app import App
from tests.phone.conftest import PHONE
from tests.phone.test_access import AXE, COLORS, RUN
from tests.serving import SHARED, served

PASSWORD, NEW = "red oak and brass", "walnut and steel"
"""Invented for the test."""
PAGES = ("people", "devices", "password", "log", "sign-out", "sign-in")


@pytest.fixture(scope="module")
def first(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """The address that makes the first owner of a new shop's server, which takes a proxy's word."""
    file = tmp_path_factory.mktemp("shop") / "shop.db"
    settings = {"LONGPOINT_DATABASE": f"sqlite:///{file}", "LONGPOINT_PROXIES": "1"}
    with served(SHARED, settings=settings, until=r"http://\S+/join/\S+") as first:
        yield first


@contextmanager
def at(browser: Browser, **options: object) -> Iterator[Page]:
    """Give a page of a phone that has never been here, without scripts."""
    phone = {"viewport": PHONE, "is_mobile": True, "has_touch": True, "java_script_enabled": False}
    context = browser.new_context(**(phone | options))  # type: ignore[arg-type]
    yield context.new_page()
    context.close()


def sign_in(page: Page, address: str, name: str, password: str) -> None:
    page.goto(f"{address}/sign-in?next=/devices")
    page.get_by_label("Your name").fill(name)
    page.get_by_label("Password").fill(password)
    page.get_by_role("button", name="Sign in").tap()


def join(page: Page, address: str, name: str, password: str) -> None:
    page.goto(address)
    page.get_by_label("Your name").fill(name)
    page.get_by_label("New password").fill(password)
    page.get_by_label("The same again").fill(password)
    page.get_by_role("button", name="Come in").tap()
    expect(page).not_to_have_url(re.compile("/join/"))


def test_from_the_first_owner_to_a_phone_signed_out(browser: Browser, first: str) -> None:
    address = first.split("/join/")[0]
    with at(browser) as ada, at(browser) as ben, at(browser) as bens_other:
        join(ada, first, "Ada", PASSWORD)
        ada.goto(f"{address}/people")
        ada.get_by_role("button", name="Invite someone").tap()
        expect(ada.get_by_role("region", name="Invitation")).to_be_visible()
        invitation = ada.get_by_role("region", name="Invitation").get_by_role("link").inner_text()
        picture = Image.open(BytesIO(ada.screenshot(full_page=True)))
        (code,) = zxingcpp.read_barcodes(picture)
        assert code.text == invitation

        ben.goto(code.text)
        ben.get_by_label("Your name").fill("Ben")
        ben.get_by_label("New password").fill("short but")
        ben.get_by_label("The same again").fill("short but")
        ben.get_by_role("button", name="Come in").tap()
        expect(ben.get_by_text("Use at least 10 characters")).to_be_visible()
        expect(ben.get_by_label("Your name")).to_have_value("Ben")
        expect(ben.get_by_label("New password")).to_have_value("")
        join(ben, code.text, "Ben", PASSWORD)
        ben.goto(f"{address}/people")
        expect(ben.get_by_text("Ada", exact=True)).to_be_visible()
        expect(ben.get_by_role("button", name="Invite someone")).to_have_count(0)
        ben.goto(code.text)
        expect(ben.get_by_text("ask for a new one")).to_be_visible()

        sign_in(bens_other, address, "ben", "not this one")
        expect(bens_other.get_by_text("Name or password is wrong.")).to_be_visible()
        sign_in(bens_other, address, "ben", PASSWORD)
        expect(bens_other.get_by_text("this one")).to_be_visible()
        expect(bens_other.get_by_role("listitem")).to_have_count(2)
        other = bens_other.get_by_role("listitem").filter(has_not_text="this one")
        other.get_by_role("button", name=re.compile("^Sign out")).tap()
        expect(bens_other.get_by_role("listitem")).to_have_count(1)
        ben.goto(f"{address}/devices")
        expect(ben.get_by_role("heading", name="Sign in")).to_be_visible()

        sign_in(ben, address, "Ben", PASSWORD)
        expect(ben.get_by_text("this one")).to_be_visible()
        ben.goto(f"{address}/password")
        ben.get_by_label("Password until now").fill(PASSWORD)
        ben.get_by_label("New password").fill(NEW)
        ben.get_by_label("The same again").fill(NEW)
        ben.get_by_role("button", name="Change it").tap()
        expect(ben.get_by_role("listitem")).to_have_count(1)
        bens_other.goto(f"{address}/devices")
        expect(bens_other.get_by_role("heading", name="Sign in")).to_be_visible()

        ada.goto(f"{address}/people")
        ada.get_by_text("End access").first.tap()
        ada.get_by_role("button", name="End it now: Ada").tap()
        expect(ada.get_by_role("alert")).to_contain_text("make someone else one first")
        bens = ada.get_by_role("listitem").filter(has_text="Ben")
        bens.get_by_text("End access").tap()
        bens.get_by_role("button", name="End it now: Ben").tap()
        expect(ada.get_by_role("listitem").filter(has_text="Ben")).to_have_count(0)
        ben.goto(f"{address}/people")
        expect(ben.get_by_role("heading", name="Sign in")).to_be_visible()
        ada.goto(f"{address}/log")
        for words in ("Ben: access ended", "Ben: joined", "Ben: sign-in failed"):
            expect(ada.get_by_text(words)).to_be_visible()

        ada.goto(f"{address}/sign-out")
        ada.get_by_role("button", name="Sign out").tap()
        expect(ada.get_by_role("heading", name="Sign in")).to_be_visible()
        asked = urllib.request.Request(
            f"{address}/sign-in", headers={"X-Forwarded-Proto": "https", "X-Forwarded-For": "::1"}
        )
        with urllib.request.urlopen(asked) as said:
            assert "Secure" in said.headers["Set-Cookie"], "what a web server before it says counts"
    assert look_at_all(browser, address) == []


def look_at_all(browser: Browser, address: str) -> list[object]:
    """Return what is wrong with any page that Ada sees: light, dark, on the narrowest phone."""
    with at(browser, java_script_enabled=True, service_workers="block") as page:
        sign_in(page, address, "Ada", PASSWORD)
        expect(page.get_by_text("this one")).to_be_visible()
        faults: list[object] = []
        for name in PAGES:
            page.goto(f"{address}/{name}")
            faults += looked_at(page, name)
        page.goto(f"{address}/people")
        page.get_by_role("button", name="Invite someone").tap()
        invitation = page.get_by_role("region", name="Invitation").get_by_role("link")
        expect(invitation).to_be_visible()
        faults += looked_at(page, "invitation")
        page.goto(invitation.inner_text())
        page.get_by_label("Your name").fill("Eve Fernandez-Whittlesworth of the far shop")
        page.get_by_label("New password").fill("too short")
        page.get_by_label("The same again").fill("too short")
        page.get_by_role("button", name="Come in").tap()
        expect(page.get_by_text("Use at least 10 characters")).to_be_visible()
        return faults + looked_at(page, "join with a fault")


def looked_at(page: Page, name: str) -> list[object]:
    """Return what axe finds in both looks, and whether the page moves sideways at 320."""
    page.evaluate(AXE.read_text())
    found: list[object] = []
    for scheme in ("light", "dark"):
        page.emulate_media(color_scheme=scheme)  # type: ignore[arg-type]
        said = page.evaluate(RUN, None if scheme == "light" else COLORS)
        assert said["contrast"], "the rule of 7:1 did not run"
        found += said["violations"]
    page.emulate_media(color_scheme="light")
    page.set_viewport_size({"width": 320, "height": 640})
    wide = page.evaluate("document.documentElement.scrollWidth")
    page.set_viewport_size({"width": PHONE["width"], "height": PHONE["height"]})
    found += [f"{wide} wide at 320"] if wide > 320 else []
    return [name, *found] if found else []


def test_the_installed_app_leaves_them_to_the_server(
    page: Page, context: BrowserContext, first: str
) -> None:
    address = first.split("/join/")[0]
    App(page, address).install()
    page.goto(f"{address}/devices")
    expect(page.get_by_role("heading", name="Sign in")).to_be_visible()
    context.set_offline(True)
    page.goto(f"{address}/people")
    expect(page.get_by_role("heading", name="No network")).to_be_visible()
    page.get_by_role("link", name="To the app").tap()
    expect(page.get_by_role("navigation")).to_be_visible()
