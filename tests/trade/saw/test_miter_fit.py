"""An open miter, built a second time from two pieces pushed together on a real corner."""

import json
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import Polygon
from shapely.affinity import rotate

from longpoint.trade.calls import call
from longpoint.trade.lengths import read_length

Vector = np.ndarray[Any, np.dtype[np.float64]]


def answer(**inputs: Any) -> dict[str, Any]:
    reply = json.loads(call(json.dumps({"do": "answer", "tool": "miter-fit", "inputs": inputs})))
    assert reply["ok"], reply
    return dict(reply["answer"])


def figures(**inputs: Any) -> dict[str, Any]:
    return {figure["name"]: figure["value"] for figure in answer(**inputs)["figures"]}


def along(angle: float) -> Vector:
    return np.array([np.cos(np.radians(angle)), np.sin(np.radians(angle))])


def faces(corner: float, first: float, second: float) -> tuple[Vector, Vector]:
    """Directions from toe to heel of two pieces' cut faces, each on its side of a real corner.

    The first piece runs along +x, the second `corner` degrees from it; settings are off square.
    """
    return along(90 - first), along(corner - 90 + second)


def opening(width: float, corner: float, first: float, second: float) -> tuple[float, str]:
    """The gap between two pieces pushed together until they touch, and where it is."""
    one, other = faces(corner, first, second)
    lengths = width / np.cos(np.radians([first, second]))
    ends = lengths[0] * one - lengths[1] * other
    turn = one[0] * other[1] - one[1] * other[0]
    return float(np.linalg.norm(ends)), "heel" if turn > 0 else "toe"


@given(st.floats(1, 8), st.floats(60, 150), st.floats(0.1, 2), st.sampled_from([1, -1]))
def test_a_corner_that_is_off_is_found_and_shut(
    width: float, corner: float, off: float, way: int
) -> None:
    real, saw = corner + way * off, 90 - corner / 2
    gap, open_at = opening(width, real, saw, saw)
    shown = figures(trim_width=width, gap=gap, open_at=open_at, corner=corner)
    # Two sin(a/2), what a ruler reads across the open end, is tan(a) to 1 part in 1000 here.
    assert shown["turn_one"] == pytest.approx(off, abs=0.003)
    assert shown["corner_true"] == pytest.approx(real, abs=0.003)
    one, other = faces(real, shown["saw_each"], shown["saw_each"])
    assert one == pytest.approx(other, abs=1e-4)
    one, other = faces(real, shown["saw_one"], saw)
    assert one == pytest.approx(other, abs=1e-4)


@given(st.floats(1, 8), st.floats(60, 150), st.floats(0.01, 0.2))
def test_heel_and_toe_are_turned_opposite_ways(width: float, corner: float, gap: float) -> None:
    heel = figures(trim_width=width, gap=gap, open_at="heel", corner=corner)
    toe = figures(trim_width=width, gap=gap, open_at="toe", corner=corner)
    assert heel["saw_one"] + toe["saw_one"] == pytest.approx(180 - corner)
    assert heel["saw_one"] < heel["saw_each"] < 90 - corner / 2 < toe["saw_each"] < toe["saw_one"]


@pytest.mark.parametrize(("corner", "end"), [(89, "toe"), (91, "heel")])
def test_what_a_corner_of_89_or_91_opens(corner: int, end: str) -> None:
    gap, open_at = opening(2.5, corner, 45, 45)
    assert open_at == end
    (row,) = [
        row
        for row in answer(trim_width=2.5, gap=1, corner=90)["tables"][0]["rows"]
        if row[0] == f"{corner}.0°"
    ]
    assert row[1].startswith(end)
    shown = read_length(row[2])
    assert shown == pytest.approx(gap, abs=1 / 128)
    assert figures(trim_width=2.5, gap=1)["gap_degree"] == pytest.approx(gap, rel=0.001)


def on_saw(turn: float, saw: float) -> float:
    """The miter cut on a piece that lies turned clockwise, seen from above, off the fence.

    The fence runs along +x at y = 0, the operator stands at y > 0; the piece is kept to the right
    of the blade, whose handle is swung to the right: a left end, outer edge against the fence.
    """
    edge, blade = along(turn), along(90 - saw)
    return 90 - float(np.degrees(np.arccos(edge @ blade)))


@given(st.floats(0.1, 3), st.floats(20, 50))
def test_a_shim_turns_the_piece_the_way_the_note_says(turn: float, saw: float) -> None:
    # Far from the blade the shim pushes the far end to the operator: clockwise from above.
    assert on_saw(turn, saw) == pytest.approx(saw + turn)
    assert on_saw(-turn, saw) == pytest.approx(saw - turn)


@pytest.mark.parametrize(("open_at", "place"), [("heel", "close to"), ("toe", "away from")])
def test_the_shim_lies_where_it_closes_the_joint(open_at: str, place: str) -> None:
    reply = answer(trim_width=3, gap="1/8", open_at=open_at)
    assert any(f"fence, {place} the blade" in note for note in reply["notes"])
    shown = {figure["name"]: figure["value"] for figure in reply["figures"]}
    lifted = np.degrees(np.arctan(shown["shim"] / 6))
    turned = on_saw(lifted if open_at == "toe" else -lifted, 45)
    assert turned == pytest.approx(shown["saw_each"])


@given(st.floats(1, 8), st.floats(40, 150), st.floats(0.02, 0.2), st.sampled_from(["heel", "toe"]))
def test_the_drawing_shows_two_pieces_that_touch_at_one_end(
    width: float, corner: float, gap: float, open_at: str
) -> None:
    reply = answer(trim_width=width, gap=gap, open_at=open_at, corner=corner)
    shapes = [shape for shape in reply["drawing"]["shapes"] if shape["shape"] == "area"]
    one, other, waste = [Polygon(shape["points"]) for shape in shapes]
    assert one.intersection(other).area == pytest.approx(0, abs=1e-6)
    assert one.area == pytest.approx(other.area)
    turn = {figure["name"]: figure["value"] for figure in reply["figures"]}["turn_one"]
    pivot, still, moved = np.array(shapes[2]["points"])
    cosine = (still - pivot) @ (moved - pivot) / np.linalg.norm(still - pivot) ** 2
    drawn = np.degrees(np.arccos(cosine))
    # A gap too small to be seen is drawn wider, and the drawing says so.
    assert drawn == pytest.approx(max(turn, 8), abs=1e-5)
    assert ("drawn wider" in reply["drawing"]["title"]) == (turn < 8)
    closed = rotate(other, -drawn if open_at == "heel" else drawn, origin=tuple(pivot))
    assert closed.union(one).area == pytest.approx(one.area + other.area)
    # Shut, the two share the whole joint line.
    line = width / np.sin(np.radians(corner / 2))
    assert one.buffer(1e-7).intersection(closed.buffer(1e-7)).length / 2 == pytest.approx(
        line, rel=1e-3
    )
    assert waste.area == pytest.approx(line**2 * np.sin(np.radians(drawn)) / 2, rel=1e-6)
