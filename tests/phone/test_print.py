"""What comes out of the printer at full size, measured in the PDF that the browser prints.

A point is 1/72 inch, so what must hold is plain arithmetic; 0.2 points is 0.07 mm, less than the
width of a sharp pencil's line. Expected marks and sizes are the hand-worked ones of the fixtures.
"""

import io
import json
import math
import re
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Any
from urllib.parse import quote

import numpy as np
import pdfplumber
import pytest
from playwright.sync_api import Browser, expect

from tests.cases import Case, all_cases, inches
from tests.phone.app import App, hash_of
from tests.phone.conftest import page_of

POINTS = 72.0
CLOSE = 0.2
PAPERS = {"Letter": (612, 792), "A4": (595, 842)}

# Printers leave a rim of the paper white, a wider one at the foot: common practice, no source.
RIM = {"side": 0.25 * POINTS, "top": 0.25 * POINTS, "foot": 0.5 * POINTS}

HINGES: Case = next(case for case in all_cases() if case.tool == "hinge-layout" and case.marks)


@dataclass(frozen=True)
class Line:
    """A straight stroke on a page, in points from its top left corner."""

    x0: float
    y0: float
    x1: float
    y1: float

    @property
    def across(self) -> float:
        return self.x1 - self.x0

    @property
    def down(self) -> float:
        return self.y1 - self.y0


def lines(page: Any) -> list[Line]:
    return [Line(each["x0"], each["top"], each["x1"], each["bottom"]) for each in page.lines]


def flat(page: Any, least: float, most: float) -> list[Line]:
    return [line for line in lines(page) if line.down < 0.01 and least < line.across < most]


def outlines(page: Any) -> list[Line]:
    """The boxes round everything drawn that is no single straight stroke."""
    shapes = page.rects + page.curves
    return [Line(each["x0"], each["top"], each["x1"], each["bottom"]) for each in shapes]


def join(page: Any) -> float:
    """How far down the line lies at which two pages meet: the only row of dashes."""
    dashes = [each for each in outlines(page) if each.down < 1 and 4 < each.across < 8]
    (height,) = {round((each.y0 + each.y1) / 2, 2) for each in dashes}
    return height


def text_of(page: Any) -> str:
    """The words of a page, without the white ones that keep lines off the letters."""
    white = (1.0, 1.0, 1.0)
    return str(page.filter(lambda each: each.get("non_stroking_color") != white).extract_text())


def outline(page: Any, across: float, down: float) -> Line:
    """The one outline of that size in inches."""
    found = [
        each
        for each in outlines(page)
        if each.across == pytest.approx(across * POINTS, abs=CLOSE)
        and each.down == pytest.approx(down * POINTS, abs=CLOSE)
    ]
    assert len(found) == 1, outlines(page)
    return found[0]


def sticks(page: Any) -> list[Line]:
    """The edges of the story sticks, from left to right: the only long upright lines."""
    upright = [line for line in lines(page) if line.across < 0.01 and line.down > 3 * POINTS]
    return sorted(upright, key=lambda line: line.x0)


def marks_of(pages: list[Any], stick: int) -> list[float]:
    """The ticks of one stick in points from its start, its pages laid end to end.

    A tick where two pages meet stands on both and counts once.
    """
    found: list[float] = []
    start = 0.0
    for page in pages:
        edge = sticks(page)[stick]
        ticks = [line.y0 - edge.y0 for line in flat(page, 20, 60) if abs(line.x0 - edge.x0) < 0.01]
        assert all(-CLOSE < tick < edge.down + CLOSE for tick in ticks)
        for tick in sorted(ticks):
            if not found or start + tick - found[-1] > CLOSE:
                found.append(start + tick)
        start += edge.down
    return found


def ink(page: Any) -> Line:
    """The box round everything that is not white, as a printer would see it."""
    picture = np.asarray(page.to_image(resolution=POINTS).original.convert("L"))
    rows, columns = np.where(picture < 250)
    return Line(columns.min(), rows.min(), columns.max() + 1, rows.max() + 1)


@contextmanager
def phone_at_the_printer(browser: Browser, address: str) -> Iterator[App]:
    """The app on a phone whose print dialog is the test's own: it stays open for the test."""
    page = page_of(browser, color_scheme="dark")
    page.add_init_script("window.print = () => {}")
    yield App(page, address)
    page.context.close()


@pytest.fixture
def app(browser: Browser, address: str) -> Iterator[App]:
    with phone_at_the_printer(browser, address) as app:
        yield app


Hinges = dict[str, Any]
"""The hinges' sheets by paper."""


@pytest.fixture(scope="module")
def hinges(browser: Browser, address: str) -> Iterator[Hinges]:
    """The fixture's hinges on both papers, printed once for all that look at them."""
    with phone_at_the_printer(browser, address) as app:
        open_hinges(app)
        button = app.page.get_by_role("button", name="Print at full size")
        printed_on = {}
        for paper in PAPERS:
            printed_on[paper] = pdf = at_full_size(app, paper)
            expect(button).to_contain_text(f"{len(pdf.pages)} pages")
            # A touch puts the sheets away, so that the other paper's are made anew.
            app.page.get_by_role("heading", name="Hinge layout").tap()
        yield printed_on


def open_hinges(app: App, **inputs: str) -> None:
    given = {name: str(value) for name, value in (HINGES.inputs | inputs).items()}
    app.open(hash_of("site", "hinge-layout", given))
    app.expect_answer()


def printed(app: App, paper: str = "Letter") -> Any:
    """The open page as the browser prints it, with all the ink it would ever use."""
    return pdfplumber.open(io.BytesIO(app.page.pdf(format=paper, print_background=True)))


def at_full_size(app: App, paper: str = "Letter") -> Any:
    app.page.get_by_role("button", name="Print at full size").tap()
    return printed(app, paper)


def sheets(pdf: Any, words: str) -> list[Any]:
    return [page for page in pdf.pages if words in text_of(page)]


@pytest.mark.parametrize("paper", PAPERS)
def test_every_page_proves_its_scale_with_a_ruler(hinges: Hinges, paper: str) -> None:
    """4 inches are 288 points, 100 mm are 100 / 25.4 x 72."""
    for page in hinges[paper].pages:
        ruler = sorted(line.across for line in flat(page, 3 * POINTS, 5 * POINTS))
        assert ruler == pytest.approx([100 / 25.4 * POINTS, 4 * POINTS], abs=CLOSE)
        assert "print again at 100 %" in text_of(page)


def test_the_ruler_ticks_are_eighths_and_two_millimeters(hinges: Hinges) -> None:
    page = hinges["Letter"].pages[0]
    inch, metric = sorted(flat(page, 3 * POINTS, 5 * POINTS), key=lambda line: line.y0)
    short = [line for line in lines(page) if line.across < 0.01 and line.down < 15]
    above = sorted(line.x0 - inch.x0 for line in short if abs(line.y1 - inch.y0) < 0.1)
    below = sorted(line.x0 - metric.x0 for line in short if abs(line.y0 - metric.y0) < 0.1)
    assert above == pytest.approx([number * POINTS / 8 for number in range(33)], abs=CLOSE)
    assert below == pytest.approx([number * 2 / 25.4 * POINTS for number in range(51)], abs=CLOSE)


@pytest.mark.parametrize("paper", PAPERS)
def test_marks_stand_at_their_true_distances_over_all_pages(hinges: Hinges, paper: str) -> None:
    pages = sheets(hinges[paper], "story stick")
    for number, start in enumerate(("leaf top", "head")):
        wanted = [inches(mark["value"]) for mark in HINGES.marks if mark["from"] == start]
        distances = [0.0, *(value * POINTS for value in wanted if value is not None)]
        assert marks_of(pages, number) == pytest.approx(distances, abs=CLOSE)
        assert f"From {start}" in text_of(pages[0])


def test_marks_of_any_kind_are_printed_on_one_story_stick(app: App) -> None:
    """The first case of the story stick: by hand 5 1/2, 32, 34 1/2 and 80 1/2 from the floor."""
    case = next(each for each in all_cases() if each.tool == "story-stick")
    given = case.inputs | {"marks": json.dumps(case.inputs["marks"])}
    app.open(hash_of("site", "story-stick", given))
    app.expect_answer()
    pages = sheets(at_full_size(app), "story stick")
    wanted = [inches(mark["value"]) for mark in case.marks]
    distances = [0.0, *(value * POINTS for value in wanted if value is not None)]
    assert marks_of(pages, 0) == pytest.approx(distances, abs=CLOSE)
    assert "From floor" in text_of(pages[0])


def test_the_outline_has_the_size_of_the_mortise(hinges: Hinges) -> None:
    """Its size and the door's thickness stand in the fixture; its depth is written in it."""
    (page,) = sheets(hinges["Letter"], "Mortise outline")
    wide, high = (inches(HINGES.figures[name]) for name in ("mortise_width", "mortise_length"))
    thick = inches(HINGES.inputs["door_thickness"])
    assert wide
    assert high
    assert thick
    mortise = outline(page, wide, high)
    edges = [each for each in outlines(page) if abs(each.across - thick * POINTS) < CLOSE]
    assert [each.x0 for each in edges] == pytest.approx([mortise.x0], abs=CLOSE)
    inside = page.crop((mortise.x0, mortise.y0, mortise.x1, mortise.y1))
    assert "deep" in text_of(inside)


def test_a_template_larger_than_a_page_goes_on_where_it_was_cut(app: App) -> None:
    """Both pages hold the whole outline, each clipped, at the same place from where they meet."""
    open_hinges(app, hinge_height="12", top_offset="5", bottom_offset="10")
    first, second = sheets(at_full_size(app), "Mortise outline")
    wide = inches(HINGES.figures["mortise_width"])
    assert wide
    one, other = outline(first, wide, 12), outline(second, wide, 12)
    assert one.y0 - join(first) == pytest.approx(other.y0 - join(second), abs=CLOSE)
    assert one.x0 == pytest.approx(other.x0, abs=CLOSE)
    assert "page 2 lies on here" in text_of(first)
    assert "cut, lay on page 1" in text_of(second)


def test_a_router_template_is_printed_with_no_sheet_for_its_margin_alone(app: App) -> None:
    """4 1/2 high and 1 1/2 at each end are 7 1/2: more than a page is wide, less than it is high.

    A page wide 7 1/4 held all but a strip, which was a page with nothing on it to work by.
    """
    open_hinges(app, hinge_height="4 1/2", template="true")
    (page,) = sheets(at_full_size(app), "The template on the edge")
    assert "top is to the right" in re.sub(r"\s+", " ", text_of(page))
    heights = [each.down for each in outlines(page)]
    assert [each for each in heights if each == pytest.approx(4.5 * POINTS, abs=CLOSE)]
    assert [each for each in heights if each == pytest.approx(7.5 * POINTS, abs=CLOSE)]


@pytest.mark.parametrize("paper", PAPERS)
def test_nothing_is_printed_where_printers_leave_the_paper_white(app: App, paper: str) -> None:
    open_hinges(app, hinge_height="12")
    pdf = at_full_size(app, paper)
    width, height = PAPERS[paper]
    for page in pdf.pages:
        assert (page.width, page.height) == pytest.approx((width, height), abs=1)
        box = ink(page)
        assert box.x0 > RIM["side"]
        assert box.x1 < width - RIM["side"]
        assert box.y0 > RIM["top"]
        assert box.y1 < height - RIM["foot"]


@pytest.mark.parametrize("paper", PAPERS)
def test_pages_are_numbered_and_no_more_than_the_stick_needs(hinges: Hinges, paper: str) -> None:
    """The last mark lies 69 5/8 down: of a page 11 high at least 8 inches carry stick."""
    pdf = hinges[paper]
    count = len(pdf.pages)
    assert math.ceil(69.625 / 11) + 1 <= count <= math.ceil(69.625 / 8) + 1
    for number, page in enumerate(pdf.pages, 1):
        assert f"{number} of {count}" in text_of(page)


def test_the_dark_look_prints_ink_on_white(app: App) -> None:
    open_hinges(app)
    app.page.get_by_role("button", name="Units and settings").tap()
    app.page.get_by_role("radio", name="dark").check()
    expect(app.page.locator("html")).to_have_attribute("data-look", "dark")
    app.page.get_by_role("button", name="Close", exact=True).tap()
    for pdf in (printed(app), at_full_size(app)):
        for page in pdf.pages:
            picture = np.asarray(page.to_image(resolution=POINTS).original.convert("L"))
            assert np.median(picture) == 255
            assert picture.min() < 100


def test_the_page_itself_prints_all_it_says_and_no_bars_or_buttons(app: App) -> None:
    """What is folded away on the screen is open on paper, and folded again after."""
    open_hinges(app)
    source = app.page.get_by_text("usual swaging of butt hinges").first
    expect(source).to_be_hidden()
    pdf = printed(app)
    text = re.sub(r"\s+", " ", " ".join(text_of(page) for page in pdf.pages))
    for words in (
        "Leaf height", "Mortise depth, each hinge leaf", "Top hinge, top line", "Mortise length",
        "Knife around the hinge leaf itself", "Fire-rated doors", "usual swaging of butt hinges",
    ):  # fmt: skip
        assert words in text, words
    for words in ("Start over", "Earlier answers", "Print at full size", "Yard", "At the yard"):
        assert words not in text, words
    assert len(pdf.pages) <= 5
    expect(source).to_be_hidden()


def test_after_the_dialog_a_touch_brings_the_page_back(app: App) -> None:
    """Several phones report the end of printing too early, so the sheets wait for a touch."""
    open_hinges(app)
    assert sheets(at_full_size(app), "story stick")
    assert sheets(printed(app), "story stick")
    app.page.get_by_role("heading", name="Hinge layout").tap()
    assert not sheets(printed(app), "story stick")


def test_without_marks_or_template_there_is_nothing_to_print_at_full_size(app: App) -> None:
    app.open(hash_of("saw", "corner-joint", {"corner": quote("90"), "width_a": "2 1/2"}))
    app.expect_answer()
    expect(app.page.get_by_role("button", name="Start over")).to_be_visible()
    expect(app.page.get_by_role("button", name="Print at full size")).to_have_count(0)
