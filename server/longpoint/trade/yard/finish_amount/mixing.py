"""Thinner and two-part mixes, by volume, and how long a mix lasts."""

from ...finish.spreading import mixed_parts, pot_life
from ...tool import Answer, Given

OUNCES = 128


def thinned_by(given: Given) -> float:
    """Return the thinner's share of the paint, both parts of it together."""
    share = given.number("thinner") / 100
    if given.text("thinner_of") == "a":
        first, second = given.number("part_a_of"), given.number("part_b_of")
        share *= first / (first + second)
    return share


def add_mix(answer: Answer, given: Given, paint: float, thinned: float) -> None:
    """Add the thinner and, of two parts, how much of each is mixed at once."""
    if thinned:
        answer.amount("thinner_volume", paint * thinned, "volume")
    if given.text("parts") != "2":
        return
    batch = given.maybe("batch")
    if batch is None:
        batch = OUNCES * paint * (1 + thinned) / given.count("coats")
    parts = (given.number("part_a_of"), given.number("part_b_of"))
    first, second, thinner = mixed_parts(batch, parts, thinned)
    answer.amount("part_a", first, "mixed")
    answer.amount("part_b", second, "mixed")
    if thinned:
        answer.amount("thinner_part", thinner, "mixed")
    _pot_life(answer, given)


def _pot_life(answer: Answer, given: Given) -> None:
    hours = given.maybe("pot_life")
    if hours is None:
        return
    said_at, here = given.number("pot_life_at"), given.number("shop_temperature")
    lasts = pot_life(hours, said_at, here)
    answer.number("pot_life_here", lasts, "h")
    answer.note(
        "Pot life halves with each 18 °F (10 °C) warmer; a big batch warms itself and goes off "
        "sooner. Some mixes rest about 30 minutes before use: the label says."
    )
    if lasts > hours:
        answer.note("A cooler shop may not give it longer: trust no more than the label's time.")
