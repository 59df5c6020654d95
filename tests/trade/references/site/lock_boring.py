"""Polygons: the leaf in plan with its beveled edge is really bored, and what is left is measured.

In plan the leaf is a quadrilateral, the cross bore a band through both faces, the edge bore a band
along it. The band is slid until its middle line meets the edge, or the high corner, at the
backset. In elevation the leaf is a box over the floor, and the latch's level is cut through it.
"""

from random import Random
from typing import Any

import numpy as np
import shapely

from tests.trade.references.expected import Expected

SLUG = "lock-boring"
FAR = 100.0


def sixteenths(random: Random, low: float, high: float) -> float:
    return random.randint(int(low * 16), int(high * 16)) / 16


def draw(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {
        "backset": random.choice([2.375, 2.75, sixteenths(random, 1, 5)]),
        "cross_bore": random.choice([2.125, 1.5, sixteenths(random, 1, 3)]),
        "edge_bore": random.choice([1.0, 0.875]),
        "door_thickness": random.choice([1.0, 1.375, 1.75, 2.25]),
        "latch_height": sixteenths(random, 30, 46),
    }
    for name, value in (
        ("floor_gap", sixteenths(random, 0, 1)),
        ("head_gap", sixteenths(random, 0, 0.25)),
        ("bevel", random.choice([2, 3, 3.5])),
        ("backset_from", random.choice(["middle", "high"])),
        ("leaf_height", sixteenths(random, 40, 96)),
        ("stile", sixteenths(random, 3.5, 6)),
        ("latch_plate", 2.25),
        ("strike_plate", sixteenths(random, 1.5, 5)),
        ("setback", sixteenths(random, 0, 0.25)),
        ("thickness_from", random.choice([1.0, 1.375])),
        ("thickness_to", random.choice([1.75, 2.25])),
    ):
        if random.random() < 0.5:
            inputs[name] = value
    return inputs


def expect(inputs: dict[str, Any]) -> Expected | None:
    thick = inputs["door_thickness"]
    if not inputs.get("thickness_from", 0) <= thick <= inputs.get("thickness_to", FAR):
        return None
    plan = in_plan(inputs)
    level = in_elevation(inputs)
    if plan is None or level is None:
        return None
    figures, marks = plan
    up, down, strike_down = level
    latch, plate = inputs["latch_height"], inputs.get("latch_plate")
    figures |= {"center_up": up, "strike_up": latch}
    marks.append(("leaf's bottom", up))
    if plate:
        marks += [("leaf's bottom", up - plate / 2), ("leaf's bottom", up + plate / 2)]
    if down is not None and strike_down is not None:
        figures |= {"center_down": down, "strike_down": strike_down}
    marks.append(("either face", figures["edge_center"]))
    ends = np.array([0.0, -0.5, 0.5]) * inputs.get("strike_plate", 0.0)
    ends = ends if "strike_plate" in inputs else ends[:1]
    marks += [("finished floor", latch + end) for end in ends]
    marks.append(("jamb's edge, hinge face", figures["strike_in"]))
    said = [{"from": datum, "value": value} for datum, value in marks]
    return Expected(figures=figures, marks=said, tolerance=1e-7)


def in_plan(inputs: dict[str, Any]) -> tuple[dict[str, Any], list[tuple[str, float]]] | None:
    """The leaf from above: x from its strike edge inward, y through it from the wider face."""
    thick, cross, edge = inputs["door_thickness"], inputs["cross_bore"], inputs["edge_bore"]
    turn = np.radians(inputs.get("bevel", 0))
    corner = float(thick * np.sin(turn) / np.cos(turn))
    strike = shapely.LineString([(0, 0), (corner, thick)])
    leaf = shapely.Polygon([(0, 0), (corner, thick), (FAR, thick), (FAR, 0)])
    at_high = inputs.get("backset_from") == "high"
    start = shapely.Point(0, 0) if at_high else strike.interpolate(0.5, normalized=True)
    center = start.x + inputs["backset"]
    bore = shapely.box(center - cross / 2, -1, center + cross / 2, thick + 1)
    slot = shapely.box(-1, (thick - edge) / 2, FAR, (thick + edge) / 2)
    beside = leaf.difference(bore)
    # Bored through, the leaf must still have wood at its edge, all through its thickness.
    rim = [part for part in getattr(beside, "geoms", [beside]) if part.bounds[0] < center]
    if edge >= thick or not rim or rim[0].intersection(strike).length < strike.length - 1e-9:
        return None
    middle = shapely.LineString([(-FAR, thick / 2), (FAR, thick / 2)])
    reach = rim[0].intersection(middle).length
    near = center - rim[0].intersection(shapely.LineString([(-FAR, 0), (FAR, 0)])).bounds[0]
    figures: dict[str, Any] = {
        "cross_in": near,
        "edge_center": slot.centroid.y,
        "edge_reach": reach,
        "edge_wood": leaf.bounds[3] - slot.bounds[3],
        "strike_in": inputs.get("setback", 0) + slot.centroid.y,
    }
    marks = [("edge, wider face", near)]
    if corner:
        figures["cross_in_far"] = center - strike.bounds[2]
        marks.append(("edge, narrower face", figures["cross_in_far"]))
    if "stile" in inputs:
        left = inputs["stile"] - bore.bounds[2]
        if left <= 0:
            return None
        figures["stile_left"] = left
    return figures, marks


def in_elevation(
    inputs: dict[str, Any],
) -> tuple[float, float | None, float | None] | None:
    """The latch's level up the leaf, down it, and below the head; the last two may be unknown."""
    floor, latch = inputs.get("floor_gap", 0.5), inputs["latch_height"]
    high = inputs.get("leaf_height", FAR)
    leaf = shapely.LineString([(0, floor), (0, floor + high)])
    at = shapely.Point(0, latch)
    if leaf.distance(at) > 0 or at.distance(leaf.boundary) == 0:
        return None
    up = leaf.project(at)
    if "leaf_height" not in inputs:
        return up, None, None
    down = leaf.reverse().project(at)
    head = shapely.Point(0, floor + high + inputs.get("head_gap", 0.125))
    return up, down, head.distance(at)
