"""Boxes set around the hung leaves: the frame is built outward from them, and cut where it ends.

Leaves stand with their gaps between; the opening is what is left round them. Legs, head and stops
are shapely's boxes, the floor a sloping area that is taken away, a miter what a diagonal half plane
leaves of two stops. Every length is read off the shape that results.
"""

from random import Random
from typing import Any

import shapely
from shapely import affinity

from tests.trade.references.expected import Expected

SLUG = "jamb-and-stop"
FAR = 500.0


def sixteenths(random: Random, low: float, high: float) -> float:
    return random.randint(int(low * 16), int(high * 16)) / 16


def draw(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {
        "leaf_width": sixteenths(random, 12, 48),
        "leaf_height": sixteenths(random, 40, 100),
        "door_thickness": random.choice([1.375, 1.75, 2.25]),
        "leaves": random.choice(["1", "1", "2"]),
        "head_joint": random.choice(["housed", "between", "over"]),
        "stop_joint": random.choice(["square", "miter"]),
        "jamb_depth": sixteenths(random, 3, 7),
    }
    for name, value in (
        ("housing_depth", sixteenths(random, 0.125, 0.875)),
        ("horn", sixteenths(random, 0, 3)),
        ("jamb_thickness", sixteenths(random, 0.625, 1.5)),
        ("side_gap", sixteenths(random, 0, 0.25)),
        ("head_gap", sixteenths(random, 0, 0.25)),
        ("floor_gap", sixteenths(random, 0, 1)),
        ("meeting_gap", sixteenths(random, 0, 0.25)),
        ("latch_height", sixteenths(random, 30, 46)),
        ("floor_below", sixteenths(random, 0, 1)),
        ("floor_falls", sixteenths(random, -1.5, 1.5)),
        ("stop_width", sixteenths(random, 0.75, 2.5)),
        ("stop_thickness", sixteenths(random, 0.25, 0.75)),
        ("stop_gap", sixteenths(random, 0, 0.25)),
        ("setback", sixteenths(random, 0, 0.25)),
        ("shim", sixteenths(random, 0.125, 0.75)),
    ):
        if random.random() < 0.5:
            inputs[name] = value
    if random.random() < 0.3:
        inputs["rough_width"] = inputs["leaf_width"] * int(inputs["leaves"]) + random.randint(1, 4)
    return inputs


def long(shape: Any) -> float:
    """How long an upright piece is."""
    return float(shape.bounds[3] - shape.bounds[1])


def across(shape: Any) -> float:
    return float(shape.bounds[2] - shape.bounds[0])


def opening_of(inputs: dict[str, Any]) -> Any:
    """The box around the leaves and their gaps; its floor is the finished one, at 0."""
    side, floor = inputs.get("side_gap", 0.125), inputs.get("floor_gap", 0.5)
    leaf = shapely.box(0, floor, inputs["leaf_width"], floor + inputs["leaf_height"])
    leaves = [leaf]
    if inputs["leaves"] == "2":
        step = across(leaf) + inputs.get("meeting_gap", 0.125)
        leaves.append(affinity.translate(leaf, step, 0))
    x0, _, x1, y1 = shapely.union_all(leaves).bounds
    return shapely.box(x0 - side, 0, x1 + side, y1 + inputs.get("head_gap", 0.125))


def ground_under(inputs: dict[str, Any], left: Any, right: Any) -> tuple[Any, Any]:
    """What lies below each leg's foot."""
    below, falls = inputs.get("floor_below", 0), inputs.get("floor_falls", 0)
    feet = (-below + min(0, falls), -below - max(0, falls))
    return tuple(
        shapely.box(leg.bounds[0], -FAR, leg.bounds[2], foot)
        for leg, foot in zip((left, right), feet, strict=True)
    )


def section(inputs: dict[str, Any]) -> tuple[float, float] | None:
    """The stop's edges from the jamb's edge; None where it has no room on the jamb."""
    setback, gap = inputs.get("setback", 0), inputs.get("stop_gap", 0.0625)
    leaf = affinity.translate(shapely.box(0, 0, inputs["door_thickness"], 1), setback, 0)
    behind = leaf.buffer(gap, join_style="mitre") if gap else leaf
    blank = shapely.box(0, 0, inputs.get("stop_width", 1.375), 1)
    stop = affinity.translate(blank, behind.bounds[2], 0)
    jamb = shapely.box(0, 0, inputs.get("jamb_depth", 4.625) + 1e-9, 1)
    return (stop.bounds[0], stop.bounds[2]) if jamb.covers(stop) else None


def expect(inputs: dict[str, Any]) -> Expected | None:
    joint, thick = inputs["head_joint"], inputs.get("jamb_thickness", 0.75)
    into = {"housed": inputs.get("housing_depth", 0.375), "between": 0.0, "over": thick}[joint]
    stop = section(inputs)
    latch = inputs.get("latch_height") if inputs["leaves"] == "1" else None
    floor = inputs.get("floor_gap", 0.5)
    if stop is None or (joint == "housed" and into >= thick):
        return None
    if latch is not None and not floor < latch < floor + inputs["leaf_height"]:
        return None
    opening = opening_of(inputs)
    x0, _, x1, high = opening.bounds
    head = shapely.box(x0 - into, high, x1 + into, high + thick)
    top = high if joint == "over" else head.bounds[3] + inputs.get("horn", 0)
    blanks = [shapely.box(x0 - thick, -FAR, x0, top), shapely.box(x1, -FAR, x1 + thick, top)]
    ground = ground_under(inputs, *blanks)
    legs = [blank.difference(under) for blank, under in zip(blanks, ground, strict=True)]
    frame = shapely.union_all([*legs, head])
    if "rough_width" in inputs and inputs["rough_width"] < across(frame) - 1e-9:
        return None
    shim = inputs.get("shim", 0.375)
    figures: dict[str, Any] = {
        "head_length": across(head),
        "stop_line": stop[0],
        "opening_width": across(opening),
        "opening_height": long(opening),
        "rough_needed_width": across(frame) + 2 * shim,
        "rough_needed_height": long(frame) + shim,
    }
    if "rough_width" in inputs:
        figures["shim_width"] = (inputs["rough_width"] - across(frame)) / 2
    alike = abs(long(legs[0]) - long(legs[1])) < 1e-9
    if alike:
        figures["leg_length"] = long(legs[0])
    else:
        figures |= {"leg_left": long(legs[0]), "leg_right": long(legs[1])}
    marks = []
    if joint != "over":
        marks += [top - head.bounds[3], top - head.bounds[1]]
    marks += [] if latch is None else [top - latch]
    marks += [stop[0], stop[1]]
    if latch is not None:
        middle = inputs.get("setback", 0) + inputs["door_thickness"] / 2
        marks += [middle, latch - floor]
        figures |= {"strike_down": top - latch, "strike_in": middle, "latch_up": latch - floor}
    return Expected(
        figures=figures,
        pieces=[
            {"tag": "1", "length": across(head)},
            *uprights("25", legs, alike),
            *stops(inputs, opening, ground, alike),
        ],
        marks=[{"value": mark} for mark in marks],
        tolerance=1e-7,
    )


def uprights(tags: str, shapes: list[Any], alike: bool) -> list[dict[str, Any]]:
    """Both pieces, or one that is cut twice."""
    if alike:
        return [{"tag": tags[0], "length": long(shapes[0]), "count": 2}]
    return [
        {"tag": tag, "length": long(shape), "count": 1}
        for tag, shape in zip(tags, shapes, strict=True)
    ]


def stops(
    inputs: dict[str, Any], opening: Any, ground: tuple[Any, Any], alike: bool
) -> list[dict[str, Any]]:
    """The stops lie on the faces of head and legs, and end where they meet or at the floor."""
    thick, mitered = inputs.get("stop_thickness", 0.375), inputs["stop_joint"] == "miter"
    x0, _, x1, high = opening.bounds
    # The leg on the lower side of the floor stands on it, the other one on the finished floor.
    lower = min(long(shapely.box(0, under.bounds[3], 1, 0)) for under in ground)
    feet = [-long(shapely.box(0, under.bounds[3], 1, 0)) + lower for under in ground]
    head = shapely.box(x0, high - thick, x1, high)
    legs = [
        shapely.box(x0, feet[0], x0 + thick, high),
        shapely.box(x1 - thick, feet[1], x1, high),
    ]
    if mitered:
        corner = shapely.Polygon([(x0, high), (x0 + FAR, high - FAR), (x0 - FAR, high - FAR)])
        short = across(head) - 2 * across(head.intersection(corner))
        piece = {"tag": "3", "length": across(head), "short_point": short}
    else:
        legs = [leg.difference(head) for leg in legs]
        piece = {"tag": "3", "length": across(head)}
    return [piece, *uprights("46", legs, alike)]
