"""What must always hold of hinges: the closed door leaves the gap, the hinges share the edge."""

import itertools
import math

from hypothesis import given
from hypothesis import strategies as st

from tests.trade.asking import answer, figures

DOOR = {"door_height": 80, "door_thickness": 1.375, "hinge_height": 3.5}
SMALL = st.floats(min_value=0.01, max_value=0.3)


@given(SMALL, SMALL, SMALL)
def test_closed_up_the_stack_leaves_the_gap_wanted(leaf: float, gap: float, own: float) -> None:
    """Mortise, leaf, the hinge's own gap, leaf, mortise: added up face to face."""
    found = figures("hinge-layout", leaf_thickness=leaf, gap=gap, closed_gap=own, **DOOR)
    left = 2 * (leaf + found["packing"] - found["mortise_depth"]) + own
    assert math.isclose(left, gap, abs_tol=1e-12)
    assert found["mortise_depth"] == 0 or found["packing"] == 0


@given(
    st.floats(min_value=70, max_value=120),
    st.integers(min_value=2, max_value=6),
    st.floats(min_value=2, max_value=4.5),
)
def test_hinges_share_the_edge_evenly(height: float, hinges: int, size: float) -> None:
    found = answer(
        "hinge-layout",
        door_height=height,
        door_thickness=1.375,
        hinge_height=size,
        leaf_thickness=0.1,
        gap=0.1,
        hinges=hinges,
    )
    on_door = [mark["value"] for mark in found["marks"] if mark["from"] == "door top"]
    on_jamb = [mark["value"] for mark in found["marks"] if mark["from"] == "head"]
    tops, bottoms = on_door[0::2], on_door[1::2]
    centers = [(top + bottom) / 2 for top, bottom in zip(tops, bottoms, strict=True)]
    apart = [after - before for before, after in itertools.pairwise(centers)]
    assert len(tops) == hinges
    assert max(apart) - min(apart) < 1e-9
    assert math.isclose(bottoms[-1], height + 0.5 - 10)
    assert all(
        math.isclose(jamb - door, 0.125) for door, jamb in zip(on_door, on_jamb, strict=True)
    )
