"""A stiff door moved at two hinges: numpy turns and shifts it, and reads the strike gap again."""

import math

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from tests.trade.asking import answer

GAPS = st.floats(min_value=0, max_value=0.5)
HEIGHTS = st.floats(min_value=60, max_value=110)
OFFSETS = st.floats(min_value=3, max_value=20)
WIDE = 30.0
STIFF = 1.5e-3  # Inches: half the square of the turn, 1/2 in 60, times the width.


def moves(found: dict[str, float]) -> tuple[float, float]:
    """What was done at the top and the bottom hinge, toward the strike."""
    top = found.get("pack_top", 0.0) - found.get("deepen_top", 0.0)
    return top, found.get("pack_bottom", 0.0) - found.get("deepen_bottom", 0.0)


def moved(points: np.ndarray, hinges: np.ndarray, by: tuple[float, float]) -> np.ndarray:
    """The rigid motion that carries two points of the hinge edge sideways; x right, y down."""
    target = hinges + np.array([[by[0], 0.0], [by[1], 0.0]])
    old, new = hinges[1] - hinges[0], target[1] - target[0]
    turn = math.atan2(new[1], new[0]) - math.atan2(old[1], old[0])
    spin = np.array([[math.cos(turn), -math.sin(turn)], [math.sin(turn), math.cos(turn)]])
    found: np.ndarray = (points - hinges[0]) @ spin.T + target[0]
    return found


@given(GAPS, GAPS, HEIGHTS, OFFSETS, OFFSETS, st.one_of(st.none(), st.floats(0.05, 0.5)))
def test_the_door_moved_as_told_leaves_an_even_gap(
    top: float, bottom: float, height: float, first: float, last: float, wanted: float | None
) -> None:
    assume(wanted is not None or abs(top - bottom) > 1 / 32)
    asked = {"gap_top": top, "gap_bottom": bottom, "leaf_height": height, "leaf_width": WIDE}
    asked |= {"top_center": first, "bottom_center": last}
    if wanted is not None:
        asked["wanted"] = wanted
    answered = answer("even-gap", **asked)
    found = {one["name"]: one["value"] for one in answered["figures"]}
    lean = (top - bottom) / height
    strike = np.array([[-top, 0.0], [-bottom, height]])
    hinges = np.array([[-top - WIDE + lean * y, y] for y in (first, height - last)])
    after = moved(strike, hinges, moves(found))
    by_hand = 2 / 128 if wanted is not None else STIFF  # Moves too small to see are left out.
    assert after[:, 0] == pytest.approx(-found["even_gap"], abs=by_hand)
    if wanted is None or min(map(abs, moves(found))) > 0:
        assert found["head_change"] == pytest.approx(after[0, 1], abs=2e-3)


@given(GAPS, GAPS, st.integers(min_value=2, max_value=5))
def test_hinges_between_follow_in_a_straight_line(top: float, bottom: float, count: int) -> None:
    assume(abs(top - bottom) > 0.1)
    found = answer("even-gap", gap_top=top, gap_bottom=bottom, leaf_height=80, hinges=count)
    (table,) = found["tables"]
    signed = {"shim": 1.0, "let in": -1.0, "leave": 0.0}
    done = [signed[row[1]] * float(row[3] or 0) for row in table["rows"]]
    line = np.linspace(done[0], done[-1], count)
    assert done == pytest.approx(line, abs=1 / 128 + 1e-3)
