"""Two people's phones and the shop's server: one job on all of them, whatever the network does."""

import re
from pathlib import Path

from playwright.sync_api import Page, Request, Route, expect
from sqlalchemy import select

from longpoint.shop import people
from longpoint.shop.backup import back_up, restore
from longpoint.shop.tables import Change
from tests.phone.app import FRAMES, App
from tests.phone.job_screens import add_item, begin, expect_sound, item, open_item, take_photo
from tests.phone.plain import hosted
from tests.phone.shops import (
    HERE,
    PASSWORD,
    UP,
    Shop,
    both,
    expect_newer,
    expect_up,
    look,
    open_job,
    rename,
    title,
)  # fmt: skip
from tests.phone.storage import kept_documents, wait_until


def test_two_people_on_one_job_offline_by_turns(shop: Shop) -> None:
    # One phone's clock is a year ahead: nothing here asks what time it is.
    ada, ben = shop.phone("Ada", "owner"), shop.phone("Ben", years=1)
    ada.open("#/job")
    begin(ada, "Porch")
    add_item(ada, "Wall frames")
    expect_up(ada)
    ben.open("#/job")
    look(ben)
    expect(ben.page.get_by_role("link", name="Porch")).to_contain_text(UP)
    open_job(ben, "Porch")
    # Each is without a network for a while, and changes something else.
    for app in (ada, ben):
        app.page.context.set_offline(True)
    add_item(ada, "An empty item")
    rename(ben, "", customer="Mr. Fern")
    expect(ben.page.get_by_text("Kept here, waiting for a network").first).to_be_visible()
    for app in (ada, ben):
        app.page.context.set_offline(False)
        look(app)
        expect_up(app)
    look(ada)
    expect(ada.page.get_by_role("button", name="Mr. Fern")).to_be_visible()
    look(ben)
    expect(item(ben, "Item")).to_be_visible()
    # What came from the other is undone like what was done here, and goes up as that.
    ben.page.get_by_role("button", name="Undo").tap()
    expect(item(ben, "Item")).to_have_count(0)
    expect_up(ben)
    ben.page.get_by_role("button", name="Redo").tap()
    expect(item(ben, "Item")).to_be_visible()
    expect_up(ben)
    said_differently(shop, ada, ben)
    photo_and_deletion(shop, ada, ben)
    asked_once(ben)


def said_differently(shop: Shop, ada: App, ben: App) -> None:
    """Both changed one thing: both say so, until one of them settles it for both."""
    both(ada, ben)
    for app in (ada, ben):
        app.page.context.set_offline(True)
    rename(ada, "Front porch")
    rename(ben, "Back porch")
    for app in (ada, ben):
        app.page.context.set_offline(False)
        look(app)
        expect_up(app)
    asked = ben.page.get_by_role("region", name="Said differently")
    expect(asked.get_by_role("button", name="Front porch Ada")).to_be_visible()
    expect(asked.get_by_role("button", name="Back porch Ben")).to_be_visible()
    expect_sound(ben.page, "said differently")
    look(ada)
    expect(ada.page.get_by_role("region", name="Said differently")).to_be_visible()
    ada.go("Saw")
    ada.page.get_by_role("link", name="said in two ways").tap()
    expect(ada.page.get_by_role("region", name="Said differently")).to_be_visible()
    before = shop.kept("job")["rev"]
    asked.get_by_role("button", name="Front porch Ada").tap()
    title(ben).to_have_text("Front porch")
    expect(asked).to_have_count(0)
    expect_newer(shop, ben, before)
    look(ada)
    expect(ada.page.get_by_role("region", name="Said differently")).to_have_count(0)
    title(ada).to_have_text("Front porch")
    assert shop.kept("job")["body"]["title"] == "Front porch"


def photo_and_deletion(shop: Shop, ada: App, ben: App) -> None:
    """A photo comes with its job; a job that one deletes and the other changes stays."""
    open_item(ada, "Item")
    take_photo(ada.page)
    ada.page.get_by_role("button", name="Done").tap()
    # The job goes up before its photo.
    expect_up(ada)
    assert shop.kept("photo")["deleted"] is False
    look(ben)
    expect(item(ben, "Item")).to_contain_text("1 photo")
    open_item(ben, "Item")
    # A canvas is 300 wide until something is drawn on it.
    expect(ben.page.locator("lp-photo canvas")).not_to_have_js_property("width", 300)
    ben.page.get_by_role("button", name="Done").tap()
    both(ada, ben)
    ben.page.context.set_offline(True)
    rename(ben, "Porch again")
    ben.page.get_by_role("button", name="Units and settings").tap()
    status = ben.page.get_by_role("region", name="The shop's server").get_by_role("status")
    look(ben)
    expect(status).to_contain_text(
        "Waiting for a network. 1 thing has not gone up yet: Porch again."
    )
    ben.page.get_by_role("dialog").get_by_role("button", name="Close").tap()
    expect(ben.page.get_by_role("dialog")).to_have_count(0)
    ada.open("#/job")
    ada.page.get_by_role("button", name="Delete Front porch").tap()
    expect(ada.page.get_by_role("link", name="Front porch")).to_have_count(0)
    look(ada)
    expect(ada.page.get_by_role("button", name="Open the demo job")).to_be_visible()
    wait_until(ada.page, lambda: shop.titles() == set(), "the deletion is there")
    ben.page.context.set_offline(False)
    look(ben)
    expect_up(ben)
    look(ada)
    expect(ada.page.get_by_role("link", name="Porch again")).to_be_visible()


_OUT_OF_SIGHT = """(is) => {
  Object.defineProperty(document, "visibilityState", { configurable: true, get: () => is });
  document.dispatchEvent(new Event("visibilitychange"));
}"""


def asked_once(app: App) -> None:
    """In sight the server is asked once in half a minute; out of sight never."""
    app.open("#/yard")
    page, asked = app.page, []
    heard = page.get_by_role("region", name="The shop's server").get_by_text("Last heard")
    page.get_by_role("button", name="Units and settings").tap()
    expect(heard).to_be_visible()
    page.on("request", lambda request: asked.extend(re.findall(r"/api/([^?]*)", request.url)))
    with page.expect_response("**/api/changes?*"):
        page.clock.fast_forward(31_000)
    page.evaluate(FRAMES)
    assert asked == ["changes"]
    page.evaluate(_OUT_OF_SIGHT, "hidden")
    page.clock.fast_forward(3_600_000)
    with page.expect_response("**/api/changes?*"):
        page.evaluate(_OUT_OF_SIGHT, "visible")
    page.evaluate(FRAMES)
    assert asked == ["changes", "changes"]


def test_replies_that_are_lost_and_requests_that_come_twice(shop: Shop) -> None:
    """What the server has taken is not done twice; the next page goes on where one ended."""
    ada = shop.phone("Ada", "owner")
    ada.open("#/job")

    first: list[Request] = []

    def lost(route: Route) -> None:
        if route.request.method == "PUT":
            first.append(route.request)
            route.fetch()
            route.fetch()
            route.abort()
        else:
            route.fallback()

    ada.page.route("**/api/documents/**", lost)
    begin(ada, "Porch")
    expect(ada.page.get_by_text(HERE).first).to_be_visible()
    expect(ada.page.get_by_text("waiting for a network").first).to_be_visible()
    assert shop.kept("job")["rev"] == 1, "taken, though the phone never heard of it"
    context = ada.page.context
    ada.page.close()
    again = App(context.new_page(), ada.address)
    again.open("#/job")
    expect(again.page.get_by_role("link", name="Porch")).to_contain_text(UP)
    # Begun, then named: what was sent again and again was taken once.
    stands = shop.kept("job")
    assert (stands["body"]["title"], stands["rev"] <= 2) == ("Porch", True)
    with shop.database.reading() as session:
        assert len(session.scalars(select(Change)).all()) == stands["rev"]
    # The first of them comes once more, after all that followed it.
    late = again.page.request.put(
        first[0].url, headers=first[0].headers, data=first[0].post_data or ""
    )
    assert late.ok
    assert shop.kept("job") == stands


def test_a_server_restored_from_yesterday(shop: Shop) -> None:
    """What it had acknowledged since comes back from the phones; what is signed out waits here."""
    ada = shop.phone("Ada", "owner")
    ada.open("#/job")
    begin(ada, "Porch")
    expect_up(ada)
    back_up(shop.database, shop.folder / "yesterday.db")
    rename(ada, "Porch, today")
    expect_up(ada)
    ada.open("#/job")
    begin(ada, "Hall")
    expect_up(ada)
    restore(shop.database, shop.folder / "yesterday.db", replace=True)
    assert shop.titles() == {"Porch"}
    look(ada)
    wait_until(ada.page, lambda: shop.titles() == {"Hall", "Porch, today"}, "both are back")
    ada.open("#/job")
    for name in ("Hall", "Porch, today"):
        expect(ada.page.get_by_role("link", name=name)).to_contain_text(UP)
    # Signed out elsewhere, the phone keeps all of it and says so.
    with shop.database.session() as session:
        people.end_devices(session)
    look(ada)
    expect(ada.page.get_by_role("link", name="Hall")).to_contain_text(HERE)
    ada.page.get_by_role("button", name="Units and settings").tap()
    section = ada.page.get_by_role("region", name="The shop's server")
    expect(section).to_contain_text("What Ada kept here is still on it")
    section.get_by_role("link", name="Sign in").tap()
    ada.page.get_by_label("Your name").fill("ada")
    ada.page.get_by_label("Password").fill(PASSWORD)
    ada.page.get_by_role("button", name="Sign in").tap()
    title(ada).to_have_text("Jobs")
    expect(ada.page.get_by_role("link", name="Hall")).to_contain_text(UP)
    ada.page.get_by_role("button", name="Units and settings").tap()
    expect(section.get_by_role("status")).to_contain_text("All of it is on the shop's server.")
    expect(section.get_by_role("link", name="Devices")).to_be_visible()
    signed_out_and_taken_off(shop, ada)


def signed_out_and_taken_off(shop: Shop, ada: App) -> None:
    """What the server has can go from a phone that is signed out; what it lacks stays there."""
    ada.page.get_by_role("dialog").get_by_role("button", name="Close").tap()
    expect(ada.page.get_by_role("dialog")).to_have_count(0)
    with shop.database.session() as session:
        people.end_devices(session)
    look(ada)
    expect(ada.page.get_by_role("link", name="Hall")).to_contain_text(HERE)
    begin(ada, "Not up")
    ada.open("#/job")
    expect(ada.page.get_by_role("link", name="Not up")).to_contain_text(HERE)
    ada.page.get_by_role("button", name="Units and settings").tap()
    section = ada.page.get_by_role("region", name="The shop's server")
    expect(section).to_contain_text("1 thing has not gone up yet: Not up.")
    section.get_by_text("Take the shop's jobs off this phone").tap()
    section.get_by_role("button", name="Take it off", exact=True).tap()
    expect(section.get_by_text("Take the shop's jobs off this phone")).to_have_count(0)
    ada.open("#/job")
    expect(ada.page.get_by_role("link", name="Not up")).to_be_visible()
    expect(ada.page.get_by_role("link", name="Hall")).to_have_count(0)
    assert shop.titles() == {"Hall", "Porch, today"}


def test_a_file_host_is_asked_nothing_and_no_sign_is_shown(page: Page, tmp_path: Path) -> None:
    from longpoint.cli import main

    assert main(["export", str(tmp_path / "site")]) == 0
    with hosted(tmp_path / "site") as host:
        app = App(page, host.address)
        app.install()
        app.open("#/job")
        begin(app, "Porch")
        app.page.get_by_role("button", name="Units and settings").tap()
        expect(app.page.get_by_role("dialog")).to_be_visible()
        look(app)
        expect(app.page.get_by_role("region", name="The shop's server")).to_have_count(0)
        assert [path for path in host.asked if "/api/" in path] == []
        host.stop()
        app.open("#/job")
        expect(app.page.get_by_role("link", name="Porch")).to_be_visible()
        kept = kept_documents(app.page)
        assert [each["body"]["title"] for (kind, _), each in kept.items() if kind == "job"]
