"""How a width changes as its moisture does.

Source: Wood Handbook (USDA Forest Products Laboratory), chapter 13: change = width x coefficient x
difference of moisture, good from 6 to 14 percent (as an extension service quotes it); beyond that
by total shrinkage, straight from where shrinking begins down to ovendry.
"""

from ...refusal import Refusal
from ...tables.movement import SHEETS, begins_to_shrink, shrinkage_of, wood_named

DRY_END, DAMP_END = 6.0, 14.0
"""Percent of moisture between which the coefficients hold."""

SCATTER = 0.2
"""Of the change: how far one board may be from its species' mean."""

_HAIR = 1e-9
_CUTS = {"flat-sawn": 1, "quarter-sawn": 0}


class Moving:
    """One width on its way from one moisture to another; inches and percent.

    Parameters
    ----------
    species : str
        A wood of the table, ``plywood``, ``mdf``, or ``other`` with its own coefficient.
    cut : str
        ``flat-sawn`` or ``quarter-sawn``.
    own : float or None
        The coefficient of another wood, of the width per percent of moisture.

    Raises
    ------
    Refusal
        On `cut`: no list has this wood's movement across the growth.
    """

    def __init__(
        self, species: str, cut: str, own: "float | None", span: "tuple[float, float]", width: float
    ) -> None:
        self.species = species
        self.cut = cut
        self.wood = wood_named(species)
        self.width = width
        self.start, self.end = span
        self.begins = begins_to_shrink(species)
        self.coefficient = self._coefficient(own)

    def _coefficient(self, own: "float | None") -> float:
        if self.wood is None:
            return SHEETS[self.species] if own is None else own
        found = (self.wood.radial, self.wood.tangential)[_CUTS[self.cut]]
        if found is None:
            raise Refusal(
                "cut",
                f"No list has the movement of quarter-sawn {self.wood.label}: choose flat-sawn, "
                "which moves more.",
            )
        return float(found)

    def is_within(self) -> bool:
        """Tell whether both moistures lie where the coefficients hold."""
        low, high = min(self.start, self.end), max(self.start, self.end)
        return low >= DRY_END - _HAIR and high <= DAMP_END + _HAIR

    def is_by_shrinkage(self) -> bool:
        """Tell whether the change is figured from the total shrinkage."""
        return self.wood is not None and not self.is_within()

    def shrinkage(self) -> float:
        """Return the total shrinkage in percent, from the table or from the coefficient."""
        printed = self.wood.shrinkage if self.wood is not None else None
        if printed is None:
            return shrinkage_of(self.coefficient, self.begins)
        return float((printed.radial, printed.tangential)[_CUTS[self.cut]])

    def change(self) -> float:
        """Return what the width gains, in inches; less than 0 where it shrinks."""
        start, end = min(self.start, self.begins), min(self.end, self.begins)
        if not self.is_by_shrinkage():
            return self.width * self.coefficient * (end - start)
        return self.width * (end - start) / (self.begins / self.shrinkage() * 100 - self._dry())

    def _dry(self) -> float:
        """Return how far below the beginning of shrinkage the width was measured, in percent."""
        return self.begins - min(self.start, self.begins)

    def spread(self) -> float:
        """Return how much more than `change` one board may move, as a part of it."""
        return 0.0 if self.species in SHEETS else SCATTER

    def safe(self) -> float:
        """Return half of what the worst board moves, in inches: what each edge does, unsigned."""
        return abs(self.change()) / 2 * (1 + self.spread())

    def to(self, moisture: float) -> "Moving":
        """Return the same width on its way to another moisture."""
        return self._like((self.start, moisture), self.width)

    def sized(self, width: float) -> "Moving":
        """Return another width of the same wood on the same way."""
        return self._like((self.start, self.end), width)

    def _like(self, span: "tuple[float, float]", width: float) -> "Moving":
        own = self.coefficient if self.species == "other" else None
        return Moving(self.species, self.cut, own, span, width)
