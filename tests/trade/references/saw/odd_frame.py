"""Points measured with numpy's tapes; the trim is the ring shapely makes by offsetting them."""

from random import Random
from typing import Any

import numpy as np
from shapely import Polygon

from tests.trade.references.expected import Expected

SLUG = "odd-frame"
SIDES = ("top", "right", "bottom", "left")
TAPES = ("width_top", "height_right", "width_bottom", "height_left")
CORNERS = ("tl", "tr", "br", "bl")


def draw(random: Random) -> dict[str, Any]:
    wide, high = random.uniform(15, 100), random.uniform(15, 100)
    square = np.array([[0, 0], [wide, 0], [wide, high], [0, high]])
    off = [[random.uniform(-0.1, 0.1) * wide, random.uniform(-0.1, 0.1) * high] for _ in range(4)]
    if random.random() < 0.1:
        off = [[0.0, 0.0]] * 4
    corners = square + np.array(off)
    sides = np.linalg.norm(np.roll(corners, -1, axis=0) - corners, axis=1)
    inputs: dict[str, Any] = {name: float(s) for name, s in zip(TAPES, sides, strict=True)}
    inputs |= {
        "fit": random.choice(["inside", "around"]),
        "diagonal_a": float(np.linalg.norm(corners[2] - corners[0])),
        "trim_width": random.randint(8, 48) / 16,
        "reveal": random.randint(0, 8) / 16,
    }
    if random.random() < 0.5:
        true = float(np.linalg.norm(corners[3] - corners[1]))
        inputs["diagonal_b"] = true + random.choice([0, 0, 1 / 16, -3 / 16, 1 / 4])
    if random.random() < 0.4:
        inputs |= {"rabbeted": True, "rabbet": 0.375, "rabbet_play": 0.125}
    return inputs


def laid_out(inputs: dict[str, Any]) -> Any:
    """The corners again from the tapes, by circles that cross: top level, y downwards."""
    top, right, bottom, left = (inputs[name] for name in TAPES)
    first, second = np.zeros(2), np.array([top, 0.0])
    third = crossing(first, inputs["diagonal_a"], second, right)
    fourth = crossing(first, left, third, bottom)
    return np.array([first, second, third, fourth])


def crossing(one: Any, radius: float, other: Any, reach: float) -> Any:
    """Where two circles cross, to the right on the way from one center to the other (y down)."""
    away = other - one
    apart = float(np.linalg.norm(away))
    along = (apart**2 + radius**2 - reach**2) / (2 * apart)
    across = np.sqrt(radius**2 - along**2)
    unit = away / apart
    return one + along * unit + across * np.array([-unit[1], unit[0]])


def offset(corners: Any, outwards: float) -> Any:
    """The same corners after all sides moved out: lines shifted along their normals, crossed."""
    after = np.roll(corners, -1, axis=0)
    along = (after - corners) / np.linalg.norm(after - corners, axis=1)[:, None]
    normals = np.column_stack([along[:, 1], -along[:, 0]])
    levels = np.einsum("ij,ij->i", normals, corners) + outwards
    return np.array(
        [np.linalg.solve([normals[at - 1], normals[at]], [levels[at - 1], levels[at]])
         for at in range(4)]
    )  # fmt: skip


def lengths(corners: Any) -> list[float]:
    return [float(side) for side in np.linalg.norm(np.roll(corners, -1, axis=0) - corners, axis=1)]


def expect(inputs: dict[str, Any]) -> Expected | None:
    corners = laid_out(inputs)
    width, inside = inputs["trim_width"], inputs["fit"] == "inside"
    outer = 0.0 if inside else inputs["reveal"] + width
    outs, ins = offset(corners, outer), offset(corners, outer - width)
    hole = Polygon(ins)
    assert hole.is_valid
    assert Polygon(outs).contains(hole)
    after, before = np.roll(corners, -1, axis=0) - corners, np.roll(corners, 1, axis=0) - corners
    turns = np.arctan2(before[:, 1], before[:, 0]) - np.arctan2(after[:, 1], after[:, 0])
    angles = np.degrees(turns) % 360
    long, short = lengths(outs), lengths(ins)
    figures = {"other_worked": float(np.linalg.norm(corners[3] - corners[1]))}
    for at in range(4):
        figures[SIDES[at] + "_long"], figures[SIDES[at] + "_short"] = long[at], short[at]
        figures["corner_" + CORNERS[at]] = float(angles[at])
        figures["saw_" + CORNERS[at]] = float(90 - angles[at] / 2)
    if "rabbeted" in inputs:
        glass = offset(corners, outer - width + inputs["rabbet"] - inputs["rabbet_play"] / 2)
        for name, side in zip(SIDES, lengths(glass), strict=True):
            figures["glass_" + name] = side
        figures["glass_diagonal"] = float(np.linalg.norm(glass[2] - glass[0]))
    words = ("Frame inside",) if inside else ("Casing", "reveal")
    if "diagonal_b" in inputs:
        figures["disagree"] = inputs["diagonal_b"] - figures["other_worked"]
        if abs(figures["disagree"]) > 0.126:
            words = ("Measure again", "longer" if figures["disagree"] > 0 else "shorter")
    return Expected(
        figures=figures,
        pieces=[{"length": long[at], "short_point": short[at]} for at in range(4)],
        words=words,
    )
