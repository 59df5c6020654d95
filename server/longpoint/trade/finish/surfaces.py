"""True areas of what is coated, in square inches: faces, edges, sticking, raised panels, trim.

Plane geometry. Sticking and bevel run around each opening with mitered corners, so a profile that
lies evenly about its middle line has the area of that line times its girth.
"""

import math

FOOT = 144.0
"""Square inches in a square foot."""


class Openings:
    """Panel openings in one face of a frame, all of one width.

    Parameters
    ----------
    count : int
    width : float
        Of each opening, between the middles of the sticking.
    heights : float
        Of all openings together, measured the same way.
    """

    def __init__(self, count: int, width: float, heights: float) -> None:
        self.count = count
        self.width = width
        self.heights = heights

    def around(self, inward: float = 0.0) -> float:
        """Return the length of all lines that run around the openings, so far inward.

        >>> Openings(2, 23, 58.5).around()
        209.0
        """
        return 2 * self.count * (self.width - 2 * inward) + 2 * self.inner_heights(inward)

    def inner_heights(self, inward: float) -> float:
        """Return the heights of all openings together, so far inward."""
        return self.heights - 2 * self.count * inward

    def area(self, inward: float = 0.0) -> float:
        """Return what lies within those lines."""
        return (self.width - 2 * inward) * self.inner_heights(inward)


class Bevel:
    """The bevel of a raised panel: its width and rise, and the step up to the field."""

    def __init__(self, width: float, rise: float, step: float) -> None:
        self.width = width
        self.rise = rise
        self.step = step


def sticking_gain(openings: Openings, girth: float, width: float) -> float:
    """Return what sticking adds to a face that is measured flat.

    Parameters
    ----------
    girth, width : float
        Developed around its shape, and as it lies in the face.
    """
    return openings.around() * (girth - width)


def bevel_gain(openings: Openings, sticking_width: float, bevel: Bevel) -> float:
    """Return what raised panels add to a face that is measured flat."""
    start = sticking_width / 2
    slope = math.sqrt(bevel.width**2 + bevel.rise**2)
    along = openings.around(start + bevel.width / 2)
    return along * (slope - bevel.width) + openings.around(start + bevel.width) * bevel.step


def edges_area(width: float, length: float, thickness: float) -> float:
    """Return the area of all four edges."""
    return 2 * (width + length) * thickness


def feet_of(inches: float) -> float:
    """Return square inches as square feet.

    >>> feet_of(36)
    0.25
    """
    return inches / FOOT
