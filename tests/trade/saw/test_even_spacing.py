"""What must always hold of things spread evenly, recomputed with exact fractions."""

from fractions import Fraction
from typing import Any

from hypothesis import assume, given
from hypothesis import strategies as st

from tests.trade.asking import answer, figures, refusals

OVERALLS = st.integers(min_value=64, max_value=3200)  # thirty-seconds of an inch
ITEMS = st.integers(min_value=0, max_value=160)
COUNTS = st.integers(min_value=2, max_value=40)
ENDS = st.sampled_from(["gap", "half", "item"])
STEPS = st.sampled_from([8, 16, 32, 64])
AT_ENDS = {"gap": Fraction(1), "half": Fraction(1, 2), "item": Fraction(0)}
TOLERANCE = 1e-9


def laid_out(overall: int, item: int, count: int, ends: str) -> tuple[Fraction, Fraction]:
    """Solve for the gap by its definition: lead-ins, items and inner gaps make the length."""
    shares = 2 * AT_ENDS[ends] + count - 1
    gap = (Fraction(overall, 32) - count * Fraction(item, 32)) / shares
    return gap, gap * AT_ENDS[ends]


def asked(overall: int, item: int, ends: str, **rest: Any) -> dict[str, Any]:
    return {"overall": overall / 32, "item_width": item / 32, "ends": ends, **rest}


@given(OVERALLS, ITEMS, COUNTS, ENDS)
def test_items_and_gaps_fill_the_length(overall: int, item: int, count: int, ends: str) -> None:
    gap, lead_in = laid_out(overall, item, count, ends)
    assume(gap > 0)
    got = answer("even-spacing", **asked(overall, item, ends, count=count, mark="both"))
    edges = [mark["value"] for mark in got["marks"]]
    if item == 0:
        edges = [edge for edge in edges for _ in range(2)]
    assert len(edges) == 2 * count
    assert abs(edges[0] - lead_in) < TOLERANCE
    assert abs(overall / 32 - edges[-1] - lead_in) < TOLERANCE
    for right, left in zip(edges[1:-1:2], edges[2::2], strict=True):
        assert abs(left - right - gap) < TOLERANCE


@given(OVERALLS, ITEMS, COUNTS, ENDS, STEPS)
def test_the_worst_rounding_is_the_worst_of_the_marks(
    overall: int, item: int, count: int, ends: str, step: int
) -> None:
    gap, lead_in = laid_out(overall, item, count, ends)
    assume(gap > 0)
    pitch = gap + Fraction(item, 32)
    centers = [lead_in + Fraction(item, 64) + index * pitch for index in range(count)]
    off = [abs(Fraction(round(center * step), step) - center) for center in centers]
    question = asked(overall, item, ends, count=count)
    got = figures("even-spacing", scale={"step": step}, **question)
    assert abs(got["worst_error"] - max(off)) < TOLERANCE
    assert got["worst_error"] <= 1 / (2 * step) + TOLERANCE


@given(OVERALLS, ITEMS, ENDS, st.integers(min_value=8, max_value=320))
def test_the_largest_gap_takes_the_fewest_items_that_do(
    overall: int, item: int, ends: str, largest: int
) -> None:
    """Count up from the least number, as one would with a pencil."""
    count = 2 if ends == "item" else 1
    allowed = Fraction(largest, 32)
    assume(Fraction(overall, 32) > allowed * 2)
    while laid_out(overall, item, count, ends)[0] > allowed:
        count += 1
    assume(count <= 200)
    question = asked(overall, item, ends, largest_gap=largest / 32)
    if laid_out(overall, item, count, ends)[0] <= 0:
        assert refusals("even-spacing", **question).keys() <= {"largest_gap", "item_width"}
    else:
        assert figures("even-spacing", **question)["items"] == count


@given(OVERALLS, st.integers(min_value=1, max_value=320), COUNTS, ENDS)
def test_items_that_fill_the_length_are_refused_with_a_count_that_fits(
    overall: int, item: int, count: int, ends: str
) -> None:
    assume(count * item >= overall)
    said = refusals("even-spacing", **asked(overall, item, ends, count=count))
    assert said.keys() <= {"count", "item_width"}
    if "count" in said:
        most = int(said["count"].split(": use ")[1].split(" or ")[0])
        assert most * item < overall <= (most + 1) * item


def test_a_length_next_to_nothing_is_refused_not_divided_by() -> None:
    for overall in (1e-300, 1e-12):
        assert refusals("even-spacing", overall=overall, item_width=0, count=3)
