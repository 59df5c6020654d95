"""An opening as tape and level find it: its corners, and whether the readings agree."""

import math
from collections import namedtuple

from ... import degrees
from ...geometry.quadrilateral import CORNER_NAMES, Quadrilateral
from ...lengths import show_angle
from ...refusal import FieldError, Refusal

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale

    Point = tuple[float, float]

BUBBLE = 0.3  # Degrees between level and tape that reading a bubble explains (common practice).
ODD = 10.0  # Degrees off square; past that a number was misread, no opening is like that.
FIELDS = ("width_top", "height_right", "width_bottom", "height_left", "diagonal_a")
"""Inputs of the sides, clockwise from the top, and of the diagonal that shapes them."""

Readings = namedtuple("Readings", ("widths", "heights", "diagonals", "plumb", "level"))
"""What was read: widths from the top down and heights from the left, two or three each; diagonals
from the top left and from the top right, or None; slopes of left and right side (right at the top)
and of head and sill (high at the right), inches to the inch, or None."""


class Opening:
    """The four corners, in inches from the top left, y downwards, laid as the level says.

    `disagree` is by how much the diagonal from the top right is longer than the sides and the
    other one make it; it is shared between the two, as neither tape is the better one.

    Raises
    ------
    Refusal
        For sizes that no four-sided opening has, and for half a pair of diagonals.
    """

    def __init__(self, read: Readings, scale: "Scale") -> None:
        self.widths, self.heights = read.widths, read.heights
        self.diagonals = read.diagonals
        self.plumb, self.level = read.plumb, read.level
        self.disagree = 0.0
        self.shape = self._shape(scale)
        _refuse_odd(self.shape, self.diagonals[0] is not None)
        self.points = _turned(self.shape.points(), self._turn())

    @property
    def tight(self) -> "tuple[float, float]":
        """The least width and the least height measured."""
        return min(self.widths), min(self.heights)

    @property
    def bows(self) -> "tuple[float, float]":
        """How far the middle is tighter than its two ends allow, across and down; 0 if wider."""
        return _bow(self.widths), _bow(self.heights)

    @property
    def assumed(self) -> "tuple[str, str] | None":
        """What is taken for granted for want of diagonals, plumb or level, and as what it is."""
        plumb = [slope for slope in self.plumb if slope is not None]
        level = [slope for slope in self.level if slope is not None]
        if self.diagonals[0] is not None or (plumb and level):
            return None
        if plumb:
            return "the head", "level"
        if level:
            return "the right side", "plumb"
        return "the top right corner", "square"

    def corner_off(self) -> "tuple[str, float, float] | None":
        """Return the corner where level and tape differ most past `BUBBLE`: name, both angles."""
        worst, found = BUBBLE, None
        for corner, name in enumerate(CORNER_NAMES):
            lean, rise = self.plumb[corner in (1, 2)], self.level[corner > 1]
            if lean is None or rise is None:
                continue
            off = degrees.atan(lean) + degrees.atan(rise)
            angle = 90 + off if corner in (0, 2) else 90 - off
            if abs(angle - self.shape.corners[corner]) > worst:
                worst = abs(angle - self.shape.corners[corner])
                found = (name, angle, self.shape.corners[corner])
        return found

    def sides_off(self) -> "tuple[bool, float, float] | None":
        """Return two opposite sides whose slopes are not those of the tapes between them.

        Whether it is left and right, or else head and sill; how much the first end across (top,
        left) is larger than the second by the level, and by the tape. None where they agree.
        """
        across, down = self.widths, self.heights
        for upright, slopes, lengths, taped in (
            (True, self.plumb, (down[0], down[-1]), across[0] - across[-1]),
            (False, self.level, (across[0], across[-1]), down[0] - down[-1]),
        ):
            if slopes[0] is None or slopes[1] is None:
                continue
            first, second = slopes[0] * lengths[0], slopes[1] * lengths[1]
            # Sides that lean right at the top move the top along: right less left is the growth.
            # A head that rises to the right and a sill that rises less make the right higher.
            leveled = second - first
            apart = (lengths[0] + lengths[1]) / 2 * degrees.tan(BUBBLE)
            if abs(leveled - taped) > apart:
                return upright, leveled, taped
        return None

    def _shape(self, scale: "Scale") -> Quadrilateral:
        first, second = self.diagonals
        if (first is None) != (second is None):
            field = "diagonal_a" if first is None else "diagonal_b"
            words = "Diagonals come in pairs: measure this one too, or leave out the other."
            raise Refusal.of([FieldError(field, words, True)])
        if first is None or second is None:
            return self._solve(self._leveled(), scale)
        self.disagree = second - self._solve(first, scale).other_diagonal()
        try:
            return self._solve(first - self.disagree / 2, scale)
        except Refusal:
            raise Refusal(
                "diagonal_b",
                f"No opening with these sides has diagonals of {scale.length(first)} and "
                f"{scale.length(second)}: measure both again, and the sides.",
            )

    def _solve(self, diagonal: float, scale: "Scale") -> Quadrilateral:
        across, down = self.widths, self.heights
        sides = [across[0], down[-1], across[-1], down[0]]
        return Quadrilateral(sides, diagonal, scale, FIELDS)

    def _leveled(self) -> float:
        """Return diagonal A from the level's readings; true to plumb and level without any."""
        top, right = self.widths[0], self.heights[-1]
        lean = _either(self.plumb[1], self.plumb[0], (top - self.widths[-1]) / right)
        rise = _either(self.level[0], self.level[1], (right - self.heights[0]) / top)
        corner = 90 - degrees.atan(lean) - degrees.atan(rise)
        return math.sqrt(top * top + right * right - 2 * top * right * degrees.cos(corner))

    def _turn(self) -> float:
        """Return the degrees, clockwise, that lay the shape as the level found it."""
        if self.level[0] is not None:
            return -degrees.atan(self.level[0])
        if self.plumb[0] is not None:
            return 90 + degrees.atan(self.plumb[0]) - self.shape.corners[0]
        return 0.0


def _either(slope: "float | None", other: "float | None", more: float) -> float:
    """Return a side's slope as read, or from the side across, that leans `more` less."""
    if slope is not None:
        return slope
    return 0.0 if other is None else other + more


def _bow(sizes: "list[float]") -> float:
    return max(0.0, (sizes[0] + sizes[-1]) / 2 - sizes[1]) if len(sizes) == 3 else 0.0


def _refuse_odd(shape: Quadrilateral, taped: bool) -> None:
    for corner, name in zip(shape.corners, CORNER_NAMES):
        if abs(corner - 90) > ODD:
            raise Refusal(
                "diagonal_a" if taped else "width_top",
                f"These sizes make the {name} corner {show_angle(corner)}: one of them was "
                f"misread. Corners within {show_angle(ODD)} of square are worked out here.",
            )


def _turned(points: "list[Point]", angle: float) -> "list[Point]":
    cos, sin = degrees.cos(angle), degrees.sin(angle)
    return [(x * cos - y * sin, x * sin + y * cos) for x, y in points]
