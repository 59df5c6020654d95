"""A four-sided opening that isn't square: its corners from four sides and a diagonal."""

import math

from .. import degrees
from ..lengths import show_angle
from ..refusal import Refusal

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..lengths import Scale

    Point = tuple[float, float]

SIDES = ("top", "right", "bottom", "left")
CORNERS = ("tl", "tr", "br", "bl")
DIAGONAL = 4  # Its place among the fields, after the sides.
TAPE = 1 / 8  # Inches between diagonals and sides that tapes explain (common practice, no source).
SHARPEST = 5.0  # Degrees; a miter there would be 87 off square.
CORNER_NAMES = ("top left", "top right", "bottom right", "bottom left")


class Quadrilateral:
    """Sides in inches and corners in degrees, clockwise from the top and the top left.

    Parameters
    ----------
    sides : list of float
        Top, right, bottom, left, in inches.
    diagonal : float
        From the top left to the bottom right corner, in inches.
    scale : Scale
        How refusals show lengths.
    fields : tuple of str
        Inputs that the sides and the diagonal came from, for refusals.

    Side `i` runs from corner `i` to corner `i + 1`. Points are laid out with the top level, the
    top left corner at the origin, y downwards.

    Raises
    ------
    Refusal
        For sides that can't close, and for a corner that points inwards or is all but shut.
    """

    def __init__(
        self, sides: "list[float]", diagonal: float, scale: "Scale", fields: "tuple[str, ...]"
    ) -> None:
        self.sides = sides
        self.diagonal = diagonal
        self.fields = fields
        self._refuse_open(scale)
        top, right, bottom, left = self.sides
        across = self.diagonal
        self._above = angle_between(top, across, right)
        self._below = angle_between(left, across, bottom)
        self.corners = [
            self._above + self._below,
            angle_between(top, right, across),
            angle_between(right, across, top) + angle_between(bottom, across, left),
            angle_between(bottom, left, across),
        ]
        self._refuse_corners()

    def points(self) -> "list[Point]":
        """Return the four corners of the opening."""
        top, _, _, left = self.sides
        across, down = _polar(self.diagonal, self._above), _polar(left, self.corners[0])
        return [(0.0, 0.0), (top, 0.0), across, down]

    def other_diagonal(self) -> float:
        """Return the distance from the top right to the bottom left corner."""
        _, start, _, end = self.points()
        return _distance(start, end)

    def growth(self, side: int) -> float:
        """Return by how much a side grows for each inch that the outline moves outwards."""
        return self.lead(side) + self.lead((side + 1) % 4)

    def lead(self, corner: int) -> float:
        """Return how far along a side a corner moves for each inch that the outline moves."""
        return 1 / degrees.tan(self.corners[corner] / 2)

    def moved(self, outwards: float) -> "list[Point]":
        """Return the corners after every side has moved outwards by as much."""
        points = self.points()
        return [self._moved(points, corner, outwards) for corner in range(4)]

    def _moved(self, points: "list[Point]", corner: int, outwards: float) -> "Point":
        x, y = points[corner]
        next_x, next_y = points[(corner + 1) % 4]
        length = self.sides[corner]
        along_x, along_y = (next_x - x) / length, (next_y - y) / length
        slide = outwards * self.lead(corner)
        return (
            x - along_x * slide + along_y * outwards,
            y - along_y * slide - along_x * outwards,
        )

    def _refuse_open(self, scale: "Scale") -> None:
        """Refuse sides that don't reach each other, and a diagonal they can't hold."""
        longest = max(self.sides)
        others = sum(self.sides) - longest
        if longest >= others:
            at = self.sides.index(longest)
            raise Refusal(
                self.fields[at],
                f"The {SIDES[at]}, {scale.length(longest)}, is not shorter than the other three "
                f"sides together, {scale.length(others)}: they can't close. Measure again.",
            )
        top, right, bottom, left = self.sides
        least = max(abs(top - right), abs(bottom - left))
        most = min(top + right, bottom + left)
        if not least < self.diagonal < most:
            raise Refusal(
                self.fields[DIAGONAL],
                f"These sides can't close on a diagonal of {scale.length(self.diagonal)}: from "
                f"top left to bottom right it lies between {scale.length(least)} and "
                f"{scale.length(most)}. Measure it, and the sides, again.",
            )

    def _refuse_corners(self) -> None:
        """Refuse a corner that points inwards, and one too sharp for trim to turn."""
        for corner, name in zip(self.corners, CORNER_NAMES):
            if corner < SHARPEST:
                raise Refusal(
                    self.fields[DIAGONAL],
                    f"With this diagonal the {name} corner closes to {show_angle(corner)}: no "
                    "trim turns that. Measure the diagonal from top left to bottom right again.",
                )
            if corner >= 180:
                raise Refusal(
                    self.fields[DIAGONAL],
                    f"With this diagonal the {name} corner would point inward: no frame goes "
                    "around that. Measure the diagonal from top left to bottom right again.",
                )


def angle_between(side: float, other: float, opposite: float) -> float:
    """Return a triangle's angle, degrees, between two sides, by the law of cosines.

    >>> angle_between(3, 4, 5)
    90.0
    """
    cosine = (side * side + other * other - opposite * opposite) / (2 * side * other)
    return degrees.acos(max(-1.0, min(1.0, cosine)))  # A hair past 1 in a very flat triangle.


def _polar(length: float, angle: float) -> "Point":
    return length * degrees.cos(angle), length * degrees.sin(angle)


def _distance(start: "Point", end: "Point") -> float:
    return math.sqrt((start[0] - end[0]) ** 2 + (start[1] - end[1]) ** 2)
