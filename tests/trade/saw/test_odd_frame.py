"""Trim mitered to an opening out of square, laid out a second time with numpy and shapely."""

import json
from typing import Any

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import Polygon
from shapely.ops import unary_union

from longpoint.trade.calls import call
from longpoint.trade.lengths import read_length

Corners = np.ndarray[Any, np.dtype[np.float64]]
SIDES = ("width_top", "height_right", "width_bottom", "height_left")
NAMES = ("tl", "tr", "br", "bl")


def reply(inputs: dict[str, Any]) -> dict[str, Any]:
    return dict(
        json.loads(
            call(
                json.dumps(
                    {"do": "answer", "tool": "odd-frame", "inputs": {"fit": "inside"} | inputs}
                )
            )
        )
    )


def answer(inputs: dict[str, Any]) -> dict[str, Any]:
    answered = reply(inputs)
    assert answered["ok"], answered
    return dict(answered["answer"])


def figures(answered: dict[str, Any]) -> dict[str, float]:
    return {figure["name"]: figure["value"] for figure in answered["figures"]}


def measured(corners: Corners) -> dict[str, float]:
    """What a tape would read on an opening with these corners, clockwise from the top left."""
    sides = np.linalg.norm(np.roll(corners, -1, axis=0) - corners, axis=1)
    read = {name: float(side) for name, side in zip(SIDES, sides, strict=True)}
    read["diagonal_a"] = float(np.linalg.norm(corners[2] - corners[0]))
    read["diagonal_b"] = float(np.linalg.norm(corners[3] - corners[1]))
    return read


@st.composite
def openings(draw: st.DrawFn) -> Corners:
    """Openings up to a quarter of their size out of square, turned any way."""
    width, height = draw(st.floats(12, 100)), draw(st.floats(12, 100))
    off = [[draw(st.floats(-0.12, 0.12)) for _ in range(2)] for _ in range(4)]
    square = np.array([[0, 0], [1, 0], [1, 1], [0, 1]])
    turn = np.radians(draw(st.floats(0, 360)))
    rotate = np.array([[np.cos(turn), -np.sin(turn)], [np.sin(turn), np.cos(turn)]])
    return np.asarray((square + off) * [width, height] @ rotate)


def angles(corners: Corners) -> list[float]:
    """Interior angles in degrees, from the directions of the sides."""
    after, before = np.roll(corners, -1, axis=0) - corners, np.roll(corners, 1, axis=0) - corners
    turns = np.arctan2(before[:, 1], before[:, 0]) - np.arctan2(after[:, 1], after[:, 0])
    return [float(angle) for angle in np.degrees(turns) % 360]


def sides_of(shape: Polygon) -> list[float]:
    ring = np.array(shape.exterior.coords)
    return sorted(float(side) for side in np.linalg.norm(np.diff(ring, axis=0), axis=1))


def offset(corners: Corners, outwards: float) -> Polygon:
    shape = Polygon(corners).buffer(outwards, join_style="mitre", mitre_limit=100)
    assert isinstance(shape, Polygon)
    return shape


@given(openings(), st.floats(0.5, 2))
def test_corners_are_the_angles_between_the_sides(corners: Corners, width: float) -> None:
    shown = figures(answer({**measured(corners), "trim_width": width}))
    for name, angle in zip(NAMES, angles(corners), strict=True):
        assert shown["corner_" + name] == pytest.approx(angle, abs=1e-6)
        assert shown["saw_" + name] == pytest.approx(90 - angle / 2, abs=1e-6)
    assert sum(shown["corner_" + name] for name in NAMES) == pytest.approx(360)
    assert shown["disagree"] == pytest.approx(0, abs=1e-6)


@given(openings(), st.floats(0.5, 2))
def test_short_points_inside_are_the_outline_moved_in(corners: Corners, width: float) -> None:
    answered = answer({**measured(corners), "trim_width": width})
    shorts = sorted(piece["short_point"] for piece in answered["pieces"])
    assert shorts == pytest.approx(sides_of(offset(corners, -width)), abs=1e-6)
    longs = [piece["length"] for piece in answered["pieces"]]
    assert longs == pytest.approx([measured(corners)[side] for side in SIDES])


@given(openings(), st.floats(0.5, 6), st.just(0.0) | st.floats(1 / 64, 1))
def test_points_around_are_the_outline_moved_out(
    corners: Corners, width: float, reveal: float
) -> None:
    given_ = {"fit": "around", "trim_width": width, "reveal": reveal}
    pieces = answer({**measured(corners), **given_})["pieces"]
    longs = sides_of(offset(corners, reveal + width))
    shorts = sides_of(offset(corners, reveal)) if reveal else sides_of(Polygon(corners))
    assert sorted(piece["length"] for piece in pieces) == pytest.approx(longs, abs=1e-6)
    assert sorted(piece["short_point"] for piece in pieces) == pytest.approx(shorts, abs=1e-6)


@given(openings(), st.floats(0.5, 2), st.sampled_from(["inside", "around"]))
def test_pieces_as_drawn_fill_the_frame_at_an_even_width(
    corners: Corners, width: float, fit: str
) -> None:
    answered = answer({**measured(corners), "trim_width": width, "fit": fit})
    shapes = [shape for shape in answered["drawing"]["shapes"] if shape["role"] == "stock"]
    pieces = [Polygon(shape["points"]) for shape in shapes]
    whole = unary_union(pieces)
    assert sum(piece.area for piece in pieces) == pytest.approx(whole.area)
    assert len(whole.interiors) == 1
    for piece, shape in zip(answered["pieces"], pieces, strict=True):
        # A trapezoid's area is its mean length times its width.
        mean = (piece["length"] + piece["short_point"]) / 2
        assert shape.area == pytest.approx(mean * width)
    outside = figures(answered)["top_long"] if fit == "inside" else figures(answered)["top_short"]
    assert outside >= measured(corners)["width_top"] - 1e-9


@given(openings(), st.floats(0.5, 2))
def test_joint_lines_halve_their_corners(corners: Corners, width: float) -> None:
    shapes = answer({**measured(corners), "trim_width": width})["drawing"]["shapes"]
    outer = np.array([shape["points"][0] for shape in shapes if shape["role"] == "stock"])
    inner = np.array([shape["points"][3] for shape in shapes if shape["role"] == "stock"])
    joint = inner - outer
    after, before = np.roll(outer, -1, axis=0) - outer, np.roll(outer, 1, axis=0) - outer
    for line, one, other in zip(joint, after, before, strict=True):
        first = line @ one / np.linalg.norm(one)
        second = line @ other / np.linalg.norm(other)
        assert first == pytest.approx(second, abs=1e-6)


@given(st.lists(st.floats(1, 100), min_size=6, max_size=6))
def test_whatever_is_measured_answers_or_says_why(sizes: list[float]) -> None:
    inputs = dict(zip((*SIDES, "diagonal_a", "trim_width"), sizes, strict=True))
    answered = reply(inputs)
    if not answered["ok"]:
        fields = {error["field"] for error in answered["errors"]}
        assert fields <= {*SIDES, "diagonal_a", "trim_width"}
        assert all(len(error["message"]) > 20 for error in answered["errors"])
        return
    shown = figures(answered["answer"])
    assert all(0 < shown["corner_" + name] < 180 for name in NAMES)
    assert all(piece["short_point"] > 0 for piece in answered["answer"]["pieces"])


@given(openings(), st.floats(0.05, 3))
def test_trim_too_wide_is_refused_with_a_width_that_would_do(corners: Corners, over: float) -> None:
    refused = reply({**measured(corners), "trim_width": 60 * over + 50})
    assume(not refused["ok"])
    assert refused["errors"][0]["field"] == "trim_width"
    words = refused["errors"][0]["message"].rsplit("narrower than ", 1)[1].rstrip(".")
    limit = read_length(words)
    assert reply({**measured(corners), "trim_width": limit - 0.05})["ok"]
    assert not reply({**measured(corners), "trim_width": limit + 0.05})["ok"]
