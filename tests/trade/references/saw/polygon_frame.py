"""Complex numbers: the outlines are roots of unity, their sizes distances between their points."""

from random import Random
from typing import Any

import numpy as np

from tests.trade.references.expected import Expected

SLUG = "polygon-frame"


def draw(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {
        "sides": random.randint(3, 24),
        "size": random.randint(160, 1600) / 16,
        "size_is": random.choice(["side", "flats", "corners"]),
        "edge": random.choice(["outside", "inside"]),
        "trim_width": random.randint(8, 96) / 16,
    }
    if random.random() < 0.4:
        inputs |= {"rabbeted": True, "rabbet": 0.375, "rabbet_play": random.randint(0, 4) / 16}
    return inputs


def ring(sides: int, inradius: float) -> Any:
    """Corners of a regular outline whose flats lie `inradius` from the middle."""
    corners = np.exp(2j * np.pi * np.arange(sides) / sides)
    to_flat = abs(corners[0] + corners[1]) / 2
    return corners * inradius / to_flat


def side(outline: Any) -> float:
    return float(abs(outline[1] - outline[0]))


def to_flat(outline: Any) -> float:
    return float(abs(outline[1] + outline[0]) / 2)


def expect(inputs: dict[str, Any]) -> Expected | None:
    sides, width = inputs["sides"], inputs["trim_width"]
    unit = ring(sides, 1.0)
    sizes = {"side": side(unit), "flats": 2.0, "corners": 2 * float(abs(unit[0]))}
    given = inputs["size"] / sizes[inputs["size_is"]]
    inner = given if inputs["edge"] == "inside" else given - width
    if inner <= 0:
        return None
    outer, hole = ring(sides, inner + width), ring(sides, inner)
    joint, along = outer[0] - hole[0], outer[1] - outer[0]
    between = abs(np.degrees(np.angle(along / joint)))
    figures = {
        "long": side(outer),
        "short": side(hole),
        "saw": float(abs(between - 90)),
        "corner": float(180 - abs(np.degrees(np.angle((outer[2] - outer[1]) / along)))),
        "flats_outside": 2 * to_flat(outer),
        "flats_inside": 2 * to_flat(hole),
        "corners_outside": 2 * float(abs(outer[0])),
        "corners_inside": 2 * float(abs(hole[0])),
        "run": float(sum(abs(np.roll(outer, -1) - outer))),
    }
    if sides % 2:
        middle = (outer[0] + outer[1]) / 2
        figures["flat_to_corner_outside"] = float(max(abs(outer - middle)))
    if "rabbeted" in inputs:
        if inputs["rabbet"] >= width:
            return None
        glass = ring(sides, inner + inputs["rabbet"] - inputs["rabbet_play"] / 2)
        figures |= {"glass_side": side(glass), "glass_flats": 2 * to_flat(glass)}
    return Expected(
        figures=figures,
        pieces=[{"count": sides, "length": side(outer), "short_point": side(hole)}],
        words=(f"{sides} pieces", "outer edge" if inputs["edge"] == "outside" else "inner edge"),
    )
