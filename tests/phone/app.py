"""The app as its user handles it: places, forms, the answer card."""

import json
import re
from typing import Any
from urllib.parse import urlencode

from playwright.sync_api import Locator, Page, expect

from longpoint.trade.calls import call
from longpoint.trade.shelf import PLACES, slugs_at, tool_named

READY = "Ready offline"
FRAMES = "new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))"
"""Waits until what is changed now is drawn: two frames later."""
FRAME = {
    "fit": "inside",
    "opening_width": "27 13/16",
    "opening_height": "60 1/8",
    "trim_width": "2 1/2",
}
ROOM = [{"length": "144"}, {"length": "120"}, {"length": "96"}]
TOOLS = [(place, slug) for place, _ in PLACES for slug in slugs_at(place)]


def hash_of(place: str, slug: str, inputs: dict[str, str] | None = None) -> str:
    """Return the address of a tool within the app, with inputs as typed by today's version."""
    path = f"#/{place}" + (f"/{slug}" if slug else "")
    if not inputs:
        return path
    version = tool_named(slug).version
    return f"{path}?{urlencode(inputs | ({'form': str(version)} if version > 1 else {}))}"


def frame(**changed: str) -> str:
    """Return the address of the frame of 27 13/16 x 60 1/8, with changes."""
    return hash_of("saw", "mitered-frame", FRAME | changed)


def run(*walls: dict[str, str], trim_thickness: str = "5/8") -> str:
    """Return the address of a trim run along these walls."""
    inputs = {"walls": json.dumps(walls), "trim_thickness": trim_thickness}
    return hash_of("saw", "trim-run", inputs)


def example_of(slug: str) -> dict[str, Any]:
    """Return a tool's example as its address can carry it: lists kept for all tools stay behind."""
    declared = json.loads(call(json.dumps({"do": "declare", "tool": slug})))["tool"]["inputs"]
    kept = {each["name"] for each in declared if each.get("kept")}
    return {name: value for name, value in tool_named(slug).example.items() if name not in kept}


def example_hash(place: str, slug: str) -> str:
    """Return the address of a tool with its own example, rows as JSON."""
    inputs = {
        name: value if isinstance(value, str) else json.dumps(value)
        for name, value in example_of(slug).items()
    }
    return hash_of(place, slug, inputs)


def verdict_of(slug: str) -> str:
    """Return the sentence a tool's example leads with, as a screen reader would say it."""
    request = {"do": "answer", "tool": slug, "inputs": example_of(slug)}
    answer = json.loads(call(json.dumps(request | {"units": "in", "step": 16})))["answer"]
    return re.sub(r"(\d) (?=\d+/\d)", r"\1 and ", answer["verdict"])


def choose(control: Locator, is_on: bool = True) -> None:
    """Tap a radio button, a box or a switch on its label, which covers it."""
    if control.is_checked() != is_on:
        control.locator("xpath=ancestor::label").tap()
    expect(control).to_be_checked(checked=is_on)


class App:
    """One page of the app at `address`."""

    def __init__(self, page: Page, address: str) -> None:
        self.page = page
        self.address = address

    def open(self, fragment: str = "") -> None:
        """Open an address in a fresh load of the page."""
        self.page.goto("about:blank")
        self.page.goto(f"{self.address}/{fragment}")

    def turn(self, place: str, slug: str = "", fragment: str = "") -> None:
        """Go on to a place or a tool in the same load, and wait until its screen is up."""
        self.page.goto(f"{self.address}/{fragment or hash_of(place, slug)}")
        title = tool_named(slug).title if slug else dict(PLACES)[place]
        expect(self.page).to_have_title(f"{title} · Longpoint")

    def turn_to_example(self, place: str, slug: str) -> None:
        """Go on to a tool with its own example, and wait until the answer stands."""
        self.turn(place, slug, example_hash(place, slug))
        self.expect_answer()

    def install(self) -> None:
        """Visit for the first time and wait until everything is kept for later."""
        self.page.goto(f"{self.address}/")
        expect(self.page.get_by_text(READY)).to_be_visible()

    def go(self, place: str) -> None:
        """Tap a place in the bar, which the pad covers while it is open."""
        self.page.keyboard.press("Escape")
        self.page.get_by_role("navigation").get_by_role("link", name=place).click()

    def field(self, label: str) -> Locator:
        """Return the control with that label."""
        return self.page.get_by_label(label, exact=True)

    def enter(self, label: str, text: str) -> None:
        """Type into a field, replacing what is there."""
        self.field(label).fill(text)

    def add_row(self, name: str | re.Pattern[str], row: str) -> None:
        """Tap "Add a …" and wait until the new row is in hand, its fields named `field-row-…`.

        Its first field takes the focus once the core has answered, out of any other's hand.
        """
        self.page.get_by_role("button", name=name).click()
        expect(self.page.locator(f"[id^='field-{row}-']:focus")).to_be_attached()

    def put(self, control: str, value: str) -> None:
        """Type a value into a control, or choose it, whichever kind it is; unfold it first."""
        field = self.page.locator(control)
        more = self.page.get_by_role("button", name=re.compile("^More"))
        expect(field.or_(more).first).to_be_attached()
        if not field.count():
            more.click()
        if field.evaluate("(element) => element.tagName") == "SELECT":
            field.select_option(value)
        elif field.get_attribute("type") == "radio":
            name = field.get_attribute("name")
            choose(self.page.locator(f"input[name='{name}'][value='{value}']"))
        else:
            field.fill(value)

    def block(self, title: str) -> Locator:
        """Return a list or a table below the answer, unfolded where it is folded."""
        fold = self.page.locator("details.fold").filter(
            has=self.page.locator(".foldname", has_text=re.compile(f"^{re.escape(title)}$"))
        )
        block = self.page.get_by_role("region", name=title, exact=True)
        expect(fold.or_(block).first).to_be_attached()
        if fold.count():
            fold.evaluate("(fold) => { fold.open = true; }")
            return fold
        rest = block.locator("details.more")
        if rest.count():
            rest.evaluate("(rest) => { rest.open = true; }")
        return block

    def press(self, *names: str) -> None:
        """Tap keys of the pad, by their names."""
        for name in names:
            self.pad.get_by_role("button", name=name, exact=True).tap()

    def pick(self, sixteenths: int) -> None:
        """Tap the enlarged inch on one of its strokes, wherever the pad is by then."""
        inch = self.pad.locator(".inch")
        stroke, box = inch.locator(".tick").nth(sixteenths).bounding_box(), inch.bounding_box()
        assert stroke
        assert box
        across = stroke["x"] + stroke["width"] / 2 - box["x"]
        inch.tap(position={"x": across, "y": box["height"] / 2})

    @property
    def answer(self) -> Locator:
        """The answer card."""
        return self.page.get_by_role("region", name="Answer")

    @property
    def pad(self) -> Locator:
        """The pad, which is there while a field is in hand."""
        return self.page.get_by_role("group", name="Pad for")

    @property
    def headline(self) -> Locator:
        """The card's first line: what the big number is, and the number; or what is awaited."""
        return self.answer.get_by_role("status")

    def expect_answer(self, *words: str) -> None:
        """Wait until the card says these words, in this order, and the answer stands."""
        if words:
            expect(self.headline).to_contain_text(re.compile(".*".join(map(re.escape, words))))
        expect(self.answer).not_to_have_class(re.compile("withdrawn"))
        # What is out of sight follows a frame later.
        expect(self.page.locator(".below[aria-busy=true]")).to_have_count(0)

    def expect_withdrawn(self) -> None:
        """Wait until no answer stands."""
        expect(self.answer).to_have_class(re.compile("withdrawn"))
