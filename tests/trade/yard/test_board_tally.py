"""What must always hold of a tally: exact fractions count it again, board by board."""

from fractions import Fraction
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.trade.asking import answer, ask, figures, refusals

QUARTERS = st.sampled_from(["4/4", "5/4", "6/4", "8/4", "10/4", "12/4", "16/4", "1/2", "3/4"])
WIDTHS = st.integers(min_value=16, max_value=400).map(lambda n: Fraction(n, 16))
FEET = st.integers(min_value=2, max_value=40).map(lambda n: Fraction(n, 2))
BOARDS = st.lists(
    st.tuples(QUARTERS, WIDTHS, FEET, st.integers(min_value=1, max_value=30)),
    min_size=1,
    max_size=12,
)
Line = tuple[str, Fraction, Fraction, int]


def asked(boards: list[Line]) -> list[dict[str, Any]]:
    return [
        {"thickness": thickness, "width": float(width), "length": float(feet), "count": count}
        for thickness, width, feet, count in boards
    ]


def thick(text: str) -> Fraction:
    """NHLA as a dealer quotes it: under an inch counts as an inch."""
    return max(Fraction(text), Fraction(1))


@given(BOARDS)
def test_exact_board_feet_are_volume_over_a_foot_square_inch_thick(boards: list[Line]) -> None:
    cubic_inches = sum(thick(t) * w * feet * 12 * count for t, w, feet, count in boards)
    found = figures("board-tally", boards=asked(boards))
    assert found["board_feet"] == pytest.approx(float(cubic_inches / 144), rel=1e-12)
    lineal = sum(feet * count for _, _, feet, count in boards)
    assert found["lineal_feet"] == pytest.approx(float(lineal), rel=1e-12)


@given(BOARDS)
def test_graded_boards_count_one_by_one_in_fractions(boards: list[Line]) -> None:
    """Surface measure to the nearest whole; halves by turns, up first, is from memory."""
    up, surface, total = True, 0, Fraction(0)
    for t, width, feet, count in boards:
        for _ in range(count):
            measure = width * int(feet) / 12
            if measure % 1 == Fraction(1, 2):
                whole = int(measure) + (1 if up else 0)
                up = not up
            else:
                whole = int(measure + Fraction(1, 2))
            surface += whole
            total += whole * thick(t)
    found = figures("board-tally", boards=asked(boards), rule="graded")
    assert found["surface_measure"] == surface
    assert found["board_feet"] == pytest.approx(float(total), rel=1e-12)


@given(BOARDS)
def test_a_board_below_repeats_what_it_leaves_out(boards: list[Line]) -> None:
    full = asked(boards)
    short = [full[0]]
    for above, row in pairwise(full):
        same = [name for name in ("thickness", "length") if row[name] == above[name]]
        short.append({name: value for name, value in row.items() if name not in same})
    for rule in ("exact", "graded"):
        one, other = [figures("board-tally", boards=rows, rule=rule) for rows in (full, short)]
        assert one == other


@given(BOARDS, st.integers(min_value=1, max_value=5000), st.integers(min_value=0, max_value=100))
def test_what_is_picked_and_what_is_still_to_pick_make_the_job(
    boards: list[Line], target: int, waste: int
) -> None:
    found = figures("board-tally", boards=asked(boards), target=target, waste=waste)
    to_buy = Fraction(target) * (100 + waste) / 100
    assert found["board_feet_to_buy"] == pytest.approx(float(to_buy))
    left = max(0.0, float(to_buy) - found["board_feet"])
    assert found["still_to_pick"] == pytest.approx(left, abs=1e-9)


@given(BOARDS, st.integers(min_value=1, max_value=9999), st.sampled_from(["exact", "graded"]))
def test_the_tables_lines_add_up_to_the_figures(boards: list[Line], cents: int, rule: str) -> None:
    found = answer("board-tally", boards=asked(boards), price=cents / 100, rule=rule)
    shown = {figure["name"]: figure["text"] for figure in found["figures"]}
    table = found["tables"][0]
    column = table["columns"].index("bf")
    *lines, last = table["rows"]
    assert len(lines) == len(boards)
    assert last[column] + " bf" == shown["board_feet"]
    assert last[-1] == shown["cost"]
    # Each line is rounded to a hundredth for itself.
    off = sum(Fraction(line[column]) for line in lines) - Fraction(last[column])
    assert abs(off) <= Fraction(len(lines) + 1, 200)


@given(BOARDS)
def test_every_thickness_stands_once_and_together_they_are_all(boards: list[Line]) -> None:
    tables = answer("board-tally", boards=asked(boards))["tables"]
    thicknesses = {Fraction(t) for t, _, _, _ in boards}
    if len(thicknesses) == 1:
        assert len(tables) == 1
        return
    rows = tables[1]["rows"]
    assert [Fraction(row[0]) for row in rows] == sorted(thicknesses)
    assert sum(int(row[1]) for row in rows) == sum(count for _, _, _, count in boards)


@given(BOARDS)
def test_the_drawing_shows_each_line_as_a_board_of_its_size(boards: list[Line]) -> None:
    drawing = answer("board-tally", boards=asked(boards))["drawing"]
    drawn = [shape["points"] for shape in drawing["shapes"] if shape["role"] == "stock"]
    sizes = [(points[2][0] - points[0][0], points[2][1] - points[0][1]) for points in drawn]
    wanted = [(float(feet * 12), float(width)) for _, width, feet, _ in boards]
    assert sizes == [pytest.approx(size) for size in wanted]


@pytest.mark.parametrize("bare", ["3", "4", "5", "8", "12"])
def test_a_bare_number_that_may_be_quarters_is_asked_about(bare: str) -> None:
    board = {"width": 6, "length": 8, "thickness": bare}
    message = refusals("board-tally", boards=[board])["boards.0.thickness"]
    assert f"write {bare}/4, or {int(bare) * 4}/4" in message


@given(st.text(max_size=12), st.text(max_size=12), st.sampled_from(["exact", "graded"]))
def test_whatever_is_typed_is_answered_or_refused_on_its_field(
    thickness: str, length: str, rule: str
) -> None:
    board = {"width": 6, "length": length, "thickness": thickness}
    reply = ask("board-tally", boards=[board], rule=rule)
    if not reply["ok"]:
        fields = {error["field"] for error in reply["errors"]}
        assert fields <= {"boards.0.thickness", "boards.0.length"}


def test_what_is_not_said_of_the_first_board_is_awaited_not_wrong() -> None:
    errors = ask("board-tally", boards=[{"width": 6}])["errors"]
    assert [error["missing"] for error in errors] == [True, True]
