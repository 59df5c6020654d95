"""What to buy of the trim that is sold by the foot: each section with its pieces and joints."""

from collections import namedtuple

from ...lumber.lineal import to_buy

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .casing import Casing, CasingPart

BY_THE_FOOT = ("head", "leg", "bottom", "apron", "apron return")

Section = namedtuple("Section", ("width", "thick", "kinds", "inches"))
"""Trim of one width and thickness: what it is for, and how many inches to buy."""


def sections(casing: "Casing", parts: "list[CasingPart]") -> "list[Section]":
    """Return what to buy, each section of trim once, the legs' own included."""
    sold = [part for part in parts if part.kind in BY_THE_FOOT]
    found: list[Section] = []
    for part in sold:
        size = (part.width, part.thick)
        if size in [(each.width, each.thick) for each in found]:
            continue
        alike = [each for each in sold if (each.width, each.thick) == size]
        kinds = [each.kind for each in alike]
        pieces = sum([each.count * each.length for each in alike])
        inches = to_buy(pieces, _joints(casing, kinds))
        found.append(Section(part.width, part.thick, kinds, inches))
    return found


def _joints(casing: "Casing", kinds: "list[str]") -> int:
    """Return at how many corners and returns these parts are cut to meet another piece."""
    corners = 2 * casing.ends if "leg" in kinds or "head" in kinds else 0
    return corners + (2 if "apron return" in kinds else 0)
