"""What goes wrong between a phone and the shop's server is said, and nothing is lost by it.

The job that is ticked is that of `test_job_sheets`: a frame of four pieces, A1 to A4.
"""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Error, Playwright, Route, expect
from sqlalchemy import select

from longpoint.shop.tables import Change
from tests.bench.browser import phone
from tests.phone.app import App
from tests.phone.job_screens import add_item, begin, item
from tests.phone.kills import end_processes
from tests.phone.shops import (
    HERE,
    PASSWORD,
    UP,
    Shop,
    all_up,
    both,
    close_settings,
    expect_up,
    look,
    open_job,
    rename,
    settings_of,
)
from tests.phone.storage import put_documents, wait_until
from tests.phone.test_job_sheets import box, expect_ticked, job, record, sheet

WRITES = "**/api/documents/**"


def card(app: App, name: str) -> Any:
    return expect(app.page.get_by_role("link", name=name))


def sign_in(app: App, name: str) -> None:
    app.page.get_by_label("Your name").fill(name)
    app.page.get_by_label("Password").fill(PASSWORD)
    app.page.get_by_role("button", name="Sign in").tap()


def test_somebody_else_signs_in_where_work_has_not_gone_up(shop: Shop) -> None:
    """It is neither lost nor sent in the second's name, until the second says so."""
    shop.phone("Ben").page.context.close()
    ada = shop.phone("Ada", "owner")
    page = ada.page
    ada.open("#/job")
    begin(ada, "Porch")
    expect_up(ada)
    page.route(WRITES, lambda route: route.abort())
    rename(ada, "Porch, measured")
    expect(page.get_by_text("waiting for a network").first).to_be_visible()
    section = settings_of(ada)
    expect(section).to_contain_text("Before you sign out, let it go up")
    section.get_by_role("link", name="Sign out").tap()
    expect(page.get_by_text("is on this device alone")).to_be_visible()
    page.get_by_role("button", name="Sign out").tap()
    expect(page.get_by_role("heading", name="Sign in")).to_be_visible()
    page.unroute(WRITES)
    sign_in(ada, "Ben")
    said = "Ada left 1 thing on this phone that had not gone up: Porch, measured."
    expect(page.get_by_role("status").filter(has_text=said)).to_be_visible()
    ada.open("#/job")
    begin(ada, "Hall")
    expect_up(ada)
    ada.open("#/job")
    card(ada, "Hall").to_contain_text(UP)
    card(ada, "Porch, measured").to_contain_text("Kept here: Ada has not sent it up")
    assert shop.titles() == {"Porch", "Hall"}, "nothing of Ada's went up as Ben's"
    section = settings_of(ada)
    expect(section).to_contain_text("It goes up when Ada signs in here, or now in your name.")
    section.get_by_role("button", name="Send it up in my name").tap()
    expect(section).to_contain_text("All of it is on the shop's server.")
    close_settings(ada)
    card(ada, "Porch, measured").to_contain_text(UP)
    assert shop.titles() == {"Porch, measured", "Hall"}
    what_is_refused(shop, ada)


def what_is_refused(shop: Shop, ben: App) -> None:
    """No room, or a server that is older than the phone: said in words, and kept here."""
    room, shop.app.config["ROOM"] = shop.app.config["ROOM"], 100
    open_job(ben, "Hall")
    rename(ben, "Hall and stairs")
    look(ben)
    full = "There is no room left on the shop's server for what you began there."
    expect(ben.page.get_by_text(f"Kept here: {full}", exact=False)).to_be_visible()
    shop.app.config["ROOM"] = room
    all_up(ben)
    # A newer phone's job, which this server does not know how to check.
    newer = record(job(id="new", title="Newer", schema=1)) | {"schema": 2}
    put_documents(ben.page, ben.address, newer | {"body": job(id="new", title="Newer", schema=2)})
    ben.open("#/job")
    section = settings_of(ben)
    look(ben)
    older = "Newer: A newer Longpoint wrote this: update the shop's server."
    expect(section).to_contain_text(older)
    close_settings(ben)
    assert shop.titles() == {"Porch, measured", "Hall and stairs"}


def test_ticks_of_two_an_old_file_and_a_job_that_is_deleted(shop: Shop, tmp_path: Path) -> None:
    ada, ben = shop.phone("Ada", "owner", years=-1), shop.phone("Ben")
    put_documents(ada.page, ada.address, record(job()))
    open_job(ada, "Boot room")
    expect_up(ada)
    ben.open("#/job")
    look(ben)
    open_job(ben, "Boot room")
    for app, piece in ((ada, "A1"), (ben, "A2")):
        sheet(app, "Saw")
        app.page.context.set_offline(True)
        box(app, piece).tap()
        expect_ticked(app, piece)
    for app in (ada, ben):
        app.page.context.set_offline(False)
        app.go("Job")
    both(ada, ben)
    for app in (ada, ben):
        sheet(app, "Saw")
        for piece in ("A1", "A2"):
            expect_ticked(app, piece)
        expect_ticked(app, "A3", is_ticked=False)
    an_old_file(ada, ben, tmp_path)
    deleted(shop, ada, ben)


def an_old_file(ada: App, ben: App, folder: Path) -> None:
    """What was said since the file was saved stands, and what it says differently is asked."""
    with ada.page.expect_download() as download:
        ada.page.get_by_role("button", name="Save to a file").tap()
    download.value.save_as(folder / "saved.json")
    open_job(ada, "Boot room")
    rename(ada, "Boot room, today")
    ben.go("Job")
    both(ada, ben)
    open_job(ben, "Boot room, today")
    add_item(ben, "An empty item")
    both(ben, ada)
    ada.go("Saw")
    ada.page.get_by_label("Restore from a file").set_input_files(folder / "saved.json")
    expect(ada.page.get_by_text("Everything in the file is kept here")).to_be_visible()
    all_up(ada)
    open_job(ada, "Boot room, today")
    expect(item(ada, "Item")).to_be_visible()
    asked = ada.page.get_by_role("region", name="Said differently")
    expect(asked.get_by_role("group", name="Name of the job")).to_contain_text("Boot room")
    sheet(ada, "Saw")
    expect_ticked(ada, "A2")


def deleted(shop: Shop, ada: App, ben: App) -> None:
    """Whoever has a job open that another deletes is told, and may have it back."""
    both(ben)
    ada.open("#/job")
    ada.page.get_by_role("button", name="Delete Boot room, today").tap()
    expect(ada.page.get_by_role("link", name="Boot room, today")).to_have_count(0)
    look(ada)
    wait_until(ada.page, lambda: shop.titles() == set(), "the deletion is there")
    look(ben)
    said = ben.page.get_by_role("status").filter(has_text="Boot room, today was deleted by Ada.")
    expect(said).to_be_visible()
    gone = ben.block("Deleted in the last 30 days")
    gone.get_by_role("button", name="Boot room, today").tap()
    card(ben, "Boot room, today").to_be_visible()
    look(ben)
    wait_until(ben.page, lambda: shop.titles() == {"Boot room, today"}, "it is back")
    look(ada)
    card(ada, "Boot room, today").to_contain_text(UP)


def test_a_browser_killed_while_it_sends(
    shop: Shop, playwright: Playwright, tmp_path: Path
) -> None:
    """Started again it sends the same change under the same id: it is made once."""
    sent: list[str] = []
    ada = shop.phone("Ada", "owner")
    cookies = ada.page.context.cookies()
    ada.page.context.close()

    def unanswered(route: Route) -> None:
        if route.request.method == "PUT":
            sent.append(route.request.post_data_json["change_id"])
            route.fetch()
        else:
            route.fallback()

    def noted(route: Route) -> None:
        if route.request.method == "PUT":
            sent.append(route.request.post_data_json["change_id"])
        route.fallback()

    @contextmanager
    def life(handler: Callable[[Route], None]) -> Iterator[App]:
        with phone(playwright, tmp_path / "phone") as context:
            # The browser writes cookies down half a minute late: they are no part of this.
            context.add_cookies(cookies)  # type: ignore[arg-type]
            context.route(WRITES, handler)
            app = App(context.new_page(), shop.address)
            app.open("#/job")
            yield app

    def killed() -> None:
        with life(unanswered) as app:
            begin(app, "Porch")
            wait_until(app.page, lambda: shop.titles() != set(), "the server has it")
            expect(app.page.get_by_text(HERE).first).to_be_visible()
            end_processes(tmp_path / "phone")
            app.page.wait_for_event("close")
            app.page.title()

    with pytest.raises(Error, match="closed"):
        killed()
    with life(noted) as app:
        card(app, "Porch").to_contain_text(UP)
    assert sent[1] == sent[0], "sent again under its id"
    stands = shop.kept("job")
    assert stands["body"]["title"] == "Porch"
    with shop.database.reading() as session:
        made = session.scalars(select(Change.change_id)).all()
    assert sorted(made) == sorted(set(sent)), "each once"
    assert len(made) == stands["rev"]
