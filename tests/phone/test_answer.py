"""The answer follows the form: at each change, and away while something in it is wrong."""

import re

import pytest
from playwright.sync_api import Browser, expect

from tests.phone.app import App, frame
from tests.phone.conftest import page_of


class TestAnswer:
    def test_figure_and_drawing_follow_each_change(self, app: App) -> None:
        app.open(frame())
        app.expect_answer("27 and 13/16")
        drawing = app.page.locator(".result svg.drawing")
        for label, text, says in (
            ("Opening width", "30", ": 30"),
            ("Opening width", "41 1/2", "41 and 1/2"),
            ("Play", "1/4", "41 and 1/4"),
        ):
            before = drawing.evaluate("(svg) => svg.outerHTML")
            app.enter(label, text)
            app.expect_answer("Top", says)
            expect(drawing).not_to_have_js_property("outerHTML", before)

    @pytest.mark.parametrize(
        ("fragment", "label", "bad", "words"),
        [
            (frame(), "Opening width", "3/0", "3/0"),
            (frame(), "Opening width", "-5", "-5"),
            (frame(), "Opening width", "abc", "abc"),
            (frame(), "Opening width", "1" * 150, "long"),
            (frame(opening_width="10"), "Trim width", "6", "narrower than 5"),
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
            expect(app.headline).to_contain_text(re.compile("Check|Still needed"))
            app.page.reload()
        app.enter(label, good)
        app.expect_answer()
        expect(app.field(label)).not_to_have_attribute("aria-invalid", "true")

    def test_what_was_unfolded_is_unfolded_below_the_next_answer(self, app: App) -> None:
        app.open(frame())
        app.expect_answer()
        figures = app.block("More numbers").locator(".lines")
        expect(figures).to_be_visible()
        app.enter("Opening width", "3/0")
        app.expect_withdrawn()
        expect(figures).to_be_hidden()
        app.enter("Opening width", "30")
        app.expect_answer()
        expect(figures).to_be_visible()

    def test_what_is_out_of_sight_follows_what_is_in_sight(self, app: App) -> None:
        """Top and sides, cut inside the opening: as long as it is, 30 and 60 1/8."""
        app.open(frame())
        app.expect_answer("27 and 13/16")
        expect(app.page.locator(".below")).not_to_be_in_viewport()
        seen = app.field("Opening width").evaluate(
            """async (field) => {
              const [card, below] = ["#answer", ".below"].map((css) => document.querySelector(css));
              const text = (part) => part.textContent.replace(/\\s+/g, " ");
              const before = text(below);
              // Noted as the card changes: what lies below follows frames later.
              const noted = new Promise((resolve) => {
                const note = () => {
                  if (!text(card).includes("Top, long point to long point: 30")) return;
                  resolve([below.ariaBusy, text(below) === before]);
                };
                const what = { subtree: true, childList: true, characterData: true };
                new MutationObserver(note).observe(card, what);
              });
              field.value = "30";
              field.dispatchEvent(new InputEvent("input", { bubbles: true }));
              const early = await noted;
              while (below.ariaBusy === "true") await new Promise(requestAnimationFrame);
              return [...early, text(below) === before];
            }"""
        )
        assert seen == ["true", True, False]
        expect(app.block("Cut")).to_contain_text("30")

    def test_a_message_that_comes_or_goes_leaves_the_field_in_hand(self, app: App) -> None:
        """A late message once moved the cards on, and with them the entry to another field."""
        app.open(frame())
        app.field("Trim width").tap()
        write = "(field, text) => { field.value = text; field.dispatchEvent(new Event('input')); }"
        for text, wrong in (("abc", 1), ("30", 0)):
            app.field("Opening width").evaluate(write, text)
            expect(app.page.locator("form .message")).to_have_count(wrong)
            expect(app.field("Trim width")).to_be_focused()


class TestMotion:
    @pytest.mark.parametrize("wish", ["reduce", "no-preference"])
    def test_nothing_moves_for_those_who_asked(
        self, browser: Browser, address: str, wish: str
    ) -> None:
        app = App(page_of(browser, reduced_motion=wish), address)
        app.open("#/saw/mitered-frame")
        app.field("Opening width").tap()
        moves = app.pad.evaluate("(pad) => getComputedStyle(pad).animationName !== 'none'")
        assert moves == (wish == "no-preference")
        app.page.context.close()
