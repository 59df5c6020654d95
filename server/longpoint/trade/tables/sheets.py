"""Sheets: the thickness that a panel's label stands for, and how far it may stray.

Sources: PS 1-19, Structural Plywood, thickness by performance category for unsanded,
touch-sanded and overlaid panels, and tolerance of sanded panels, both as published by APA in
reprint. ANSI A208.2, MDF for interior applications, thickness tolerance, as reprinted in a
buyers' guide. Hardwood plywood: the tolerance of ANSI/HPVA HP-1 rests on memory, and "a 3/4
veneer-core sheet measures near 23/32" is common practice. Inches throughout.
"""

from collections import namedtuple

Sheet = namedtuple("Sheet", ("label", "least", "most", "usual"))
"""Nominal thickness, the least and most it may measure, and what it usually measures; inches."""

PERFORMANCE_CATEGORIES = (
    Sheet(1 / 4, 0.219, 0.281, 0.225),
    Sheet(11 / 32, 0.313, 0.375, 0.322),
    Sheet(3 / 8, 0.344, 0.406, 0.354),
    Sheet(7 / 16, 0.406, 0.469, 0.418),
    Sheet(15 / 32, 0.438, 0.500, 0.451),
    Sheet(1 / 2, 0.469, 0.531, 0.483),
    Sheet(19 / 32, 0.563, 0.625, 0.578),
    Sheet(5 / 8, 0.594, 0.656, 0.609),
    Sheet(23 / 32, 0.688, 0.750, 0.703),
    Sheet(3 / 4, 0.719, 0.781, 0.734),
    Sheet(13 / 16, 0.781, 0.844, 0.788),
    Sheet(7 / 8, 0.831, 0.919, 0.849),
    Sheet(1, 0.950, 1.050, 0.970),
    Sheet(1 + 1 / 8, 1.069, 1.181, 1.091),
    Sheet(1 + 1 / 4, 1.188, 1.313, 1.213),
)
"""Rows as printed, to a thousandth; `usual` is the thickness stamped on most panels."""

HARDWOOD_PLYWOOD = (1 / 8, 1 / 4, 3 / 8, 1 / 2, 5 / 8, 3 / 4, 1, 1 + 1 / 4)
MDF = (1 / 4, 3 / 8, 1 / 2, 5 / 8, 11 / 16, 3 / 4, 1, 1 + 1 / 4)


def sheets(sold_as: str) -> "list[Sheet]":
    """Return the sheets sold as ``unsanded``, ``sanded``, ``hardwood`` (plywood) or ``mdf``.

    >>> sheets("mdf")[5]
    Sheet(label=0.75, least=0.745, most=0.755, usual=0.75)
    """
    if sold_as == "unsanded":
        return list(PERFORMANCE_CATEGORIES)
    if sold_as == "sanded":
        return [_sanded(row.label) for row in PERFORMANCE_CATEGORIES]
    if sold_as == "hardwood":
        return [_hardwood_plywood(label) for label in HARDWOOD_PLYWOOD]
    return [Sheet(label, label - 0.005, label + 0.005, label) for label in MDF]


def _sanded(label: float) -> Sheet:
    """PS 1: within 1/64 up to 3/4, within 3 % above."""
    stray = 1 / 64 if label <= 3 / 4 else 0.03 * label
    return Sheet(label, label - stray, label + stray, label)


def _hardwood_plywood(label: float) -> Sheet:
    """HP-1 from memory: nothing over, 3/64 under; 1/32 under below 1/4. Sanding takes the rest."""
    if label < 1 / 4:
        return Sheet(label, label - 1 / 32, label, label - 1 / 64)
    return Sheet(label, label - 3 / 64, label, label - 1 / 32)
