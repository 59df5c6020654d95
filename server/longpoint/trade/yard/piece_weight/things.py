"""What lies on the scale: one thing after another, by its size and stuff or by its weight."""

import math

from ...tables.weights import PANELS, panel_density, wood_density, wood_named

POUNDS_PER_KILOGRAM = 1 / 0.45359237
ONE_PERSON = 51.0
"""Pounds: the most that the NIOSH lifting equation recommends for one person at an ideal lift."""

_CUBIC_INCHES = 1728.0  # In a cubic foot.


class Thing:
    """Some things alike: what they are and what they weigh, in inches and pounds.

    Attributes
    ----------
    tag : str
        Its number on the list.
    each, count : float, int
        Weight of one, and how many there are.
    density, size : float, tuple or None
        Pounds per cubic foot; thickness, width, length. None where the weight itself is known.
    """

    def __init__(self, tag: str, name: str, count: int, made_of: str, species: str) -> None:
        self.tag = tag
        self.count = count
        self.made_of = made_of
        self.wood = wood_named(species) if made_of == "wood" else None
        self.name = name or self._material()
        self.moisture: float | None = None
        self.density: float | None = None
        self.size: tuple[float, float, float] | None = None
        self.each = 0.0

    def weighed(self, pounds: float) -> "Thing":
        """Set the weight of one as the scale says."""
        self.each = pounds
        return self

    def measured(self, size: "tuple[float, float, float]", moisture: "float | None") -> "Thing":
        """Set the weight of one by its size and, of wood, its moisture in percent."""
        self.size = size
        if self.wood is None:
            self.density = panel_density(self.made_of)
        else:
            self.moisture = moisture or 0.0
            self.density = wood_density(self.wood.gravity, self.moisture)
        self.each = self.density * size[0] * size[1] * size[2] / _CUBIC_INCHES
        return self

    def _material(self) -> str:
        if self.wood is not None:
            return str(self.wood.label)
        return {value: label for value, label, _ in PANELS}.get(self.made_of, "Hardware")

    @property
    def weight(self) -> float:
        """Pounds of all of them."""
        return self.each * self.count

    @property
    def is_panel(self) -> bool:
        """Tell whether it is sawn from a sheet, or glass."""
        return self.made_of in [value for value, _, _ in PANELS]


def people(pounds: float) -> int:
    """Return how many lift a weight, each no more than one person should.

    >>> people(51), people(51.1), people(2)
    (1, 2, 1)
    """
    return max(1, int(math.ceil(pounds / ONE_PERSON - 1e-9)))
