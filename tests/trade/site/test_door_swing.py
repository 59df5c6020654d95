"""The swing against a numerical sweep: numpy turns the section, shapely measures how near it comes.

The answer never sweeps: it compares two distances from the pin.
"""

import math
from typing import Any

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from longpoint.trade.site.door_swing import STANDARD
from tests.trade.asking import answer, ask, figures, refusals

GEOMETRIES = 500
NEAR = 1e-5  # Inches; the sweep's finest steps are a few hundred-thousandths of a degree.


def closed(door: dict[str, Any], relief: float) -> np.ndarray:
    """The section from above, y through the door from the knuckle face: (5, 2)."""
    width, thick = door["leaf_width"], door["door_thickness"]
    land = door["land"] if relief else thick / 2
    far = (width - relief, thick)
    return np.array([(0.0, 0.0), (width, 0.0), (width, land), far, (0.0, thick)])


def turned(door: dict[str, Any], section: np.ndarray, openings: np.ndarray) -> np.ndarray:
    """The section turned about the pin, toward the knuckle side: (openings, corners, 2)."""
    pin = np.array([-door["pin_in"], -door["pin_out"]])
    turn = np.radians(openings)[:, None]
    x, y = (section - pin).T
    across = x * np.cos(turn) + y * np.sin(turn)
    along = -x * np.sin(turn) + y * np.cos(turn)
    moved: np.ndarray = np.stack([across, along], axis=2) + pin
    return moved


def gaps(door: dict[str, Any], relief: float, openings: np.ndarray) -> np.ndarray:
    """The distance to the jamb, or to the other leaf opening too, at each opening."""
    corners = turned(door, closed(door, relief), openings)
    leaves = shapely.polygons(corners)
    edge = door["leaf_width"] + door["strike_gap"]
    if door.get("opens") == "together":
        mirrored = corners * [-1, 1] + [2 * door["leaf_width"] + door["strike_gap"], 0]
        measured: np.ndarray = shapely.distance(leaves, shapely.polygons(mirrored))
    else:
        measured = shapely.distance(leaves, shapely.box(edge, 0, edge + 60, 60))
    return measured


def swept(door: dict[str, Any], relief: float = 0.0) -> float:
    """The smallest gap from closed to a quarter turn, the sweep refined at every dip."""
    openings = np.linspace(0, 90, 361)
    found = gaps(door, relief, openings)
    if found.min() == 0:
        return 0.0
    beside = np.pad(found, 1, constant_values=np.inf)
    dips = openings[(found <= beside[:-2]) & (found <= beside[2:])]
    return min(refined(door, relief, dip) for dip in dips)


def refined(door: dict[str, Any], relief: float, near: float) -> float:
    """The smallest gap within a quarter of a degree of an opening."""
    reach = 0.25
    for _ in range(4):
        openings = np.linspace(max(0.0, near - reach), near + reach, 41)
        found = gaps(door, relief, openings)
        near, reach = openings[found.argmin()], reach / 10
    return float(found.min())


def random_door(random: np.random.Generator) -> dict[str, Any]:
    gap, thick = random.uniform(0.03, 0.4), random.uniform(0.75, 2.5)
    return {
        "leaf_width": random.uniform(10, 48),
        "door_thickness": thick,
        "pin_in": random.uniform(0, 0.25),
        "pin_out": random.uniform(0, 1),
        "strike_gap": gap,
        "clearance": gap * random.uniform(0.02, 0.7),
        "land": random.choice([0.0, thick * random.uniform(0, 0.15)]),
    }


def answered(random: np.random.Generator) -> tuple[dict[str, Any], dict[str, Any]]:
    """A random door that can be beveled to clear, and its figures."""
    while True:
        door = random_door(random)
        reply = ask("door-swing", **door)
        if reply["ok"]:
            return door, {one["name"]: one["value"] for one in reply["answer"]["figures"]}
        assert {error["field"] for error in reply["errors"]} <= {"land", "clearance"}, reply


def test_the_tightest_gap_is_the_sweeps_at_500_random_geometries() -> None:
    random = np.random.default_rng(5)
    binding = 0
    for _ in range(GEOMETRIES):
        door, found = answered(random)
        assert swept(door) == pytest.approx(max(0.0, found["tight_gap"]), abs=NEAR), door
        binding += found["tight_gap"] < 0
    assert 0 < binding < GEOMETRIES


def test_the_bevel_keeps_the_clearance_and_takes_no_more_than_needed() -> None:
    random = np.random.default_rng(6)
    for _ in range(GEOMETRIES // 2):
        door, found = answered(random)
        kept = swept(door, found["back_relief"])
        if found["back_relief"]:
            assert kept == pytest.approx(door["clearance"], abs=NEAR), door
            deep = door["door_thickness"] - door["land"]
            bevel = math.degrees(math.atan2(found["back_relief"], deep))
            assert found["bevel_angle"] == pytest.approx(bevel)
        else:
            assert kept >= door["clearance"] - NEAR
            assert found["bevel_angle"] == 0


def test_one_eighth_in_two_is_enough_when_the_sweep_says_so() -> None:
    random = np.random.default_rng(7)
    said = set()
    for _ in range(GEOMETRIES // 4):
        door, found = answered(random)
        kept = swept(door, (door["door_thickness"] - door["land"]) / 16)
        assert kept == pytest.approx(max(0.0, found["standard_gap"]), abs=NEAR)
        if abs(kept - door["clearance"]) > NEAR:
            assert (found["standard_enough"] == "yes") == (kept > door["clearance"])
        said.add(found["standard_enough"])
    assert said == {"yes", "no"}


def test_the_gap_that_needs_no_bevel_leaves_just_the_clearance() -> None:
    random = np.random.default_rng(8)
    for _ in range(GEOMETRIES // 4):
        door, found = answered(random)
        wider = door | {"strike_gap": found["gap_needed"]}
        assert swept(wider) == pytest.approx(door["clearance"], abs=NEAR)


def test_both_leaves_at_once_come_nearer_than_one() -> None:
    random = np.random.default_rng(9)
    for _ in range(60):
        door, alone = answered(random)
        pair = door | {"meets": "leaf", "opens": "together"}
        reply = ask("door-swing", **pair)
        if not reply["ok"]:
            continue
        found = {one["name"]: one["value"] for one in reply["answer"]["figures"]}
        assert swept(pair) == pytest.approx(max(0.0, found["tight_gap"]), abs=NEAR)
        assert found["tight_gap"] <= alone["tight_gap"]
        if found["back_relief"]:
            assert swept(pair, found["back_relief"]) == pytest.approx(door["clearance"], abs=NEAR)


@given(st.floats(min_value=0, max_value=180), st.floats(min_value=12, max_value=40))
def test_the_gap_at_an_opening_is_shapelys(opening: float, width: float) -> None:
    door = {"leaf_width": width, "door_thickness": 1.75, "pin_in": 0.0625, "pin_out": 0.5}
    door |= {"strike_gap": 0.125, "clearance": 0.05, "land": 0.125}
    found = figures("door-swing", opening=opening, **door)
    measured = gaps(door, found["back_relief"], np.array([opening]))[0]
    assert found["opening_gap"] == pytest.approx(measured, abs=1e-9)


def test_a_pair_is_drawn_and_marked_on_both_edges() -> None:
    """The narrower leaf needs the steeper bevel: its corner turns on a smaller circle."""
    found = answer("door-swing", leaf_width=24, door_thickness=1.75, meets="leaf", other_width=14)
    shown = {figure["name"]: figure["value"] for figure in found["figures"]}
    alone = figures("door-swing", leaf_width=14, door_thickness=1.75)
    assert shown["other_bevel_angle"] == alone["bevel_angle"] > shown["bevel_angle"]
    assert {mark["tag"] for mark in found["marks"]} == {"1", "2"}


def test_the_usual_bevels_compared() -> None:
    """t tan 3 degrees: 0.0721 over 1 3/8, 0.0917 over 1 3/4 (trigonometry)."""
    for thick, off in ((1.375, "0.072"), (1.75, "0.092")):
        (table,) = answer("door-swing", leaf_width=30, door_thickness=thick)["tables"]
        assert ["3.0°", off] in [row[:2] for row in table["rows"]]


def test_one_eighth_in_two_as_an_angle() -> None:
    """atan(1/16) = 3.576 degrees (trigonometry)."""
    assert pytest.approx(3.576, abs=0.001) == STANDARD


def test_what_no_bevel_can_do_is_refused() -> None:
    said = refusals("door-swing", leaf_width=3, door_thickness=8, pin_out=2, strike_gap=0.1)
    assert "needs no bevel" in said["leaf_width"]


@given(
    st.floats(min_value=0.02, max_value=0.3),
    st.floats(min_value=-0.1, max_value=0.25),
    st.floats(min_value=0.2, max_value=1),
)
def test_the_hinge_edge_beveled_as_told_keeps_its_gap_all_through(
    gap: float, closes_in: float, pin_out: float
) -> None:
    """Shapely turns the leaf away from a jamb out of square: it is never nearer than closed."""
    thick, keep = 1.75, 1 / 16
    door: dict[str, Any] = {"leaf_width": 30.0, "door_thickness": thick, "hinge_gap": gap}
    asked = door | {"jamb_closes_in": closes_in, "pin_out": pin_out, "strike_gap": 0.5}
    found = figures("door-swing", **asked)
    jamb = shapely.Polygon([(-gap, 0), (closes_in - gap, thick), (-9, thick), (-9, 0)])
    edge = np.array([(0.0, 0.0), (9.0, 0.0), (9.0, thick), (found["hinge_relief"], thick)])
    turning = turned(door | {"pin_in": gap / 2, "pin_out": pin_out}, edge, np.linspace(0, 90, 181))
    away = shapely.distance(shapely.polygons(turning), jamb)
    assert away.min() == pytest.approx(away[0], abs=1e-9)
    # Across a slanting face the straight way is a hair shorter than the level one.
    assert away[0] == pytest.approx(min(gap, found["hinge_far_gap"]), abs=0.005)
    assert found["hinge_far_gap"] >= min(keep, gap) - 1e-9
    if found["hinge_relief"]:
        assert found["hinge_far_gap"] == pytest.approx(min(keep, gap))


def test_a_hinge_edge_that_binds_is_told_with_the_bevel_that_frees_it() -> None:
    """Hand work: 1/8 - 3/16 is 1/16 of overlap; 1/8 off leaves 1/16; atan(0.125 / 1.75) = 4.1."""
    asked = {"leaf_width": 36, "door_thickness": 1.75, "jamb_closes_in": "3/16"}
    found = answer("door-swing", strike_gap="3/16", **asked)
    assert "Bevel the hinge edge 4.1°" in found["verdict"]
    assert any("binds there and springs open" in note for note in found["notes"])
    short = answer("door-swing", strike_gap="3/16", hinge_bevel=3, **asked)
    assert "Bevel the hinge edge 4.1°, or it binds" in short["verdict"]


def test_no_bevel_to_plane_has_no_pencil_line() -> None:
    """0.0006 off a 3/4 leaf 18 wide would keep 0.11: by hand beside the fixture of that name."""
    said = {"leaf_width": 18, "door_thickness": "3/4", "pin_in": 0, "pin_out": 0}
    asked = said | {"strike_gap": "1/8", "clearance": "0.11"}
    assert answer("door-swing", **asked)["marks"] == []
    # 1/8 kept of a gap of 1/8: 18.01562 has to become 18, so 1/64 comes off.
    (mark,) = answer("door-swing", **asked | {"clearance": "1/8"})["marks"]
    assert mark["text"] == "1/64"
