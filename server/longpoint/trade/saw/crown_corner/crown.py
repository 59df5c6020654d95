"""Crown between wall and ceiling: its sizes, and what is set on the saw for a corner."""

import math

from ... import degrees


class Crown:
    """Crown that leans from the wall; sizes in inches, or None where its face is not known.

    Parameters
    ----------
    spring : float
        Degrees between the crown's back and the wall.
    width : float or None
        Of the face, flat across.

    >>> crown = Crown(30, 4)
    >>> round(crown.projection or 0.0, 9), crown.nested(120)
    (2.0, 30.0)
    """

    def __init__(self, spring: float, width: "float | None") -> None:
        self.spring = spring
        self.width = width
        self.drop = None if width is None else width * degrees.cos(spring)
        self.projection = None if width is None else width * degrees.sin(spring)

    def miter(self, corner: float) -> float:
        """Return the miter, degrees, for crown flat on the table; `corner` in degrees."""
        return degrees.atan(degrees.sin(self.spring) / degrees.tan(corner / 2))

    def bevel(self, corner: float) -> float:
        """Return the bevel, degrees, for crown flat on the table."""
        return degrees.asin(degrees.cos(self.spring) * degrees.cos(corner / 2))

    def nested(self, corner: float) -> float:
        """Return the miter, degrees, for crown nested at the fence."""
        return 90 - corner / 2

    def edges(self, corner: float) -> float:
        """Return how much longer one edge is than the other at a mitered end; 0 without a face."""
        return (self.projection or 0.0) / degrees.tan(corner / 2)


def crown_by_drop(spring: float, drop: float) -> Crown:
    """Return crown that leans by `spring` and reaches `drop` down the wall.

    >>> round(crown_by_drop(60, 2).width or 0.0, 9)
    4.0
    """
    return Crown(spring, drop / degrees.cos(spring))


def crown_by_sizes(drop: float, projection: float) -> Crown:
    """Return crown that reaches `drop` down the wall and `projection` out on the ceiling.

    >>> crown_by_sizes(3, 3).spring, crown_by_sizes(4, 3).width
    (45.0, 5.0)
    """
    face = math.sqrt(drop * drop + projection * projection)
    return Crown(degrees.atan(projection / drop), face)
