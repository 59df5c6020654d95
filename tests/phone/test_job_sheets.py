"""A job's three sheets as they are used: bought, cut, spoiled, marked, and handed on.

The job: a frame in a recess 30 x 40 out of trim 3 wide, two hinges on a door. All numbers are hand
work: its pieces are 40, 40, 30 and 30 long; of sticks 96 long, one holds 40 and 40, one 30 and 30.
"""

import re
from functools import partial
from typing import Any

from playwright.sync_api import BrowserContext, Locator, Page, expect

from tests.phone.app import FRAMES, App, choose
from tests.phone.storage import kept_documents, put_documents, wait_until
from tests.phone.test_access import AXE, violations
from tests.phone.test_faults import crash, fail_now, mend, said
from tests.phone.test_layout import FAULTS, TARGET

FRAME = {"fit": "inside", "opening_width": "30", "opening_height": "40", "trim_width": "3"}
HINGES = {
    "door_height": "80", "door_thickness": "1 3/8", "hinge_height": "3 1/2", "hinge_count": "2",
    "top_offset": "5", "bottom_offset": "10", "leaf_thickness": 0.085, "gap": "3/32",
}  # fmt: skip
PINE = {
    "id": "pine", "title": "1×3 primed pine", "sold": "stick", "kerf": "1/8",
    "lengths": [{"length": "96", "price": 9.4}],
}  # fmt: skip
THUMB = 64


def job(**rest: Any) -> dict[str, Any]:
    frame = {"id": "e1", "letter": "A", "tool": "mitered-frame", "inputs": FRAME}
    hinges = {"id": "e2", "letter": "B", "tool": "hinge-layout", "inputs": HINGES}
    items = [
        {"id": "i1", "title": "Frame", "entries": [frame | {"stock": {"all": "pine"}}]},
        {"id": "i2", "title": "Door, hung", "entries": [hinges]},
    ]
    said = {"longpoint": "job", "schema": 1, "id": "boot", "title": "Boot room", "units": "in"}
    screws = {"id": "screws", "title": "Screws, box", "count": 1, "price": 8}
    return said | {"items": items, "stock": [PINE], "things": [screws]} | rest


def record(body: dict[str, Any]) -> dict[str, Any]:
    listed = ["job", 1, body["title"]]
    kept = {"kind": "job", "id": body["id"], "units": "in", "revision": 1, "schema": 1, "step": 0}
    return kept | {"body": body, "listed": listed}


def begin(app: App, body: dict[str, Any]) -> None:
    """Keep a job on this phone and open it."""
    app.open("#/yard")
    expect(app.page.get_by_role("heading", name="At the yard")).to_be_visible()
    put_documents(app.page, app.address, record(body))
    app.open(f"#/job/{body['id']}")
    expect(app.page.locator(".entryline .medium").first).to_be_visible()


def kept_job(page: Page, name: str = "boot") -> Any:
    return kept_documents(page)[("job", name)]["body"]


def sheet(app: App, place: str) -> Locator:
    """Go to a place and return the job's sheet there, once it stands."""
    app.go(place)
    found = app.page.locator(".jobsheet")
    expect(found.locator(".ticklist").first).to_be_visible()
    return found


def row(app: App, words: str) -> Locator:
    named = re.compile(rf"\b{re.escape(words)}\b")
    box = app.page.get_by_role("checkbox", name=named)
    return app.page.locator(".tickrow").filter(has=box).first


def box(app: App, words: str) -> Locator:
    return row(app, words).get_by_role("checkbox")


def expect_ticked(app: App, words: str, is_ticked: bool = True) -> None:
    expect(box(app, words)).to_have_attribute("aria-checked", str(is_ticked).lower())


def ask_again(app: App, name: str, text: str) -> None:
    """Change one number of the frame on its own screen."""
    app.open("#/job/boot/e1")
    app.expect_answer()
    app.put(f"#field-{name}", text)
    app.expect_answer()
    app.page.keyboard.press("Escape")


def undo(app: App) -> None:
    app.page.locator(".saying").get_by_role("button", name="Undo").tap()


def test_bought_cut_spoiled_cut_to_an_old_size_and_marked(app: App) -> None:
    begin(app, job())

    # At the counter: two sticks at 9.40; what is paid stands beside what was expected.
    yard = sheet(app, "Yard")
    expect(row(app, "primed pine")).to_contain_text("2 sticks")
    expect(yard.locator(".jobband")).to_contain_text("2 to buy, $0.00 so far of about $26.80")
    box(app, "primed pine").tap()
    expect_ticked(app, "primed pine")
    paid = app.page.get_by_label("Paid for 1×3 primed pine")
    paid.fill("twenty")
    expect(yard.get_by_role("alert")).to_contain_text("“twenty” is no price")
    expect(paid).to_have_value("twenty")
    paid.fill("$20.5")
    # What is still offered to undo is not what would be undone now.
    undo(app)
    said(app, "Something was changed after that")
    expect_ticked(app, "primed pine")
    expect(yard.get_by_role("alert")).to_have_count(0)
    expect(yard.locator(".totals")).to_contain_text("$20.50")
    expect(yard.locator(".totals")).to_contain_text("$26.80")

    # At the saw: longest first, a box for a gloved thumb, and the way back.
    saw = sheet(app, "Saw")
    expect(saw.locator(".cutlength .unseen")).to_have_text(["40", "40", "30", "30"])
    size = box(app, "A2").bounding_box()
    assert size
    assert min(size["width"], size["height"]) >= THUMB
    box(app, "A2").tap()
    expect_ticked(app, "A2")
    undo(app)
    expect_ticked(app, "A2", False)
    box(app, "A2").tap()
    box(app, "A4").tap()
    expect(saw.locator(".jobband")).to_contain_text("2 of 4 cut")

    # Stick by stick as planned: each holds what is cut from it, and no piece is left out.
    choose(app.page.get_by_label("By stick"))
    expect(saw.get_by_role("heading", name="Stick 2, 96")).to_be_visible()
    # All at once: a better plan may come in between.
    held = saw.locator(".cutgroup").evaluate_all(
        """(sticks) => sticks.map((stick) =>
             [...stick.querySelectorAll(".cutlength .unseen")].map((each) => +each.textContent))"""
    )
    assert sorted(length for lengths in held for length in lengths) == [30, 30, 40, 40]
    assert all(sum(lengths) < 96 for lengths in held)
    choose(app.page.get_by_label("By setting"))

    # One is spoiled: it is cut again, and a third stick bought (40 + 40, 40 + 30, 30).
    row(app, "A4").locator("button.what").tap()
    app.page.get_by_role("button", name="Spoiled").tap()
    expect(row(app, "A4")).to_contain_text("Spoiled once: cut again")
    expect_ticked(app, "A4", False)
    sheet(app, "Yard")
    expect(row(app, "primed pine")).to_contain_text("3 sticks")

    # The recess turns out 1/16 less, then 1/16 more than it was cut to.
    ask_again(app, "opening_height", "39 15/16")
    sheet(app, "Saw")
    expect(row(app, "A2")).to_contain_text("long now: trim it")
    row(app, "A2").get_by_role("button", name="Done: it fits now").tap()
    expect(row(app, "A2")).not_to_contain_text("old size")
    expect_ticked(app, "A2")
    # What is cut is fitted, all of an item at once, and back again to cut.
    sheet(app, "Site")
    fitted = app.page.get_by_role("checkbox", name="Fitted: Frame")
    fitted.tap()
    hung = app.page.locator(".tickrow").filter(has_text="Fitted and hung")
    expect(hung).to_contain_text("1 of 4 pieces")
    expect(fitted).to_have_attribute("aria-checked", "true")
    fitted.tap()
    expect(fitted).to_have_attribute("aria-checked", "false")

    ask_again(app, "opening_height", "40")
    sheet(app, "Saw")
    expect(row(app, "A2")).to_contain_text("short: cut another")
    row(app, "A2").get_by_role("button", name="Cut another").tap()
    expect(row(app, "A2")).to_contain_text("Spoiled once: cut again")

    # On site: 5 from the leaf top less the head gap of 1/8 is 4 7/8; the closing checks.
    site = sheet(app, "Site")
    expect(site).to_contain_text("from leaf top")
    box(app, "Top hinge, top line").tap()
    box(app, "Touched up").tap()
    expect_ticked(app, "Top hinge, top line")

    # What is said to be ticked is written: the page's process may end.
    said(app, "Ticked: Touched up")
    crash(app.page)
    again = App(app.page.context.new_page(), app.address)
    again.open("#/site")
    expect_ticked(again, "Top hinge, top line")
    expect_ticked(again, "Touched up")
    sheet(again, "Yard")
    expect(again.page.get_by_label("Paid for 1×3 primed pine")).to_have_value("20.50")
    states = [tick["state"] for tick in kept_job(again.page)["ticks"]]
    assert sorted(states) == ["bought", "cut", "cut", "done", "marked", "spoiled", "spoiled"]

    # Put away, the places are as they were.
    again.page.get_by_role("button", name="Put this job away").tap()
    expect(again.page.locator(".jobsheet")).to_have_count(0)
    expect(again.page.get_by_role("link", name=re.compile("Stock sizes"))).to_be_visible()


def test_nothing_is_cut_off_too_small_or_faint(app: App) -> None:
    """The three sheets and what opens from the job, on phones 390 and 320 wide, light and dark."""
    begin(app, job(ticks=[{"of": "e1/2#1", "state": "cut", "was": {"length": 39}}]))
    # A stick of 60 that an earlier job left holds a piece of 40.
    left = {"title": PINE["title"], "sold": "stick", "length": '60"', "count": 1, "where": "rack"}
    kept = {"kind": "list", "id": "offcuts", "units": "in", "revision": 1, "schema": 1, "step": 0}
    put_documents(app.page, app.address, kept | {"body": {"rows": [left], "typed_in": "in"}})
    app.open("#/yard")
    expect(row(app, "primed pine")).to_contain_text("1 offcut of the shop would do")
    opened = {"Hand it on": ".code", "On paper": ".labelform"}
    found: dict[str, Any] = {}

    def look(name: str) -> None:
        app.page.evaluate(AXE.read_text())
        for width in (390, 320):
            app.page.set_viewport_size({"width": width, "height": 844})
            app.page.evaluate(FRAMES)
            found[f"{name} at {width}"] = app.page.evaluate(FAULTS, TARGET)
        for scheme in ("light", "dark"):
            app.page.emulate_media(color_scheme=scheme)
            found[f"{name}, {scheme}"] = violations(app)

    for place in ("Yard", "Saw", "Site"):
        sheet(app, place)
        if place == "Saw":
            row(app, "A4").locator("button.what").tap()
        look(place)
    for button, part in opened.items():
        app.open("#/job/boot")
        app.page.get_by_role("button", name=button).tap()
        expect(app.page.locator(part)).to_be_visible()
        look(button)
    assert {name: faults for name, faults in found.items() if faults} == {}


def test_a_full_disk_while_ticking_is_said_and_nothing_is_lost(app: App) -> None:
    begin(app, job())
    app.open("#/saw")
    # All that the core says of it is there, and moves nothing later.
    expect(app.page.locator(".tickrow").first).to_be_visible()
    app.page.locator("lp-job-sheet").evaluate("(sheet) => sheet.job.settled")
    app.page.evaluate(FRAMES)
    others = [box(app, tag).bounding_box() for tag in ("A2", "A3")]
    # From here on, so that what is said is said of the tick.
    fail_now(app, "put", "QuotaExceededError")
    box(app, "A1").tap()
    said(app, "This device has no room left")
    expect_ticked(app, "A1")
    assert "ticks" not in kept_job(app.page)
    # The next box is where the thumb expects it.
    assert [box(app, tag).bounding_box() for tag in ("A2", "A3")] == others
    mend(app)
    box(app, "A2").tap()
    expect_ticked(app, "A2")
    kept = partial(kept_job, app.page)
    wait_until(app.page, lambda: len(kept().get("ticks", [])) == 2, "both ticks are kept")
    # Only what is written can be undone.
    app.page.goto(f"{app.address}/#/job/boot")
    expect(app.page.get_by_role("button", name="Undo", exact=True).last).to_be_enabled()
    app.open("#/saw")
    expect_ticked(app, "A1")
    expect_ticked(app, "A2")


def test_with_no_signal_the_sheets_the_file_and_the_code_are_there(
    page: Page, context: BrowserContext, address: str
) -> None:
    app = App(page, address)
    app.install()
    begin(app, job())
    context.set_offline(True)
    app.open("#/saw")
    box(app, "A3").tap()
    expect_ticked(app, "A3")
    app.open("#/job/boot")
    app.page.get_by_role("button", name="Hand it on").tap()
    expect(app.page.get_by_role("img", name="QR code of this job")).to_be_visible()
    context.set_offline(False)
