"""What must always hold of frames on a wall: shapely builds them from their cut list."""

import math
from itertools import pairwise
from typing import Any

from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely import Polygon, affinity, box, unary_union

from tests.trade.asking import answer, ask

LENGTHS = st.floats(min_value=30, max_value=240)
HEIGHTS = st.floats(min_value=20, max_value=96)
TRIMS = st.floats(min_value=0.5, max_value=3)
COUNTS = st.integers(min_value=1, max_value=12)
MARGINS = st.floats(min_value=0, max_value=6)
TOLERANCE = 1e-6


def answered(**inputs: Any) -> dict[str, Any]:
    reply = ask("wall-frames", **inputs)
    assume(reply["ok"])
    found: dict[str, Any] = reply["answer"]
    return found


def figures_of(got: dict[str, Any]) -> dict[str, Any]:
    return {figure["name"]: figure["value"] for figure in got["figures"]}


def frames_of(got: dict[str, Any]) -> list[tuple[float, float, float, float]]:
    """Outer rectangles from the marks alone: left, bottom, right, top."""
    across = [mark["value"] for mark in got["marks"] if "left end" in mark["from"]]
    bottom, top = (mark["value"] for mark in got["marks"] if "bottom of" in mark["from"])
    return [(x0, bottom, x1, top) for x0, x1 in zip(across[::2], across[1::2], strict=True)]


@given(LENGTHS, HEIGHTS, TRIMS, COUNTS, MARGINS, MARGINS)
def test_frames_and_margins_fill_the_wall(
    length: float, height: float, trim: float, count: int, between: float, end: float
) -> None:
    sizes = {"length": length, "height": height, "trim_width": trim, "count": count}
    frames = frames_of(answered(**sizes, between=between, end_margin=end))
    assert len(frames) == count
    assert math.isclose(frames[0][0], end, abs_tol=TOLERANCE)
    assert math.isclose(length - frames[-1][2], end, abs_tol=TOLERANCE)
    for one, after in pairwise(frames):
        assert math.isclose(after[0] - one[2], between, abs_tol=TOLERANCE)
        assert math.isclose(after[2] - after[0], one[2] - one[0], abs_tol=TOLERANCE)
    assert all(x1 - x0 > 2 * trim and y1 - y0 > 2 * trim for x0, y0, x1, y1 in frames)


@settings(deadline=None, max_examples=40)  # Asks two dozen questions each time.
@given(LENGTHS, TRIMS, st.floats(min_value=4, max_value=80), MARGINS)
def test_no_other_number_comes_nearer_to_the_target(
    length: float, trim: float, target: float, between: float
) -> None:
    """Ask for every number of frames in turn and compare."""
    sizes = {"length": length, "height": 40, "trim_width": trim, "between": between}
    found = figures_of(answered(**sizes, target_width=target))
    for count in range(1, 25):
        reply = ask("wall-frames", **sizes, count=count)
        if reply["ok"]:
            width = figures_of(reply["answer"])["frame_width"]
            assert abs(found["frame_width"] - target) <= abs(width - target) + TOLERANCE


def piece_outline(piece: dict[str, Any], way: str, trim: float, set_in: float) -> Polygon:
    """A side as cut, its outer edge along y = 0 and its middle at x = 0."""
    half = piece["length"] / 2
    if way == "stop":
        return box(-half, 0, half, trim)
    deep = set_in if way == "notch" else trim
    short = piece["short_point"] / 2
    assert math.isclose(half - short, deep, abs_tol=TOLERANCE), "a 45 degree miter"
    mitered = Polygon([(-half, 0), (half, 0), (half - trim, trim), (-half + trim, trim)])
    if way == "none":
        return mitered
    words = piece["ends"][0]["note"].split(" from the long point")[0].split(" to ")
    deep, reach = float(words[0].split("notched ")[1].split(" deep")[0]), float(words[1])
    notches = box(-half, trim - deep, -half + reach, trim)
    notches = notches.union(box(half - reach, trim - deep, half, trim))
    return mitered.difference(notches)


def turned(piece: Polygon, quarter: int, wide: float, high: float) -> Polygon:
    """Put a side where it goes around a frame whose outer top left corner is at 0, 0."""
    spots = ((wide / 2, 0.0), (wide, high / 2), (wide / 2, high), (0.0, high / 2))
    around = affinity.rotate(piece, 90 * quarter, origin=(0, 0))
    return affinity.translate(around, *spots[quarter])


@given(
    st.sampled_from(["none", "stop", "notch"]),
    st.integers(min_value=20, max_value=90),
    st.integers(min_value=20, max_value=90),
    st.integers(min_value=4, max_value=12),
    st.integers(min_value=0, max_value=16),
)
def test_pieces_and_blocks_make_the_frame(
    way: str, wide: int, high: int, trim: int, more: int
) -> None:
    """Assembled from the cut list nothing overlaps, and nothing of the frame is missing."""
    block, set_in = (trim + more) / 4, trim / 8
    inputs = {"length": wide, "height": high, "trim_width": trim / 4, "between": 0, "count": 1}
    if way != "none":
        inputs["block_size"] = block
    got = answered(**inputs, block=way, scale={"step": 1000})
    outer = box(0, 0, wide, high)
    ring = outer.difference(box(trim / 4, trim / 4, wide - trim / 4, high - trim / 4))
    parts = [
        turned(
            piece_outline(got["pieces"][quarter % 2], way, trim / 4, set_in), quarter, wide, high
        )
        for quarter in range(4)
    ]
    assert [piece["count"] for piece in got["pieces"][:2]] == [2, 2]
    if way != "none":
        low = set_in if way == "notch" else 0.0
        assert got["pieces"][2]["count"] == 4
        size = got["pieces"][2]["length"]
        for x in (low, wide - low - size):
            parts += [box(x, y, x + size, y + size) for y in (low, high - low - size)]
            ring = ring.union(parts[-1]).union(parts[-2])
    whole = unary_union([part.buffer(0) for part in parts])
    assert math.isclose(sum(part.area for part in parts), whole.area, abs_tol=1e-2)
    assert whole.symmetric_difference(ring).area < 1e-2


@given(
    st.integers(min_value=1, max_value=8),
    st.floats(min_value=0, max_value=120),
    st.floats(min_value=0, max_value=40),
    st.sampled_from(["none", "stop"]),
)
def test_an_obstacle_lands_where_the_shapes_say(
    count: int, center: float, up: float, block: str
) -> None:
    """Shapely: does the plate meet trim or blocks, how far is it, and whose inside is it in?"""
    spot = {"center": center, "up": up, "width": 2.75, "height": 4.5}
    inputs = {"length": 120, "height": 40, "trim_width": 1, "count": count, "between": 4}
    size = {"block": block, "block_size": 2} if block == "stop" else {}
    got = answered(**inputs, **size, obstacles=[spot])
    plate = box(center - 1.375, up - 2.25, center + 1.375, up + 2.25)
    _, words, room = got["tables"][0]["rows"][0]
    frames = [(number + 1, box(*frame)) for number, frame in enumerate(frames_of(got))]
    rings = []
    for _, outer in frames:
        ring = outer.difference(outer.buffer(-1, join_style="mitre"))
        x0, y0, x1, y1 = outer.bounds
        corners = [(x, y) for x in (x0, x1 - 2) for y in (y0, y1 - 2)] if size else []
        rings.append(unary_union([ring, *[box(x, y, x + 2, y + 2) for x, y in corners]]))
    met = [n for (n, _), ring in zip(frames, rings, strict=True) if plate.intersects(ring)]
    if met:
        areas = [plate.intersection(ring).area for ring in rings]
        assume(all(area == 0 or area > 1e-6 for area in areas))
        if max(areas) > 0:
            assert words.startswith("on ")
            assert all(f"frame {n}," in words for n in met)
        return
    assert not words.startswith("on ")
    if room.replace(" ", "").isdigit():
        assert abs(float(room) - min(plate.distance(ring) for ring in rings)) <= 1 / 32 + 1e-9
    inside = [n for n, outer in frames if outer.contains(plate)]
    assert (words == f"inside frame {inside[0]}") if inside else "inside" not in words


def test_frames_that_would_hit_are_refused_in_the_first_line_and_the_numbers_offered_clear() -> (
    None
):
    inputs: dict[str, Any] = {"length": 96, "height": 36, "trim_width": 1.5}
    spots = [{"center": 30, "up": 12}, {"center": 48, "up": 30}]
    verdict = answer("wall-frames", **inputs, count=3, obstacles=spots)["verdict"]
    assert verdict.startswith("Don't cut: Obstacle 1 lands on frame 1, right side.")
    offer = verdict.split(". ")[1]
    counts = [int(word.strip(",")) for word in offer.split() if word.strip(",").isdigit()]
    assert counts
    assert all(1.5 <= count <= 6 for count in counts), "half to twice as many: no wild offers"
    for count in counts:
        again = answer("wall-frames", **inputs, count=count, obstacles=spots)
        assert "Every obstacle is clear of the trim." in again["notes"]
        assert again["verdict"].startswith(f"{count} frame")


WINDOW = {"name": "Window", "from_left": 53.5, "width": 36, "bottom": 30, "top": 84}


def test_balloons_of_the_drawing_are_the_tags_of_the_list() -> None:
    for inputs in (
        {"length": 96, "height": 36, "trim_width": 1.5, "count": 3},
        {"length": 143, "height": 96, "trim_width": 1.5, "count": 4, "openings": [WINDOW]},
    ):
        got = answer("wall-frames", **inputs)
        for view in (got["drawing"], *got["details"]):
            balloons = {shape["text"] for shape in view["shapes"] if shape["shape"] == "tag"}
            assert balloons <= {piece["tag"] for piece in got["pieces"]}
        drawn = {s["text"] for s in got["drawing"]["shapes"] if s["shape"] == "tag"}
        assert drawn == {piece["tag"] for piece in got["pieces"]}


def test_one_frame_says_nothing_of_between() -> None:
    got = answer("wall-frames", length=20, height=48, trim_width=1, count=1)
    assert not {"between", "pitch"} & figures_of(got).keys()
    assert "apart" not in got["verdict"]


def test_tags_stay_when_the_frame_under_a_window_goes() -> None:
    inputs: dict[str, Any] = {"length": 143, "height": 96, "trim_width": 1.5, "count": 4}
    for bottom, tags in ((30, ["1", "2", "3", "4", "5", "6", "7", "8"]), (6, ["1", "2", "5", "6"])):
        got = answer("wall-frames", **inputs, openings=[WINDOW | {"bottom": bottom}])
        assert [piece["tag"] for piece in got["pieces"]][: len(tags)] == tags
        assert got["pieces"][-1]["tag"] == "8"
