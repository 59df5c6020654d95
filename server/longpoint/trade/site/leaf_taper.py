"""A leaf that leaves even gaps in an opening out of square: its blank, and what comes off.

The blank's hinge edge follows the hinge side, so the hinges are let in along a straight gap.
"""

import math
from collections import namedtuple

from ..geometry.quadrilateral import CORNER_NAMES

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .opening_shape import Opening, Point

LEAST = 1 / 16  # Inches; less than that stays in the gap.
_HAIR = 1e-9

Taper = namedtuple("Taper", ("edge", "corner", "other", "off"))
"""`off` inches come off an edge at one corner (0 to 3 from the top left), none at the other."""


class Leaf:
    """One leaf: `points` are the corners that leave even gaps, clockwise from the top left.

    Heights and widths are inches down and away from the upper end of the hinge edge.

    Parameters
    ----------
    bay : list of points
        The part of the opening that the leaf closes.
    gaps : list of float
        Inches kept free at top, right, bottom and left.
    hinge : str
        left or right.
    """

    def __init__(self, bay: "list[Point]", gaps: "list[float]", hinge: str) -> None:
        self.gaps, self.hinge = gaps, hinge
        self.bay = bay
        self.points = moved_in(bay, gaps)
        # Hinge edge from its top, then the other edge.
        self.order = (0, 3, 1, 2) if hinge == "left" else (1, 2, 0, 3)
        (x, y), (end_x, end_y) = [self.points[at] for at in self.order[:2]]
        self.edge = math.sqrt((end_x - x) ** 2 + (end_y - y) ** 2)
        down = (end_x - x) / self.edge, (end_y - y) / self.edge
        away = (down[1], -down[0]) if hinge == "left" else (-down[1], down[0])
        far = [(self.points[at][0] - x, self.points[at][1] - y) for at in self.order[2:]]
        self.across = [point[0] * away[0] + point[1] * away[1] for point in far]
        self.down = [point[0] * down[0] + point[1] * down[1] for point in far]

    @property
    def tapers(self) -> "list[Taper]":
        """What comes off the blank at top, at the edge away from the hinges, and at the bottom."""
        hinge_top, hinge_low, far_top, far_low = self.order
        top, low = self.down[0], self.edge - self.down[1]
        wide = self.across[1] - self.across[0]
        found = []
        for edge, ends, off in (
            ("Top", (hinge_top, far_top), top),
            ("Strike", (far_low, far_top), wide),
            ("Bottom", (hinge_low, far_low), low),
        ):
            if abs(off) > LEAST + _HAIR:
                corner, other = (ends[1], ends[0]) if off > 0 else ends
                found.append(Taper(edge, corner, other, abs(off)))
        return found

    @property
    def blank(self) -> "tuple[float, float]":
        """Width and height of the square blank that the tapers come off."""
        edges = [taper.edge for taper in self.tapers]
        outer = max if "Strike" in edges else min
        high = (min if "Top" in edges else max)(0.0, self.down[0])
        low = (max if "Bottom" in edges else min)(self.edge, self.down[1])
        return outer(self.across), low - high

    def gaps_left(self, width: float, height: float) -> "list[tuple[str, float]]":
        """Return where a leaf that stays square leaves which gap, hung as high as it can."""
        head = self.down[0] * width / self.across[0]
        sill = self.edge + (self.down[1] - self.edge) * width / self.across[1]
        top = max(0.0, head)
        far = 1 if self.hinge == "left" else 3
        return [
            ("head, " + CORNER_NAMES[self.order[0]], self.gaps[0] + top),
            ("head, " + CORNER_NAMES[self.order[2]], self.gaps[0] + top - head),
            ("strike edge, top", self.gaps[far] + self.across[0] - width),
            ("strike edge, bottom", self.gaps[far] + self.across[1] - width),
            ("floor, " + CORNER_NAMES[self.order[3]], self.gaps[2] + sill - top - height),
            ("floor, " + CORNER_NAMES[self.order[1]], self.gaps[2] + self.edge - top - height),
        ]

    @property
    def closed(self) -> bool:
        """Whether the gaps leave a leaf at all."""
        return min(self.across) > 0 and min(self.edge, self.down[1]) > max(0.0, self.down[0])


def leaves_of(opening: "Opening") -> "list[Leaf]":
    """Return the leaf of an opening, or the left and the right one of a pair."""
    given = opening.given
    side, floor = given.number("side_gap"), given.number("floor_gap")
    bow, head = opening.bows[0], opening.bows[1] + given.number("head_gap")
    if given.text("leaves") == "1":
        hinge = given.text("hinges")
        sides = (side + bow, side) if hinge == "left" else (side, side + bow)
        return [Leaf(opening.points, [head, sides[0], floor, sides[1]], hinge)]
    left_top, right_top, right_low, left_low = opening.points
    top, low = _between(left_top, right_top), _between(left_low, right_low)
    meeting = (given.number("meeting_gap") + bow) / 2
    return [
        Leaf([left_top, top, low, left_low], [head, meeting, floor, side], "left"),
        Leaf([top, right_top, right_low, low], [head, side, floor, meeting], "right"),
    ]


def moved_in(points: "list[Point]", inches: "list[float]") -> "list[Point]":
    """Return a shape's corners once side `i`, from corner `i` on, has moved in by its inches."""
    lines = []
    for at in range(4):
        (x, y), (next_x, next_y) = points[at], points[(at + 1) % 4]
        length = math.sqrt((next_x - x) ** 2 + (next_y - y) ** 2)
        along = (next_x - x) / length, (next_y - y) / length
        lines.append(((x - along[1] * inches[at], y + along[0] * inches[at]), along))
    return [_crossing(lines[at - 1], lines[at]) for at in range(4)]


def _crossing(line: "tuple[Point, Point]", other: "tuple[Point, Point]") -> "Point":
    (x, y), (along_x, along_y) = line
    (at_x, at_y), (dx, dy) = other
    way = ((at_x - x) * dy - (at_y - y) * dx) / (along_x * dy - along_y * dx)
    return x + way * along_x, y + way * along_y


def _between(start: "Point", end: "Point") -> "Point":
    return (start[0] + end[0]) / 2, (start[1] + end[1]) / 2
