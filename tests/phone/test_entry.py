"""A thumb and a hardware keyboard: what is entered is read right, row by row.

Expected lengths are worked out by hand beside each check: 12 inches to a foot, 25.4 mm to an inch.
"""

import re
from typing import Any

from playwright.sync_api import Page, Route, expect

from tests.phone.app import FRAMES, ROOM, App, choose, frame, run
from tests.phone.storage import wait_until

# What is posted to the core waits while it is held.
HELD = """
(() => {
  const post = Worker.prototype.postMessage;
  let held = null;
  window.hold = () => { held = []; };
  window.letGo = () => { const all = held; held = null; all.forEach((go) => go()); };
  Worker.prototype.postMessage = function (...given) {
    if (held) held.push(() => post.apply(this, given));
    else post.apply(this, given);
  };
})();
"""
PLUS = "+ then −: plus, tapped again minus"


def test_who_types_before_the_core_answers_keeps_the_field(page: Page, address: str) -> None:
    """The screen that was seen stays seen; the core's script is held until then."""
    held: list[Route] = []
    page.route("**/worker-*.js", lambda route: held.append(route))
    page.goto(f"{address}/#/saw/mitered-frame")
    field = page.get_by_label("Opening width", exact=True)
    field.fill("27 13/16")
    expect(page).to_have_url(re.compile("opening_width=27"))
    page.wait_for_function("() => document.querySelector('.tool').getAnimations().length === 0")
    expect(field).to_be_focused()
    expect(page.get_by_role("group", name="Pad for")).to_be_visible()
    wait_until(page, lambda: bool(held), "the core's script is asked for")
    for route in held:
        route.continue_()
    expect(page.locator("#answer")).to_contain_text("Still needed")


class TestPad:
    def test_digits_and_the_sixteenth_of_the_inch(self, app: App) -> None:
        app.open("#/saw/mitered-frame")
        app.field("Opening width").tap()
        app.press("2", "7")
        app.pick(13)
        expect(app.field("Opening width")).to_have_value("27 13/16")
        expect(app.pad).to_contain_text("706 mm")  # 27.8125 x 25.4 = 706.4

    def test_every_key(self, app: App) -> None:
        """In a recess without play the top is as long as the recess is wide."""
        app.open(frame())
        app.field("Opening width").tap()
        for keys, sixteenth, says in (
            (["2", "ft, feet", "3"], 13, "27 and 13/16"),  # 24 + 3 13/16
            (["7", "0", "6", "mm, millimeters"], None, "27 and 13/16 shy"),  # 27.795
            (["3", "0", "Space", "5", "Fraction slash", "1", "6"], None, "30 and 5/16"),
            (["3", "0", PLUS, "2"], 8, "32 and 1/2"),
            (["3", "0", PLUS, PLUS, "2"], 8, "27 and 1/2"),
            (["2", "7", "Point", "5"], None, "27 and 1/2"),
            (["2", "8", "Erase the last character", "9"], None, ": 29"),
            (["9", "9", "Clear", "3", "1"], None, ": 31"),
        ):
            app.press("Clear", *keys)
            if sixteenth is not None:
                app.pick(sixteenth)
            app.expect_answer("Top", says)

    def test_keys_that_come_faster_than_the_screen_is_drawn(self, app: App) -> None:
        """Two thumbs: the second key once went on from an entry without the first."""
        app.open(frame())
        app.expect_answer()
        app.field("Opening width").tap()
        keys = [
            app.pad.get_by_role("button", name=name, exact=True)
            for name in ("3", "0", "Point", "5")
        ]
        app.page.evaluate(
            "(keys) => keys.forEach((key) => key.click())", [key.element_handle() for key in keys]
        )
        app.expect_answer("Top", "30 and 1/2")

    def test_a_fraction_goes_to_the_field_that_was_in_hand_at_its_tap(self, app: App) -> None:
        """A core that took its time put it into the next field, or nowhere."""
        app.page.add_init_script(HELD)
        app.open("#/saw/mitered-frame")
        app.field("Opening width").tap()
        expect(app.pad.locator(".inch")).to_be_visible()
        app.page.evaluate("window.hold()")
        app.press("7")
        app.pick(8)
        app.press("Next")
        expect(app.field("Opening height")).to_be_focused()
        app.page.evaluate("window.letGo()")
        expect(app.field("Opening width")).to_have_value("7 1/2")
        expect(app.field("Opening height")).to_have_value("")

    def test_a_new_row_takes_no_other_field_out_of_hand(self, app: App) -> None:
        app.page.add_init_script(HELD)
        app.open("#/saw/stick-plan")
        app.page.evaluate("window.hold()")
        app.page.get_by_role("button", name="Add a piece").tap()
        app.field("Kerf").tap()
        app.page.evaluate("window.letGo()")
        app.press("1")
        expect(app.pad).to_contain_text("25 mm")  # 25.4, once the row's own reply is long there
        expect(app.field("Kerf")).to_be_focused()

    def test_a_sum_is_said_in_both_systems(self, app: App) -> None:
        """By hand: 27 13/16 - 2 1/2 = 25 5/16 = 642.9 mm; 27 in = 685.8 mm."""
        app.open(frame(opening_width="27 13/16 - 2 1/2"))
        app.field("Opening width").tap()
        expect(app.pad).to_contain_text("25 and 5/16 in · 643 mm")
        app.open(frame(opening_width="27 in", opening_height="1500", trim_width="60", units="mm"))
        app.page.get_by_role("button", name="Units and settings").tap()
        choose(app.page.get_by_role("radio", name="1/10", exact=True))
        app.page.keyboard.press("Escape")
        app.field("Opening width").tap()
        expect(app.pad).to_contain_text("685.8 mm · 27 in")

    def test_the_crow_s_foot_stands_only_on_what_can_be_read(self, app: App) -> None:
        app.open(frame(opening_width="27 13/16"))
        app.field("Opening width").tap()
        expect(app.pad.locator(".inch .foot")).to_be_visible()
        app.enter("Opening width", "27 13//16")
        expect(app.pad.locator(".inch .foot")).to_be_hidden()

    def test_taken_in_hand_again_a_digit_starts_anew_and_an_inch_goes_on(self, app: App) -> None:
        app.open(frame())
        app.field("Opening width").tap()
        app.pick(1)
        expect(app.field("Opening width")).to_have_value("27 1/16")
        app.press("Close the pad")
        app.field("Opening width").tap()
        app.press("3")
        expect(app.field("Opening width")).to_have_value("3")

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
        expect(app.headline).to_contain_text("Still needed")
        keyboard = app.page.keyboard
        for stop in (
            app.page.get_by_role("link", name="Back"),
            app.page.get_by_role("button", name="Units and settings"),
            app.field("inside a recess"),
        ):
            keyboard.press("Tab")
            expect(stop).to_be_focused()
        keyboard.press("ArrowDown")
        expect(app.field("around an opening")).to_be_checked()
        expect(app.field("Reveal")).to_be_visible()
        keyboard.press("Tab")
        expect(app.field("Opening width")).to_be_focused()
        keyboard.type("27 13/16")
        keyboard.press("Enter")
        expect(app.field("Opening height")).to_be_focused()
        keyboard.type("60 1/8")
        keyboard.press("Tab")
        expect(app.field("Trim width")).to_be_focused()
        keyboard.type("2 1/2")
        app.expect_answer("around the opening", "33 and 3/16")
        pieces = app.block("Cut").get_by_role("listitem")
        expect(pieces.first).to_contain_text("33 and 3/16")
        keyboard.press("Escape")
        expect(app.pad).to_be_hidden()
        keyboard.press("Shift+Tab")
        expect(app.field("Opening height")).to_be_focused()
        keyboard.press("Shift+Tab")
        keyboard.type("30")
        expect(app.field("Opening width")).to_have_value("30")
        app.expect_answer("35 and 3/8")  # 30 + two reveals of 3/16, two trims of 2 1/2

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
        expect(app.page.get_by_role("group", name="Pad for Wall 1, Length")).to_be_visible()
        app.press("1", "4", "4", "Close the pad")
        app.page.get_by_role("button", name="Duplicate wall 1").tap()
        self.lengths(app, "144", "144")
        app.field("Length").tap()
        app.press("1", "2", "0", "Close the pad")
        self.lengths(app, "144", "120")
        app.expect_answer("144")
        pieces = app.block("Cut").get_by_role("listitem")
        expect(pieces.nth(1)).to_contain_text("120")

    def test_removed_and_brought_back(self, app: App) -> None:
        app.open(run(*ROOM))
        app.page.get_by_role("button", name=re.compile("^Wall 2 ")).tap()
        app.page.get_by_role("button", name="Remove wall 2").tap()
        self.lengths(app, "144", "96")
        expect(app.page.get_by_text("Wall 2 removed.")).to_be_visible()
        app.page.get_by_role("status").get_by_role("button", name="Undo").tap()
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
        expect(app.page.get_by_text("Wall 1 is now number 2.")).to_be_visible()

    def test_put_in_order_by_dragging(self, app: App) -> None:
        app.open(run(*ROOM))
        self.lengths(app, "144", "120", "96")
        # What the core says of the form moves the rows.
        app.expect_answer()
        app.page.evaluate(FRAMES)
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
