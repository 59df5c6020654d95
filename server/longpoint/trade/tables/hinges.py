"""Butt hinges as published: size by door, hinge leaves and their screws, holes for screws.

Sources. Height by door: the table of the Door and Hardware Institute, as reprinted by two hinge
sellers and a guide to sizes. Weight: a hinge maker's cut sheets of BHMA A156.1 hinges (medium
doors under 150 lb, heavy ones over). Hinge leaves: .134 and .180 a maker's sizing guide, .190 a
maker's note on A156.1, all others from memory. Screws: from memory, but for the 4 in a leaf of a
heavy 5 (a maker's note on A156.1). Holes: a table after the American Wood Council's 70 and 90
percent of the screw's root, and a boatbuilders' table; they disagree. Screw diameter:
.060 + .013 N, a screw maker.
"""

from collections import namedtuple

Size = namedtuple("Size", ("thickness", "width", "height", "weight"))
"""Doors up to a thickness and a width (None: any wider), the hinge's height, its weight class."""

HingeLeaf = namedtuple(
    "HingeLeaf", ("height", "weight", "thickness", "source", "screws", "gauge", "length")
)
"""A hinge's height and weight class; its leaf's thickness and who says so; the screws in it, their
number and length."""

MEMORY = "from memory"
GUIDE = "a maker's sizing guide"

Holes = namedtuple("Holes", ("gauge", "root_soft", "root_hard", "boat_soft", "boat_hard", "shank"))
"""Drills for a screw by its number, in inches; None where the table has none."""

SIZES = (
    Size(1.375, 32.0, 3.5, "standard"),
    Size(1.375, 37.0, 4.0, "standard"),
    Size(1.75, 36.0, 4.5, "standard"),
    Size(1.75, 48.0, 5.0, "standard"),
    Size(1.75, None, 6.0, "standard"),
    Size(2.5, 42.0, 5.0, "heavy"),
    Size(2.5, None, 6.0, "heavy"),
)

HINGE_LEAVES = (
    HingeLeaf(3.5, "light", 0.085, MEMORY, 3, 9, 0.75),
    HingeLeaf(3.5, "standard", 0.123, MEMORY, 3, 10, 1.0),
    HingeLeaf(4.0, "light", 0.09, MEMORY, 4, 9, 0.75),
    HingeLeaf(4.0, "standard", 0.130, MEMORY, 4, 12, 1.25),
    HingeLeaf(4.5, "standard", 0.134, GUIDE, 4, 12, 1.25),
    HingeLeaf(4.5, "heavy", 0.180, GUIDE, 4, 12, 1.25),
    HingeLeaf(5.0, "standard", 0.146, MEMORY, 4, 12, 1.25),
    HingeLeaf(5.0, "heavy", 0.190, "a maker's note on A156.1", 4, 12, 1.25),
    HingeLeaf(6.0, "standard", 0.160, MEMORY, 5, 14, 1.5),
    HingeLeaf(6.0, "heavy", 0.203, MEMORY, 5, 14, 1.5),
)

HOLES = (
    Holes(6, 1 / 16, 5 / 64, 1 / 16, None, 9 / 64),
    Holes(8, 5 / 64, 3 / 32, 5 / 64, 7 / 64, 11 / 64),
    Holes(9, None, None, 5 / 64, 7 / 64, 3 / 16),
    Holes(10, 3 / 32, 7 / 64, 3 / 32, 1 / 8, 3 / 16),
    Holes(12, 7 / 64, 1 / 8, 7 / 64, None, 7 / 32),
    Holes(14, 7 / 64, 9 / 64, 7 / 64, None, 1 / 4),
)

STOCK_WIDTHS = (3.0, 3.5, 4.0, 4.5, 5.0, 5.5, 6.0, 7.0, 8.0)
"""Widths, open, that butts are sold in; 5 1/2 from the Building Trades Pocketbook of 1899."""

HEAVY_DOOR_POUNDS = 150.0
_HAIR = 1e-6


def size_for(thickness: float, width: float) -> "int | None":
    """Return the row of `SIZES` for a door, the next heavier one between two; None beyond all."""
    for index, size in enumerate(SIZES):
        fits = size.width is None or width <= size.width + _HAIR
        if thickness <= size.thickness + _HAIR and fits:
            return index
    return None


def stock_width(width: float) -> "float | None":
    """Return the next width that hinges are sold in, or None beyond the widest.

    >>> stock_width(5.375), stock_width(4.5)
    (5.5, 4.5)
    """
    wide = [sold for sold in STOCK_WIDTHS if sold >= width - _HAIR]
    return wide[0] if wide else None


def leaves_of(height: float) -> "list[HingeLeaf]":
    """Return the listed leaves of hinges of a height, lightest first.

    >>> [leaf.weight for leaf in leaves_of(4.5)], leaves_of(3)
    (['standard', 'heavy'], [])
    """
    return [row for row in HINGE_LEAVES if abs(row.height - height) < 1 / 16]


def leaf_like(height: float, thickness: float) -> "HingeLeaf | None":
    """Return the listed hinge of a height whose leaf is nearest in thickness, or None."""
    listed = [(abs(row.thickness - thickness), row) for row in leaves_of(height)]
    return min(listed)[1] if listed else None


def screw_diameter(gauge: int) -> float:
    """Return a wood screw's diameter over the thread, by its number."""
    return 0.060 + 0.013 * gauge
