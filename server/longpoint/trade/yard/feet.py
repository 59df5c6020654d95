"""A length that the yard counts in feet: a bare number is feet, whatever else is measured in."""

from ..lengths import Scale, read_length, show_number
from ..measured import Number


class Feet(Number):
    """A length in feet once read: ``8``, ``8 1/2``, ``8' 6"`` or ``2440 mm``."""

    def parse(self, text: str, scale: Scale) -> float:
        return read_length(text, "ft") / 12

    def wanted(self) -> str:
        return "a length in feet"


def show_feet(feet: float) -> str:
    """Return a length in feet as the tally says it.

    >>> show_feet(8.5)
    '8.5 ft'
    """
    return show_number(feet) + " ft"
