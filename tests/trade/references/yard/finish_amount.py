"""Paint poured out in cubic inches: a slab of solids, the wet slab it came from, what missed.

Mixes are solved as linear equations, cans are counted one by one, cups by interpolation between
the ends of their straight lines. Cup lines: ASTM D4212 and D1200 as a maker of cups prints them.
"""

from random import Random
from typing import Any

import numpy as np

from tests.trade.references.expected import Expected

SLUG = "finish-amount"
LANDS = {
    "brush": 95, "roller": 95, "hvlp": 55, "air-assisted": 70, "airless": 45, "air-gun": 25,
}  # fmt: skip
CANS = {"half-pint": 14.4375, "pint": 28.875, "quart": 57.75, "gallon": 231, "five": 1155}
"""Cubic inches."""
ENDS = {
    "zahn-1": (35, 6.6, 80, 56.1), "zahn-2": (20, 21, 80, 231), "zahn-4": (20, 222, 80, 1110),
    "ford-3": (20, 31.0002, 100, 215.8002), "ford-4": (20, 59.7135, 100, 367.7135),
}  # fmt: skip
"""Seconds and centistokes at both ends of a cup's range."""


def draw(random: Random) -> dict[str, Any]:
    said: dict[str, Any] = {"area": random.randint(4, 9000) / 4, "coats": random.randint(1, 6)}
    said |= film(random) | {"thinner": random.choice([0, 5, 10, 25])}
    method = random.choice(["given", *LANDS])
    said["method"] = method
    if method == "given" or random.random() < 0.3:
        said["efficiency"] = random.randint(10, 100)
    if random.random() < 0.2:
        said["methods"] = [{"method": random.choice([*LANDS]), "lands": random.randint(10, 99)}]
    said |= {"can": random.choice([*CANS]), "can_price": random.choice(["", 39.5])}
    return said | two_parts(random) | cup(random)


def film(random: Random) -> dict[str, Any]:
    by = random.choice(["dry", "wet", "spread"])
    said: dict[str, Any] = {"film_by": by}
    if by == "dry":
        return said | {"dry_film": random.randint(2, 40) / 8, "solids": random.randint(12, 100)}
    if random.random() < 0.5:
        said["solids"] = random.randint(12, 100)
    if by == "wet":
        return said | {"wet_coat": random.randint(4, 80) / 8}
    return said | {"coverage": random.randint(100, 900)}


def two_parts(random: Random) -> dict[str, Any]:
    if random.random() < 0.6:
        return {}
    said: dict[str, Any] = {"parts": "2", "part_a_of": random.randint(1, 10), "part_b_of": 1}
    said["thinner_of"] = random.choice(["both", "a"])
    if random.random() < 0.5:
        said["batch"] = random.randint(4, 200)
    if random.random() < 0.5:
        said |= {"pot_life": random.randint(1, 16) / 2, "pot_life_at": 77}
        said["shop_temperature"] = random.randint(50, 110)
    return said


def cup(random: Random) -> dict[str, Any]:
    if random.random() < 0.6:
        return {}
    return {"cup": random.choice([*ENDS]), "cup_seconds": random.randint(15, 105)}


def viscosity(name: str, seconds: float) -> float | None:
    """Return centistokes along the cup's straight line; None outside its range."""
    start, low, end, high = ENDS[name]
    if not start <= seconds <= end:
        return None
    return float(np.interp(seconds, [start, end], [low, high]))


def landing(inputs: dict[str, Any]) -> float:
    if "efficiency" in inputs:
        return float(inputs["efficiency"] / 100)
    own = {row["method"]: row["lands"] for row in inputs.get("methods", [])}
    return float((LANDS | own)[inputs["method"]] / 100)


def mix(inputs: dict[str, Any]) -> tuple[float, float, float]:
    """Return the shares of part A, part B and thinner in what is sprayed."""
    thinner = inputs["thinner"] / 100
    if inputs.get("parts") != "2":
        return 1 / (1 + thinner), 0.0, thinner / (1 + thinner)
    first, second = inputs["part_a_of"], inputs["part_b_of"]
    base = [thinner, 0 if inputs["thinner_of"] == "a" else thinner, -1]
    rows = np.array([[second, -first, 0], base, [1, 1, 1]], float)
    solved = np.linalg.solve(rows, np.array([0, 0, 1.0]))
    return float(solved[0]), float(solved[1]), float(solved[2])


def one_coat(inputs: dict[str, Any], in_it: float) -> tuple[float, float | None]:
    """Return the cubic inches of paint that lie on the work after a coat, and those of solids."""
    ground = inputs["area"] * 144
    solids = inputs["solids"] / 100 if "solids" in inputs else None
    if inputs["film_by"] == "dry":
        dry = ground * inputs["dry_film"] / 1000
        return dry / solids, dry
    if inputs["film_by"] == "wet":
        paint = ground * inputs["wet_coat"] / 1000 * in_it
    else:
        paint = inputs["area"] / inputs["coverage"] * 231
    return paint, None if solids is None else paint * solids


def expect(inputs: dict[str, Any]) -> Expected | None:
    figures: dict[str, Any] = {}
    if "cup" in inputs:
        thick = viscosity(inputs["cup"], inputs["cup_seconds"])
        if thick is None:
            return None
        figures["viscosity"] = thick
    shares = mix(inputs)
    in_it = shares[0] + shares[1]
    ground = inputs["area"] * 144
    paint, dry = one_coat(inputs, in_it)
    poured = paint / landing(inputs) * inputs["coats"]
    figures["wet_film"] = paint / in_it / ground * 1000
    figures["volume"] = poured / 231
    figures["spread"] = inputs["area"] * inputs["coats"] / (poured / 231)
    cans = 1
    while cans * CANS[inputs["can"]] < poured - 1e-6:
        cans += 1
    figures |= {"cans": cans, "bought": cans * CANS[inputs["can"]] / 231}
    if inputs["can_price"]:
        figures["cost"] = cans * inputs["can_price"]
    if dry is not None:
        figures["dry_total"] = dry * inputs["coats"] / ground * 1000
    if shares[2]:
        figures["thinner_volume"] = poured / in_it * shares[2] / 231
    figures |= parts(inputs, shares, poured / in_it / inputs["coats"])
    return Expected(figures=figures, tolerance=1e-6)


def parts(
    inputs: dict[str, Any], shares: tuple[float, float, float], a_coat: float
) -> dict[str, Any]:
    if inputs.get("parts") != "2":
        return {}
    batch = inputs.get("batch", a_coat / 231 * 128)
    figures = {"part_a": batch * shares[0], "part_b": batch * shares[1]}
    if "pot_life" in inputs:
        warmer = (inputs["shop_temperature"] - inputs["pot_life_at"]) * 5 / 9
        figures["pot_life_here"] = inputs["pot_life"] * float(np.exp(-np.log(2) * warmer / 10))
    return figures
