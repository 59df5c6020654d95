"""Whole cans, and what they cost."""

from ...finish.spreading import whole_cans
from ...tool import Answer, Given
from .asked import CANS, FIT


def add_cans(answer: Answer, given: Given, paint: float) -> str:
    """Add how many cans hold the paint; return them in words: ``2 gallon cans``."""
    _, label, size = _can(given.text("can"), paint)
    cans = whole_cans(paint, size)
    name = f"{label} can{'' if cans == 1 else 's'}"
    answer.count("cans", cans, label=name[:1].upper() + name[1:], short=name, lead=True)
    answer.amount("volume", paint, "volume", lead=True)
    answer.amount("bought", cans * size, "volume")
    price = given.maybe("can_price")
    if price is not None:
        answer.money("cost", cans * price)
    return f"{cans} {name}"


def _can(named: str, paint: float) -> "tuple[str, str, float]":
    if named == FIT:
        named = "quart" if whole_cans(paint, 1 / 4) <= 2 else "gallon"
    return next(can for can in CANS if can[0] == named)
