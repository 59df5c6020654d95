"""Polygons: the frame is the ring between two rectangles, cut apart along its corners' joints."""

from random import Random
from typing import Any

import numpy as np
from shapely import Polygon, box

from tests.trade.references.expected import Expected

SLUG = "mitered-frame"


def draw(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {
        "fit": random.choice(["inside", "around"]),
        "opening_width": random.randint(160, 1600) / 16,
        "opening_height": random.randint(160, 1600) / 16,
        "trim_width": random.randint(16, 96) / 16,
        "sides": random.choice(["3", "4"]),
    }
    for name, likely in (("top_width", 0.4), ("bottom_width", 0.4)):
        if random.random() < likely:
            inputs[name] = random.randint(16, 96) / 16
    if random.random() < 0.6:
        inputs["reveal"] = random.randint(0, 8) / 16
        inputs["play"] = random.randint(0, 8) / 16
    if random.random() < 0.4:
        inputs |= {"rabbeted": True, "rabbet": 0.375, "rabbet_play": random.randint(0, 4) / 16}
    return inputs


def expect(inputs: dict[str, Any]) -> Expected | None:
    wide, high, closed = inputs["opening_width"], inputs["opening_height"], inputs["sides"] == "4"
    side = inputs["trim_width"]
    top = inputs.get("top_width", side)
    bottom = inputs.get("bottom_width", side) if closed else 0.0
    if inputs["fit"] == "around":
        reveal = inputs.get("reveal", 3 / 16)
        inner = box(-reveal, -reveal, wide + reveal, high + (reveal if closed else 0))
        left, up, right, down = inner.bounds
        outer = box(left - side, up - top, right + side, down + bottom)
    else:
        play = inputs.get("play", 0)
        outer = box(0, 0, wide - play, high - play)
        left, up, right, down = outer.bounds
        if left + side >= right - side or up + top >= down - bottom:
            return None
        inner = box(left + side, up + top, right - side, down - bottom)
    return _cut_apart(outer, inner, inputs, closed)


def corners(shape: Polygon) -> list[Any]:
    """Corners clockwise on screen from the top left, y downwards."""
    left, up, right, down = shape.bounds
    return [np.array(at) for at in ((left, up), (right, up), (right, down), (left, down))]


def off_square(start: Any, joint_end: Any, along: Any) -> float:
    """Degrees between a joint line and a square cut of a piece that runs `along`."""
    line = joint_end - start
    cosine = abs(line @ along) / np.linalg.norm(line) / np.linalg.norm(along)
    return float(90 - np.degrees(np.arccos(cosine)))


def _cut_apart(outer: Polygon, inner: Polygon, inputs: dict[str, Any], closed: bool) -> Expected:
    out, ins = corners(outer), corners(inner)
    long = [float(np.linalg.norm(out[(at + 1) % 4] - out[at])) for at in range(4)]
    short = [float(np.linalg.norm(ins[(at + 1) % 4] - ins[at])) for at in range(4)]
    level, upright = np.array([1.0, 0]), np.array([0, 1.0])
    figures = {
        "top_long": long[0],
        "top_short": short[0],
        "side_long": long[1],
        "side_short": short[1],
        "saw_top": off_square(out[0], ins[0], level),
        "saw_side": off_square(out[0], ins[0], upright),
    }
    pieces = [{"length": long[0], "short_point": short[0]} for _ in range(1)]
    for at in (1, 2, 3) if closed else (1, 3):
        pieces.append({"length": long[at], "short_point": short[at]})
    absent = ("bottom_long", "glass_width") if not closed else ()
    if closed:
        figures |= {"bottom_long": long[2], "bottom_short": short[2]}
        if "rabbeted" in inputs:
            glass = inner.buffer(inputs["rabbet"], join_style="mitre")
            left, up, right, down = glass.bounds
            figures["glass_width"] = right - left - inputs["rabbet_play"]
            figures["glass_height"] = down - up - inputs["rabbet_play"]
    words = ("Frame inside" if closed else "nside, open below",)
    if inputs["fit"] == "around":
        words = ("Casing all around" if closed else "Casing",)
    return Expected(figures=figures, pieces=pieces, absent=absent, words=words)
