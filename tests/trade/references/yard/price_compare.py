"""A truckload of each: what it costs as it is asked for, over what of it ends up in the work.

In fractions. Stock thinner than an inch is billed as an inch: NHLA rules as a dealer quotes them.
"""

from fractions import Fraction
from random import Random
from typing import Any

from tests.trade.references.expected import Expected

SLUG = "price-compare"
UNITS = ("board-foot", "lineal-foot", "piece", "square-foot", "square-meter")
METER = Fraction(10000, 254)
TRUCKLOAD = 120
"""Pieces of each offer; any number would do."""


def draw(random: Random) -> dict[str, Any]:
    offers = []
    for _ in range(random.randint(2, 5)):
        offer: dict[str, Any] = {
            "price": random.randint(100, 9000) / 100,
            "per": random.choice(UNITS),
            "thickness": random.choice([0.5, 0.75, 1, 1.25, 2]),
            "width": random.randint(4, 96) / 2,
            "length": random.randint(24, 192),
        }
        if random.random() < 0.5:
            offer["waste"] = random.randint(0, 60)
        offers.append(offer)
    inputs = {"offers": offers, "compare": random.choice([u for u in UNITS if u != "piece"])}
    return inputs | ({"amount": random.randint(1, 500)} if random.random() < 0.5 else {})


def held(unit: str, offer: dict[str, Any]) -> Fraction:
    """Return how many of a unit a truckload is billed for, or holds."""
    thick, wide, long = (Fraction(offer[name]) for name in ("thickness", "width", "length"))
    one = {
        "board-foot": max(thick, Fraction(1)) * wide * long / 144,
        "lineal-foot": long / 12,
        "piece": Fraction(1),
        "square-foot": wide * long / 144,
        "square-meter": wide * long / METER**2,
    }[unit]
    return TRUCKLOAD * one


def expect(inputs: dict[str, Any]) -> Expected | None:
    unit, prices = inputs["compare"], []
    for at, offer in enumerate(inputs["offers"]):
        paid = Fraction(offer["price"]) * held(offer["per"], offer)
        used = held(unit, offer) * (100 - offer.get("waste", 0)) / 100
        prices.append((float(paid / used), at))
    prices.sort()
    if prices[-1][0] > 10000 * prices[0][0]:
        return None
    best, second = prices[0][0], prices[1][0]
    figures: dict[str, Any] = {
        "best": f"Offer {prices[0][1] + 1}",
        "best_price": best,
        "difference": second - best,
        "difference_percent": (second / best - 1) * 100,
    }
    if len(prices) > 2:
        figures["spread"] = prices[-1][0] - best
    if "amount" in inputs:
        figures |= {"total": inputs["amount"] * best, "saving": inputs["amount"] * (second - best)}
    return Expected(figures=figures, tolerance=1e-6)
