"""Linear equations and shapely: edges across and up are unknowns of one system of equations.

Rails are boxes between the stiles' inner edges. A panel is what shows between two rails, grown by
what of it sits in the groove; the groove is a ring around what shows. Strips are added one by one.
"""

from itertools import pairwise
from random import Random
from typing import Any

import numpy as np
from shapely import box, unary_union

from tests.trade.references.expected import Expected

SLUG = "door-set"
WOODS = {"oak-red": 0.63, "pine-eastern-white": 0.35, "maple-sugar": 0.63, "walnut": 0.55}
SHEETS = {"plywood": 30.0, "mdf": 48.5}


def draw(random: Random) -> dict[str, Any]:
    kind = random.choice(["inset", "overlay", "passage"])
    mids = random.randint(0, 3)
    low = 60 if kind == "passage" or mids else 18
    high = random.randint(16 * low, 16 * 100) / 16
    inputs: dict[str, Any] = {
        "kind": kind,
        "opening_width": random.randint(16 * 26, 16 * 80) / 16,
        "opening_height": high,
        "leaves": random.choice(["1", "2"]),
        "stile": random.randint(24, 88) / 16,
        "top_rail": random.randint(24, 88) / 16,
        "bottom_rail": random.randint(24, 130) / 16,
        "panel_thickness": random.choice([0.25, 0.375, 0.5]),
        "panel_of": random.choice(["solid", "sheet"]),
        "groove_depth": random.choice([0.375, 0.5, 0.625]),
        "panel_play": random.choice([0.0, 0.0625, 0.125]),
        "species": random.choice([*WOODS, "unsaid"]),
        "meeting_gap": random.randint(0, 8) / 32,
        "door_thickness": random.choice([0.75, 1.0, 1.375, 1.75]),
        "board_width": random.choice([3.5, 5.5, 7.25, 99.0]),
    }
    if kind == "overlay":
        inputs["overlap"] = random.randint(1, 20) / 16
        if random.random() < 0.5:
            inputs["overlap_top"] = random.randint(0, 20) / 16
    else:
        for name in ("side_gap", "head_gap", "floor_gap"):
            inputs[name] = random.randint(0, 16) / 32
        inputs["bevel"] = random.choice([0, 2, 3])
    if random.random() < 0.4:
        inputs["tenon_length"] = random.randint(4, 24) / 16
    if inputs["panel_of"] == "sheet":
        inputs["sheet"] = random.choice([*SHEETS])
    if inputs["leaves"] == "2":
        inputs["meeting"] = random.choice(["butted", "rabbeted", "astragal"])
        inputs["lap"], inputs["stem"] = random.randint(4, 12) / 16, random.randint(0, 8) / 16
    step = high / (mids + 1)
    inputs["mid_rails"] = [
        {
            "center": (n + 1) * step + random.randint(-16, 16) / 16,
            "width": random.randint(28, 90) / 16,
        }
        for n in range(mids)
    ]
    random.shuffle(inputs["mid_rails"])
    return inputs


def _edges(size: float, first: float, last: float, between: float, leaves: int) -> list[Any]:
    """Both edges of each leaf: each gap is an equation, and leaves are alike."""
    if leaves == 1:
        found = np.linalg.solve(np.array([[1.0, 0.0], [0.0, 1.0]]), [first, size - last])
        return [found]
    rows = np.array([[1, 0, 0, 0], [0, 0, 0, 1], [0, -1, 1, 0], [-1, 1, 1, -1]], dtype=float)
    found = np.linalg.solve(rows, [first, size - last, between, 0])
    return [found[:2], found[2:]]


def _strips(wide: float, board: float) -> float:
    """The width of all strips of a part, ripped; the part itself where a board has it."""
    if wide <= board:
        return wide
    count, made = 1, board
    while made < wide - 1e-9:
        count, made = count + 1, made + board - 0.125
    return wide + 2 * (count - 1) / 16


def expect(inputs: dict[str, Any]) -> Expected | None:
    leaves, kind = int(inputs["leaves"]), inputs["kind"]
    if kind == "overlay":
        lap = inputs["overlap"]
        gaps = [-lap, -inputs.get("overlap_top", lap), -lap]
    else:
        gaps = [inputs[name] for name in ("side_gap", "head_gap", "floor_gap")]
    style = inputs.get("meeting", "butted")
    between = inputs["meeting_gap"] + (inputs["stem"] if style == "astragal" else 0)
    across = _edges(inputs["opening_width"], gaps[0], gaps[0], between, leaves)
    up = _edges(inputs["opening_height"], gaps[2], gaps[1], 0, 1)[0]
    leaf = box(across[0][0], 0, across[0][1], up[1] - up[0])
    left, _, right, high = leaf.bounds
    stile, groove, play = inputs["stile"], inputs["groove_depth"], inputs["panel_play"]
    tenon = inputs.get("tenon_length", groove - 1 / 32)
    bands = [(high - inputs["top_rail"], high)]
    for row in sorted(inputs["mid_rails"], key=lambda row: -row["center"]):
        bands.append((row["center"] - row["width"] / 2, row["center"] + row["width"] / 2))
    bands.append((0.0, inputs["bottom_rail"]))
    apart = [upper[0] - lower[1] for upper, lower in pairwise(bands)]
    if left + 2 * stile >= right or min(apart) <= 0 or groove >= stile or tenon > stile:
        return None
    if any(top - low <= 2 * groove for low, top in bands[1:-1]):
        return None
    if inputs["panel_thickness"] >= inputs["door_thickness"]:
        return None
    reach = box(left + stile, 0, right - stile, high)
    rails = [box(reach.bounds[0], low, reach.bounds[2], top) for low, top in bands]
    shown = reach.difference(unary_union(rails))
    sights = sorted(getattr(shown, "geoms", [shown]), key=lambda each: -each.bounds[1])
    panels = [sight.buffer(groove - play, join_style="mitre") for sight in sights]
    lap = inputs["lap"] if style == "rabbeted" else 0.0
    pieces, feet = [], 0.0
    off = inputs["door_thickness"] * float(np.tan(np.radians(inputs.get("bevel", 0))))
    for number in range(leaves):
        parts = []
        for side in (0, 1):
            meets = leaves == 1 or side != number
            wide = stile + (lap if number == 1 and side == 0 else 0)
            parts.append((wide, high, inputs["door_thickness"], off if meets else 0.0, True))
        for low, top in bands:
            length = reach.bounds[2] - reach.bounds[0] + 2 * tenon
            parts.append((top - low, length, inputs["door_thickness"], 0.0, True))
        for panel in panels:
            x0, y0, x1, y1 = panel.bounds
            solid = inputs["panel_of"] == "solid"
            parts.append((x1 - x0, y1 - y0, inputs["panel_thickness"], 0.0, solid))
        for wide, long, thick, more, solid in parts:
            pieces.append({"width": wide, "length": long, "thickness": thick})
            if solid:
                rough = _strips(wide + 0.25 + more, inputs["board_width"])
                feet += max(1.0, thick + 0.125) * rough * (long + 1) / 144
    if style == "astragal":
        pieces.append({"length": high})
    edges = [(low, top) for low, top in bands[::-1]]
    marks = [edge for low, top in edges for edge in (low, top) if 0 < edge < high]
    figures: dict[str, Any] = {
        "leaf_width": right - left,
        "leaf_height": high,
        "rail_length": reach.bounds[2] - reach.bounds[0] + 2 * tenon,
        "sight_width": reach.bounds[2] - reach.bounds[0],
        "panel_width": panels[0].bounds[2] - panels[0].bounds[0],
        "tenon_length": tenon,
        "diagonal": float(np.hypot(right - left, high)),
        "board_feet": feet,
    }
    heights = [panel.bounds[3] - panel.bounds[1] for panel in panels]
    names = [f"panel_height_{n + 1}" for n in range(len(heights))]
    figures |= dict(zip(names if len(heights) > 1 else ["panel_height"], heights, strict=True))
    absent = [] if off else ["bevel_off"]
    if lap:
        figures["leaf_width_right"] = across[1][1] - across[1][0] + lap
    if inputs["species"] in WOODS:
        frame = (leaf.area - shown.area) * inputs["door_thickness"]
        frame += lap * high * inputs["door_thickness"] / 2
        ring = sum(sight.buffer(groove, join_style="mitre").area - sight.area for sight in sights)
        frame -= ring * inputs["panel_thickness"]
        panel = sum(each.area for each in panels) * inputs["panel_thickness"]
        wood = _pounds(WOODS[inputs["species"]])
        of_panel = wood if inputs["panel_of"] == "solid" else SHEETS[inputs["sheet"]]
        figures["leaf_weight"] = (frame * wood + panel * of_panel) / 1728
    else:
        absent.append("leaf_weight")
    return Expected(
        figures=figures,
        pieces=pieces,
        marks=[{"value": edge} for edge in marks],
        absent=tuple(absent),
        words=(kind[1:] + " ",),
        tolerance=1e-6,
    )


def _pounds(gravity: float) -> float:
    """Pounds to the cubic foot at 8 percent, from specific gravity at 12: mass over volume.

    Wood swells by 0.9 percent of its ovendry gravity for each percent of moisture (formula of the
    National Design Specification's commentary, as reprinted).
    """
    dry = gravity / (1 - 0.108 * gravity)
    return 62.43 * dry * 1.08 / (1 + 0.072 * dry)
