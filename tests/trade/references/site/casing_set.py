"""Polygons: the casing is a band around the opening that is cut apart where its pieces meet.

A mitered band is cut along the lines from its inner to its outer corners; a butted one level with
the head's lower edge; blocks are laid on its corners and taken out of it. Every length is what the
parts that are left measure, each angle the slope of the cut.
"""

import math
from itertools import pairwise
from random import Random
from typing import Any

import shapely
from shapely import LineString, Polygon
from shapely.ops import polygonize

from tests.trade.references.expected import Expected

SLUG = "casing-set"
OVER = 0.25
FAR = 1000.0


def sixteenths(random: Random, low: float, high: float) -> float:
    return random.randint(int(low * 16), int(high * 16)) / 16


def draw(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {
        "opening": random.choice(["door", "stool", "around"]),
        "opening_width": sixteenths(random, 14, 72),
        "opening_height": sixteenths(random, 24, 96),
        "casing_width": sixteenths(random, 1.5, 5.5),
        "casing_thickness": random.choice([0.5, 0.6875, 0.75, 1.0]),
        "head": random.choice(["miter", "butt", "blocks"]),
        "reveal": random.choice([0.125, 0.1875, 0.25, 0.375]),
    }
    optional = {
        "head_width": sixteenths(random, 2, 7),
        "overhang": sixteenths(random, 0, 1),
        "block_size": inputs["casing_width"] + random.choice([-0.125, 0, 0.25, 0.5, 1]),
        "plinth_height": sixteenths(random, 4, 10),
        "stool_nose": sixteenths(random, 0, 1),
        "stool_inside": sixteenths(random, 0.5, 5),
        "apron_width": sixteenths(random, 2, 5),
        "apron_thickness": random.choice([0.5, 0.75]),
    }
    for name, value in optional.items():
        if random.random() < 0.5:
            inputs[name] = value
    inputs["returns"] = random.random() < 0.7
    return inputs


class Shapes:
    """The opening stands on y = 0 with its left jamb at x = 0; y runs up."""

    def __init__(self, inputs: dict[str, Any]) -> None:
        self.inputs = inputs
        self.wide, self.high = inputs["opening_width"], inputs["opening_height"]
        self.side, self.reveal = inputs["casing_width"], inputs["reveal"]
        self.is_around = inputs["opening"] == "around"
        self.head = inputs["head"]
        tall = inputs.get("head_width", self.side) if self.head != "blocks" else self.side
        is_door = inputs["opening"] == "door"
        self.foot = inputs.get("plinth_height", 0.0) if is_door else 0.0
        low = -self.reveal if self.is_around else 0.0
        inner = (-self.reveal, low, self.wide + self.reveal, self.high + self.reveal)
        self.inner = shapely.box(*inner)
        outer_low = low - tall if self.is_around else low
        self.outer = shapely.box(
            inner[0] - self.side, outer_low, inner[2] + self.side, inner[3] + tall
        )
        self.band = self.outer.difference(self.inner)
        if self.foot:
            self.band = self.band.difference(shapely.box(-FAR, -FAR, FAR, self.foot))

    def blocks(self) -> list[Polygon]:
        """Corner blocks, each centered on the square where leg and head would cross."""
        size = self.inputs.get("block_size", self.side + OVER)
        x0, y0, x1, y1 = self.inner.bounds
        half = self.side / 2
        levels = [y1 + half] + ([y0 - half] if self.is_around else [])
        return [
            shapely.box(x - size / 2, y - size / 2, x + size / 2, y + size / 2)
            for y in levels
            for x in (x0 - half, x1 + half)
        ]

    def pieces(self) -> list[Polygon]:
        if self.head == "blocks":
            return parts_of(self.band.difference(shapely.union_all(self.blocks())))
        if self.head == "butt":
            _, low, _, high = self.inner.bounds
            return cut(self.band, [LineString([(-FAR, y), (FAR, y)]) for y in (low, high)])
        return cut(self.band, self.miters())

    def miters(self) -> list[LineString]:
        inner, outer = self.inner.bounds, self.outer.bounds
        lines = [LineString([(inner[x], inner[3]), (outer[x], outer[3])]) for x in (0, 2)]
        if self.is_around:
            lines += [LineString([(inner[x], inner[1]), (outer[x], outer[1])]) for x in (0, 2)]
        return lines


def parts_of(shape: Any) -> list[Polygon]:
    return [part for part in getattr(shape, "geoms", [shape]) if part.area > 1e-9]


def cut(shape: Any, lines: list[LineString]) -> list[Polygon]:
    """Return the parts that lines make of a shape, one that has a hole too."""
    drawn = shapely.union_all([shape.boundary, *lines])
    return [part for part in polygonize(drawn) if shape.contains(part.representative_point())]


def is_head(piece: Polygon, shapes: Shapes) -> bool:
    return bool(piece.centroid.y > shapes.inner.bounds[3])


def is_leg(piece: Polygon, shapes: Shapes) -> bool:
    x0, y0, _, y1 = shapes.inner.bounds
    return bool(piece.centroid.x < x0 and y0 < piece.centroid.y < y1)


def long_and_short(piece: Polygon, axis: int) -> tuple[float, float]:
    """Lengths of the two long edges, level or upright ones."""
    corners = list(piece.exterior.coords)
    edges = [
        abs(b[axis] - a[axis])
        for a, b in pairwise(corners)
        if abs(b[1 - axis] - a[1 - axis]) < 1e-9
    ]
    return max(edges), sorted(edges)[-2]


def expect(inputs: dict[str, Any]) -> Expected | None:
    shapes = Shapes(inputs)
    if is_refused(inputs, shapes):
        return None
    pieces = shapes.pieces()
    head = next(piece for piece in pieces if is_head(piece, shapes))
    leg = next(piece for piece in pieces if is_leg(piece, shapes))
    over = inputs.get("overhang", 0.5) if shapes.head == "butt" else 0.0
    figures: dict[str, Any] = {}
    if shapes.head == "miter":
        figures["head_long"], figures["head_short"] = long_and_short(head, 0)
        figures["leg_long"], figures["leg_short"] = long_and_short(leg, 1)
        line = shapes.miters()[0].coords
        away, up = abs(line[1][0] - line[0][0]), abs(line[1][1] - line[0][1])
        figures["saw_head"] = math.degrees(math.atan2(away, up))
        if abs(away - up) > 1e-9:
            figures["saw_leg"] = math.degrees(math.atan2(up, away))
    else:
        figures["head_length"] = long_and_short(head, 0)[0] + 2 * over
        figures["leg_length"] = long_and_short(leg, 1)[0]
    whole = shapes.outer
    if shapes.head == "blocks":
        whole = whole.union(shapely.union_all(shapes.blocks()))
    x0, y0, x1, y1 = whole.bounds
    figures["outside_width"] = x1 - x0 + 2 * over
    figures["outside_height"] = y1 - y0
    if inputs["opening"] == "stool":
        figures |= stool(inputs, shapes)
    return Expected(figures=figures, tolerance=1e-5)


def stool(inputs: dict[str, Any], shapes: Shapes) -> dict[str, float]:
    """The stool from above, y = 0 the wall's face, out into the room: a T laid in the opening."""
    nose, inside = inputs.get("stool_nose", 0.75), inputs.get("stool_inside", 3.0)
    band = shapely.box(-shapes.reveal, 0, shapes.wide + shapes.reveal, inputs["casing_thickness"])
    casing = band.buffer(0).envelope.bounds
    casing_over = shapely.box(casing[0] - shapes.side, 0, casing[2] + shapes.side, casing[3])
    x0, _, x1, y1 = casing_over.bounds
    front = shapely.box(x0 - nose, 0, x1 + nose, y1 + nose)
    whole = front.union(shapely.box(0, -inside, shapes.wide, 0))
    bounds = whole.bounds
    wall = shapely.box(-FAR, -FAR, 0, 0)
    notch = whole.envelope.intersection(wall).bounds
    return {
        "stool_length": bounds[2] - bounds[0],
        "stool_width": bounds[3] - bounds[1],
        "stool_out": bounds[3],
        "horn": notch[2] - notch[0],
        "notch_depth": notch[3] - notch[1],
        "apron_length": x1 - x0,
    }


def is_refused(inputs: dict[str, Any], shapes: Shapes) -> bool:
    """Blocks narrower than the casing or over the jamb; parts that leave nothing of another."""
    jamb = shapely.box(0, 0, shapes.wide, shapes.high)
    if shapes.head == "blocks":
        if inputs.get("block_size", shapes.side + OVER) < shapes.side - 1e-9:
            return True
        if any(block.intersection(jamb).area > 1e-9 for block in shapes.blocks()):
            return True
        pieces = parts_of(shapes.band.difference(shapely.union_all(shapes.blocks())))
        if not any(is_head(one, shapes) for one in pieces):
            return True
    if shapes.foot and shapes.side + OVER > shapes.side + 2 * shapes.reveal + 1e-9:
        return True
    if inputs["opening"] != "stool" or not inputs["returns"]:
        return False
    sizes = stool(inputs, shapes)
    apron = inputs.get("apron_thickness", inputs["casing_thickness"])
    return sizes["stool_out"] > sizes["horn"] or 2 * apron >= sizes["apron_length"]
