"""Blocks and shapes: hinges are laid on the edge as blocks, mortises found by closing the door.

The blocks' places come from a fair division of the edge (numpy's linspace between the first and the
last), in the jamb's own measure and carried to the leaf by subtraction. The depth is found by
scipy's root finder: leaf, hinge leaves and jamb are boxes, pushed together until the hinge stops
them, and the mortise is deepened until the wanted gap is left between leaf and jamb. The router's
template is the mortise shrunk by the bit and grown by the bushing, as shapely does it. Cups are
circles of which shapely tells the rim and what is left of the door.
"""

from random import Random
from typing import Any

import numpy as np
import shapely
from scipy.optimize import brentq

from tests.trade.references.expected import Expected

SLUG = "hinge-layout"
HAIR = 1e-9
# Table of the Door and Hardware Institute, as hinge sellers reprint it: thickness to, width to,
# hinge height, weight.
TABLE = [
    (1.375, 32, 3.5, "standard"),
    (1.375, 37, 4, "standard"),
    (1.75, 36, 4.5, "standard"),
    (1.75, 48, 5, "standard"),
    (1.75, 1e9, 6, "standard"),
    (2.5, 42, 5, "heavy"),
    (2.5, 1e9, 6, "heavy"),
]
# Butts are sold open this wide.
SOLD = [3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8]


def sixteenths(random: Random, low: float, high: float) -> float:
    return random.randint(int(low * 16), int(high * 16)) / 16


def draw(random: Random) -> dict[str, Any]:
    return draw_cups(random) if random.random() < 0.25 else draw_butts(random)


def draw_cups(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {"kind": "cup", "end_offset": sixteenths(random, 1, 5)}
    for name, value in (
        ("leaf_height", sixteenths(random, 10, 96)),
        ("door_thickness", random.choice([0.5, 0.625, 0.75, 1.0])),
        ("cup_distance", f"{random.randint(3, 8)} mm"),
        ("cup_depth", f"{random.choice([10.5, 12, 12.5, 13, 14])} mm"),
        ("leaf_over", sixteenths(random, -1, 1)),
        ("hinges", random.randint(2, 5)),
    ):
        if random.random() < 0.7:
            inputs[name] = value
    return inputs


def draw_butts(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {}
    for name, value in (
        ("leaf_height", sixteenths(random, 40, 110)),
        ("hinge_height", random.choice([3, 3.5, 4, 4.5, 5, 6])),
        ("door_thickness", random.choice([1.375, 1.5, 1.75, 2.25])),
        ("leaf_thickness", round(random.uniform(0.05, 0.2), 3)),
        ("hinge_gap", round(random.uniform(0.03, 0.25), 4)),
    ):
        if random.random() < 0.9:
            inputs[name] = value
    for name, value in (
        ("closed_gap", round(random.uniform(0, 0.15), 3)),
        ("backset", sixteenths(random, 0.125, 0.5)),
        ("hinges", random.randint(2, 6)),
        ("measured_on", random.choice(["frame", "door"])),
        ("top_offset", sixteenths(random, 0, 12)),
        ("bottom_offset", sixteenths(random, 0, 14)),
        ("head_gap", sixteenths(random, 0, 0.25)),
        ("floor_gap", sixteenths(random, 0, 1)),
    ):
        if random.random() < 0.5:
            inputs[name] = value
    for name, more in (
        ("choose", {"leaf_width": sixteenths(random, 18, 50), "throw": sixteenths(random, 0, 3)}),
        ("template", {"bushing": 0.75, "bit": random.choice([0.25, 0.5])}),
        ("match", {"existing": [{"top_line": line} for line in old_lines(random)]}),
    ):
        if random.random() < 0.25:
            inputs[name] = True
            inputs |= more if random.random() < 0.8 else {}
    return inputs


def old_lines(random: Random) -> list[float]:
    return sorted(sixteenths(random, 4, 70) for _ in range(random.randint(1, 3)))


def expect(inputs: dict[str, Any]) -> Expected | None:
    return cups(inputs) if inputs.get("kind") == "cup" else butts(inputs)


def butts(inputs: dict[str, Any]) -> Expected | None:
    depth = closed_up(inputs)
    if "leaf_height" not in inputs or "hinge_height" not in inputs:
        lines = []
        if depth is None:
            return None
    else:
        found = on_the_jamb(inputs)
        if found is None:
            return None
        lines = found
    figures: dict[str, Any] = {}
    if depth is not None:
        figures |= {"mortise_depth": max(0.0, depth), "packing": max(0.0, -depth)}
    wide = None
    if "door_thickness" in inputs:
        edge = shapely.box(0, 0, inputs["door_thickness"], 1)
        far = shapely.box(inputs["door_thickness"] - inputs.get("backset", 0.25), 0, 9, 1)
        wide = float(edge.difference(far).bounds[2])
        figures["mortise_width"] = wide
    marks = []
    if lines:
        head, hinge = inputs.get("head_gap", 0.125), inputs["hinge_height"]
        figures["hinge_count"] = len(lines)
        figures["top_center"] = lines[0] - head + hinge / 2
        figures["bottom_center"] = inputs["leaf_height"] - (lines[-1] - head + hinge / 2)
        for datum, above in (("leaf top", head), ("head", 0.0)):
            for number, line in enumerate(lines):
                for place in (line, line + hinge):
                    mark = {"tag": str(number + 1), "from": datum, "value": place - above}
                    marks.append(mark)
    absent = [] if depth is not None else ["mortise_depth"]
    figures |= advised(inputs, wide) if inputs.get("choose") else {}
    figures |= template(inputs, wide) if inputs.get("template") else {}
    return Expected(figures=figures, marks=marks, absent=tuple(absent), tolerance=1e-7)


def closed_up(inputs: dict[str, Any]) -> float | None:
    """How deep the hinge leaves go; less than 0 where they stand on shims instead."""
    if "leaf_thickness" not in inputs or "hinge_gap" not in inputs:
        return None
    thick, own = inputs["leaf_thickness"], inputs.get("closed_gap", 0.0625)

    def left(depth: float) -> float:
        on_leaf = shapely.box(-depth, 0, thick - depth, 1)
        on_jamb = shapely.affinity.translate(on_leaf, on_leaf.bounds[2] + depth + own, 0)
        jamb = on_jamb.bounds[2] - depth
        return float(jamb - inputs["hinge_gap"])

    return float(brentq(left, -2, 2, xtol=1e-14))


def on_the_jamb(inputs: dict[str, Any]) -> list[float] | None:
    """The hinges' top lines below the head; None where they don't fit the leaf or one another."""
    high, hinge = inputs["leaf_height"], inputs["hinge_height"]
    head, floor = inputs.get("head_gap", 0.125), inputs.get("floor_gap", 0.5)
    leaf = (head, head + high)
    if inputs.get("match") and inputs.get("existing"):
        lines = np.array([row["top_line"] for row in inputs["existing"]], dtype=float)
    else:
        on_frame = inputs.get("measured_on", "frame") == "frame"
        top = (0.0 if on_frame else head) + inputs.get("top_offset", 5)
        end = (leaf[1] + floor if on_frame else leaf[1]) - inputs.get("bottom_offset", 10)
        usual = int(np.searchsorted([60, 90, 120, 150], high)) + 2
        lines = np.linspace(top, end - hinge, inputs.get("hinges", usual))
    blocks = [shapely.box(0, line, 1, line + hinge) for line in lines]
    edge = shapely.box(0, leaf[0] - HAIR, 1, leaf[1] + HAIR)
    apart = np.diff(lines)
    if not all(edge.covers(block) for block in blocks) or (apart < hinge - HAIR).any():
        return None
    return [float(line) for line in lines]


def advised(inputs: dict[str, Any], wide: float | None) -> dict[str, Any]:
    if wide is None:
        return {}
    clear = 2 * wide + inputs.get("throw", 0.75)
    figures: dict[str, Any] = {"hinge_width": clear}
    sold = [size for size in SOLD if size >= clear - 1e-6]
    if sold:
        figures |= {"stock_width": sold[0], "pin_out": sold[0] / 2 - wide}
    rows = [
        row
        for row in TABLE
        if inputs["door_thickness"] <= row[0] and inputs.get("leaf_width", 1e10) <= row[1]
    ]
    if rows:
        figures |= {"advised_height": rows[0][2], "weight_class": rows[0][3]}
    return figures


def template(inputs: dict[str, Any], wide: float | None) -> dict[str, Any]:
    if wide is None or "hinge_height" not in inputs:
        return {}
    bit, bushing = inputs.get("bit", 0.5), inputs.get("bushing", 0.75)
    mortise = shapely.box(-9, 0, wide, inputs["hinge_height"])
    opening = mortise.buffer(-bit / 2, join_style="mitre").buffer(bushing / 2, join_style="mitre")
    _, top, right, bottom = opening.bounds
    return {"template_length": bottom - top, "template_width": right}


def cups(inputs: dict[str, Any]) -> Expected | None:
    radius = 35 / 25.4 / 2
    sheet = {
        name: float(inputs[name].split()[0]) / 25.4
        for name in ("cup_distance", "cup_depth")
        if name in inputs
    }
    if "leaf_height" not in inputs and len(sheet) < 2:
        return None
    figures: dict[str, Any] = {"cup_bore_size": 2 * radius}
    if "cup_distance" in sheet:
        # The circle that touches the line at that distance from the edge.
        figures["cup_center"] = brentq(
            lambda x: (
                shapely.Point(x, 0).buffer(radius, quad_segs=64).bounds[0] - sheet["cup_distance"]
            ),
            0,
            9,
            xtol=1e-12,
        )
    if "cup_depth" in sheet:
        figures["cup_bore_depth"] = sheet["cup_depth"]
        if "door_thickness" in inputs:
            door = shapely.LineString([(0, 0), (0, inputs["door_thickness"])])
            left = door.difference(shapely.box(-1, -1, 1, sheet["cup_depth"])).length
            if left == 0:
                return None
            figures["cup_wood_left"] = left
    marks: list[dict[str, Any]] = []
    lines = np.array([])
    if "leaf_height" in inputs:
        high, end = inputs["leaf_height"], inputs["end_offset"]
        usual = int(np.searchsorted([40, 60, 80], high)) + 2
        lines = np.linspace(end, high - end, inputs.get("hinges", usual))
        if end < radius or (np.diff(lines) < 2 * radius).any():
            return None
        figures |= {"hinge_count": len(lines), "top_center": end, "bottom_center": end}
        marks += [{"from": "leaf top", "value": line} for line in lines]
    if "cup_center" in figures:
        marks.append({"from": "hinge edge", "value": figures["cup_center"]})
    if "leaf_over" in inputs:
        over = inputs["leaf_over"]
        marks += [{"from": "top of the case side", "value": line - over} for line in lines]
    return Expected(figures=figures, marks=marks, tolerance=1e-7)
