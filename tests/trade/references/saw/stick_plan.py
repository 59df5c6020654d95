"""Brute force: every way to part the pieces into sets, each set out of its cheapest stick."""

from functools import cache
from random import Random
from typing import Any

from tests.trade.references.expected import Expected

SLUG = "stick-plan"

PER_INCH = 32
LENGTHS = (48, 60, 72, 84, 96, 120, 144, 168, 192)


def draw(random: Random) -> dict[str, Any]:
    sold = random.sample(LENGTHS, random.choice((1, 1, 2, 3)))
    priced = random.random() < 0.5
    sticks: list[dict[str, Any]] = [{"length": length} for length in sold]
    if priced:
        for stick in sticks:
            stick["price"] = round(stick["length"] * random.uniform(0.08, 0.14), 2)
    if random.random() < 0.4:
        sticks.append({"length": random.randint(20, 80), "count": 1})
    inputs: dict[str, Any] = {
        "pieces": pieces(random, max(sold)),
        "sticks": sticks,
        "kerf": random.choice((0, 3, 4)) / PER_INCH,
    }
    if random.random() < 0.3:
        inputs["end_trim"] = random.choice((8, 16)) / PER_INCH
    return inputs


def pieces(random: Random, longest: int) -> list[dict[str, Any]]:
    rows = []
    left = random.randint(1, 8)
    while left:
        count = min(left, random.choice((1, 1, 2, 3)))
        sixteenths = random.randint(8 * 16, (longest + 2) * 16)
        if random.random() < 0.6:
            sixteenths = sixteenths // 2
        rows.append({"length": sixteenths / 16, "count": count})
        left -= count
    return rows


def expect(inputs: dict[str, Any]) -> Expected | None:
    kerf, trim = whole(inputs["kerf"]), whole(inputs.get("end_trim", 0))
    cut = [whole(row["length"]) for row in inputs["pieces"] for _ in range(row["count"])]
    sticks = [(whole(stick["length"]) - 2 * trim, stick) for stick in inputs["sticks"]]
    best = cheapest(tuple(cut), kerf, sticks)
    if best is None:
        return None
    cost, number = best
    figures: dict[str, Any] = {"sticks_used": number, "proved": "yes"}
    if any("price" in stick for _, stick in sticks):
        figures["cost"] = cost / 100
    else:
        figures["bought"] = float(cost)
    absent = ("could_save", "bought" if "cost" in figures else "cost")
    return Expected(figures=figures, absent=absent, words=("proven optimal",))


def whole(inches: float) -> int:
    return round(inches * PER_INCH)


def worth(stick: dict[str, Any], priced: bool) -> int:
    """Return what a stick costs: cents, or inches bought; what lies there costs nothing."""
    if "count" in stick:
        return 0
    return round(100 * stick["price"]) if priced else stick["length"]


def cheapest(
    cut: tuple[int, ...], kerf: int, sticks: list[tuple[int, dict[str, Any]]]
) -> tuple[int, int] | None:
    """Return the least cost and then the fewest sticks; None where a piece fits no stick."""
    priced = any("price" in stick for _, stick in sticks)
    bought = [(usable, worth(stick, priced)) for usable, stick in sticks if "count" not in stick]
    hand = [usable for usable, stick in sticks if "count" in stick]
    need = [
        sum(size for at, size in enumerate(cut) if chosen >> at & 1)
        + kerf * (chosen.bit_count() - 1)
        for chosen in range(1 << len(cut))
    ]

    @cache
    def of(left: int) -> tuple[int, int] | None:
        """Return the cheapest way for the pieces left: the first of them in every set."""
        if not left:
            return (0, 0)
        first = left & -left
        best, others = None, left - first
        chosen = others
        while True:
            fits = [cost for usable, cost in bought if usable >= need[chosen | first]]
            rest = of(others - chosen) if fits else None
            if rest is not None:
                found = (rest[0] + min(fits), rest[1] + 1)
                best = found if best is None else min(best, found)
            if not chosen:
                return best
            chosen = (chosen - 1) & others

    every = (1 << len(cut)) - 1
    plans = [of(every)]
    for usable in hand:
        for chosen in range(1, every + 1):
            rest = of(every - chosen) if need[chosen] <= usable else None
            plans.append(rest and (rest[0], rest[1] + 1))
    return min((plan for plan in plans if plan is not None), default=None)
