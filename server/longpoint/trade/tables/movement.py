"""How much woods shrink and swell: change coefficients and total shrinkage by species.

Sources. Coefficients: Wood Handbook (USDA Forest Products Laboratory, FPL-GTR-190), Table 13-5,
`READ` in a reprint; `CHECKED` rows were recalled and reproduce from shrinkage by the rule of
`coefficient_of`, which 66 rows read there follow; `MEMORY` rows were recalled and not confirmed.
`FLOORING`: tangential only, lists of the flooring trade after Agriculture Handbook 72.
Shrinkage from green to ovendry: the same book, Table 4-3, `READ` or from `MEMORY`.
Plywood: 0.2 percent from ovendry to fiber saturation, the APA's figure as a panel makers' page
prints it. MDF: 0.05 percent for each percent of moisture, European MDF makers' pages.
"""

from collections import namedtuple

from .species import SPECIES

READ, CHECKED, MEMORY, FLOORING = "read", "checked", "memory", "flooring"

Shrinkage = namedtuple("Shrinkage", ("radial", "tangential", "seen"))
"""Percent of the green size lost from green to ovendry, and whether it was read."""

Wood = namedtuple("Wood", ("value", "label", "radial", "tangential", "seen", "shrinkage"))
"""A species: name in the API, label, change of size per percent of moisture across the growth
(radial, None where no list has it) and along it (tangential), where that was seen, and total
shrinkage, None where none was found that fits these coefficients."""

_MOVES = {
    "alder-red": (0.00151, 0.00256, READ, Shrinkage(4.4, 7.3, READ)),
    "ash-black": (0.00172, 0.00274, READ, Shrinkage(5.0, 7.8, READ)),
    "ash-green": (0.00169, 0.00274, READ, None),
    "ash-white": (0.00169, 0.00274, READ, Shrinkage(4.9, 7.8, READ)),
    "aspen": (0.00119, 0.00234, READ, Shrinkage(3.5, 6.7, READ)),
    "basswood": (0.00230, 0.00330, READ, Shrinkage(6.6, 9.3, READ)),
    "beech": (0.00190, 0.00431, READ, Shrinkage(5.5, 11.9, READ)),
    "birch-paper": (0.00219, 0.00304, READ, Shrinkage(6.3, 8.6, READ)),
    "birch-sweet": (0.00256, 0.00338, READ, None),
    "birch-yellow": (0.00256, 0.00338, READ, Shrinkage(7.3, 9.5, READ)),
    "butternut": (0.00116, 0.00223, READ, Shrinkage(3.4, 6.4, READ)),
    "cherry": (0.00126, 0.00248, READ, Shrinkage(3.7, 7.1, READ)),
    "chestnut": (0.00116, 0.00234, READ, Shrinkage(3.4, 6.7, READ)),
    "cottonwood": (0.00133, 0.00327, READ, Shrinkage(3.9, 9.2, READ)),
    "elm-american": (0.00144, 0.00338, READ, Shrinkage(4.2, 9.5, READ)),
    "elm-slippery": (0.00169, 0.00315, READ, Shrinkage(4.9, 8.9, READ)),
    "hackberry": (0.00165, 0.00315, READ, Shrinkage(4.8, 8.9, READ)),
    "hickory-pecan": (0.00169, 0.00315, READ, Shrinkage(4.9, 8.9, READ)),
    "hickory-pignut": (0.00259, 0.00411, MEMORY, None),
    "hickory-shagbark": (0.00259, 0.00411, MEMORY, None),
    "hickory-true": (0.00259, 0.00411, MEMORY, None),
    "honeylocust": (0.00144, 0.00230, READ, None),
    "locust-black": (0.00158, 0.00252, READ, None),
    "magnolia": (0.00187, 0.00230, READ, None),
    "maple-bigleaf": (0.00126, 0.00248, READ, None),
    "maple-black": (0.00165, 0.00353, READ, None),
    "maple-red": (0.00137, 0.00289, READ, Shrinkage(4.0, 8.2, MEMORY)),
    "maple-silver": (0.00102, 0.00252, READ, Shrinkage(3.0, 7.2, MEMORY)),
    "maple-sugar": (0.00165, 0.00353, READ, Shrinkage(4.8, 9.9, MEMORY)),
    "oak-live": (0.00230, 0.00338, READ, None),
    "oak-overcup": (0.00183, 0.00462, READ, None),
    "oak-red": (0.00158, 0.00369, READ, None),
    "oak-white": (0.00180, 0.00365, READ, None),
    "persimmon": (0.00278, 0.00403, READ, Shrinkage(7.9, 11.2, READ)),
    "poplar-yellow": (0.00158, 0.00289, CHECKED, Shrinkage(4.6, 8.2, READ)),
    "sassafras": (0.00137, 0.00216, READ, Shrinkage(4.0, 6.2, READ)),
    "sweetgum": (0.00183, 0.00365, READ, Shrinkage(5.3, 10.2, READ)),
    "sycamore": (0.00172, 0.00296, READ, Shrinkage(5.0, 8.4, READ)),
    "tupelo-black": (0.00176, 0.00308, READ, Shrinkage(5.1, 8.7, READ)),
    "walnut": (0.00190, 0.00274, READ, Shrinkage(5.5, 7.8, READ)),
    "baldcypress": (0.00130, 0.00216, CHECKED, Shrinkage(3.8, 6.2, MEMORY)),
    "cedar-alaska": (0.00095, 0.00208, CHECKED, Shrinkage(2.8, 6.0, READ)),
    "cedar-eastern-red": (0.00106, 0.00162, CHECKED, Shrinkage(3.1, 4.7, READ)),
    "cedar-incense": (0.00112, 0.00180, CHECKED, Shrinkage(3.3, 5.2, READ)),
    "cedar-northern-white": (0.00101, 0.00229, CHECKED, Shrinkage(2.2, 4.9, READ)),
    "cedar-port-orford": (0.00158, 0.00241, CHECKED, Shrinkage(4.6, 6.9, READ)),
    "cedar-western-red": (0.00111, 0.00234, CHECKED, Shrinkage(2.4, 5.0, READ)),
    "douglas-fir": (0.00165, 0.00267, CHECKED, Shrinkage(4.8, 7.6, READ)),
    "douglas-fir-interior": (0.00130, 0.00241, CHECKED, Shrinkage(3.8, 6.9, READ)),
    "fir-white": (0.00112, 0.00245, CHECKED, Shrinkage(3.3, 7.0, READ)),
    "hemlock-eastern": (0.00102, 0.00237, CHECKED, None),
    "hemlock-western": (0.00144, 0.00274, CHECKED, Shrinkage(4.2, 7.8, MEMORY)),
    "larch-western": (0.00155, 0.00323, CHECKED, None),
    "pine-eastern-white": (0.00071, 0.00212, CHECKED, Shrinkage(2.1, 6.1, MEMORY)),
    "pine-loblolly": (0.00165, 0.00259, CHECKED, Shrinkage(4.8, 7.4, MEMORY)),
    "pine-lodgepole": (0.00148, 0.00234, CHECKED, None),
    "pine-longleaf": (0.00176, 0.00263, CHECKED, Shrinkage(5.1, 7.5, MEMORY)),
    "pine-ponderosa": (0.00133, 0.00216, CHECKED, Shrinkage(3.9, 6.2, MEMORY)),
    "pine-red": (0.00130, 0.00252, CHECKED, None),
    "pine-shortleaf": (0.00158, 0.00271, CHECKED, None),
    "pine-sugar": (0.00099, 0.00194, CHECKED, Shrinkage(2.9, 5.6, MEMORY)),
    "pine-western-white": (0.00141, 0.00259, CHECKED, None),
    "redwood-old": (0.00120, 0.00205, CHECKED, Shrinkage(2.6, 4.4, MEMORY)),
    "redwood-young": (0.00101, 0.00229, CHECKED, Shrinkage(2.2, 4.9, MEMORY)),
    "spruce-engelmann": (0.00130, 0.00248, CHECKED, None),
    "spruce-sitka": (0.00148, 0.00263, CHECKED, Shrinkage(4.3, 7.5, MEMORY)),
    "brazilian-cherry": (None, 0.00300, FLOORING, None),
    "jarrah": (None, 0.00396, FLOORING, None),
    "khaya": (0.00141, 0.00201, MEMORY, None),
    "mahogany": (0.00172, 0.00238, MEMORY, None),
    "merbau": (None, 0.00158, FLOORING, None),
    "mesquite": (None, 0.00129, FLOORING, None),
    "padauk": (None, 0.00180, FLOORING, None),
    "purpleheart": (None, 0.00212, FLOORING, None),
    "teak": (0.00101, 0.00186, MEMORY, None),
    "wenge": (None, 0.00201, FLOORING, None),
}
# One row of Table 13-5 stands for white and green ash, for yellow and sweet birch, for sugar and
# black maple, and for all true hickories; their shrinkages differ, so only the row's own is here.

WOODS = [
    Wood(
        each.value,
        each.label,
        _MOVES[each.value][0],
        _MOVES[each.value][1],
        _MOVES[each.value][2],
        _MOVES[each.value][3],
    )
    for each in SPECIES
    if each.value in _MOVES
]
"""Every species whose movement is known, in the order of `species`."""

SATURATED = 30.0
"""Percent of moisture where most woods begin to shrink."""
LATE = 22.0
"""Percent where a few, rich in extractives, begin to."""
LATE_WOODS = ("cedar-northern-white", "cedar-western-red", "redwood-old", "redwood-young")

CONFLICTS = {"mahogany": (3.0, 4.1), "khaya": (2.5, 4.5)}
"""Shrinkages, radial and tangential, of Table 4-4 as read: far smaller than the coefficients."""

SHEETS = {"plywood": 0.002 / SATURATED, "mdf": 0.0005}
"""Change of size per percent of moisture, in length and width alike."""


def wood_named(value: str) -> "Wood | None":
    """Return a species by its name in the API; None for what is no species."""
    found = [wood for wood in WOODS if wood.value == value]
    return found[0] if found else None


def begins_to_shrink(value: str) -> float:
    """Return the percent of moisture below which a species shrinks.

    >>> begins_to_shrink("cherry"), begins_to_shrink("redwood-old")
    (30.0, 22.0)
    """
    return LATE if value in LATE_WOODS else SATURATED


def coefficient_of(shrinkage: float, begins: float) -> float:
    """Return the change per percent of moisture that a total shrinkage in percent stands for.

    Shrinkage is straight from `begins` down; the coefficient is of the size at 10 percent.

    >>> from longpoint.trade.lengths import show_number
    >>> show_number(coefficient_of(9.9, 30), 5), show_number(coefficient_of(5.0, 22), 5)
    ('0.00353', '0.00234')
    """
    total = shrinkage / 100
    return total / (begins - (begins - 10) * total)


def shrinkage_of(coefficient: float, begins: float) -> float:
    """Return the total shrinkage in percent that a coefficient stands for.

    >>> from longpoint.trade.lengths import show_number
    >>> show_number(shrinkage_of(0.00353, 30), 1)
    '9.9'
    """
    return 100 * begins * coefficient / (1 + (begins - 10) * coefficient)
