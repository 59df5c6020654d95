"""A job on the phone: numbers said once and seen again, kept through all that a day brings.

The pair of doors is hand work: an opening of 40 by 30 with a diagonal of 50 is square (3-4-5); with
1/8 at the sides, between the leaves, above and below, a leaf is (40 - 3/8) / 2 = 19 13/16 wide and
30 - 1/4 = 29 3/4 high.
"""

import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import BrowserContext, Locator, Page, expect

from tests.phone.app import App
from tests.phone.job_screens import (
    add_item,
    back,
    begin,
    expect_sound,
    field_card,
    fill,
    item,
    line,
    open_item,
    photographed,
)  # fmt: skip
from tests.phone.storage import kept_documents, put_documents, wait_until

PASTE = """
(field, text) => {
  const clipboardData = new DataTransfer();
  clipboardData.setData("text", text);
  const how = { clipboardData, bubbles: true, cancelable: true };
  field.dispatchEvent(new ClipboardEvent("paste", how));
}
"""
MARKUP = "<img src=x onerror='window.ran = 1'><b>bold</b>"


@pytest.fixture
def other(app: App) -> Iterator[App]:
    """A second window of the same phone."""
    page = app.page.context.new_page()
    errors: list[str] = []
    page.on("pageerror", lambda error: errors.append(str(error)))
    yield App(page, app.address)
    assert errors == []


def survey_of_copy(page: Page) -> dict[str, Any]:
    """Return what is kept of the first question of the job's second item."""
    (body,) = [each["body"] for (kind, _), each in kept_documents(page).items() if kind == "job"]
    inputs: dict[str, Any] = body["items"][1]["entries"][0]["inputs"]
    return inputs


def photos_deleted(page: Page) -> set[bool]:
    """Return of the photos that are kept whether they are deleted."""
    kept = kept_documents(page).items()
    return {bool(each.get("deleted")) for (kind, _), each in kept if kind == "photo"}


def card_of(app: App, title: str) -> Locator:
    return app.page.get_by_role("link", name=title)


def test_a_pair_of_doors_with_no_signal(
    page: Page, context: BrowserContext, address: str, tmp_path: Path
) -> None:
    app = App(page, address)
    app.install()
    context.set_offline(True)
    app.go("Job")
    begin(app, "Boot room")
    add_item(app, "Cupboard doors, inset")

    # The survey by tape.
    line(app, "Cupboard doors, inset", "A Opening survey").tap()
    expect(page.get_by_text("Boot room › Cupboard doors, inset")).to_be_visible()
    fill(app, width_top="40", width_bottom="40", height_left="30", height_right="30")
    fill(app, diagonal_a="50", diagonal_b="50")
    fill(app, side_gap="1/8", head_gap="1/8", floor_gap="1/8", meeting_gap="1/8")
    app.expect_answer("19 and 13/16", "29 and 3/4")
    back(app)
    survey = line(app, "Cupboard doors, inset", "A Opening survey")
    expect(survey).to_contain_text("19 and 13/16")
    expect(survey).to_contain_text("29 and 3/4")
    expect_sound(page, "job")

    # Its numbers stand in the door set, and lead back to it.
    line(app, "Cupboard doors, inset", "C Door set").tap()
    width = field_card(app, "opening_width")
    expect(width.get_by_role("textbox")).to_have_value("40")
    width.get_by_role("link", name="from Opening survey").tap()
    expect(page).to_have_title("Opening survey · Longpoint")
    page.go_back()
    expect(page).to_have_title("Door set · Longpoint")
    fill(app, stile="2 1/4", panel_thickness="1/4")
    app.expect_answer("19 and 13/16", "29 and 3/4")

    # Typed over it says so, and one tap takes it back.
    fill(app, opening_width="39")
    says = width.get_by_role("button", name="Opening survey says 40: take it")
    expect(says).to_be_visible()
    app.expect_answer("19 and 5/16")  # (39 - 3/8) / 2
    expect_sound(page, "typed over")
    says.tap()
    expect(width.get_by_role("link", name="from Opening survey")).to_be_visible()
    app.expect_answer("19 and 13/16")
    back(app)

    # The same again, for a wider opening: the first one stays as it is.
    open_item(app, "Cupboard doors, inset")
    page.get_by_role("button", name="One more").tap()
    page.get_by_label("Note").fill("Scribe to the stone wall")
    page.get_by_label("Note").evaluate(PASTE, "x" * 1_000_000)
    expect(page.get_by_role("status").filter(has_text="nothing was pasted")).to_be_visible()
    expect(page.get_by_label("Note")).to_have_value("Scribe to the stone wall")
    photographed(page, tmp_path)
    page.get_by_role("button", name="The same again").tap()
    again = "Cupboard doors, inset, the same again"
    line(app, again, "G Opening survey").tap()
    fill(app, width_top="48", width_bottom="48", diagonal_a="", diagonal_b="")
    app.expect_answer("23 and 13/16")  # (48 - 3/8) / 2
    back(app)
    expect(line(app, again, "G Opening survey")).to_contain_text("23 and 13/16")
    expect(line(app, again, "I Door set")).to_contain_text("23 and 13/16")
    expect(line(app, "Cupboard doors, inset", "C Door set")).to_contain_text("19 and 13/16")
    expect(item(app, "Cupboard doors, inset")).to_contain_text("× 2 alike")

    # Killed, and opened again with no signal.
    page.close(run_before_unload=False)
    reopened = App(context.new_page(), address)
    reopened.open("#/job")
    card = reopened.page.get_by_role("link", name="Boot room")
    expect(card).to_contain_text(again)
    card.tap()
    expect(line(reopened, again, "I Door set")).to_contain_text("23 and 13/16")
    expect(item(reopened, "Cupboard doors, inset")).to_contain_text("Scribe to the stone wall")

    # The photo is there, scaled to 1600 on its longer side.
    open_item(reopened, "Cupboard doors, inset")
    reopened.page.get_by_role("button", name=re.compile("^Photo 1 of .*small$")).tap()
    large = reopened.page.locator(".photo.large canvas")
    expect(large).to_have_js_property("width", 1600)
    expect(large).to_have_js_property("height", 800)
    expect_sound(reopened.page, "item")
    reopened.page.get_by_role("button", name="Done").tap()

    # Undone and done again after the restart.
    undo, redo = (reopened.page.get_by_role("button", name=name) for name in ("Undo", "Redo"))
    undo.tap()
    expect(reopened.page.get_by_text("Undone: Opening survey changed")).to_be_visible()
    assert survey_of_copy(reopened.page)["diagonal_b"] == "50"
    redo.tap()
    expect(reopened.page.get_by_text("Done again: Opening survey changed")).to_be_visible()
    assert "diagonal_b" not in survey_of_copy(reopened.page)
    expect(line(reopened, again, "G Opening survey")).to_contain_text("23 and 13/16")
    open_item(reopened, again)
    reopened.page.get_by_role("button", name="Delete this item").tap()
    expect(item(reopened, again)).to_have_count(0)
    reopened.page.get_by_role("status").get_by_role("button", name="Undo").tap()
    expect(line(reopened, again, "I Door set")).to_contain_text("23 and 13/16")

    # Its photos go with a job that is deleted, and come back with it.
    reopened.open("#/job")
    reopened.page.get_by_role("button", name="Delete Boot room").tap()
    undo = reopened.page.get_by_role("status").get_by_role("button", name="Undo")
    # It is offered once the photos are gone; the job is listed again before they are back.
    expect(undo).to_be_visible()
    assert photos_deleted(reopened.page) == {True}
    undo.tap()
    expect(card_of(reopened, "Boot room")).to_be_visible()
    wait_until(
        reopened.page, lambda: photos_deleted(reopened.page) == {False}, "the photos are back"
    )
    reopened.page.close()


def test_two_windows_on_one_job(app: App, other: App) -> None:
    app.open("#/job")
    # A window behind another draws once a second: who is at work stands in front.
    app.page.bring_to_front()
    begin(app, "Landing")
    add_item(app, "An empty item")
    other.open(app.page.url.removeprefix(f"{app.address}/"))
    expect(item(other, "Item")).to_be_visible()
    open_item(app, "Item")
    app.page.get_by_label("Name of the item").fill("Window")
    expect(item(other, "Window")).to_be_visible()
    app.page.get_by_role("button", name="Done").tap()

    # Both add one at once: both are there, in both windows.
    add_item(app, "Wall frames")
    other.page.bring_to_front()
    add_item(other, "Base around a room")
    app.page.bring_to_front()
    for each in (app, other):
        expect(item(each, "Wall frames")).to_be_visible()
        expect(item(each, "Base around a room")).to_be_visible()

    # One question in both windows.
    line(app, "Wall frames", "A Wall frames").tap()
    other.page.goto(app.page.url)
    fill(app, length="143")
    expect(other.page.locator("#field-length")).to_have_value("143")

    # The job goes in one window: the other is led to what is left.
    app.page.keyboard.press("Escape")
    app.page.goto(f"{app.address}/#/job")
    app.page.get_by_role("button", name="Delete Landing").tap()
    expect(other.page.get_by_role("heading", level=1)).to_have_text("Jobs")
    app.page.reload()
    app.page.locator("summary").filter(has_text="Deleted in the last 30 days").tap()
    app.page.get_by_role("button", name="Landing").tap()
    app.page.get_by_role("link", name="Landing").tap()
    expect(item(app, "Wall frames")).to_be_visible()


def job_named(own: str, title: str, entries: list[dict[str, Any]]) -> dict[str, Any]:
    body = {
        "longpoint": "job", "schema": 1, "id": own, "title": title, "units": "in", "step": 16,
        "items": [{"id": "i1", "title": title, "entries": entries}],
    }  # fmt: skip
    record = {"kind": "job", "id": own, "revision": 1, "step": 0, "units": "in", "schema": 1}
    return {**record, "body": body, "listed": ["job", 1, title]}


def test_all_jobs_are_listed_those_written_last_first(app: App) -> None:
    """More than fill a screen: the others are drawn after those that do."""
    app.open("#/job")
    expect(app.page.get_by_role("button", name="Open the demo job")).to_be_visible()
    records = [job_named(f"job {at}", f"Job {at}", []) for at in range(100)]
    put_documents(
        app.page,
        app.address,
        *[each | {"listed": ["job", at, f"Job {at}"]} for at, each in enumerate(records)],
    )
    app.open("#/job")
    expect(app.page.locator(".jobcard .asks")).to_have_text([f"Job {99 - at}" for at in range(100)])


def test_strange_names_are_names_and_nothing_more(app: App) -> None:
    entry = {"letter": "A", "tool": "mitered-frame", "title": MARKUP, "inputs": {}}
    app.open("#/job")
    expect(app.page.get_by_role("button", name="Open the demo job")).to_be_visible()
    put_documents(
        app.page,
        app.address,
        job_named("__proto__", MARKUP, [{**entry, "id": "__proto__"}]),
        job_named("constructor", "Plain", [{**entry, "id": "e1", "tool": "of-a-later-version"}]),
    )
    app.open("#/job")
    expect(app.page.get_by_role("link", name="Plain")).to_be_visible()
    app.page.get_by_role("link", name=MARKUP).tap()
    expect(item(app, MARKUP)).to_contain_text(MARKUP)
    app.page.get_by_role("link", name=f"A {MARKUP}").tap()
    fill(app, trim_width="2 1/2")
    expect(app.headline).to_contain_text("Still needed")
    back(app)
    expect(app.page.get_by_role("link", name=f"A {MARKUP}")).to_contain_text("Still needed")

    def inputs() -> Any:
        kept = kept_documents(app.page)["job", "__proto__"]["body"]
        return kept["items"][0]["entries"][0]["inputs"]

    wait_until(app.page, lambda: inputs() == {"trim_width": "2 1/2"}, "the number is kept")

    # A question that this version does not have is said, and stays.
    app.page.goto(f"{app.address}/#/job/constructor")
    expect(item(app, "Plain")).to_contain_text("This version has no such question")
    app.page.goto(f"{app.address}/#/job/none-such")
    expect(app.page.get_by_role("status").filter(has_text="not on this phone")).to_be_visible()
    expect(app.page.get_by_role("heading", level=1)).to_have_text("Jobs")
    assert app.page.evaluate("window.ran") is None


def test_an_answer_goes_on_a_job_and_its_number_on_to_a_question(app: App) -> None:
    # Casing around 36 by 80, 3 1/2 wide with 1/4 reveal: the head is 36 + 2 (3 1/2 + 1/4) = 43 1/2.
    frame = "fit=around&opening_width=36&opening_height=80&trim_width=3+1%2F2&reveal=1%2F4"
    app.open(f"#/saw/mitered-frame?{frame}")
    app.expect_answer("43 and 1/2")
    app.page.get_by_role("button", name="Keep on a job").tap()
    app.page.get_by_role("button", name="A new job").tap()
    app.page.get_by_role("status").get_by_role("button", name="Go there").tap()
    expect(app.page.get_by_text("› Mitered frame")).to_be_visible()
    app.expect_answer("43 and 1/2")
    app.page.get_by_role("button", name="Use 43").tap()
    dialog = app.page.get_by_role("dialog")
    dialog.locator("summary").filter(has_text="Even spacing").tap()
    dialog.get_by_role("button", name="Overall").tap()
    expect(app.page).to_have_title("Even spacing · Longpoint")
    overall = field_card(app, "overall")
    expect(overall.get_by_role("textbox")).to_have_value("43 1/2")

    # It is tied: the frame is made wider, and the number follows.
    overall.get_by_role("link", name="from Mitered frame").tap()
    fill(app, opening_width="38")
    app.expect_answer("45 and 1/2")
    app.page.go_back()
    expect(field_card(app, "overall").get_by_role("textbox")).to_have_value("45 1/2")

    # Stock from the yard's own list, a size that can't be read, and what is cut from it.
    back(app)
    app.page.get_by_role("link", name="Stock").tap()
    app.page.get_by_role("button", name="A stock").tap()
    app.page.get_by_role("dialog").get_by_role("button", name="sticks", exact=True).tap()
    app.page.get_by_label("Name of the stock").fill("Poplar casing")
    app.page.get_by_label("Thickness").fill("3/4 thick")
    expect(app.page.get_by_text("can't be read")).to_be_visible()
    app.page.get_by_label("Thickness").fill("3/4")
    expect(app.page.get_by_text("can't be read")).to_have_count(0)
    app.page.get_by_role("button", name="Add a length").tap()
    row = app.page.get_by_role("group", name="Length sold 1")
    row.get_by_label("Length", exact=True).fill("14'")
    row.get_by_label("Price").fill("dear")
    expect(row.get_by_text("won't do")).to_be_visible()
    row.get_by_label("Price").fill("21.50")
    # A text that won't do leaves the number that stood, not the number it begins with.
    row.get_by_label("Price").blur()
    row.get_by_label("Price").press("Control+a")
    row.get_by_label("Price").press_sequentially("99999999")
    expect(row.get_by_text("won't do")).to_be_visible()
    app.page.get_by_role("button", name="Done").tap()
    app.page.get_by_role("button", name="Poplar casing").tap()
    expect(row.get_by_label("Price")).to_have_value("21.50")
    app.page.get_by_role("button", name="Done").tap()
    app.page.get_by_label("A Mitered frame").select_option("Poplar casing")
    expect(app.page.get_by_role("button", name="Poplar casing")).to_contain_text("sticks")
    app.page.get_by_role("button", name="Hinges, pulls").tap()
    expect_sound(app.page, "stock")

    # A plan takes the job's pieces, and follows them: head and sill are 45 1/2 each.
    app.page.get_by_role("link", name="Back to the job").tap()
    app.page.get_by_role("button", name="Another question").tap()
    app.page.get_by_role("searchbox").fill("stick plan")
    # The list is short once it is searched: what is tapped must not move then.
    expect(app.page.get_by_role("dialog").get_by_role("button", name="Corner joint")).to_have_count(
        0
    )
    app.page.get_by_role("dialog").get_by_role("button", name="Stick plan").tap()
    app.page.get_by_label(", from this job").select_option("Poplar casing")
    taken = app.page.locator("lp-take-pieces li")
    expect(taken.filter(has_text="45 and 1/2")).to_have_count(2)
    expect_sound(app.page, "pieces taken")
    app.open("#/job")
    expect(app.page.get_by_role("link", name="Mitered frame")).to_be_visible()
    expect_sound(app.page, "jobs")
