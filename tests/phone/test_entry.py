"""A thumb, a hardware keyboard, bad input: what is typed is read right and never lost.

Expected lengths are worked out by hand beside each check: 12 inches to a foot, 25.4 mm to an inch.
"""

import json
import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.phone.app import FRAME, App, hash_of
from tests.phone.conftest import PHONE

ROOM = [{"length": "144"}, {"length": "120"}, {"length": "96"}]


def page_of(browser: Browser, **options: Any) -> Page:
    """Return a page of a phone that keeps nothing yet; the service worker is not what is tried."""
    phone = {"viewport": PHONE, "has_touch": True, "is_mobile": True, "service_workers": "block"}
    return browser.new_context(**(phone | options)).new_page()


@pytest.fixture
def app(browser: Browser, address: str) -> Iterator[App]:
    page = page_of(browser, reduced_motion="reduce")
    errors: list[str] = []
    page.on("pageerror", lambda error: errors.append(str(error)))
    yield App(page, address)
    page.context.close()
    assert errors == []


def frame(**changed: str) -> str:
    """Return the address of the frame of 27 13/16 x 60 1/8, with changes."""
    return hash_of("saw", "mitered-frame", FRAME | changed)


def run(*walls: dict[str, str], thickness: str = "5/8") -> str:
    """Return the address of a trim run along these walls."""
    inputs = {"walls": json.dumps(walls), "thickness": thickness}
    return hash_of("saw", "trim-run", inputs)


class TestPad:
    def test_digits_and_the_sixteenth_of_the_inch(self, app: App) -> None:
        app.open("#/saw/mitered-frame")
        app.field("Width").tap()
        app.press("2", "7")
        app.pick(13)
        expect(app.field("Width")).to_have_value("27 13/16")
        expect(app.pad).to_contain_text("706 mm")  # 27.8125 x 25.4 = 706.4

    def test_every_key(self, app: App) -> None:
        """In a recess without play the top is as long as the recess is wide."""
        app.open(frame())
        app.field("Width").tap()
        for keys, sixteenth, says in (
            (["2", "ft, feet", "3"], 13, "27 and 13/16"),  # 24 + 3 13/16
            (["7", "0", "6", "mm, millimeters"], None, "27 and 13/16 shy"),  # 27.795
            (["3", "0", "Space", "5", "Fraction slash", "1", "6"], None, "30 and 5/16"),
            (["3", "0", "Plus or minus", "2"], 8, "32 and 1/2"),
            (["3", "0", "Plus or minus", "Plus or minus", "2"], 8, "27 and 1/2"),
            (["2", "7", "Point", "5"], None, "27 and 1/2"),
            (["2", "8", "Erase the last character", "9"], None, ": 29"),
            (["9", "9", "Clear", "3", "1"], None, ": 31"),
        ):
            app.press("Clear", *keys)
            if sixteenth is not None:
                app.pick(sixteenth)
            app.expect_answer("Top", says)

    def test_taken_in_hand_again_a_digit_starts_anew_and_an_inch_goes_on(self, app: App) -> None:
        app.open(frame())
        app.field("Width").tap()
        app.pick(1)
        expect(app.field("Width")).to_have_value("27 1/16")
        app.press("Close the pad")
        app.field("Width").tap()
        app.press("3")
        expect(app.field("Width")).to_have_value("3")

    def test_next_walks_the_fields_and_ends(self, app: App) -> None:
        """At a square corner of two pieces as wide both saws stand at 45."""
        app.open("#/saw/corner-joint")
        app.field("Corner").tap()
        app.press("9", "0", "Next")
        expect(app.field("Width of A")).to_be_focused()
        app.press("3", "Next")
        expect(app.field("Width of B")).to_be_focused()
        app.press("3", "Done")
        expect(app.pad).to_be_hidden()
        app.expect_answer("45.0°")

    def test_a_count_goes_up_and_down(self, app: App) -> None:
        app.open("#/saw/even-spacing?count=5")
        app.field("How many").tap()
        app.press("+1, one more", "+1, one more", "−1, one less")
        expect(app.field("How many")).to_have_value("6")

    def test_what_the_yard_sells_is_tapped(self, app: App) -> None:
        """A dry 2x4 is 1 1/2 x 3 1/2: NIST PS 20."""
        app.open("#/yard/stock-sizes")
        app.field("Label").tap()
        app.press("2x4")
        expect(app.field("Label")).to_have_value("2x4")
        app.expect_answer("1 and 1/2")


class TestKeyboard:
    def test_a_frame_without_touching_the_screen(self, app: App) -> None:
        """Around an opening: 27 13/16 + two reveals of 3/16 = 28 3/16; two trims more, 33 3/16."""
        app.open("#/saw/mitered-frame")
        expect(app.headline).to_contain_text("Waiting for width, height and trim width")
        keyboard = app.page.keyboard
        for stop in (
            app.page.get_by_role("link", name="Back"),
            app.page.get_by_role("button", name="Units and settings"),
            app.field("Fits"),
        ):
            keyboard.press("Tab")
            expect(stop).to_be_focused()
        keyboard.press("ArrowDown")
        expect(app.field("Fits")).to_have_value("around")
        expect(app.field("Reveal")).to_be_visible()
        keyboard.press("Tab")
        expect(app.field("Width")).to_be_focused()
        keyboard.type("27 13/16")
        keyboard.press("Enter")
        expect(app.field("Height")).to_be_focused()
        keyboard.type("60 1/8")
        keyboard.press("Tab")
        expect(app.field("Trim width")).to_be_focused()
        keyboard.type("2 1/2")
        app.expect_answer("short point", "28 and 3/16")
        pieces = app.page.get_by_role("region", name="Pieces").get_by_role("listitem")
        expect(pieces.first).to_contain_text("33 and 3/16")
        keyboard.press("Escape")
        expect(app.pad).to_be_hidden()
        keyboard.press("Shift+Tab")
        expect(app.field("Height")).to_be_focused()
        keyboard.press("Shift+Tab")
        keyboard.type("30")
        expect(app.field("Width")).to_have_value("30")
        app.expect_answer("30 and 3/8")

    def test_the_settings_give_the_focus_back(self, app: App) -> None:
        app.open(frame())
        chip = app.page.get_by_role("button", name="Units and settings")
        chip.focus()
        app.page.keyboard.press("Enter")
        dialog = app.page.get_by_role("dialog", name="How it is shown")
        expect(dialog).to_be_visible()
        app.page.keyboard.press("Escape")
        expect(dialog).to_be_hidden()
        expect(chip).to_be_focused()


class TestRows:
    def lengths(self, app: App, *lengths: str) -> None:
        expect(app.page.locator(".summary .medium")).to_have_text(lengths)

    def handle(self, app: App, wall: int) -> Any:
        return app.page.get_by_role("button", name=f"Move wall {wall}:")

    def test_added_and_duplicated(self, app: App) -> None:
        """Coped trim in a room of 144 x 120 is marked as long as the walls are."""
        app.open("#/saw/trim-run?thickness=5/8")
        app.page.get_by_role("button", name="Add a wall").tap()
        expect(app.page.get_by_role("group", name="Pad for Wall 1 length")).to_be_visible()
        app.press("1", "4", "4", "Close the pad")
        app.page.get_by_role("button", name="Duplicate wall 1").tap()
        self.lengths(app, "144", "144")
        app.field("Length").tap()
        app.press("1", "2", "0", "Close the pad")
        self.lengths(app, "144", "120")
        app.expect_answer("144")
        pieces = app.page.get_by_role("region", name="Pieces").get_by_role("listitem")
        expect(pieces.nth(1)).to_contain_text("120")

    def test_removed_and_brought_back(self, app: App) -> None:
        app.open(run(*ROOM))
        app.page.get_by_role("button", name=re.compile("^Wall 2 ")).tap()
        app.page.get_by_role("button", name="Remove wall 2").tap()
        self.lengths(app, "144", "96")
        expect(app.page.get_by_text("Wall 2 removed.")).to_be_visible()
        app.page.get_by_role("button", name="Undo").tap()
        self.lengths(app, "144", "120", "96")

    def test_put_in_order_by_keys(self, app: App) -> None:
        app.open(run(*ROOM))
        self.handle(app, 3).focus()
        app.page.keyboard.press("ArrowUp")
        self.lengths(app, "144", "96", "120")
        expect(self.handle(app, 2)).to_be_focused()
        app.page.keyboard.press("ArrowUp")
        self.lengths(app, "96", "144", "120")
        app.page.keyboard.press("ArrowDown")
        self.lengths(app, "144", "96", "120")
        expect(app.page.get_by_text("Wall 1 is now wall 2.")).to_be_visible()

    def test_put_in_order_by_dragging(self, app: App) -> None:
        app.open(run(*ROOM))
        self.lengths(app, "144", "120", "96")
        boxes = [self.handle(app, wall).bounding_box() for wall in (1, 2, 3)]
        spots = [(box["x"] + 24, box["y"] + 24) for box in boxes if box]
        touch = app.page.context.new_cdp_session(app.page)
        for kind, spot in zip(("touchStart", "touchMove", "touchMove"), spots, strict=True):
            points = [{"x": spot[0], "y": spot[1]}]
            touch.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": points})
        touch.send("Input.dispatchTouchEvent", {"type": "touchEnd", "touchPoints": []})
        self.lengths(app, "120", "96", "144")
        app.expect_answer("120")

    def test_what_is_wrong_stands_in_its_row(self, app: App) -> None:
        app.open(run(*ROOM))
        app.page.get_by_role("button", name=re.compile("^Wall 2 ")).tap()
        app.enter("Length", "abc")
        row = app.page.locator("li.row").nth(1)
        words = '"abc" can\'t be read'
        expect(row.get_by_text(words)).to_be_visible()
        expect(app.field("Length")).to_have_accessible_description(re.compile(words))
        app.page.get_by_role("button", name=re.compile("^Wall 3 ")).tap()
        expect(row.get_by_text(words)).to_be_visible()
        app.expect_withdrawn()


class TestAddress:
    def test_back_from_a_tool_to_its_place(self, app: App) -> None:
        app.open("#/saw")
        app.page.get_by_role("link", name="Trim around an opening").tap()
        app.enter("Width", "27 13/16")
        expect(app.page).to_have_url(re.compile(r"#/saw/mitered-frame\?width=27\+13%2F16$"))
        app.page.go_back()
        expect(app.page.get_by_role("heading", name="At the saw")).to_be_visible()
        app.page.go_forward()
        expect(app.field("Width")).to_have_value("27 13/16")

    def test_it_beats_what_was_kept(self, app: App) -> None:
        app.open("#/saw/mitered-frame")
        app.enter("Width", "27 13/16")
        app.turn("site")
        app.turn("saw", "mitered-frame")
        expect(app.field("Width")).to_have_value("27 13/16")
        app.turn("saw", "mitered-frame", "#/saw/mitered-frame?width=30")
        expect(app.field("Width")).to_have_value("30")
        expect(app.field("Height")).to_have_value("")

    def test_it_says_its_units(self, app: App) -> None:
        """By hand: 706 mm = 27.795, two pieces inside a recess as wide as that."""
        app.open(frame(width="706", height="1500", side_width="60", units="mm"))
        app.expect_answer("27 and 13/16 shy")


class TestKept:
    def settings(self, app: App) -> Any:
        app.page.get_by_role("button", name="Units and settings").tap()
        return app.page.get_by_role("dialog", name="How it is shown")

    def choose(self, app: App, group: str, option: str) -> None:
        sheet = self.settings(app)
        radio = sheet.get_by_role("group", name=group).get_by_role("radio", name=option, exact=True)
        radio.check(force=True)
        sheet.get_by_role("button", name="Close").tap()

    def test_lengths_keep_their_meaning_in_millimeters_and_back(self, app: App) -> None:
        """27 13/16 = 706.4 mm; 706 typed where millimeters are in force stays 706 mm."""
        app.open(frame())
        app.expect_answer("27 and 13/16")
        self.choose(app, "Millimeters, to", "1")
        app.expect_answer("706 mm full")
        expect(app.field("Width")).to_have_value("27 13/16 in")
        app.enter("Height", "1500")
        self.choose(app, "Inches, to", "1/16")
        app.expect_answer("27 and 13/16")
        expect(app.field("Width")).to_have_value("27 13/16")
        expect(app.field("Height")).to_have_value("1500 mm")
        expect(app.field("Trim width")).to_have_value("2 1/2")

    def test_lengths_in_rows_keep_their_meaning_too(self, app: App) -> None:
        """144 x 25.4 = 3657.6."""
        app.open(run(*ROOM))
        self.choose(app, "Millimeters, to", "1/10")
        app.expect_answer("3657.6")
        self.choose(app, "Inches, to", "1/16")
        app.expect_answer("144")

    def test_an_earlier_answer_is_called_back(self, app: App) -> None:
        app.open(frame())
        app.expect_answer("27 and 13/16")
        app.answer.get_by_role("button", name="Earlier answers").tap()
        sheet = app.page.get_by_role("dialog", name="Earlier answers")
        expect(sheet.get_by_role("listitem")).to_have_count(1)
        sheet.get_by_role("button", name="Close").tap()
        app.enter("Width", "31")
        app.expect_answer(": 31")
        app.answer.get_by_role("button", name="Earlier answers").tap()
        expect(sheet.get_by_role("listitem")).to_have_count(2)
        sheet.get_by_role("button", name="27 and 13/16").tap()
        expect(app.field("Width")).to_have_value("27 13/16")
        app.expect_answer("27 and 13/16")

    def test_settings_survive_a_reload(self, app: App) -> None:
        app.open("#/saw")
        self.choose(app, "Inches, to", "1/32")
        self.choose(app, "Look", "dark")
        self.settings(app).get_by_role("switch").check(force=True)
        app.page.reload()
        expect(app.page.get_by_role("button", name="in · 1/32")).to_be_visible()
        expect(app.page.locator("html")).to_have_attribute("data-look", "dark")
        expect(self.settings(app).get_by_role("switch")).to_be_checked()

    def test_everything_goes_to_a_file_and_comes_back(
        self, app: App, browser: Browser, tmp_path: Path
    ) -> None:
        app.open("#/saw/mitered-frame")
        app.enter("Width", "27 13/16")
        app.enter("Height", "3/0")
        self.choose(app, "Inches, to", "1/64")
        with app.page.expect_download() as download:
            self.settings(app).get_by_role("button", name="Save everything to a file").tap()
        file = tmp_path / download.value.suggested_filename
        download.value.save_as(file)
        other = App(page_of(browser), app.address)
        other.open("#/saw/mitered-frame")
        sheet = self.settings(other)
        sheet.get_by_label("Bring back from a file").set_input_files(file)
        expect(other.field("Width")).to_have_value("27 13/16")
        expect(other.field("Height")).to_have_value("3/0")
        expect(other.page.get_by_role("button", name="in · 1/64")).to_be_visible()
        other.page.context.close()

    def test_a_phone_that_cannot_be_kept_awake(self, app: App) -> None:
        app.page.add_init_script("delete Navigator.prototype.wakeLock")
        app.open("#/saw")
        assert not app.page.evaluate("'wakeLock' in navigator")
        switch = self.settings(app).get_by_role("switch")
        switch.check(force=True)
        expect(switch).to_be_checked()
        switch.uncheck(force=True)
        expect(switch).not_to_be_checked()


class TestAnswer:
    def test_figure_and_drawing_follow_each_change(self, app: App) -> None:
        app.open(frame())
        app.expect_answer("27 and 13/16")
        drawing = app.page.locator(".result svg.drawing")
        for label, text, says in (
            ("Width", "30", ": 30"),
            ("Width", "41 1/2", "41 and 1/2"),
            ("Play", "1/4", "41 and 1/4"),
        ):
            before = drawing.evaluate("(svg) => svg.outerHTML")
            app.enter(label, text)
            app.expect_answer("Top", says)
            expect(drawing).not_to_have_js_property("outerHTML", before)

    @pytest.mark.parametrize(
        ("fragment", "label", "bad", "words"),
        [
            (frame(), "Width", "3/0", "3/0"),
            (frame(), "Width", "-5", "-5"),
            (frame(), "Width", "abc", "abc"),
            (frame(), "Width", "1" * 10_000, "long"),
            (frame(width="10"), "Trim width", "6", "narrower than 5"),
            ("#/saw/corner-joint?corner=90&width_a=3", "Corner", "180", "180"),
        ],
        ids=["no denominator", "negative", "no number", "endless", "wider than the recess", "flat"],
    )
    def test_bad_input_takes_the_answer_away_and_nothing_else(
        self, app: App, fragment: str, label: str, bad: str, words: str
    ) -> None:
        app.open(fragment)
        app.expect_answer()
        good = app.field(label).input_value()
        app.enter(label, bad)
        app.expect_withdrawn()
        for _ in ("typed", "reloaded"):
            field = app.field(label)
            expect(field).to_have_value(bad)
            expect(field).to_have_attribute("aria-invalid", "true")
            expect(field).to_have_accessible_description(re.compile(words))
            expect(app.headline).to_contain_text("Waiting for")
            app.page.reload()
        app.enter(label, good)
        app.expect_answer()
        expect(app.field(label)).not_to_have_attribute("aria-invalid", "true")


    def test_a_message_that_comes_or_goes_leaves_the_field_in_hand(self, app: App) -> None:
        """A late message once moved the cards on, and with them the entry to another field."""
        app.open(frame())
        app.field("Trim width").tap()
        write = "(field, text) => { field.value = text; field.dispatchEvent(new Event('input')); }"
        for text, wrong in (("abc", 1), ("30", 0)):
            app.field("Width").evaluate(write, text)
            expect(app.page.locator("form .message")).to_have_count(wrong)
            expect(app.field("Trim width")).to_be_focused()


class TestMotion:
    @pytest.mark.parametrize("wish", ["reduce", "no-preference"])
    def test_nothing_moves_for_those_who_asked(
        self, browser: Browser, address: str, wish: str
    ) -> None:
        app = App(page_of(browser, reduced_motion=wish), address)
        app.open("#/saw/mitered-frame")
        app.field("Width").tap()
        moves = app.pad.evaluate("(pad) => getComputedStyle(pad).animationName !== 'none'")
        assert moves == (wish == "no-preference")
        app.page.context.close()
