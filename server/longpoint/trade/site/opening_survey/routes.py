"""Two ways to close an opening out of square: a leaf that stays square, and one tapered to fit.

Each knows its blank, what comes off it, and the gaps that it really leaves.
"""

import math
from collections import namedtuple

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .bays import Bay, Gaps, Point

LEAST = 1 / 16  # Inches; less than that stays in the gap.
_HAIR = 1e-9

Taper = namedtuple("Taper", ("edge", "corner", "other", "off"))
"""`off` inches come off an edge (TOP, STRIKE, FLOOR) at a corner (0 to 3), none at the other."""

Left = namedtuple("Left", ("edge", "end", "gap", "asked"))
"""A gap really left at an edge's end, inches, and the one asked for.

The end is a corner of the opening, 0 to 3, or MIDDLE."""

TOP, STRIKE, FLOOR = "top", "strike", "floor"
MIDDLE = -1


class SquareLeaf:
    """A leaf that stays square, hung along its hinge side as high as it can be.

    Parameters
    ----------
    bay : Bay
    gaps : Gaps
    size : (float, float)
        Width and height, inches: of the largest leaf that fits less the gaps.
    """

    def __init__(self, bay: "Bay", gaps: "Gaps", size: "tuple[float, float]") -> None:
        self.bay, self.gaps = bay, gaps
        self.blank = size
        self.tapers: list[Taper] = []
        self.near, self.edge = gaps.hinge, gaps.hinge + size[0]
        self.top = bay.top(self.near, self.edge) + gaps.head
        self.foot = self.top + size[1]

    @property
    def points(self) -> "list[Point]":
        """The corners, clockwise from the top left, in the opening's own inches."""
        return _clockwise(
            self.bay,
            [self.bay.placed(across, self.top) for across in (self.near, self.edge)]
            + [self.bay.placed(across, self.foot) for across in (self.edge, self.near)],
        )

    def left(self) -> "list[Left]":
        """Return the gaps that this leaf leaves, measured along and across it."""
        bay, gaps = self.bay, self.gaps
        hinge_top, hinge_low, far_top, far_low = bay.order
        found = [
            Left(TOP, hinge_top, self.top - bay.head(self.near), gaps.head),
            Left(TOP, far_top, self.top - bay.head(self.edge), gaps.head),
            Left(STRIKE, far_top, bay.far(self.top) - self.edge, gaps.far),
            Left(STRIKE, far_low, bay.far(self.foot) - self.edge, gaps.far),
            Left(FLOOR, far_low, bay.sill(self.edge) - self.foot, gaps.floor),
            Left(FLOOR, hinge_low, bay.sill(self.near) - self.foot, gaps.floor),
        ]
        return found + _in_the_middle(found, bay.bows)


class TaperedLeaf:
    """A leaf planed to leave even gaps: a square blank, and what comes off its edges.

    `points` are the corners that leave even gaps, clockwise from the top left.
    """

    def __init__(self, bay: "Bay", gaps: "Gaps") -> None:
        self.bay, self.gaps = bay, gaps
        sides = (gaps.hinge, gaps.far + bay.bows[0])
        left, right = sides if bay.hinge == "left" else (sides[1], sides[0])
        self.points = moved_in(bay.points, [gaps.head + bay.bows[1], right, gaps.floor, left])
        (x, y), (end_x, end_y) = [self.points[at] for at in bay.order[:2]]
        self.edge = math.sqrt((end_x - x) ** 2 + (end_y - y) ** 2)
        far = [(self.points[at][0] - x, self.points[at][1] - y) for at in bay.order[2:]]
        self.across = [point[0] * bay.away[0] + point[1] * bay.away[1] for point in far]
        self.down = [point[0] * bay.down[0] + point[1] * bay.down[1] for point in far]

    @property
    def tapers(self) -> "list[Taper]":
        """What comes off the blank at top, at the edge away from the hinges, and at the floor."""
        hinge_top, hinge_low, far_top, far_low = self.bay.order
        top, low = self.down[0], self.edge - self.down[1]
        wide = self.across[1] - self.across[0]
        found = []
        for edge, ends, off in (
            (TOP, (hinge_top, far_top), top),
            (STRIKE, (far_low, far_top), wide),
            (FLOOR, (hinge_low, far_low), low),
        ):
            if abs(off) > LEAST + _HAIR:
                corner, other = (ends[1], ends[0]) if off > 0 else ends
                found.append(Taper(edge, corner, other, abs(off)))
        return found

    @property
    def blank(self) -> "tuple[float, float]":
        """Width and height of the square blank that the tapers come off."""
        edges = [taper.edge for taper in self.tapers]
        outer = max if STRIKE in edges else min
        return outer(self.across), self._foot(edges) - self._top(edges)

    @property
    def closed(self) -> bool:
        """Whether the gaps leave a leaf at all."""
        return min(self.across) > 0 and min(self.edge, self.down[1]) > max(0.0, self.down[0])

    def left(self) -> "list[Left]":
        """Return the gaps that this leaf leaves: a bow's at the ends, and what stays untapered."""
        gaps, (bow_wide, bow_high) = self.gaps, self.bay.bows
        edges = [taper.edge for taper in self.tapers]
        top, foot, wide = self._top(edges), self._foot(edges), min(self.across)
        asked = {TOP: gaps.head, STRIKE: gaps.far, FLOOR: gaps.floor}
        bowed = {TOP: bow_high, STRIKE: bow_wide, FLOOR: 0.0}
        hinge_top, hinge_low, far_top, far_low = self.bay.order
        found = []
        for edge, end, spare in (
            (TOP, hinge_top, top),
            (TOP, far_top, top - self.down[0]),
            (STRIKE, far_top, self.across[0] - wide),
            (STRIKE, far_low, self.across[1] - wide),
            (FLOOR, far_low, self.down[1] - foot),
            (FLOOR, hinge_low, self.edge - foot),
        ):
            over = bowed[edge] + (0.0 if edge in edges else spare)
            found.append(Left(edge, end, asked[edge] + over, asked[edge]))
        return found + _in_the_middle(found, self.bay.bows)

    def _top(self, edges: "list[str]") -> float:
        """Return how far down the blank begins: at its higher corner if it is tapered there."""
        return (min if TOP in edges else max)(0.0, self.down[0])

    def _foot(self, edges: "list[str]") -> float:
        return (max if FLOOR in edges else min)(self.edge, self.down[1])


def _in_the_middle(ends: "list[Left]", bows: "tuple[float, float]") -> "list[Left]":
    """Return the gaps half way along the edges that face a bow, from those at their ends."""
    found = []
    for edge, bow in ((STRIKE, bows[0]), (TOP, bows[1])):
        gaps = [left for left in ends if left.edge == edge]
        if bow:
            between = sum([left.gap for left in gaps]) / 2 - bow
            found.append(Left(edge, MIDDLE, between, gaps[0].asked))
    return found


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


def _clockwise(bay: "Bay", points: "list[Point]") -> "list[Point]":
    """Return hinge top, far top, far low, hinge low as corners from the top left on."""
    if bay.hinge == "left":
        return points
    return [points[1], points[0], points[3], points[2]]
