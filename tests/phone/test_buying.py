"""A trip to the yard with no signal: one pair of jamb legs and the oak for their panels.

The yard and its prices are invented. Each step's docstring works its numbers out by hand.
"""

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, expect

from tests.phone.app import App
from tests.phone.trip import add, ask, away_from_the_network, fill, line, table_row


@pytest.fixture(scope="module")
def app(browser: Browser, address: str) -> Iterator[App]:
    with away_from_the_network(browser, address) as app:
        yield app


def test_the_label_is_looked_up(app: App) -> None:
    """A dry 2x4 is 1 1/2 x 3 1/2: NIST PS 20, minimum-dressed sizes of dimension."""
    ask(app, "Yard", "stock-sizes", label="2x4", needed_thickness="1 1/2")
    app.expect_answer("Thickness", "1 and 1/2")
    expect(line(app, "More numbers", "Off the thickness")).to_contain_text("0")


def test_the_tape_is_put_on_it_and_the_list_kept(app: App) -> None:
    """The yard's 2x4 measures 1 3/4 x 3 1/2, so 1 3/4 - 1 1/2 = 1/4 comes off the thickness."""
    add(app, "yard", 0, label="2x4", thickness="1 3/4", width="3 1/2", price="3.60")
    app.expect_answer("Thickness", "1 and 3/4")
    expect(line(app, "More numbers", "Off the thickness")).to_contain_text("1/4")
    expect(table_row(app, "On your list", "2x4")).to_contain_text("$3.60 a board foot")


def test_a_part_is_asked_for_and_the_list_is_used(app: App) -> None:
    """Two parts 1 1/2 x 3 x 78 out of that 2x4, where the standard's 1 1/2 would have none to mill.

    (1 3/4 - 1 1/2) / 2 = 1/8 off each face. Ripped to 3 + 2 x 1/8 = 3 1/4, cut to 78 + 2 x 1 = 80.
    Billed by the label: 2 x (2 x 4 x 80 / 144) = 8.89 board feet, at $3.60 that is $32.00.
    """
    part = {"thickness": "1 1/2", "width": "3", "length": "78", "count": "2"}
    ask(app, "Yard", "part-to-stock", **part, sold_in="random")
    app.expect_answer("Ask for", "2x4")
    expect(line(app, "More numbers", "Off each face")).to_contain_text("1/8")
    expect(line(app, "More numbers", "Rip to")).to_contain_text("3 and 1/4")
    expect(line(app, "More numbers", "Cut to")).to_contain_text("80")
    expect(line(app, "More numbers", "Board feet billed")).to_contain_text("8.89")
    expect(app.answer.get_by_role("button", name="Cost")).to_contain_text("$32.00")
    best = table_row(app, "Ways, best first", "2x4")
    expect(best).to_contain_text("one piece")
    expect(best).to_contain_text("your list")


def test_five_boards_are_tallied_at_the_stack(app: App) -> None:
    """Width x feet / 12, times the quarter: together 37 1/2 board feet.

    In 4/4: 6 x 8 / 12 = 4, 7 1/2 x 8 / 12 = 5, 9 x 10 / 12 = 7 1/2, 6 x 10 / 12 = 5.
    In 8/4: 8 x 12 / 12 x 2 = 16.

    A board as long and thick as the one above takes two taps: "Add a board", and its width.
    """
    ask(app, "Yard", "board-tally")
    add(app, "boards", 0, width="6", length="8", thickness="4/4")
    app.expect_answer("Board feet", "4")
    app.add_row("Add a board", "boards-1")
    app.press("7")
    app.pick(8)
    # The fraction comes once the core has read the whole number.
    expect(app.page.locator("#field-boards-1-width")).to_have_value("7 1/2")
    add(app, "boards", 2, width="9", length="10")
    app.add_row("Add a board", "boards-3")
    app.press("6")
    add(app, "boards", 4, width="8", length="12", thickness="8/4")
    app.expect_answer("Board feet", "37.5")
    for board, feet in enumerate(["4", "5", "7.5", "5", "16"], start=1):
        cells = table_row(app, "Board by board", str(board)).get_by_role("cell")
        expect(cells.nth(2)).to_have_text(feet)


def test_they_are_priced_and_outlive_a_restart(app: App) -> None:
    """37 1/2 board feet at $6.50 are $243.75; with a fifth more for waste 37 1/2 / 1.2 = 31 1/4."""
    fill(app, "", price="6.50")
    app.page.keyboard.press("Escape")
    app.open("#/yard")
    ask(app, "Yard", "board-tally")
    app.expect_answer("Board feet", "37.5")
    expect(app.answer.get_by_role("button", name="Cost")).to_contain_text("$243.75")
    expect(line(app, "More numbers", "Good for a job of")).to_contain_text("31.25")


def test_the_other_yards_price_is_compared(app: App) -> None:
    """A 1x6 of 8 feet is 1 x 6 x 96 / 144 = 4 board feet: $39.00 a piece is $9.75, against $6.50.

    $3.25 less on each of 37 1/2 board feet saves $121.88.
    """
    ask(app, "Yard", "price-compare", amount="37.5")
    add(app, "offers", 0, name="Mill", price="6.50")
    board = {"thickness": "1", "width": "6", "length": "8'"}
    add(app, "offers", 1, name="Shop", price="39", per="piece", **board)
    app.expect_answer("Better buy", "Mill")
    expect(app.answer.get_by_role("button", name="A board foot")).to_contain_text("$6.50")
    expect(line(app, "More numbers", "Cheaper by")).to_contain_text("$3.25")
    expect(line(app, "More numbers", "Saved on it")).to_contain_text("$121.88")
