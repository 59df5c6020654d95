"""A frame of equal sides, laid out a second time with numpy and shapely."""

import json
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import Polygon
from shapely.ops import unary_union

from longpoint.trade.calls import call

SIDES = st.integers(3, 24)
MEASURES = st.sampled_from(["side", "flats", "corners"])


def reply(**inputs: Any) -> dict[str, Any]:
    request = {"do": "answer", "tool": "polygon-frame", "inputs": inputs}
    return dict(json.loads(call(json.dumps(request))))


def answer(**inputs: Any) -> dict[str, Any]:
    answered = reply(**inputs)
    assert answered["ok"], answered
    return dict(answered["answer"])


def figures(**inputs: Any) -> dict[str, Any]:
    return {figure["name"]: figure["value"] for figure in answer(**inputs)["figures"]}


def regular(sides: int, radius: float) -> Polygon:
    """A regular polygon from the roots of unity."""
    roots = radius * np.exp(2j * np.pi * np.arange(sides) / sides)
    return Polygon(np.column_stack([roots.real, roots.imag]))


def side_of(shape: Polygon) -> float:
    return shape.length / (len(shape.exterior.coords) - 1)


@given(SIDES, st.floats(10, 100), st.floats(0.1, 2))
def test_points_are_the_sides_of_an_outline_moved_in(
    sides: int, radius: float, width: float
) -> None:
    outer = regular(sides, radius)
    inner = outer.buffer(-width, join_style="mitre", mitre_limit=100)
    assert isinstance(inner, Polygon)
    shown = figures(sides=sides, size=2 * radius, size_is="corners", trim_width=width)
    assert shown["long"] == pytest.approx(side_of(outer))
    assert shown["short"] == pytest.approx(side_of(inner))
    center = outer.centroid
    assert shown["flats_outside"] == pytest.approx(2 * center.distance(outer.exterior))
    assert shown["flats_inside"] == pytest.approx(2 * center.distance(inner.exterior))
    assert shown["flats_outside"] - shown["flats_inside"] == pytest.approx(2 * width)


@given(SIDES, st.floats(10, 100), MEASURES, st.sampled_from(["outside", "inside"]))
def test_the_size_asked_for_comes_back(sides: int, size: float, size_is: str, edge: str) -> None:
    shown = figures(sides=sides, size=size, size_is=size_is, edge=edge, trim_width=0.5)
    names = {"side": "long" if edge == "outside" else "short"}
    assert shown[names.get(size_is, f"{size_is}_{edge}")] == pytest.approx(size)


@given(SIDES, st.floats(10, 100), st.floats(0.1, 1.5))
def test_pieces_as_drawn_close_the_ring(sides: int, size: float, width: float) -> None:
    answered = answer(sides=sides, size=size, trim_width=width)
    stock = [shape for shape in answered["drawing"]["shapes"] if shape["role"] == "stock"]
    pieces = [Polygon(shape["points"]) for shape in stock]
    (piece,) = answered["pieces"]
    assert len(pieces) == piece["count"] == sides
    ring = unary_union(pieces)
    assert ring.area == pytest.approx(sum(shape.area for shape in pieces))
    # A trapezoid's area is its mean length times its width.
    mean = (piece["length"] + piece["short_point"]) / 2
    assert ring.area == pytest.approx(sides * mean * width)


@given(SIDES)
def test_settings_add_up_to_one_turn(sides: int) -> None:
    shown = figures(sides=sides, size=100, trim_width=1)
    assert 2 * sides * shown["saw"] == pytest.approx(360)
    assert shown["corner"] + 2 * shown["saw"] == pytest.approx(180)


@given(SIDES, st.floats(2, 100), st.floats(0.1, 100))
def test_trim_is_refused_from_half_the_flats_on(sides: int, size: float, width: float) -> None:
    answered = reply(sides=sides, size=size, size_is="flats", trim_width=width)
    if abs(width - size / 2) > 1e-6:
        assert answered["ok"] == (width < size / 2)
