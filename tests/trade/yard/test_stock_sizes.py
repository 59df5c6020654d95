"""Stock sizes: what must hold for every label, and the tables against each other."""

import json
from collections.abc import Iterator
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from longpoint.trade.calls import call
from longpoint.trade.lengths import Scale
from longpoint.trade.tables import hardwood, sheets, softwood
from longpoint.trade.yard.stock_sizes import TOOL

SOFT = [size.nominal for size in softwood.thicknesses()]
SIXTEENTHS = st.integers(1, 200).map(lambda n: n / 16)


def ask(**inputs: Any) -> dict[str, Any]:
    """Return the core's reply to one question."""
    reply: dict[str, Any] = json.loads(
        call(json.dumps({"do": "answer", "tool": "stock-sizes", "inputs": inputs}))
    )
    return reply


def figures(**inputs: Any) -> dict[str, float]:
    """Return the figures by name."""
    reply = ask(**inputs)
    assert reply["ok"], reply
    return {figure["name"]: figure["value"] for figure in reply["answer"]["figures"]}


def rows(sizes: Any) -> Iterator[tuple[Fraction, Fraction, Fraction]]:
    for size in sizes:
        yield Fraction(size.nominal), Fraction(size.dry), Fraction(size.green)


@pytest.mark.parametrize(
    ("sizes", "shrinks"),
    [
        # From green to 15 % PS 20-70 allowed for 2.35 % in thickness and 2.80 % in width, as
        # FPL-RP-489 quotes it. The widest steps are rounded to a quarter: 3/32 is spared, and
        # what is wider than 12 left out.
        (softwood.BOARD_THICKNESSES + softwood.DIMENSION_THICKNESSES, Fraction(235, 10000)),
        (softwood.BOARD_WIDTHS + softwood.DIMENSION_WIDTHS, Fraction(280, 10000)),
    ],
)
def test_green_stock_is_heavier_by_about_what_it_shrinks(sizes: Any, shrinks: Fraction) -> None:
    for nominal, dry, green in rows(size for size in sizes if size.nominal <= 12):
        assert dry < green < nominal
        assert abs(green * (1 - shrinks) - dry) < Fraction(3, 32), nominal


def test_sizes_that_boards_and_dimension_share_are_alike() -> None:
    # PS 20 as reprinted gives one width column for both classes.
    boards = {size.nominal: size for size in softwood.BOARD_WIDTHS}
    shared = [size for size in softwood.DIMENSION_WIDTHS if size.nominal in boards]
    assert len(shared) == 10
    for size in shared:
        assert size == boards[size.nominal]


def test_rough_dry_dimension_of_a_state_regulation_is_an_eighth_over_dressed() -> None:
    # Tenn. Comp. R. & Regs. 0080-07-07-.06, Table 4: rough dry thickness of 2 to 4 1/2.
    rough = {2: "1 5/8", 2.5: "2 1/8", 3: "2 5/8", 3.5: "3 1/8", 4: "3 5/8", 4.5: "4 1/8"}
    for size in softwood.DIMENSION_THICKNESSES:
        stated = sum(Fraction(part) for part in rough[size.nominal].split())
        assert Fraction(size.dry) == stated - Fraction(1, 8)


def test_surfaced_hardwood_follows_the_rule_of_its_printed_rows() -> None:
    # By the printed rows S2S is 3/16 under rough up to 6/4, 1/4 from 7/4 on.
    for quarter in hardwood.QUARTERS:
        off = Fraction(3, 16) if quarter.rough <= 1.5 else Fraction(1, 4)
        assert Fraction(quarter.rough) - Fraction(quarter.s2s) == off
        if quarter.s1s is not None:
            assert quarter.s2s < quarter.s1s < quarter.rough


def test_plywood_categories_follow_the_tolerance_that_ps_1_states() -> None:
    # PS 1: within 1/32 up to 13/16, within 5 % above; printed to a thousandth.
    for row in sheets.PERFORMANCE_CATEGORIES:
        stray = 1 / 32 if row.label <= 13 / 16 else 0.05 * row.label
        assert row.least == pytest.approx(row.label - stray, abs=0.0006)
        assert row.most == pytest.approx(row.label + stray, abs=0.0006)
        assert row.least < row.usual < row.most
        if row.label < 9 / 16:
            # PS 1: a label under 9/16 is 3 % above the least.
            assert row.usual == pytest.approx(row.least * 1.03, abs=0.0015)


def test_mill_tolerance_of_mdf_is_the_metric_one() -> None:
    # ANSI A208.2: panel average within 0.125 mm.
    for row in sheets.sheets("mdf"):
        assert (row.most - row.label) * 25.4 == pytest.approx(0.125, abs=0.003)


@given(
    st.sampled_from(SOFT),
    st.data(),
    st.sampled_from(["dry", "green"]),
    st.sampled_from(["x", " x ", "×", " by ", '" X ']),
)
def test_every_softwood_label_reads_back_from_however_it_is_written(
    thickness: float, data: st.DataObject, condition: str, cross: str
) -> None:
    widths = [size.nominal for size in softwood.widths(thickness)]
    width = data.draw(st.sampled_from(widths))
    assume(width >= thickness)
    bare = Scale("in", 64).bare
    label = bare(thickness) + cross + bare(width)
    got = figures(label=label, condition=condition)
    assert got["thickness"] < thickness
    assert got["width"] < width
    # Half an inch to an inch comes off anything from 2 up; boards lose a quarter or less.
    assert thickness - got["thickness"] <= (1 if thickness >= 2 else 0.25)
    decimal = f"{thickness}{cross}{width}"
    assert figures(label=decimal, condition=condition) == got


@given(st.sampled_from(SOFT[:13]), SIXTEENTHS, SIXTEENTHS)
def test_the_tape_wins_and_the_rest_is_real_minus_needed(
    label: float, tape: float, needed: float
) -> None:
    reply = ask(label=str(label), measured_thickness=tape, needed_thickness=needed)
    assert reply["ok"]
    got = {figure["name"]: figure["value"] for figure in reply["answer"]["figures"]}
    assert got["thickness"] == tape
    assert got["to_mill_thickness"] == pytest.approx(tape - needed, abs=1e-12)
    over = tape - needed
    words = "as needed" if not over else "plane off" if over > 0 else "too thin"
    assert words in reply["answer"]["verdict"]
    note = "already there" if not over else "comes off" if over > 0 else "Too thin"
    assert note in reply["answer"]["notes"][0]


def test_five_quarter_is_two_sizes() -> None:
    # PS 20 gives 1 for softwood, the NHLA tables 1 1/16 for hardwood surfaced two sides.
    soft = figures(family="softwood", label="5/4")["thickness"]
    hard = figures(family="hardwood", label="5/4", condition="s2s")["thickness"]
    assert (soft, hard) == (1.0, 1.0625)


@pytest.mark.parametrize("offer", TOOL.declare()["inputs"][1]["offers"])
def test_every_label_that_is_offered_is_answered(offer: dict[str, Any]) -> None:
    (family,) = offer["only_when"]["is"]
    assert figures(family=family, label=offer["value"])["thickness"] > 0


@pytest.mark.parametrize(
    ("family", "label", "cells"),
    [
        # The rows of the printed tables that these labels stand in.
        ("softwood", "5/4x6", ["Boards", "5/4", "1", "1 1/32"]),
        ("softwood", "8x8", ["Timbers", "7 to 15", "3/4 off", "1/2 off"]),
        ("hardwood", "8/4", ["8/4", "2", "1 3/4", "1 13/16", "1 7/8"]),
        ("sheet", "23/32", ["23/32", "0.703", "0.688", "0.750"]),
    ],
)
def test_the_familys_table_marks_the_labels_row(family: str, label: str, cells: list[str]) -> None:
    table = ask(family=family, label=label)["answer"]["tables"][0]
    assert table["rows"][table["pick"]] == cells
    assert {len(row) for row in table["rows"]} == {len(table["columns"])}


@pytest.mark.parametrize(
    ("family", "values"),
    [
        ("softwood", ["dry", "green"]),
        ("hardwood", ["rough", "s1s", "s2s"]),
        ("sheet", ["unsanded", "sanded", "hardwood", "mdf"]),
    ],
)
def test_what_it_is_sold_as_depends_on_the_family(family: str, values: list[str]) -> None:
    choices = TOOL.declare()["inputs"][2]["choices"]
    wanted = {"input": "family", "is": [family]}
    assert [choice["value"] for choice in choices if choice["only_when"] == wanted] == values
    reply = ask(family=family, label="3/4")
    assert reply["answer"]["inputs"]["condition"] == values[0]


def test_a_family_that_is_not_known_is_complained_of_once() -> None:
    errors = ask(family="stone", label="2x4", condition="green")["errors"]
    assert [error["field"] for error in errors] == ["family"]


@given(st.text(max_size=20), st.sampled_from(["softwood", "hardwood", "sheet"]))
def test_whatever_is_typed_as_a_label_is_answered_or_refused_on_it(text: str, family: str) -> None:
    reply = ask(family=family, label=text)
    if not reply["ok"]:
        assert [error["field"] for error in reply["errors"]] == ["label"]


@given(
    st.from_regex(r"[0-9]{1,3}(/[0-9]{1,2})?( ?[x×] ?[0-9]{1,3}(/[0-9]{1,2})?)?", fullmatch=True)
)
def test_a_label_near_one_in_the_table_is_refused_with_labels_that_exist(label: str) -> None:
    reply = ask(label=label)
    if reply["ok"] or "nearest" not in reply["errors"][0]["message"]:
        return
    message = reply["errors"][0]["message"]
    words = message.split("nearest ")[1].split(". ")[0].replace("are ", "").replace("is ", "")
    for near in words.split(" and "):
        assert ask(label=near)["ok"], near


@given(SIXTEENTHS, SIXTEENTHS, SIXTEENTHS, SIXTEENTHS)
def test_the_drawing_holds_the_real_board(
    thick: float, wide: float, thick_needed: float, wide_needed: float
) -> None:
    drawing = ask(
        label="2x4",
        measured_thickness=thick,
        measured_width=wide,
        needed_thickness=thick_needed,
        needed_width=wide_needed,
    )["answer"]["drawing"]
    (stock,) = [shape for shape in drawing["shapes"] if shape["role"] == "stock"]
    across = [x for x, _ in stock["points"]]
    down = [y for _, y in stock["points"]]
    assert (max(across) - min(across), max(down) - min(down)) == (wide, thick)
    x0, y0, x1, y1 = drawing["box"]
    assert x1 - x0 == max(4, wide, wide_needed)
    assert y1 - y0 == max(2, thick, thick_needed)
