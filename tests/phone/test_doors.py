"""A pair of doors hung into an opening out of square, with no signal: survey to hinge marks.

The house is invented: its floor falls 1/4 to the left, all else is true. Each step's docstring
works its numbers out by hand.
"""

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, expect

from tests.phone.app import App
from tests.phone.trip import ask, away_from_the_network, line, table_row

GAPS = {"side_gap": "1/8", "head_gap": "1/8", "floor_gap": "1/2", "meeting_gap": "1/8"}


@pytest.fixture(scope="module")
def app(browser: Browser, address: str) -> Iterator[App]:
    with away_from_the_network(browser, address) as app:
        yield app


def test_the_opening_gives_the_doors_and_their_taper(app: App) -> None:
    """An opening 60 1/4 wide, 80 1/4 high at the left and 80 at the right.

    Each leaf: (60 1/4 - 2 x 1/8 - 1/8) / 2 = 29 15/16 wide. The floor falls 1/4 in 60 1/4, so
    1/4 x 29 15/16 / 60 1/4 = 0.124 in a leaf, 1/8. The left leaf's hinge edge is
    80 1/4 - 5/8 = 79 5/8, and 1/8 comes off at its right; the right leaf's hinge edge is 79 3/8,
    so its blank is 79 3/8 + 1/8 = 79 1/2.
    Diagonals sqrt(60 1/4^2 + 80^2) = 100.15 and sqrt(60 1/4^2 + 80 1/4^2) = 100.35, so the tape
    reads 100 1/8 and 100 3/8, 1/4 apart.
    """
    sizes = {
        "leaves": "2",
        "route": "tapered",
        "width_top": "60 1/4",
        "width_middle": "60 1/4",
        "width_bottom": "60 1/4",
        "height_left": "80 1/4",
        "height_middle": "80 1/8",
        "height_right": "80",
        "diagonal_a": "100 1/8",
        "diagonal_b": "100 3/8",
        "level_head": "0",
    }
    ask(app, "Site", "opening-survey", **sizes, **GAPS, door_thickness="1 3/4")
    app.expect_answer("Leaf width", "29 and 15/16")
    expect(app.answer.get_by_role("button", name="high")).to_contain_text("79 and 5/8")
    expect(line(app, "More numbers", "Out of square, .*")).to_contain_text("1/4")
    expect(line(app, "Cut", "Left leaf")).to_contain_text("79 and 5/8")
    expect(line(app, "Cut", "Right leaf")).to_contain_text("79 and 1/2")
    for leaf in ("left", "right"):
        off = line(app, f"Mark from corner of the {leaf} leaf's blank", "Bottom edge, .*")
        expect(off).to_contain_text("off at the bottom right corner")
        expect(off).to_contain_text("1/8")


def test_the_pair_clears_as_it_opens_with_a_bevel(app: App) -> None:
    """Leaves of 29 15/16 x 1 3/4, pins 1/16 in and 1/2 out, 1/8 where they meet.

    The far corner is sqrt((29 15/16 + 1/16)^2 + (1 3/4 + 1/2)^2) = sqrt(900 + 5.0625) = 30.0843
    from the pin, the other leaf's near corner sqrt(30 1/8^2 + 1/2^2) = 30.1291: it passes 0.045
    away, 3/64. To keep 1/16 it may reach 30.0666, so it stands sqrt(30.0666^2 - 2 1/4^2) = 29.9823
    along: 0.018 comes off, atan(0.0177 / 1 3/4) = 0.6 degrees.
    """
    door = {
        "leaf_width": "29 15/16",
        "door_thickness": "1 3/4",
        "meets": "leaf",
        "strike_gap": "1/8",
    }
    ask(app, "Site", "door-swing", **door, pin_in="1/16", pin_out="1/2", clearance="1/16")
    app.expect_answer("Tightest gap, square edge", "3/64")
    expect(app.answer.get_by_role("button", name="Bevel")).to_contain_text("0.6°")
    expect(line(app, "More numbers", "Off the far corner")).to_contain_text("0.018")
    expect(line(app, "More numbers", "Other leaf, bevel")).to_contain_text("0.6°")
    app.page.get_by_role("slider", name="Drawn open").press("End")
    expect(app.page.locator(".result svg.drawing desc")).to_contain_text("open 180.0°")


def test_the_hinges_are_marked(app: App) -> None:
    """4 inch hinges on the right leaf, 79 3/8 high: three, as 60 < 79 3/8 <= 90.

    The top one starts 5 below the head, 5 - 1/8 = 4 7/8 below the door's top. The bottom one ends
    10 above the floor, 79 3/8 + 1/2 - 10 = 69 7/8 below the door's top and starts at 65 7/8; the
    middle one halfway, (4 7/8 + 65 7/8) / 2 = 35 3/8. On the jamb all are 1/8 more.
    Leaves of 0.130 that close to 1/16: 0.130 - (1/8 - 1/16) / 2 = 0.09875 deep, 3/32 full.
    """
    hinge = {"hinge_height": "4", "leaf_thickness": "0.130", "hinge_gap": "1/8"}
    ask(app, "Site", "hinge-layout", leaf_height="79 3/8", door_thickness="1 3/4", **hinge)
    app.expect_answer("Mortise depth", "3/32", "full")
    expect(line(app, "More numbers", "Hinges")).to_contain_text("3")
    for where, tops in (
        ("Mark from leaf top", ("4 and 7/8", "35 and 3/8", "65 and 7/8")),
        ("Mark from head", ("5", "35 and 1/2", "66")),
    ):
        for name, top in zip(("Top", "Middle", "Bottom"), tops, strict=True):
            mark = line(app, where, f"{name} hinge, top line")
            expect(mark.locator(".figures")).to_contain_text(top)


def test_an_uneven_gap_is_shimmed(app: App) -> None:
    """Hung, the strike gap is 3/16 at the top and 1/16 at the bottom: it closes by 1/8 in 79 3/8.

    The hinges' centers lie 4 7/8 + 2 = 6 7/8 from the top and 79 3/8 - 67 7/8 = 11 1/2 from the
    bottom. Across from them the gap is 0.1875 - 0.125 x 6 7/8 / 79 3/8 = 0.1767 and
    0.1875 - 0.125 x 67 7/8 / 79 3/8 = 0.0806; a shim behind the top hinge of the difference,
    0.0961 or 3/32, leaves 0.0806, 5/64, all along. The middle one, halfway, takes half: 0.048.
    """
    gaps = {"gap_top": "3/16", "gap_bottom": "1/16"}
    centers = {"top_center": "6 7/8", "bottom_center": "11 1/2"}
    ask(app, "Site", "even-gap", **gaps, leaf_height="79 3/8", **centers)
    app.expect_answer("Shim top hinge", "3/32")
    expect(line(app, "More numbers", "Strike gap then")).to_contain_text("0.081")
    expect(table_row(app, "Each hinge", "Top")).to_contain_text("0.096")
    expect(table_row(app, "Each hinge", "Middle")).to_contain_text("0.048")
    expect(table_row(app, "Each hinge", "Bottom")).to_contain_text("leave")
