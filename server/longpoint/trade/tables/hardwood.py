"""Hardwood lumber: thickness by the quarter, rough and surfaced.

Sources, all seen as reprints: NHLA Rules for the Measurement and Inspection of Hardwood and
Cypress, standard thicknesses of rough and surfaced lumber; 2019 edition, page 5, paragraph 9, for
miscut lumber, and the kiln-dried allowance, as NHLA quotes them. The 10/4 surfaced thickness
rests on memory; it fits the rule of the rows about it, 1/4 under rough. Inches throughout.
"""

from collections import namedtuple

Quarter = namedtuple("Quarter", ("name", "rough", "s1s", "s2s"))
"""A thickness as the yard says it, rough, surfaced one side (None: not listed) and two sides."""

QUARTERS = (
    Quarter("3/8", 3 / 8, 1 / 4, 3 / 16),
    Quarter("1/2", 1 / 2, 3 / 8, 5 / 16),
    Quarter("5/8", 5 / 8, 1 / 2, 7 / 16),
    Quarter("3/4", 3 / 4, 5 / 8, 9 / 16),
    Quarter("4/4", 1, 7 / 8, 13 / 16),
    Quarter("5/4", 1 + 1 / 4, 1 + 1 / 8, 1 + 1 / 16),
    Quarter("6/4", 1 + 1 / 2, 1 + 3 / 8, 1 + 5 / 16),
    Quarter("7/4", 1 + 3 / 4, None, 1 + 1 / 2),
    Quarter("8/4", 2, 1 + 13 / 16, 1 + 3 / 4),
    Quarter("10/4", 2 + 1 / 2, None, 2 + 1 / 4),
    Quarter("12/4", 3, 2 + 13 / 16, 2 + 3 / 4),
    Quarter("14/4", 3 + 1 / 2, None, 3 + 1 / 4),
    Quarter("16/4", 4, 3 + 13 / 16, 3 + 3 / 4),
)

FROM_MEMORY = ("10/4",)
"""Names of the rows whose surfaced thickness was not seen in print."""

_MISCUT = ((3 / 4, 3 / 16), (5 / 4, 1 / 4), (7 / 4, 3 / 8), (3, 1 / 2), (6, 5 / 8))


def kiln_dried(rough: float) -> float:
    """Return the least thickness of kiln-dried rough stock: it may be scant of its quarter.

    >>> kiln_dried(1), kiln_dried(2)
    (0.9375, 1.875)
    """
    return rough - (1 / 16 if rough <= 7 / 4 else 1 / 8)


def thick_spots(rough: float) -> float:
    """Return how much a rough board may vary in thickness, upward, before it is miscut.

    >>> thick_spots(1), thick_spots(2)
    (0.25, 0.5)
    """
    return next(over for most, over in _MISCUT if rough <= most)


def surfacing(rough: float) -> float:
    """Return what surfacing two sides takes off, by the table: 3/16, from 7/4 on 1/4."""
    return 3 / 16 if rough <= 3 / 2 else 1 / 4
