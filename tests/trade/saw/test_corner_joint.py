"""What must always hold where two pieces meet, and the corner rebuilt with shapely."""

import math

from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import LineString

from tests.trade.asking import figures, refusals

CORNERS = st.floats(min_value=20, max_value=160)
WIDTHS = st.floats(min_value=0.5, max_value=12)


@given(CORNERS, WIDTHS, WIDTHS)
def test_the_two_settings_make_the_supplement(corner: float, a: float, b: float) -> None:
    found = figures("corner-joint", corner=corner, width_a=a, width_b=b)
    assert math.isclose(found["saw_a"] + found["saw_b"], 180 - corner, abs_tol=1e-9)


@given(CORNERS, WIDTHS, WIDTHS)
def test_both_pieces_end_on_the_same_joint(corner: float, a: float, b: float) -> None:
    found = figures("corner-joint", corner=corner, width_a=a, width_b=b)
    assert math.isclose(found["joint"], math.hypot(a, found["run_a"]), rel_tol=1e-9)
    assert math.isclose(found["joint"], math.hypot(b, found["run_b"]), rel_tol=1e-9)


@given(CORNERS, WIDTHS, WIDTHS)
def test_the_outer_edges_meet_where_the_run_says(corner: float, a: float, b: float) -> None:
    """Shapely: offset the two inner edges outward and intersect the offsets."""
    turn = math.radians(corner)
    along_b = (math.cos(turn), math.sin(turn))
    far = 2000
    outer_a = LineString([(-far, -a), (far, -a)])
    out = (-along_b[1] * b, along_b[0] * b)
    outer_b = LineString([(out[0] + t * along_b[0], out[1] + t * along_b[1]) for t in (-far, far)])
    meet = outer_a.intersection(outer_b)
    assume(not meet.is_empty)
    found = figures("corner-joint", corner=corner, width_a=a, width_b=b)
    assert math.isclose(found["run_a"], -meet.x, abs_tol=1e-6)


@given(CORNERS, WIDTHS)
def test_equal_widths_share_the_corner(corner: float, width: float) -> None:
    found = figures("corner-joint", corner=corner, width_a=width)
    assert math.isclose(found["saw_a"], (180 - corner) / 2, abs_tol=1e-9)


def test_a_corner_next_to_nothing_is_refused_not_divided_by() -> None:
    for corner in (1e-300, 1e-9, 179.9999999999):
        assert "corner" in refusals("corner-joint", corner=corner, width_a=3, width_b=4)
