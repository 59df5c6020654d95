"""Shapely: the blank's section is cut by a line that is turned until the tongue fits.

The saw's cut is a half plane through the top of the bevel; the edge that it leaves is found by
bisection, so that the panel, pushed home, just fits the groove. A cutter's section is cut out as
boxes and a triangle; passes are taken off until the height is reached.
"""

import math
from random import Random
from typing import Any

from shapely import LineString, Polygon, box

from tests.trade.references.expected import Expected

SLUG = "panel-raise"
FAR = 20.0


def draw(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {
        "cut_with": random.choice(["saw", "cutter"]),
        "blank_thickness": random.randint(7, 16) / 16,
        "groove_width": random.randint(180, 400) / 1000,
        "groove_depth": random.choice([0.25, 0.375, 0.5]),
        "panel_play": random.choice([0.0, 0.0625, 0.125]),
        "slack": random.randint(0, 12) / 1000,
    }
    if inputs["cut_with"] == "saw":
        inputs["bevel_shows"] = random.randint(8, 40) / 16
        inputs["step"] = random.choice([0.0, 1 / 32, 1 / 16, 1 / 8])
    else:
        inputs["cutter_reach"] = random.randint(14, 34) / 16
        inputs["cutter_flat"] = random.randint(3, 10) / 16
        inputs["per_pass"] = random.choice([1 / 16, 1 / 8, 3 / 16])
        if random.random() < 0.7:
            inputs["cutter_depth"] = random.randint(4, 9) / 16
    if random.random() < 0.5:
        inputs["stock_thickness"] = random.choice([0.75, 1.0, 1.375])
    if random.random() < 0.5:
        inputs["panel_width"] = random.randint(40, 300) / 16
        inputs["panel_height"] = random.randint(80, 600) / 16
    return inputs


def _thick(section: Polygon, at: float) -> float:
    """How thick a section is at a distance from its edge."""
    return float(section.intersection(LineString([(at, -9), (at, 9)])).length)


def _beveled(inputs: dict[str, Any], top: tuple[float, float], edge: float) -> Polygon:
    """The blank under the line from its edge's thickness to the bevel's top."""
    blank = box(0, 0, FAR, inputs["blank_thickness"])
    over = Polygon([(0, edge), top, (top[0], 9), (0, 9)])
    return blank.difference(over)


def _sawn(inputs: dict[str, Any], wide: float) -> float | None:
    """The edge that lets the panel, pushed home, just fit the mouth; None where none is left."""
    tongue = inputs["groove_width"] - inputs["slack"]
    top = (wide, inputs["blank_thickness"] - inputs["step"])
    low, high = 1e-9, top[1]
    if _thick(_beveled(inputs, top, low), inputs["groove_depth"]) > tongue or tongue >= top[1]:
        return None
    for _ in range(60):
        middle = (low + high) / 2
        fits = _thick(_beveled(inputs, top, middle), inputs["groove_depth"]) <= tongue
        low, high = (middle, high) if fits else (low, middle)
    return None if (top[1] - low) / wide > 1 else low


def expect(inputs: dict[str, Any]) -> Expected | None:
    blank, groove = inputs["blank_thickness"], inputs["groove_width"]
    inside = LineString([(0, 0), (inputs["groove_depth"], 0)]).length - inputs["panel_play"]
    tongue = groove - inputs["slack"]
    relief, figures, absent = 0.0, {}, []
    if inputs["cut_with"] == "saw":
        wide = inputs["bevel_shows"] + inside
        if inputs["bevel_shows"] <= inputs["panel_play"]:
            return None
        edge = _sawn(inputs, wide)
        if edge is None:
            return None
        section = _beveled(inputs, (wide, blank - inputs["step"]), edge)
        rise = blank - inputs["step"] - edge
        figures = {
            "saw_bevel": math.degrees(math.atan2(rise, wide)),
            "fence": edge,
            "blade_height": wide,
            "mouth_slack": groove - _thick(section, inside),
        }
        if inputs["step"]:
            figures["score_depth"] = _thick(section, wide + 1e-9) - _thick(section, wide - 1e-9)
        else:
            absent.append("score_depth")
    else:
        wide = inputs["cutter_reach"]
        flat = inputs["cutter_flat"]
        if flat >= wide or flat < inside - 1e-9 or tongue >= blank:
            return None
        deep, passes = min(blank - tongue, inputs.get("cutter_depth", 99.0)), 0
        section = box(0, 0, FAR, blank)
        while _thick(section, flat / 2) > blank - deep + 1e-9:
            passes += 1
            low = max(blank - deep, blank - passes * inputs["per_pass"])
            section = section.difference(box(0, low, flat, 9))
        relief = _thick(section, flat / 2) - tongue
        figures = {"cut_depth": deep, "passes": passes, "tongue": tongue}
        if relief > 1e-9:
            figures["back_relief"] = relief
        else:
            absent.append("back_relief")
    if "stock_thickness" in inputs:
        frame = inputs["stock_thickness"]
        rear = (frame - groove) / 2  # Of the groove, from the frame's back: there the tongue lies.
        figures["field_behind"] = abs(frame - (rear - relief + blank))
    for side in ("width", "height"):
        if "panel_" + side in inputs:
            field = inputs["panel_" + side] - 2 * wide
            if field <= 0:
                return None
            figures["field_" + side] = field
    figures |= {"tongue_in": inside, "shows": wide - inside, "bevel_width": wide}
    return Expected(
        figures=figures,
        marks=[{"value": wide}],
        absent=tuple(absent),
        tolerance=1e-6,
    )
