"""Butt hinges as published: size by door, leaves and their screws, holes for screws.

Sources. Height by door: the table of the Door and Hardware Institute, as reprinted by two hinge
sellers and a guide to sizes. Weight: a hinge maker's cut sheets of BHMA A156.1 hinges (medium
doors under 150 lb, heavy ones over). Leaves: .123 and light ones from memory, .130 and .134 the
same cut sheets, .180 a maker's sizing guide, .190 a maker's note on A156.1, others from memory.
Screws: the cut sheets (#10 x 1 for 3 1/2, #12 x 1 1/4 for larger ones), light hinges and those of
6 from memory. Holes: a table after the American Wood Council's 70 and 90 percent of the screw's
root, and a boatbuilders' table; they disagree. Screw diameter: .060 + .013 N, a screw maker.
"""

from collections import namedtuple

Size = namedtuple("Size", ("thickness", "width", "height", "weight"))
"""Doors up to a thickness and a width (None: any wider), the hinge's height, its weight class."""

Leaf = namedtuple("Leaf", ("height", "weight", "leaf", "screws", "gauge", "length"))
"""A hinge's height and weight class, leaf thickness, screws in a leaf, their number and length."""

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

LEAVES = (
    Leaf(3.5, "light", 0.085, 3, 9, 0.75),
    Leaf(3.5, "standard", 0.123, 3, 10, 1.0),
    Leaf(4.0, "light", 0.09, 4, 9, 0.75),
    Leaf(4.0, "standard", 0.130, 4, 12, 1.25),
    Leaf(4.5, "standard", 0.134, 4, 12, 1.25),
    Leaf(4.5, "heavy", 0.180, 4, 12, 1.25),
    Leaf(5.0, "standard", 0.146, 4, 12, 1.25),
    Leaf(5.0, "heavy", 0.190, 4, 12, 1.25),
    Leaf(6.0, "standard", 0.160, 5, 14, 1.5),
    Leaf(6.0, "heavy", 0.203, 5, 14, 1.5),
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


def leaf_like(height: float, leaf: float) -> "Leaf | None":
    """Return the listed hinge of a height whose leaf is nearest in thickness, or None."""
    listed = [(abs(row.leaf - leaf), row) for row in LEAVES if abs(row.height - height) < 1 / 16]
    return min(listed)[1] if listed else None


def screw_diameter(gauge: int) -> float:
    """Return a wood screw's diameter over the thread, by its number."""
    return 0.060 + 0.013 * gauge
