"""Polygons: the leaf is built from four boards, and the hardware's outline is laid on them.

One piece of hardware is drawn level around the origin, turned where it stands upright, and moved to
its center; it is refused where its outline does not lie whole on the board that carries it. The
wood beside it is found by sliding it toward either edge until it hangs over.
"""

from itertools import pairwise
from random import Random
from typing import Any

import shapely
from shapely import affinity

from tests.trade.references.expected import Expected

SLUG = "hardware-centers"
HAIR = 1e-7


def sixteenths(random: Random, low: float, high: float) -> float:
    return random.randint(int(low * 16), int(high * 16)) / 16


def draw(random: Random) -> dict[str, Any]:
    part = random.choice(["stile", "rail", "crossing"])
    inputs: dict[str, Any] = {
        "leaf_width": sixteenths(random, 10, 40),
        "leaf_height": sixteenths(random, 12, 96),
        "stile": sixteenths(random, 1.5, 5.5),
        "part": part,
        "end": random.choice(["bottom", "top"]),
        "direction": random.choice(["along", "along", "along", "across"]),
        "leaves": random.choice(["1", "2"]),
        "side": random.choice(["left", "right"]),
    }
    if random.random() < 0.7:
        inputs["rail"] = sixteenths(random, 1.5, 10)
    if part == "stile" and random.random() < 0.8:
        inputs["height"] = sixteenths(random, 3, inputs["leaf_height"] - 3)
    if part == "rail" and random.random() < 0.5:
        inputs["count"] = random.randint(1, 4)
    if part == "rail" and random.random() < 0.3:
        inputs["offset"] = sixteenths(random, 3, inputs["leaf_width"] - 3)
    if part != "crossing" and random.random() < 0.3:
        inputs["inset"] = sixteenths(random, 0.75, 2.5)
    if random.random() < 0.6:
        inputs["spacing"] = sixteenths(random, 1, 5)
    if random.random() < 0.5:
        inputs["plate_width"] = sixteenths(random, 0.5, 2)
    if random.random() < 0.3:
        inputs["plate_length"] = sixteenths(random, 1, 6)
    return inputs


def outline(inputs: dict[str, Any]) -> Any:
    """The hardware level around the origin; a line or a point where it has no plate."""
    spacing = inputs.get("spacing", 0.0)
    long, wide = inputs.get("plate_length", spacing), inputs.get("plate_width", 0.0)
    return shapely.MultiPoint(
        [(x, y) for x in (-long / 2, long / 2) for y in (-wide / 2, wide / 2)]
    )


def placed(shape: Any, is_upright: bool, center: tuple[float, float]) -> Any:
    return affinity.translate(affinity.rotate(shape, 90 if is_upright else 0, (0, 0)), *center)


def lies_on(board: Any, shape: Any) -> bool:
    return bool(board.buffer(HAIR, join_style="mitre").covers(shape.convex_hull))


def centers_of(inputs: dict[str, Any], stile: float, rail: float) -> list[tuple[float, float]]:
    wide, high = inputs["leaf_width"], inputs["leaf_height"]
    if inputs["part"] == "crossing":
        return [(stile / 2, rail / 2)]
    if inputs["part"] == "stile":
        return [(inputs.get("inset", stile / 2), inputs.get("height", high / 2))]
    y, count = inputs.get("inset", rail / 2), inputs.get("count", 1)
    if "offset" in inputs:
        return [(inputs["offset"], y)]
    field = wide / count
    return [(sum([field * at, field * (at + 1)]) / 2, y) for at in range(count)]


def room_beside(board: Any, shape: Any, is_upright_board: bool) -> float:
    """Slide the hardware both ways across its board until it hangs over; the nearer way counts."""
    x0, y0, x1, y1 = shape.bounds
    bx0, by0, bx1, by1 = board.bounds
    return float(min(x0 - bx0, bx1 - x1) if is_upright_board else min(y0 - by0, by1 - y1))


def expect(inputs: dict[str, Any]) -> Expected | None:
    wide, high, stile = inputs["leaf_width"], inputs["leaf_height"], inputs["stile"]
    rail, count = inputs.get("rail", stile), inputs.get("count", 1)
    spacing = inputs.get("spacing", 0.0)
    if 2 * stile >= wide or 2 * rail >= high or inputs.get("plate_length", spacing) < spacing:
        return None
    if "offset" in inputs and count > 1:
        return None
    is_upright = (inputs["direction"] == "along") == (inputs["part"] != "rail")
    on_stile = inputs["part"] == "stile" or (inputs["part"] == "crossing" and is_upright)
    board = shapely.box(0, 0, stile, high) if on_stile else shapely.box(0, 0, wide, rail)
    centers = centers_of(inputs, stile, rail)
    shapes = [placed(outline(inputs), is_upright, center) for center in centers]
    if not all(lies_on(board, shape) for shape in shapes):
        return None
    # What has no width across its board still needs wood on both sides of it.
    middle = shapely.Point(centers[0])
    if not board.buffer(-HAIR).covers(middle) and room_beside(board, middle, on_stile) <= 0:
        return None
    boxes = [shapely.box(*shape.bounds) for shape in shapes]
    if any(one.bounds[2] > after.bounds[0] + HAIR for one, after in pairwise(boxes)):
        return None
    holes = [
        (point.x, point.y)
        for center in centers
        for point in placed(
            shapely.MultiPoint([(-spacing / 2, 0), (spacing / 2, 0)] if spacing else [(0, 0)]),
            is_upright,
            center,
        ).geoms
    ]
    return Expected(
        figures={
            "center_in": centers[0][0],
            "center_up": centers[0][1],
            "hole_count": len(holes) * int(inputs["leaves"]),
            "edge_wood": room_beside(board, shapes[0], on_stile),
            "widest_plate": 2 * room_beside(board, middle, on_stile),
        },
        marks=marks_of(inputs, holes),
    )


def marks_of(inputs: dict[str, Any], holes: list[tuple[float, float]]) -> list[dict[str, Any]]:
    """The opening edge of a pair's left leaf is its right one; single leaves say theirs."""
    pair = [("left leaf, ", "right"), ("right leaf, ", "left")]
    leaves = pair if inputs["leaves"] == "2" else [("", inputs["side"])]
    marks = []
    for number, (leaf, edge) in enumerate(leaves):
        for axis, datum in ((0, edge + " edge"), (1, inputs["end"])):
            marks += [
                {
                    "tag": str(number * len(holes) + at + 1),
                    "from": leaf + datum,
                    "value": hole[axis],
                }
                for at, hole in enumerate(holes)
            ]
    return marks
