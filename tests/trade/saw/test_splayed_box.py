"""Sides that lean, checked in space: planes cut by planes, corners by three planes each."""

import json
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from longpoint.trade.calls import call
from tests.trade.saw.solid import Vector, blade, cos, kept, laid, sin

SIDES = st.integers(3, 24)
LEANS = st.floats(1, 80)
TILTS = st.sampled_from(["left", "right"])
ENDS = st.sampled_from(["left", "right"])
UP = np.array([0.0, 0.0, 1.0])


def answer(**inputs: Any) -> dict[str, Any]:
    reply = json.loads(call(json.dumps({"do": "answer", "tool": "splayed-box", "inputs": inputs})))
    assert reply["ok"], reply
    return dict(reply["answer"])


def figures(**inputs: Any) -> dict[str, Any]:
    return {figure["name"]: figure["value"] for figure in answer(**inputs)["figures"]}


def outward(turn: float) -> Vector:
    return np.array([cos(turn), sin(turn), 0.0])


def face(turn: float, lean: float) -> Vector:
    """The normal of an outer face that looks towards `turn` and leans out by `lean`."""
    return cos(lean) * outward(turn) - sin(lean) * UP


def rise(turn: float, lean: float) -> Vector:
    return sin(lean) * outward(turn) + cos(lean) * UP


def neighbor(sides: int, end: str) -> float:
    """Where the neighbor at an end looks; from outside, the right one lies counterclockwise."""
    return 360 / sides if end == "right" else -360 / sides


def row_of(reply: dict[str, Any], table: int, end: str) -> tuple[str, str, str]:
    ((_, edge, swing, keep),) = [row for row in reply["tables"][table]["rows"] if row[0] == end]
    return edge, swing, keep


def on_saw(joint: Vector, lean: float, edge: str) -> Vector:
    """The joint's normal, into the side that looks along +x, once it lies outer face up."""
    towards_fence = rise(0, lean) if edge == "wide edge" else -rise(0, lean)
    return laid(joint, towards_fence, face(0, lean))


@given(SIDES, LEANS, ENDS, TILTS)
def test_mitered_ends_lie_in_the_plane_between_the_sides(
    sides: int, lean: float, end: str, tilt: str
) -> None:
    reply = answer(sides=sides, lean=lean, tilt=tilt)
    shown = {figure["name"]: figure["value"] for figure in reply["figures"]}
    edge, swing, keep = row_of(reply, 0, end)
    between = outward(0) - outward(neighbor(sides, end))
    joint = on_saw(between / np.linalg.norm(between), lean, edge)
    normal = blade(swing, shown["miter"], tilt, shown["bevel"])
    assert joint == pytest.approx(kept(keep, normal), abs=1e-9)


@given(SIDES, LEANS, ENDS, TILTS)
def test_butted_ends_lie_in_the_neighbors_face(
    sides: int, lean: float, end: str, tilt: str
) -> None:
    reply = answer(sides=sides, lean=lean, tilt=tilt)
    shown = {figure["name"]: figure["value"] for figure in reply["figures"]}
    edge, swing, keep = row_of(reply, 1, end)
    joint = on_saw(-face(neighbor(sides, end), lean), lean, edge)
    normal = blade(swing, shown["miter"], tilt, shown["butt_bevel"])
    assert joint == pytest.approx(kept(keep, normal), abs=1e-9)


def corner(sides: int, lean: float, radius: float, height: float) -> Vector:
    """Where two neighboring outer faces meet the level plane at a height.

    The faces pass `radius` from the axis at height 0.
    """
    planes = np.array([face(0, lean), face(360 / sides, lean), UP])
    offset = cos(lean) * radius
    return np.linalg.solve(planes, np.array([offset, offset, height]))


@given(SIDES, LEANS, st.floats(2, 60), st.floats(2, 60))
def test_sizes_are_those_of_the_corners_in_space(
    sides: int, lean: float, narrow: float, height: float
) -> None:
    shown = figures(sides=sides, lean=lean, narrow=narrow, height=height)
    radius = narrow / 2 / np.tan(np.pi / sides)
    low, high = corner(sides, lean, radius, 0), corner(sides, lean, radius, height)
    # The side that looks along +x is symmetrical about y = 0.
    assert 2 * low[1] == pytest.approx(narrow)
    assert 2 * high[1] == pytest.approx(shown["wide"])
    assert shown["slant"] == pytest.approx((high - low) @ rise(0, lean))


@given(SIDES, st.floats(0, 80))
def test_two_mitered_ends_make_the_angle_between_the_sides(sides: int, lean: float) -> None:
    shown = figures(sides=sides, lean=lean)
    between = np.degrees(np.arccos(np.clip(face(0, lean) @ face(360 / sides, lean), -1, 1)))
    assert 2 * shown["bevel"] == pytest.approx(between, abs=1e-5)
    assert shown["butt_bevel"] == pytest.approx(abs(90 - between), abs=1e-5)
