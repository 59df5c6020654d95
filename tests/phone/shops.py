"""A shop's server and its people's phones, as tests of several handle them.

A phone's browser is a context of its own. The server is the real application on SQLite.
"""

import json
import threading
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

from playwright.sync_api import Browser, Locator, expect
from sqlalchemy import select
from werkzeug.serving import WSGIRequestHandler, make_server

from longpoint.app import create_app
from longpoint.shop import people
from longpoint.shop.database import Database
from longpoint.shop.documents import read
from longpoint.shop.tables import Document
from tests.phone.app import App
from tests.phone.conftest import PHONE
from tests.phone.storage import by_key, is_written, stores, wait_until

PASSWORD = "red oak and brass"
UP = "On the shop's server"
HERE = "Kept here"


class _Quiet(WSGIRequestHandler):
    def log_request(self, *said: object) -> None:
        """Say nothing."""


class Shop:
    """A shop's server in this process, and its people's phones."""

    def __init__(self, browser: Browser, folder: Path) -> None:
        self.browser, self.folder = browser, folder
        self.database = Database(f"sqlite:///{folder / 'shop.db'}")
        self.app = create_app({"SHOP": self.database})
        self._server = make_server("127.0.0.1", 0, self.app, threaded=True, request_handler=_Quiet)
        self._thread = threading.Thread(target=self._server.serve_forever, args=(0.02,))
        self._thread.start()
        self.address = f"http://127.0.0.1:{self._server.server_port}"
        self.errors: list[str] = []

    def phone(self, name: str, role: str = "crew", years: int = 0) -> App:
        """Return a new phone on which someone new has come in; its clock may be years off."""
        context = self.browser.new_context(
            viewport=PHONE, has_touch=True, is_mobile=True, service_workers="block",
            reduced_motion="reduce",
        )  # fmt: skip
        page = context.new_page()
        if years:
            page.clock.install(time=datetime.now() + timedelta(days=365 * years))
        page.on("pageerror", lambda error: self.errors.append(str(error)))
        with self.database.session() as session:
            token = people.invite(session, role)
        page.goto(f"{self.address}/join/{token}")
        page.get_by_label("Your name").fill(name)
        page.get_by_label("New password").fill(PASSWORD)
        page.get_by_label("The same again").fill(PASSWORD)
        page.get_by_role("button", name="Come in").tap()
        page.wait_for_url(f"{self.address}/#/yard")
        return App(page, self.address)

    def kept(self, kind: str) -> dict[str, Any]:
        """Return the one document of a kind that the server has."""
        with self.database.reading() as session:
            name = session.scalars(select(Document.id).where(Document.kind == kind)).one()
            return read(session, name)

    def titles(self) -> set[str]:
        """Return what the jobs on the server are called."""
        with self.database.reading() as session:
            names = session.scalars(select(Document.id).where(Document.kind == "job")).all()
            stand = [read(session, name) for name in names]
        return {each["body"]["title"] for each in stand if not each["deleted"]}

    def close(self) -> None:
        for context in self.browser.contexts:
            context.close()
        self._server.shutdown()
        self._thread.join()
        self._server.server_close()
        self.database.close()
        assert self.errors == []


def look(app: App) -> None:
    """Let the phone ask the server now, as it does when its network comes back."""
    app.page.evaluate("dispatchEvent(new Event('online'))")


SHARED = ("job", "list", "settings", "photo")
"""Kinds of documents that go up; the settings that are called so are the phone's own."""


def to_go(app: App) -> list[str]:
    """Return what is kept here and not known to be on the server, but for what another left."""
    kept = stores(app.page)
    known = by_key(kept["shared"])
    who = json.loads(app.page.evaluate("localStorage.getItem('longpoint shop')") or "{}")
    left = (who.get("left") or {}).get("names", [])
    lacking = []
    for key, document in by_key(kept["documents"]).items():
        name = ".".join(key)
        if key[0] not in SHARED or name == "settings.settings" or name in left:
            continue
        there = known.get(key)
        stands = there and there["rev"] is not None and there["pending"] is None
        if not (there and stands and there["revision"] == document["revision"]):
            lacking.append(name)
    return lacking


def wait_until_up(app: App) -> None:
    """Wait until all that was done is written and has gone up, photos too.

    What a screen says of the last change may still stand as the next one is made.
    """

    def is_up() -> bool:
        look(app)
        return is_written(app.page) and not to_go(app)

    wait_until(app.page, is_up, "all that was done is on the server")


def expect_up(app: App) -> None:
    """Wait until what was done has gone up, and the screen says so."""
    wait_until_up(app)
    expect(app.page.get_by_text(UP).first).to_be_visible()


def expect_newer(shop: Shop, app: App, before: int) -> None:
    """Wait until the server has the job as a phone just changed it: a newer one than it had before.

    What a screen said of the last change may still stand as the next one is made.
    """

    def has_newer() -> bool:
        look(app)
        return bool(shop.kept("job")["rev"] > before)

    wait_until(app.page, has_newer, f"a job later than {before} on the server")


def rename(app: App, name: str, customer: str = "") -> None:
    app.page.get_by_role("button", name="Job and customer").tap()
    if name:
        app.page.get_by_label("Name of the job").fill(name)
    if customer:
        app.page.get_by_role("textbox", name="Customer").fill(customer)
    app.page.get_by_role("button", name="Done").tap()
    expect(app.page.get_by_role("dialog")).to_have_count(0)


def title(app: App) -> Any:
    return expect(app.page.get_by_role("heading", level=1))


def open_job(app: App, name: str) -> None:
    """Open a job from the list, and wait until it lies still: its lines are all said."""
    app.open("#/job")
    app.page.get_by_role("link", name=name).tap()
    title(app).to_have_text(name)
    expect(app.page).to_have_title(f"{name} · Longpoint")
    app.page.locator("lp-job").evaluate("(screen) => screen.job.settled")


def both(*apps: App) -> None:
    """Let each phone hear of the other."""
    for app in (*apps, *apps):
        look(app)
        expect_up(app)


def settings_of(app: App) -> Locator:
    """Open the settings; return what they say of the shop's server."""
    app.page.get_by_role("button", name="Units and settings").tap()
    section = app.page.get_by_role("region", name="The shop's server")
    expect(section).to_be_visible()
    return section


def close_settings(app: App) -> None:
    app.page.get_by_role("dialog").get_by_role("button", name="Close").tap()
    expect(app.page.get_by_role("dialog")).to_have_count(0)


def all_up(app: App) -> None:
    """Wait until nothing is left on the phone that the server lacks."""
    wait_until_up(app)
    section = settings_of(app)
    expect(section).to_contain_text("All of it is on the shop's server.")
    close_settings(app)
