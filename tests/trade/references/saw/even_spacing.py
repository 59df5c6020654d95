"""A system of equations in fractions: so many gaps and items, laid end to end, make the length.

The number of items for a largest gap is found by counting up from the least.
"""

from fractions import Fraction
from random import Random
from typing import Any

import sympy

from tests.trade.references.expected import Expected

SLUG = "even-spacing"
MOST = 200


def draw(random: Random) -> dict[str, Any]:
    inputs: dict[str, Any] = {
        "overall": random.randint(16 * 2, 16 * 200) / 16,
        "item_width": random.choice([0, random.randint(1, 16 * 6) / 16]),
        "ends": random.choice(["gap", "half", "item"]),
        "mark": random.choice(["center", "edge", "both"]),
    }
    if random.random() < 0.6:
        inputs["count"] = random.randint(1, 14)
    else:
        inputs["largest_gap"] = random.randint(8, 16 * 12) / 16
    return inputs


def laid(inputs: dict[str, Any], count: int) -> list[tuple[Fraction, Fraction]] | None:
    """Return left and right edge of each item, None where they leave no gap."""
    item = Fraction(inputs["item_width"])
    at_end = {"gap": Fraction(1), "half": Fraction(1, 2), "item": Fraction(0)}[inputs["ends"]]
    gap = sympy.Symbol("gap")
    walked = 2 * sympy.Rational(at_end) * gap + (count - 1) * gap + count * sympy.Rational(item)
    found = sympy.solve(sympy.Eq(walked, sympy.Rational(Fraction(inputs["overall"]))), gap)
    if not found or found[0] <= 0:
        return None
    wide = Fraction(int(found[0].p), int(found[0].q))
    edges, at = [], at_end * wide
    for _ in range(count):
        edges.append((at, at + item))
        at += item + wide
    return edges


def gap_of(inputs: dict[str, Any], count: int) -> Fraction | None:
    item = Fraction(inputs["item_width"])
    shares = {"gap": count + 1, "half": count, "item": count - 1}[inputs["ends"]]
    return (Fraction(inputs["overall"]) - count * item) / shares if shares else None


def count_of(inputs: dict[str, Any]) -> int | None:
    if "count" in inputs:
        return int(inputs["count"])
    count = 2 if inputs["ends"] == "item" else 1
    largest, overall = Fraction(inputs["largest_gap"]), Fraction(inputs["overall"])
    least = {"gap": largest, "half": Fraction(0), "item": -largest}[inputs["ends"]]
    if overall <= least:
        return None
    while (gap_of(inputs, count) or Fraction(0)) > largest:
        count += 1
        if count > MOST:
            return None
    return count


def expect(inputs: dict[str, Any]) -> Expected | None:
    count = count_of(inputs)
    if count is None or (count == 1 and inputs["ends"] == "item"):
        return None
    edges = laid(inputs, count)
    if edges is None:
        return None
    gap = edges[0][0] if count == 1 else edges[1][0] - edges[0][1]
    if count == 1 and inputs["ends"] == "half":
        gap = 2 * edges[0][0]
    centers = [(left + right) / 2 for left, right in edges]
    ways = {
        "center": [[center] for center in centers],
        "edge": [[left] for left, _ in edges],
        "both": [list(pair) for pair in edges],
    }
    where = inputs["mark"] if inputs["item_width"] else "center"
    marks = [
        {"tag": str(at + 1), "value": float(place)}
        for at, places in enumerate(ways[where])
        for place in places
    ]
    return Expected(
        figures={
            "gap": float(gap),
            "centers": float(gap + Fraction(inputs["item_width"])),
            "items": count,
            "first_center": float(centers[0]),
        },
        marks=marks,
        absent=() if inputs["ends"] == "half" else ("end_gap",),
    )
