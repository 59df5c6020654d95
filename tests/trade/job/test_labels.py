"""Labels lie where a rule says. Sheets of the trade's sizes, worked by hand from their measures."""

import pytest

from tests.trade.job.asking import ask, refused

# 30 to a Letter sheet: 3 x 2 5/8 and 2 gaps of 1/8 in 8 1/2 leave 3/16 at each side.
THIRTY = {
    "paper": "letter", "width": "2 5/8", "height": "1", "left": "3/16", "top": "1/2",
    "gap_across": "1/8", "gap_down": "", "across": "3", "down": "10",
}  # fmt: skip
# 24 to an A4 sheet: 3 x 70 is 210 mm, 8 x 37 is 296 of 297 mm.
TWENTY_FOUR = {
    "paper": "a4", "width": "70", "height": "37", "left": "", "top": "0.5",
    "gap_across": "", "gap_down": "", "across": "3", "down": "8",
}  # fmt: skip


def test_thirty_to_a_letter_sheet() -> None:
    grid = ask(do="labels", units="in", **THIRTY)["grid"]
    assert len(grid["spots"]) == 30
    assert grid["spots"][0] == [0.1875, 0.5]
    # The last begins two labels and two gaps to the right, nine labels down.
    assert grid["spots"][29] == [0.1875 + 2 * 2.75, 9.5]
    assert 8.5 - (grid["spots"][2][0] + grid["width"]) == pytest.approx(0.1875)


def test_twenty_four_to_an_a4_sheet_in_millimeters() -> None:
    grid = ask(do="labels", units="mm", **TWENTY_FOUR)["grid"]
    last = [side * 25.4 for side in grid["spots"][23]]
    assert last == pytest.approx([140, 0.5 + 7 * 37])
    assert grid["width"] * 25.4 == pytest.approx(70)


@pytest.mark.parametrize(
    ("changed", "words"),
    [
        ({"across": "4"}, "4 labels end 11 1/16 from the paper's edge, which is 8 1/2 away"),
        ({"width": "wide"}, "wide"),
        ({"height": "1/8"}, "1/8 is outside 1/4 to 12"),
        ({"down": "0"}, "A whole number from 1 to 40"),
    ],
)
def test_what_no_sheet_holds_is_refused(changed: dict[str, str], words: str) -> None:
    """Four across: 3/16 + 4 x 2 5/8 + 3 x 1/8 is 11 1/16."""
    assert words in refused(do="labels", units="in", **(THIRTY | changed))[0]
