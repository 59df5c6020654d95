"""The person's own list: who goes before whom, however a label is written."""

import itertools
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from longpoint.trade.tables import softwood
from tests.trade.asking import answer, ask, at_the_door, figures, refusals

SIXTEENTHS = st.integers(1, 200).map(lambda n: n / 16)
WAYS = ["2x4", "2 x 4", "4x2", "2 by 4", '2" × 4"', "2.0*4", "2x4x8"]


@pytest.mark.parametrize(("asked", "kept"), list(itertools.product(WAYS, repeat=2)))
def test_a_label_is_found_however_it_is_written(asked: str, kept: str) -> None:
    got = figures("stock-sizes", label=asked, yard=[{"label": kept, "thickness": 1.75}])
    assert got["thickness"] == 1.75


@given(SIXTEENTHS, st.none() | SIXTEENTHS, st.none() | SIXTEENTHS, st.none() | SIXTEENTHS)
def test_tape_before_list_before_table(
    kept: float, kept_width: float | None, tape: float | None, tape_width: float | None
) -> None:
    """PS 20, as reprinted in engineering tables: a 2x4 is 1 1/2 x 3 1/2 dry."""
    got = figures(
        "stock-sizes",
        label="2x4",
        measured_thickness=tape,
        measured_width=tape_width,
        yard=[{"label": "2x4", "thickness": kept, "width": kept_width}],
    )
    assert got["thickness"] == (kept if tape is None else tape)
    assert got["width"] == next(x for x in (tape_width, kept_width, 3.5) if x is not None)
    assert got["table_thickness"] == 1.5


@given(st.sampled_from(softwood.DIMENSION_WIDTHS), st.data())
def test_a_list_that_does_not_hold_the_label_changes_nothing(
    width: softwood.Size, data: st.DataObject
) -> None:
    others = [size for size in softwood.DIMENSION_WIDTHS if size != width and size.nominal >= 2]
    other = data.draw(st.sampled_from(others))
    kept = [{"label": f"2x{other.nominal}", "thickness": 1.75}]
    one = figures("stock-sizes", label=f"2x{width.nominal}")
    assert figures("stock-sizes", label=f"2x{width.nominal}", yard=kept) == one


def test_every_row_under_the_label_is_shown_with_its_price() -> None:
    yard: list[dict[str, Any]] = [
        {"label": "1x6", "thickness": "25/32", "price": "2.50", "per": "lineal-foot"},
        {"label": "1x8", "thickness": "3/4"},
        {"label": "1x6", "thickness": "13/16", "width": "5 1/2", "yard_name": "South"},
    ]
    table = answer("stock-sizes", label="1x6", yard=yard)["tables"][0]
    assert [row[:3] for row in table["rows"]] == [
        ["1x6", "25/32", "$2.50 a lineal foot"],
        ["1x6", "13/16 x 5 1/2", ""],
    ]
    assert table["pick"] == 1


def test_only_the_labels_of_the_kind_asked_for_have_to_be_readable() -> None:
    yard = [{"label": "odd lot", "thickness": 1, "family": "hardwood"}]
    assert figures("stock-sizes", label="2x4", yard=yard)["thickness"] == 1.5
    said = refusals("stock-sizes", family="hardwood", label="4/4", yard=yard)
    assert list(said) == ["yard.0.label"]


@given(
    st.sampled_from(["softwood", "hardwood", "sheet"]),
    st.from_regex(r"[0-9]{1,3}(/[0-9]{1,2})?( ?[x×] ?[0-9]{1,3}(/[0-9]{1,2})?)?", fullmatch=True),
    SIXTEENTHS,
)
def test_whatever_label_is_kept_is_answered_from_the_list_or_refused_there(
    family: str, label: str, thickness: float
) -> None:
    reply = ask(
        "stock-sizes",
        family=family,
        label=label,
        needed_thickness=1,
        yard=[{"label": label, "thickness": thickness, "family": family}],
    )
    if reply["ok"]:
        assert reply["answer"]["figures"][0]["value"] == thickness
    else:
        assert [error["field"] for error in reply["errors"]] == ["yard.0.label"]


def form(tool: str, **inputs: Any) -> dict[str, Any]:
    """Return the fields of a form by name."""
    reply = at_the_door({"do": "form", "tool": tool, "inputs": inputs})
    return {field["name"]: field for field in reply["fields"]}


def test_labels_of_the_list_are_offered_before_all_others_for_their_kind_of_stock() -> None:
    yard = [
        {"label": "2x7", "thickness": "1 3/4"},
        {"label": "4/4", "thickness": 1, "family": "hardwood"},
        {"label": "2x7", "thickness": "1 5/8"},
        {"label": "2x4", "thickness": "1 3/4"},
    ]
    soft = form("stock-sizes", yard=yard)["label"]["offers"]
    assert soft[:3] == ["2x7", "2x4", "1x2"]
    assert soft.count("2x4") == 1
    hard = form("stock-sizes", family="hardwood", yard=yard)["label"]["offers"]
    assert hard[0] == "4/4"
    assert "2x7" not in hard


def test_what_the_tape_says_can_go_on_the_list_with_one_tap() -> None:
    """Put there, the row gives the size without the tape."""
    inputs = {"label": "2 by 4", "measured_thickness": "1 3/4"}
    (kept,) = answer("stock-sizes", **inputs)["keeps"]
    assert (kept["input"], kept["words"]) == ("yard", "2x4: 1 3/4 x 3 1/2")
    assert figures("stock-sizes", label="2x4", yard=[kept["row"]])["thickness"] == 1.75
    assert answer("stock-sizes", label="2x4")["keeps"] == []


def test_what_a_tally_paid_for_a_thickness_can_go_on_the_list_with_one_tap() -> None:
    """By hand: a part of 13/16 out of the 4/4 so kept costs that price a board foot."""
    boards = [{"width": 6, "length": 8, "thickness": "4/4"}, {"width": 6, "thickness": "8/4"}]
    kept = answer("board-tally", boards=boards, price=6.5)["keeps"]
    assert [each["words"] for each in kept] == [
        "4/4: thickness 1, $6.50 a board foot",
        "8/4: thickness 2, $6.50 a board foot",
    ]
    assert [each["input"] for each in kept] == ["yard", "yard"]
    part = {"family": "hardwood", "thickness": "13/16", "width": 5, "length": 46}
    rows = [each["row"] for each in kept]
    asked = answer("part-to-stock", yard=rows, sold_in="random", **part)
    assert "your list" in str(asked["tables"][0]["rows"][0])
    assert answer("board-tally", boards=boards)["keeps"] == []
