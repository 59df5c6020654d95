"""A carpenter's day on a phone with no signal, all by thumb, without a pencil.

Casing in the morning, boxes round a window, a pair of cupboard doors after lunch, a doorway to
survey on the way home. The house is invented; each step's docstring works its numbers out by hand.
"""

import re
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, expect

from tests.phone.app import App
from tests.phone.trip import ask, away_from_the_network, line, table_row


@pytest.fixture(scope="module")
def app(browser: Browser, address: str) -> Iterator[App]:
    with away_from_the_network(browser, address) as app:
        yield app


def thumb(app: App, row: str, **measures: str) -> None:
    """Tap the first field and its measure into the pad, then go on from field to field by Next.

    A fraction in sixteenths is tapped on the enlarged inch.
    """
    for at, (name, measure) in enumerate(measures.items()):
        field = app.page.locator(f"#field-{row}{name}")
        if at == 0:
            field.tap()
        expect(field).to_be_focused()
        app.press(*re.sub(r" ?\d+/\d+$", "", measure))
        if fraction := re.search(r"(\d+)/(\d+)$", measure):
            app.pick(int(fraction[1]) * 16 // int(fraction[2]))
        expect(field).to_have_value(measure)
        if at < len(measures) - 1:
            app.press("Next")
    app.press("Close the pad")


def choose(app: App, name: str, words: str) -> None:
    """Tap one of two or three short words."""
    group = app.page.get_by_role("radiogroup").filter(has=app.page.locator(f"#field-{name}"))
    group.locator(".option", has_text=re.compile(f"^{words}$")).tap()


def test_in_the_morning_a_doorway_is_cased(app: App) -> None:
    """An opening 36 1/4 x 80 3/8 in casing of 2 1/2, the usual reveal of 3/16.

    The inner edge lies a reveal outside the opening: the head's short point is
    36 1/4 + 2 x 3/16 = 36 5/8, its long point 2 x 2 1/2 more: 41 5/8.
    A leg's short point is 80 3/8 + 3/16 = 80 9/16, its long point 2 1/2 more: 83 1/16.
    To buy: 41 5/8 + 2 x 83 1/16 = 207 3/4 and 1 for each end and saw cut: 4 in all, 211 3/4.
    """
    ask(app, "Site", "casing-set")
    app.page.locator("#field-opening").select_option(label="a door")
    sizes = {"opening_width": "36 1/4", "opening_height": "80 3/8", "casing_width": "2 1/2"}
    thumb(app, "", **sizes, casing_thickness="11/16")
    app.expect_answer("head 41 and 5/8, legs 83 and 1/16 long point, saw 45°, reveal 3/16")
    leg = line(app, "Cut", "Leg, 2 pieces")
    expect(leg).to_contain_text("short 80 and 9/16")
    leg.get_by_role("button").tap()
    app.expect_answer("Leg", "83 and 1/16")


def test_then_boxes_go_round_a_window(app: App) -> None:
    """A wall of 143 x 96; the casings of its window take 52 1/4 to 90 3/4, and 32 to 84 up.

    143 - 52 1/4 - 38 1/2 = 52 1/4: both runs are alike, 52 1/4 - 2 x 3 = 46 1/4 wide, two boxes of
    (46 1/4 - 3) / 2 = 21 5/8 each and 96 - 2 x 3 = 90 high. Under the window 32 - 2 x 3 = 26 high,
    over it 96 - 84 - 2 x 3 = 6 high, both as wide as the casings. Six boxes.
    Marks from the left end: 3, 24 5/8, 27 5/8, 49 1/4; past the window 90 3/4 + 3 = 93 3/4 ... 140.
    """
    ask(app, "Saw", "wall-frames")
    thumb(app, "", length="143", height="96", trim_width="1 1/2", count="4")
    app.add_row("Add a window or door", "openings-0")
    opening = {"from_left": "52 1/4", "width": "38 1/2", "bottom": "32", "top": "84"}
    thumb(app, "openings-0-", **opening)
    app.expect_answer("6 frames: 2 of 21 and 5/8 + 2 of 21 and 5/8, 90 high;")
    app.expect_answer("under 38 and 1/2 x 26, over 38 and 1/2 x 6")
    marks = app.block("Mark from left end of the wall").get_by_role("listitem")
    said = ["3", "24 and 5/8", "27 and 5/8", "49 and 1/4", "52 and 1/4", "90 and 3/4"]
    said += ["52 and 1/4", "90 and 3/4", "93 and 3/4", "115 and 3/8", "118 and 3/8", "140"]
    expect(marks.locator(".medium")).to_contain_text(said)


def test_after_lunch_a_pair_of_cupboard_doors(app: App) -> None:
    """An inset pair in 47 3/8 x 30 1/4, stiles of 2 1/4, panels of 1/4 ply.

    Gaps of 3/32 all round and between: (47 3/8 - 3 x 3/32) / 2 = 23 35/64 wide, shown 23 9/16, and
    30 1/4 - 2 x 3/32 = 30 1/16 high. Between the stiles 23 35/64 - 4 1/2 = 19 3/64; a stub tenon in
    a groove of 3/8 is 11/32, so rails are 19 3/64 + 11/16 = 19 47/64, shown 19 3/4.
    Panels reach 3/8 - 1/16 into each groove: 19 3/64 + 5/8 = 19 43/64 by
    30 1/16 - 4 1/2 + 5/8 = 26 3/16.
    """
    ask(app, "Saw", "door-set")
    choose(app, "kind", "cupboard, inset")
    thumb(app, "", opening_width="47 3/8", opening_height="30 1/4")
    choose(app, "leaves", "a pair")
    thumb(app, "", stile="2 1/4", panel_thickness="1/4")
    app.page.get_by_role("button", name=re.compile("^More")).tap()
    choose(app, "panel_of", "sheet goods")
    app.expect_answer("Two inset leaves 23 and 9/16 x 30 and 1/16, butted, gaps 3/32")
    panels = line(app, "Cut", "Panel, left leaf.*")
    expect(panels).to_contain_text("26 and 3/16")
    expect(panels).to_contain_text("19 and 11/16")


def test_their_grooves_are_set_up(app: App) -> None:
    """1/4 ply in 3/4 stock: 0.250 + 0.005 of slack is two blades of 1/8 and a shim of 0.005.

    Each wall (0.750 - 0.255) / 2 = 0.2475; the tenon 3/8 - 1/32 = 11/32 long.
    """
    ask(app, "Saw", "groove-and-tenon")
    thumb(app, "", panel_thickness="1/4", stock_thickness="3/4")
    app.expect_answer("Outer blades alone, 1 shim 0.005 more: groove 0.255")
    app.expect_answer("shoulders 0.248, tenon 11/32 long")


def test_and_their_sticks_are_bought(app: App) -> None:
    """Four stiles of 30 1/16 and four rails of 19 3/4 out of sticks of 96, a kerf of 1/8.

    They are 4 x 30 1/16 + 4 x 19 3/4 = 199 1/4 long, more than two sticks: three at least.
    Three do: 3 x 30 1/16 and 3 kerfs are 90 9/16; 30 1/16 + 3 x 19 3/4 and 4 kerfs 89 13/16.
    """
    ask(app, "Saw", "stick-plan")
    for at, (length, count) in enumerate((("30 1/16", "4"), ("19 3/4", "4"))):
        app.add_row("Add a piece", f"pieces-{at}")
        thumb(app, f"pieces-{at}-", length=length, count=count)
    app.add_row("Add a stick", "sticks-0")
    thumb(app, "sticks-0-", length="96")
    app.expect_answer("Buy 3 sticks of 96, kerf 1/8: proven optimal")


def test_on_the_way_home_a_doorway_out_of_square_is_surveyed(app: App) -> None:
    """Widths 36 and 36, heights 77 at the left and 77 1/2 at the right.

    Diagonal A is 85: 36, 77, 85 are a right triangle (1296 + 5929 = 7225), so the floor is level
    and the left side plumb; B is the root of 36^2 + 77.5^2 = 7302.25, 85.453, on the tape 85 7/16.
    A square leaf: 36 - 2 x 1/8 = 35 3/4 wide, 77 - 1/8 - 1/2 = 76 3/8 high. The head rises 1/2 to
    the right: 1/8 of gap at the left become 1/8 + 1/2 x 35 7/8 / 36 = 0.623, 5/8, at the right.
    """
    ask(app, "Site", "opening-survey")
    thumb(
        app,
        "",
        width_top="36",
        width_bottom="36",
        height_left="77",
        height_right="77 1/2",
        diagonal_a="85",
        diagonal_b="85 7/16",
    )
    app.expect_answer("Leaf 35 and 3/4 x 76 and 3/8, hinged left, square")
    app.expect_answer("gaps 1/8, floor 1/2, really up to 5/8")
    expect(table_row(app, "Leaf", "Gap at the head, right")).to_contain_text("5/8")
