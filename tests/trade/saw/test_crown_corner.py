"""Crown at a corner, checked in space: planes cut by planes, and printed settings."""

import json
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from longpoint.trade.calls import call
from tests.trade.saw.solid import Vector, blade, cos, kept, laid, sin

# Derived, checked by planes cut by planes in the tests below: corner -> (flat swing, flat tilt)
# for springs of 30, 38, 45, 52 and 60. The pairs that were seen in print stand in PRINTED.
TABLE = {
    67.5: ((36.81, 46.06), (42.66, 40.94), (46.62, 36.01), (49.70, 30.79), (52.35, 24.57)),
    85: ((28.62, 39.68), (33.90, 35.52), (37.66, 31.42), (40.69, 27.00), (43.38, 21.63)),
    88: ((27.37, 38.53), (32.52, 34.53), (36.21, 30.57), (39.21, 26.29), (41.89, 21.08)),
    89: ((26.97, 38.15), (32.07, 34.20), (35.74, 30.29), (38.73, 26.05), (41.39, 20.89)),
    90: ((26.57, 37.76), (31.62, 33.86), (35.26, 30.00), (38.24, 25.81), (40.89, 20.70)),
    91: ((26.17, 37.37), (31.17, 33.53), (34.79, 29.71), (37.75, 25.56), (40.40, 20.52)),
    92: ((25.77, 36.98), (30.73, 33.19), (34.33, 29.42), (37.27, 25.32), (39.91, 20.32)),
    95: ((24.62, 35.81), (29.43, 32.17), (32.94, 28.54), (35.83, 24.58), (38.43, 19.74)),
    108: ((19.96, 30.60), (24.10, 27.59), (27.19, 24.56), (29.79, 21.22), (32.18, 17.09)),
    120: ((16.10, 25.66), (19.57, 23.20), (22.21, 20.70), (24.46, 17.93), (26.57, 14.48)),
    135: ((11.70, 19.35), (14.31, 17.55), (16.32, 15.70), (18.08, 13.63), (19.73, 11.03)),
    150: ((7.63, 12.95), (9.37, 11.77), (10.73, 10.55), (11.92, 9.17), (13.06, 7.44)),
    157.5: ((5.68, 9.73), (6.98, 8.84), (8.01, 7.93), (8.91, 6.90), (9.77, 5.60)),
}
SPRINGS = (30, 38, 45, 52, 60)
ROWS = [
    (corner, spring, *pair)
    for corner, pairs in TABLE.items()
    for spring, pair in zip(SPRINGS, pairs, strict=True)
]

# Read in print: corner, spring, swing, tilt, half a unit of the last digit printed.
PRINTED = [
    (135, 38, 14.30638, 17.55124, 0.000005),  # worked trigonometry of crown
    (90, 38, 31.62, 33.85, 0.013),  # manual of a compound miter saw; it truncates 33.86
    (90, 38, 31.6, 33.9, 0.05),  # manuals of two further compound miter saws
]

CORNERS = st.floats(20, 175)
LEANS = st.floats(5, 85)
TURNS = st.sampled_from(["inside", "outside"])
SIDES = st.sampled_from(["left", "right"])


def answer(**inputs: Any) -> dict[str, Any]:
    reply = json.loads(call(json.dumps({"do": "answer", "tool": "crown-corner", "inputs": inputs})))
    assert reply["ok"], reply
    return dict(reply["answer"])


def figures(**inputs: Any) -> dict[str, Any]:
    return {figure["name"]: figure["value"] for figure in answer(**inputs)["figures"]}


class Hung:
    """A piece of crown on its wall: x to the right, y away from who faces the corner, z up.

    The corner stands at the origin; the joint is the plane x = 0 that halves it.
    """

    def __init__(self, corner: float, spring: float, turn: str, side: str) -> None:
        hand = -1.0 if side == "left" else 1.0
        depth = -1.0 if turn == "inside" else 1.0
        half = corner / 2
        self.along = np.array([hand * sin(half), depth * cos(half), 0.0])
        self.out = np.array([depth * hand * cos(half), -sin(half), 0.0])
        self.up = np.array([0.0, 0.0, 1.0])
        self.rise = cos(spring) * self.up + sin(spring) * self.out
        self.face = cos(spring) * self.out - sin(spring) * self.up
        self.kept = np.array([hand, 0.0, 0.0])

    def on_saw(self, edge: str) -> Vector:
        """The joint's normal, towards the piece, once it lies flat: x right, y to the fence."""
        towards_fence = self.rise if edge == "top" else -self.rise
        return laid(self.kept, towards_fence, self.face)

    def nested(self) -> Vector:
        """The same with the piece upside down, its wall side to the fence."""
        return laid(self.kept, -self.out, -self.up)


def rows(reply: dict[str, Any], table: int) -> dict[tuple[str, str], list[str]]:
    return {(row[0], row[1]): row[2:] for row in reply["tables"][table]["rows"]}


def test_the_model_of_the_saw_is_one_a_hand_can_check() -> None:
    # Handle to the right, no tilt: the blade runs from front right to back left.
    assert blade("right", 30, "left", 0) == pytest.approx([cos(30), sin(30), 0])
    # Tilted left, no swing: the top leans left, so the right face looks up.
    assert blade("right", 0, "left", 30) == pytest.approx([cos(30), 0, sin(30)])


@given(CORNERS, LEANS, TURNS, SIDES)
def test_the_walls_of_the_model_meet_at_the_corner(
    corner: float, spring: float, turn: str, side: str
) -> None:
    piece = Hung(corner, spring, turn, side)
    other = Hung(corner, spring, turn, "right" if side == "left" else "left")
    assert piece.along @ other.along == pytest.approx(cos(corner))
    assert piece.out @ piece.along == pytest.approx(0)
    # The room lies where the other wall goes in an inside corner, and not there in an outside one.
    assert (piece.out @ other.along > 0) == (turn == "inside")


@given(CORNERS, LEANS, TURNS, SIDES, st.sampled_from(["left", "right"]))
def test_flat_settings_cut_the_plane_that_halves_the_corner(
    corner: float, spring: float, turn: str, side: str, tilt: str
) -> None:
    reply = answer(corner=corner, spring=spring, turn=turn, tilt=tilt)
    settings_ = {figure["name"]: figure["value"] for figure in reply["figures"]}
    edge, swing, keep = rows(reply, 0)[turn, side]
    normal = blade(swing, settings_["flat_miter"], tilt, settings_["flat_bevel"])
    joint = Hung(corner, spring, turn, side).on_saw(edge.split()[0])
    assert joint == pytest.approx(kept(keep, normal), abs=1e-9)


@given(CORNERS, LEANS, TURNS, SIDES)
def test_nested_settings_cut_the_same_plane(
    corner: float, spring: float, turn: str, side: str
) -> None:
    reply = answer(corner=corner, spring=spring, turn=turn)
    settings_ = {figure["name"]: figure["value"] for figure in reply["figures"]}
    edge, swing, keep = rows(reply, 1)[turn, side]
    normal = blade(swing, settings_["nested_miter"], "left", 0)
    assert edge == "bottom edge"
    assert Hung(corner, spring, turn, side).nested() == pytest.approx(kept(keep, normal), abs=1e-9)


def test_edges_and_kept_sides_are_those_of_printed_manuals() -> None:
    # Manuals of three compound miter saws, crown flat on the table, name the edges; two others,
    # molding flat on its back and the blade tilted left, name the same edges and the kept sides.
    ways = {way: (row[0], row[2]) for way, row in rows(answer(corner=90), 0).items()}
    assert ways == {
        ("inside", "left"): ("top edge", "left"),
        ("inside", "right"): ("bottom edge", "left"),
        ("outside", "left"): ("bottom edge", "right"),
        ("outside", "right"): ("top edge", "right"),
    }


@pytest.mark.parametrize(("corner", "spring", "miter", "bevel"), ROWS)
def test_a_table_of_corners_and_springs(
    corner: float, spring: float, miter: float, bevel: float
) -> None:
    shown = figures(corner=corner, spring=spring)
    assert shown["flat_miter"] == pytest.approx(miter, abs=0.005001)
    assert shown["flat_bevel"] == pytest.approx(bevel, abs=0.005001)


@pytest.mark.parametrize(("corner", "spring", "miter", "bevel", "tolerance"), PRINTED)
def test_printed_settings(
    corner: float, spring: float, miter: float, bevel: float, tolerance: float
) -> None:
    shown = figures(corner=corner, spring=spring)
    assert shown["flat_miter"] == pytest.approx(miter, abs=tolerance)
    assert shown["flat_bevel"] == pytest.approx(bevel, abs=tolerance)


@given(CORNERS, LEANS, TURNS, SIDES, st.floats(1, 8), st.floats(200, 400))
def test_edges_end_where_the_joint_cuts_them(
    corner: float, spring: float, turn: str, side: str, width: float, wall: float
) -> None:
    field = "wall_a" if side == "left" else "wall_b"
    reply = answer(corner=corner, spring=spring, turn=turn, width=width, **{field: wall})
    (piece,) = reply["pieces"]
    hung = Hung(corner, spring, turn, side)
    # From the wall's corner up the crown's width, then along until the joint x = 0 is met.
    top = width * hung.rise
    off = -(top @ hung.kept) / (hung.along @ hung.kept)
    top_edge = wall - off
    assert piece["length"] == pytest.approx(max(wall, top_edge))
    assert piece["short_point"] == pytest.approx(min(wall, top_edge))
    shown = {figure["name"]: figure["value"] for figure in reply["figures"]}
    assert shown["drop"] == pytest.approx(hung.up @ top)
    assert shown["projection"] == pytest.approx(hung.out @ top)
