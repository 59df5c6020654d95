"""An opening as tape and level find it: its corners, and whether the readings agree."""

import math

from .. import degrees
from ..geometry.quadrilateral import CORNER_NAMES, Quadrilateral
from ..lengths import show_angle
from ..tool import FieldError, Given, Refusal

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..lengths import Scale

    Point = tuple[float, float]

BUBBLE = 0.3  # Degrees between level and tape that reading a bubble explains (common practice).
ODD = 10.0  # Degrees off square; past that a number was misread, no opening is like that.
FIELDS = ("width_top", "height_right", "width_bottom", "height_left", "diagonal_a")
"""Inputs of the sides, clockwise from the top, and of the diagonal that shapes them."""


class Opening:
    """The four corners, in inches from the top left, y downwards, laid as the level says.

    `disagree` is by how much diagonal B is longer than the sides and diagonal A make it; it is
    shared between the two, as neither tape is the better one. `plumb` holds the slopes of left
    and right side, right at the top, `level` those of head and sill, high at the right; each is
    inches to the inch, or None.

    Raises
    ------
    Refusal
        For sizes that no four-sided opening has, and for half a pair of diagonals.
    """

    def __init__(self, given: Given, scale: "Scale") -> None:
        self.given = given
        self.widths = _three(given, "width_top", "width_middle", "width_bottom")
        self.heights = _three(given, "height_left", "height_middle", "height_right")
        self.diagonals = given.maybe("diagonal_a"), given.maybe("diagonal_b")
        self.plumb = [_slope(given, "plumb_" + side, "plumb_over") for side in ("left", "right")]
        self.level = [_slope(given, "level_" + end, "level_over") for end in ("head", "sill")]
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
    def assumed(self) -> str:
        """What is taken for granted for want of diagonals, plumb or level; "" for nothing."""
        plumb = [slope for slope in self.plumb if slope is not None]
        level = [slope for slope in self.level if slope is not None]
        if self.diagonals[0] is not None or (plumb and level):
            return ""
        if plumb:
            return "the head is taken as level"
        if level:
            return "the right side is taken as plumb"
        return "the top right corner is taken as square"

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

    def bubble_disagrees(self) -> "tuple[str, float, float] | None":
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


def _three(given: Given, *names: str) -> "list[float]":
    return [given.number(name) for name in names if given.maybe(name) is not None]


def _slope(given: Given, name: str, over: str) -> "float | None":
    gap = given.maybe(name)
    return None if gap is None else gap / given.number(over)


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
