"""Two windows on one form: what is typed in one is never lost to the other."""

import re
from collections.abc import Iterator

import pytest
from playwright.sync_api import expect

from tests.phone.app import App, choose
from tests.phone.storage import history, kept_documents, wait_until

# A window in the background may hear nothing of others until it is looked at.
DEAF = "BroadcastChannel.prototype.addEventListener = () => undefined"
FORM = "#/saw/mitered-frame"
WIDTH, HEIGHT, TRIM = "Opening width", "Opening height", "Trim width"


@pytest.fixture
def other(app: App) -> Iterator[App]:
    """A second window of the same phone."""
    page = app.page.context.new_page()
    errors: list[str] = []
    page.on("pageerror", lambda error: errors.append(str(error)))
    yield App(page, app.address)
    assert errors == []


def said(app: App, words: str) -> None:
    expect(app.page.get_by_role("status").filter(has_text=words)).to_be_visible()


def tap(app: App, name: str) -> None:
    app.page.get_by_role("status").get_by_role("button", name=name).tap()


def undo(app: App) -> None:
    app.page.keyboard.press("Escape")
    app.page.get_by_role("main").get_by_role("button", name="Undo").tap()


def test_what_is_typed_in_one_shows_in_the_other(app: App, other: App) -> None:
    app.open(FORM)
    other.open(FORM)
    app.enter(WIDTH, "27 13/16")
    expect(other.field(WIDTH)).to_have_value("27 13/16")
    other.enter(HEIGHT, "60 1/8")
    expect(app.field(HEIGHT)).to_have_value("60 1/8")
    app.enter(TRIM, "2 1/2")
    expect(other.field(TRIM)).to_have_value("2 1/2")
    expect(other.field(WIDTH)).to_have_value("27 13/16")


def test_rows_too(app: App, other: App) -> None:
    app.open("#/saw/trim-run")
    app.add_row("Add a wall", "walls-0")
    app.page.locator("#field-walls-0-length").fill("144")
    other.open("#/saw/trim-run")
    summary = other.page.locator("lp-rows .summary")
    expect(summary).to_contain_text("144")
    app.page.locator("#field-walls-0-length").fill("143")
    expect(summary).to_contain_text("143")


def test_the_yards_list_too(app: App, other: App) -> None:
    """What the tape says of a 2x4 is noted in one window and counts in the other."""
    sized = "#/yard/stock-sizes?family=softwood&label=2x4"
    app.open(sized)
    other.open(sized)
    other.expect_answer()
    app.add_row(re.compile("^Add an? "), "yard-0")
    for name, text in (("label", "2x4"), ("thickness", "1 3/4"), ("width", "3 1/2")):
        app.page.locator(f"#field-yard-0-{name}").fill(text)
    other.expect_answer("1 and 3/4")


def test_the_settings_too(app: App, other: App) -> None:
    app.open(FORM)
    app.enter(WIDTH, "27 13/16")
    other.open(FORM)
    other.page.get_by_role("button", name="Units and settings").tap()
    sheet = other.page.get_by_role("dialog", name="How it is shown")
    group = sheet.get_by_role("group", name="Millimeters, to")
    choose(group.get_by_role("radio", name="1", exact=True))
    expect(app.page.get_by_role("button", name="mm · 1")).to_be_visible()
    expect(app.field(WIDTH)).to_have_value('27 13/16"')


def test_one_that_heard_nothing_writes_over_nothing(app: App, other: App) -> None:
    """The story: typing in one wrote its old form over what the other had typed since."""
    other.page.add_init_script(DEAF)
    app.open(FORM)
    other.open(FORM)
    app.enter(WIDTH, "27 13/16")
    expect(app.page.get_by_role("button", name="Undo")).to_be_visible()
    other.enter(HEIGHT, "60 1/8")
    expect(other.field(WIDTH)).to_have_value("27 13/16")
    expect(app.field(HEIGHT)).to_have_value("60 1/8")
    kept = kept_documents(app.page)["form", "mitered-frame"]["body"]["inputs"]
    assert kept == {"opening_width": "27 13/16", "opening_height": "60 1/8"}


def test_both_typed_into_one_field(app: App, other: App) -> None:
    other.page.add_init_script(DEAF)
    app.open(FORM)
    other.open(FORM)
    app.enter(WIDTH, "27 13/16")
    expect(app.page.get_by_role("button", name="Undo")).to_be_visible()
    other.enter(WIDTH, "31")
    said(other, "Opening width: changed in another window of Longpoint too.")
    expect(other.field(WIDTH)).to_have_value("31")
    tap(other, "Take the other")
    expect(other.field(WIDTH)).to_have_value("27 13/16")
    # The one that gave way is in the history still.
    undo(other)
    expect(other.field(WIDTH)).to_have_value("31")


def test_the_one_whose_number_gave_way_is_told(app: App, other: App) -> None:
    app.open(FORM)
    other.open(FORM)
    app.enter(WIDTH, "27 13/16")
    expect(other.field(WIDTH)).to_have_value("27 13/16")
    other.enter(WIDTH, "31")
    said(app, "Opening width: changed in another window of Longpoint.")
    expect(app.field(WIDTH)).to_have_value("31")
    tap(app, "Take mine back")
    expect(app.field(WIDTH)).to_have_value("27 13/16")
    expect(other.field(WIDTH)).to_have_value("27 13/16")


def test_an_address_opened_in_one_leaves_the_others_form_alone(app: App, other: App) -> None:
    app.open(FORM)
    app.enter(WIDTH, "27 13/16")
    expect(app.page.get_by_role("main").get_by_role("button", name="Undo")).to_be_visible()
    other.open(f"{FORM}?opening_width=40&form=2")
    other.enter(HEIGHT, "60")
    said(app, "Opening width: changed in another window")
    tap(app, "Take mine back")
    expect(app.field(WIDTH)).to_have_value("27 13/16")
    expect(other.field(WIDTH)).to_have_value("27 13/16")
    expect(app.field(HEIGHT)).to_have_value("60")


def test_undo_is_there_after_a_restart(app: App, other: App) -> None:
    app.open(FORM)
    app.enter(WIDTH, "27 13/16")
    app.enter(HEIGHT, "60 1/8")
    app.enter(WIDTH, "31")
    app.page.goto("about:blank")
    other.open(FORM)
    undo(other)
    expect(other.field(WIDTH)).to_have_value("27 13/16")
    undo(other)
    expect(other.field(HEIGHT)).to_have_value("")
    other.page.reload()
    expect(other.field(WIDTH)).to_have_value("27 13/16")
    redo = other.page.get_by_role("button", name="Redo")
    redo.tap()
    expect(other.field(HEIGHT)).to_have_value("60 1/8")
    redo.tap()
    expect(other.field(WIDTH)).to_have_value("31")
    expect(redo).to_be_hidden()


def test_what_is_typed_after_undo_takes_the_place_of_what_was_undone(app: App) -> None:
    app.open(FORM)
    app.enter(WIDTH, "27 13/16")
    app.enter(HEIGHT, "60 1/8")
    undo(app)
    expect(app.field(HEIGHT)).to_have_value("")
    app.enter(TRIM, "2 1/2")
    undo(app)
    expect(app.field(TRIM)).to_have_value("")
    undo(app)
    expect(app.field(WIDTH)).to_have_value("")


def test_keys_typed_into_one_field_are_one_change(app: App) -> None:
    app.open(FORM)
    app.field(WIDTH).press_sequentially("27 13/16")
    app.enter(HEIGHT, "60")
    undo(app)
    undo(app)
    expect(app.field(WIDTH)).to_have_value("")


def test_a_hundred_changes_can_be_undone(app: App) -> None:
    app.open(FORM)
    for count in range(110):
        app.enter(WIDTH if count % 2 else HEIGHT, str(20 + count))
    app.page.keyboard.press("Escape")
    back = app.page.get_by_role("main").get_by_role("button", name="Undo")
    expect(back).to_be_visible()
    wait_until(app.page, lambda: len(history(app.page)) == 110, "all changes are written")
    back.evaluate("(button) => { for (let taps = 0; taps < 110; taps += 1) button.click(); }")
    # Each of them is written in its turn.
    expect(back).to_be_hidden(timeout=60_000)
    expect(app.field(WIDTH)).to_have_value("")
    assert len(history(app.page)) == 110
