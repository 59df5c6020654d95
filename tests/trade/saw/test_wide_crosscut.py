"""A board flipped in space: planes cut by the saw, turned with numpy, and what must always hold."""

import math

import numpy as np
from hypothesis import assume, given
from hypothesis import strategies as st

from tests.trade.asking import answer, figures

WIDTHS = st.floats(min_value=1, max_value=60)
REACHES = st.floats(min_value=3, max_value=40)
ANGLES = st.floats(min_value=0, max_value=70)
ERRORS = st.floats(min_value=0.01, max_value=2)
FLIPS = st.sampled_from(["over", "round"])
ROLL_OVER = np.diag([1.0, -1.0, -1.0])  # Half a turn about the board's length, x.
END_FOR_END = np.diag([-1.0, -1.0, 1.0])  # Half a turn about the upright, z.
LENGTHWISE, UPRIGHT = np.array([1.0, 0, 0]), np.array([0, 0, 1.0])


def turned(vector: np.ndarray, axis: np.ndarray, angle: float) -> np.ndarray:
    """Rodrigues' rotation, degrees."""
    turn = math.radians(angle)
    along = axis * (axis @ vector) * (1 - math.cos(turn))
    around = np.cross(axis, vector) * math.sin(turn)
    found: np.ndarray = vector * math.cos(turn) + around + along
    return found


def kerf(setting: float, error: float, tilt: float = 0.0) -> np.ndarray:
    """Normal of the plane a saw cuts, its fence being `error` out and its blade tilted."""
    upright = turned(LENGTHWISE, np.array([0, 1.0, 0]), tilt)
    return turned(upright, UPRIGHT, setting + error)


def between(one: np.ndarray, other: np.ndarray) -> float:
    """Angle between two planes, degrees."""
    return math.degrees(math.atan2(np.linalg.norm(np.cross(one, other)), abs(one @ other)))


def cuts_part_by(angle: float, error: float, flip: str, tilt: float = 0.0) -> float:
    """Cut, flip, cut again: the angle between both kerfs as they lie in the board."""
    first = kerf(angle, error, tilt)
    if flip == "over":
        return between(first, ROLL_OVER @ kerf(-angle, error, tilt))
    return between(first, END_FOR_END @ kerf(angle, error, tilt))


@given(st.floats(1.01, 1.99), REACHES, ANGLES, ERRORS, FLIPS)
def test_the_cuts_part_as_the_planes_do(
    share: float, reach: float, angle: float, error: float, flip: str
) -> None:
    # A board that takes two cuts is one to two times as wide as what the saw crosses.
    width = share * reach * math.cos(math.radians(angle))
    found = figures(
        "wide-crosscut",
        board_width=width,
        capacity=reach,
        angle=angle,
        fence_error=error,
        flip=flip,
    )
    assert found["cuts"] == 2
    parted = cuts_part_by(angle, error, flip)
    assert math.isclose(found["meeting_error"], parted, abs_tol=1e-6)
    half = math.dist((0, 0), (width / 2, width / 2 * math.tan(math.radians(angle))))
    # Rolled over, half the line stands off the other half; end for end the whole line is off.
    off = half * math.tan(math.radians(parted))
    if flip == "round":
        off = 2 * half * math.tan(math.radians(error))
    assert math.isclose(found["off_line"], off, abs_tol=1e-6)


@given(st.floats(min_value=0.01, max_value=2), FLIPS)
def test_a_tilted_blade_shows_twice_whichever_way(tilt: float, flip: str) -> None:
    """The note that says so, checked in space at a square cut."""
    assert math.isclose(cuts_part_by(0, 0, flip, tilt), 2 * tilt, rel_tol=1e-6)
    notes = answer("wide-crosscut", board_width=16, capacity=12, flip=flip)["notes"]
    assert any("whichever way" in note for note in notes)


@given(WIDTHS, REACHES, ANGLES)
def test_the_cuts_reach_across_and_no_fewer_would(width: float, reach: float, angle: float) -> None:
    """Walk the cut line: what one pass of the saw's travel covers of the board's width."""
    found = figures("wide-crosscut", board_width=width, capacity=reach, angle=angle)
    line = np.array([math.sin(math.radians(angle)), math.cos(math.radians(angle))])
    crossed = float(line[1] * reach)
    assume(abs(width - crossed) > 1e-6)
    assume(abs(width - 2 * crossed) > 1e-6)
    passes = math.ceil(width / crossed)
    assert found.get("cuts") == (passes if passes <= 2 else None)
    assert ("other_way" in found) == (passes > 2)
    assert math.isclose(found["cut_length"] * line[1], width, rel_tol=1e-9)


@given(WIDTHS, REACHES)
def test_the_steepest_angles_are_where_the_number_of_cuts_changes(
    width: float, reach: float
) -> None:
    found = figures("wide-crosscut", board_width=width, capacity=reach)
    for name, cuts in (("one_cut_to", 1), ("two_cuts_to", 2)):
        steepest = found.get(name)
        if steepest is None or not 0.01 < steepest < 74.9:
            continue
        for angle, is_enough in ((steepest - 0.005, True), (steepest + 0.005, False)):
            got = figures("wide-crosscut", board_width=width, capacity=reach, angle=angle)
            assert (got.get("cuts", 3) <= cuts) is is_enough
