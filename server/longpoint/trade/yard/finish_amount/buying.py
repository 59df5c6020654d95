"""Whole cans, and what they cost."""

from ...finish.spreading import whole_cans
from ...tool import Answer, Given
from .asked import CANS


def add_cans(answer: Answer, given: Given, paint: float) -> str:
    """Add how many cans hold the paint; return them in words: ``2 gallon cans``."""
    _, label, size = next(can for can in CANS if can[0] == given.text("can"))
    cans = whole_cans(paint, size)
    answer.count("cans", cans)
    answer.amount("bought", cans * size, "volume")
    price = given.maybe("can_price")
    if price is not None:
        answer.money("cost", cans * price)
    return f"{cans} {label} can{'' if cans == 1 else 's'}"
