"""Seconds of a cup as viscosity, and the same liquid in the other cups."""

from ...finish.cups import CUPS, Cup, cup_named, is_in_range, seconds_in, viscosity
from ...lengths import show_number
from ...refusal import Refusal
from ...tool import Answer, Given


def add_viscosity(answer: Answer, given: Given) -> None:
    """Add the viscosity that a cup tells.

    Raises
    ------
    Refusal
        So few or so many seconds are out of the cup's range.
    """
    seconds = given.maybe("cup_seconds")
    if seconds is None:
        return
    cup = cup_named(given.text("cup"))
    if not is_in_range(cup, seconds):
        way = "finer" if seconds < cup.low else "larger"
        raise Refusal(
            "cup_seconds",
            f"{cup.label} tells {show_number(cup.low)} to {show_number(cup.high)} s: "
            f"{show_number(seconds)} s is out of its range. Take a cup with a {way} hole.",
        )
    thick = viscosity(cup, seconds)
    answer.number("viscosity", thick, "cSt", places=1)
    rows = [[each.label, _seconds(seconds_in(each, thick), each)] for each in CUPS]
    answer.table("The same liquid in", ["Cup", "Runs for"], rows, CUPS.index(cup))
    answer.note(
        "A cup tells the truth of liquids that stirring doesn't thin: most latex is thinned by "
        "it, and its seconds mislead. Use the cup at 77 °F (25 °C)."
    )


def _seconds(seconds: float, cup: Cup) -> str:
    shown = show_number(seconds, 1) + " s"
    return shown if is_in_range(cup, seconds) else "out of its range"
