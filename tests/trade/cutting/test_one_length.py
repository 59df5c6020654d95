"""One length of piece: an integer program and the stick plan buy no less."""

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.optimize import Bounds, LinearConstraint, milp

from longpoint.trade.cutting.one_length import OneLength
from tests.trade.asking import figures

SOLD = st.lists(st.integers(6, 20).map(lambda n: 12 * n), min_size=1, max_size=8, unique=True)
EIGHTHS = st.integers(80, 1900).map(lambda n: n / 8)


def bought(piece: float, count: int, sold: list[int]) -> float:
    sticks = OneLength(piece, 1 / 8, [float(length) for length in sold]).sticks(count)
    for stick in sticks:
        # The saw takes a kerf between pieces, and one more where something is left.
        used = stick.each * piece + (stick.each - 1) / 8
        assert used <= stick.length + 1e-9
    assert sum(stick.each * stick.count for stick in sticks) >= count
    return sum(stick.length * stick.count for stick in sticks)


@given(EIGHTHS, st.integers(1, 600), SOLD)
def test_no_sticks_give_the_pieces_out_of_less(piece: float, count: int, sold: list[int]) -> None:
    """HiGHS, an integer program: sticks of each length, pieces at least as many as wanted."""
    assume(piece <= max(sold))
    each = np.array([(length + 1 / 8) // (piece + 1 / 8) for length in sold])
    best = milp(
        np.array(sold),
        constraints=LinearConstraint(each[None, :], lb=count),
        integrality=np.ones(len(sold)),
        bounds=Bounds(0, np.inf),
    )
    assert best.success
    assert bought(piece, count, sold) == pytest.approx(best.fun)


@given(st.integers(200, 900).map(lambda n: n / 8), st.integers(1, 12), SOLD)
def test_the_stick_plan_buys_no_less(piece: float, count: int, sold: list[int]) -> None:
    assume(piece <= max(sold))
    planned = figures(
        "stick-plan",
        pieces=[{"length": piece, "count": count}],
        sticks=[{"length": length} for length in sold],
        kerf=1 / 8,
        end_trim=0,
    )
    assert bought(piece, count, sold) <= planned["bought"] + 1e-9
    if planned["proved"] == "yes":
        assert bought(piece, count, sold) == pytest.approx(planned["bought"])
