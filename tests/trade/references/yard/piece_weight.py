"""A block taken apart into dry wood and water, and people added until each has little enough.

Ovendry gravity is found by bisection from that at 12 percent; the block's dry volume from the
swelling of the National Design Specification's form, as reprinted. Gravities: Wood Handbook as
reprinted; panels by published weights of a 3/4 in 4x8 sheet; glass by EN 572-1.
"""

from random import Random
from typing import Any

from scipy.optimize import brentq

from tests.trade.references.expected import Expected

SLUG = "piece-weight"
WATER = 62.43  # Pounds to the cubic foot.
GRAVITIES = {
    "alder-red": 0.41, "ash-white": 0.60, "basswood": 0.37, "beech": 0.64, "cherry": 0.50,
    "maple-red": 0.54, "pine-ponderosa": 0.40, "walnut": 0.55,
}  # fmt: skip
SHEET = 3 / 4 * 48 * 96
SHEETS = {"mdf": 97, "particleboard": 85, "plywood": 60}
KILOGRAM = 1 / 0.45359237
ONE_PERSON = 51  # Pounds: NIOSH publication 94-110.


def draw(random: Random) -> dict[str, Any]:
    things = [thing(random) for _ in range(random.randint(1, 5))]
    return {"things": things, "lifted": random.choice(["one", "leaf", "pieces"])}


def thing(random: Random) -> dict[str, Any]:
    made_of = random.choice(["wood", "wood", "wood", *SHEETS, "glass", "pounds", "kilograms"])
    row: dict[str, Any] = {"made_of": made_of, "count": random.randint(1, 6)}
    if made_of in ("pounds", "kilograms"):
        return row | {made_of: random.randint(1, 80)}
    row |= {"thickness": random.randint(4, 32) / 16, "width": random.randint(8, 400) / 8}
    row["length"] = random.randint(40, 800) / 8
    if made_of == "wood":
        row |= {"species": random.choice([*GRAVITIES]), "moisture": random.randint(0, 60)}
    return row


def swollen(dry: float, moisture: float) -> float:
    """Return the volume of what was a cubic foot when ovendry, of dry gravity `dry`."""
    return 1 + 0.009 * dry * min(moisture, 30)


def pounds(row: dict[str, Any]) -> float:
    """Return what one of a row weighs."""
    if row["made_of"] == "pounds":
        return float(row["pounds"])
    if row["made_of"] == "kilograms":
        return float(row["kilograms"] * KILOGRAM)
    inches = row["thickness"] * row["width"] * row["length"]
    if row["made_of"] == "glass":
        return float(inches * 0.0254**3 * 2500 * KILOGRAM)
    if row["made_of"] in SHEETS:
        return float(inches / SHEET * SHEETS[row["made_of"]])
    listed = GRAVITIES[row["species"]]
    dry = float(brentq(lambda whole: whole / swollen(whole, 12) - listed, listed, 1, xtol=1e-14))
    dry_wood = inches / 1728 / swollen(dry, row["moisture"]) * dry * WATER
    return float(dry_wood + dry_wood * row["moisture"] / 100)


def expect(inputs: dict[str, Any]) -> Expected:
    each = [pounds(row) for row in inputs["things"]]
    total = sum(one * row["count"] for one, row in zip(each, inputs["things"], strict=True))
    heaviest, by_piece = max(each), inputs["lifted"] == "pieces"
    lift = heaviest if by_piece else total
    people = 1
    while people * ONE_PERSON < lift:
        people += 1
    leaf = inputs["lifted"] == "leaf"
    figures = {"leaf_weight" if leaf else "weight": total, "people": people}
    if by_piece:
        figures["heaviest"] = heaviest
    return Expected(figures=figures)
