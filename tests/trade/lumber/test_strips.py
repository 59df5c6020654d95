"""Strips glued: add a strip at a time until the part is made, in whole sixty-fourths."""

from itertools import pairwise

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import box, unary_union

from longpoint.trade.lumber.strips import Strips, fewest, is_used_up

SIZES = st.integers(min_value=32, max_value=4000)  # sixty-fourths of an inch
STOCKS = st.integers(min_value=40, max_value=900)
LOSSES = st.integers(min_value=0, max_value=16)


def glued(size: int, stock: int, loss: int) -> Strips:
    assume(stock > 2 * loss + 8)
    return Strips(size / 64, stock / 64, loss / 64)


@given(SIZES, STOCKS, LOSSES)
def test_no_fewer_would_do(size: int, stock: int, loss: int) -> None:
    """By hand: the first board whole, each further one less both edges of the joint."""
    strips = glued(size, stock, loss)
    count, made = 1, stock
    while made < size:
        count, made = count + 1, made + stock - 2 * loss
    assert strips.count == count
    assert strips.rip <= stock / 64 + 1e-9


@given(SIZES, STOCKS, LOSSES)
def test_trued_and_pushed_together_they_are_the_part(size: int, stock: int, loss: int) -> None:
    """Shapely: lay what each strip shows side by side, and measure the union."""
    strips = glued(size, stock, loss)
    edges = [0.0]
    for index in range(strips.count):
        edges.append(edges[-1] + strips.shows(index))
    whole = unary_union([box(left, 0, right, 1) for left, right in pairwise(edges)])
    assert whole.bounds == pytest.approx((0, 0, size / 64, 1))


def test_a_part_as_wide_as_the_stock_is_one_board_however_much_a_joint_would_lose() -> None:
    """Hand work: nothing is glued, so nothing is lost."""
    assert fewest(1, 1, 3) == 1
    assert is_used_up(1, 0.5)
    with pytest.raises(ValueError, match="use up"):
        Strips(2, 1, 0.5)


def test_the_decision_takes_the_rough_width() -> None:
    """Hand work: a stile 5 3/8 wide is ripped 5 5/8 rough; no board of 5 1/2 gives that."""
    assert fewest(5.375, 5.5, 1 / 16) == 1
    assert fewest(5.625, 5.5, 1 / 16) == 2
