"""What was entered and chosen stays: in the address, on the phone, in a file, and in its meaning.

Expected lengths are worked out by hand beside each check: 25.4 mm to an inch.
"""

import re
from pathlib import Path
from typing import Any

from playwright.sync_api import Browser, expect

from tests.phone.app import ROOM, App, choose, frame, run
from tests.phone.conftest import page_of


class TestAddress:
    def test_back_from_a_tool_to_its_place(self, app: App) -> None:
        app.open("#/saw")
        app.page.get_by_role("link", name="Trim around an opening").tap()
        app.enter("Opening width", "27 13/16")
        expect(app.page).to_have_url(
            re.compile(r"#/saw/mitered-frame\?opening_width=27\+13%2F16&form=2$")
        )
        expect(app.pad).to_be_visible()
        app.page.go_back()
        expect(app.pad).to_be_hidden()  # what lies on top closes first
        expect(app.field("Opening width")).to_have_value("27 13/16")
        app.page.go_back()
        expect(app.page.get_by_role("heading", name="At the saw")).to_be_visible()
        app.page.go_forward()
        expect(app.field("Opening width")).to_have_value("27 13/16")

    def test_it_beats_what_was_kept(self, app: App) -> None:
        app.open("#/saw/mitered-frame")
        app.enter("Opening width", "27 13/16")
        app.turn("site")
        app.turn("saw", "mitered-frame")
        expect(app.field("Opening width")).to_have_value("27 13/16")
        app.turn("saw", "mitered-frame", "#/saw/mitered-frame?opening_width=30")
        expect(app.field("Opening width")).to_have_value("30")
        expect(app.field("Opening height")).to_have_value("")

    def test_a_reload_in_the_middle_of_typing_loses_nothing(self, app: App) -> None:
        app.open("#/saw/mitered-frame")
        app.enter("Opening width", "27")
        app.enter("Opening width", "27 13/16")
        app.page.reload()
        expect(app.field("Opening width")).to_have_value("27 13/16")

    def test_a_reload_that_forgets_what_the_address_was_loses_nothing(self, app: App) -> None:
        """Chromium now and then reloads right after a write with the entry's notes gone, and with
        the address before."""
        app.open("#/saw/mitered-frame")
        app.enter("Opening width", "27")
        expect(app.page).to_have_url(re.compile("opening_width=27&"))
        before = app.page.url
        app.enter("Opening width", "27 13/16")
        expect(app.page).to_have_url(re.compile("opening_width=27[+]13"))
        for address in (app.page.url, before):
            app.page.evaluate("(address) => history.replaceState(null, '', address)", address)
            app.page.reload()
            expect(app.field("Opening width")).to_have_value("27 13/16")

    def test_a_reload_of_a_link_shows_what_the_link_says(self, app: App) -> None:
        app.open("#/saw/mitered-frame")
        app.enter("Opening width", "27 13/16")
        app.page.keyboard.press("Escape")
        app.open("#/saw/mitered-frame?opening_width=30")
        app.field("Opening width").tap()
        expect(app.pad).to_be_visible()
        app.page.go_back()
        expect(app.pad).to_be_hidden()
        app.page.reload()
        expect(app.field("Opening width")).to_have_value("30")

    def test_it_says_its_units(self, app: App) -> None:
        """By hand: 706 mm = 27.795, two pieces inside a recess as wide as that."""
        app.open(frame(opening_width="706", opening_height="1500", trim_width="60", units="mm"))
        app.expect_answer("27 and 13/16 shy")


class TestUndo:
    """What was emptied can be brought back in its own tool, and nowhere else."""

    def empty(self, app: App) -> None:
        app.open(frame())
        app.expect_answer()
        app.page.get_by_role("button", name="Start over").tap()
        expect(app.page.get_by_text("The form is empty.")).to_be_visible()

    def test_it_brings_the_form_back_and_shows_it_from_the_top(self, app: App) -> None:
        self.empty(app)
        expect(app.field("Opening width")).to_be_in_viewport()
        app.page.get_by_role("status").get_by_role("button", name="Undo").tap()
        expect(app.field("Opening width")).to_have_value("27 13/16")

    def test_it_goes_with_its_tool(self, app: App) -> None:
        self.empty(app)
        app.turn("saw", "corner-joint")
        expect(app.page.get_by_role("status").get_by_role("button", name="Undo")).to_be_hidden()
        expect(app.page).to_have_url(re.compile("#/saw/corner-joint$"))

    def test_plain_words_give_it_back(self, app: App) -> None:
        """That all is ready offline once took the place of a tick's Undo for good."""
        app.page.clock.install()
        self.empty(app)
        offered = app.page.get_by_role("status").get_by_role("button", name="Undo")
        app.page.get_by_role("button", name="Share").tap()
        expect(offered).to_be_hidden()
        app.page.clock.fast_forward(6_000)
        offered.tap()
        expect(app.field("Opening width")).to_have_value("27 13/16")


class TestKept:
    def settings(self, app: App) -> Any:
        app.page.get_by_role("button", name="Units and settings").tap()
        return app.page.get_by_role("dialog", name="How it is shown")

    def choose(self, app: App, group: str, option: str) -> None:
        sheet = self.settings(app)
        radio = sheet.get_by_role("group", name=group).get_by_role("radio", name=option, exact=True)
        choose(radio)
        sheet.get_by_role("button", name="Close").tap()

    def test_lengths_keep_their_meaning_in_millimeters_and_back(self, app: App) -> None:
        """27 13/16 = 706.4 mm; 706 typed where millimeters are in force stays 706 mm."""
        app.open(frame())
        app.expect_answer("27 and 13/16")
        self.choose(app, "Millimeters, to", "1")
        app.expect_answer("706 mm full")
        expect(app.field("Opening width")).to_have_value('27 13/16"')
        app.enter("Opening height", "1500")
        self.choose(app, "Inches, to", "1/16")
        app.expect_answer("27 and 13/16")
        expect(app.field("Opening width")).to_have_value("27 13/16")
        expect(app.field("Opening height")).to_have_value("1500 mm")
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
        app.enter("Opening width", "31")
        app.expect_answer(": 31")
        app.answer.get_by_role("button", name="Earlier answers").tap()
        expect(sheet.get_by_role("listitem")).to_have_count(2)
        sheet.get_by_role("button", name="27 and 13/16").tap()
        expect(app.field("Opening width")).to_have_value("27 13/16")
        app.expect_answer("27 and 13/16")

    def test_settings_survive_a_reload(self, app: App) -> None:
        app.open("#/saw")
        self.choose(app, "Inches, to", "1/32")
        self.choose(app, "Look", "dark")
        choose(self.settings(app).get_by_role("switch"))
        app.page.reload()
        expect(app.page.get_by_role("button", name="in · 1/32")).to_be_visible()
        expect(app.page.locator("html")).to_have_attribute("data-look", "dark")
        expect(self.settings(app).get_by_role("switch")).to_be_checked()

    def test_everything_goes_to_a_file_and_comes_back(
        self, app: App, browser: Browser, tmp_path: Path
    ) -> None:
        app.open("#/saw/mitered-frame")
        app.enter("Opening width", "27 13/16")
        app.enter("Opening height", "3/0")
        self.choose(app, "Inches, to", "1/64")
        app.turn("saw")
        with app.page.expect_download() as download:
            app.page.get_by_role("button", name="Save to a file").tap()
        file = tmp_path / download.value.suggested_filename
        download.value.save_as(file)
        other = App(page_of(browser), app.address)
        other.open("#/saw")
        other.page.get_by_label("Restore from a file").set_input_files(file)
        expect(other.page.get_by_text("Everything in the file is kept here")).to_be_visible()
        other.turn("saw", "mitered-frame")
        expect(other.field("Opening width")).to_have_value("27 13/16")
        expect(other.field("Opening height")).to_have_value("3/0")
        expect(other.page.get_by_role("button", name="in · 1/64")).to_be_visible()
        other.page.context.close()

    def test_a_phone_that_cannot_be_kept_awake(self, app: App) -> None:
        app.page.add_init_script("delete Navigator.prototype.wakeLock")
        app.open("#/saw")
        assert not app.page.evaluate("'wakeLock' in navigator")
        switch = self.settings(app).get_by_role("switch")
        choose(switch)
        expect(switch).to_be_checked()
        choose(switch, False)
        expect(switch).not_to_be_checked()
