"""The part of an opening that one leaf closes, and the largest square leaf that goes in.

Lengths run along the hinge side and away from it: a leaf hangs by its hinge edge, so that edge
follows the hinge side whatever the others do. `down` starts at the upper end of the hinge side.
"""

import math
from collections import namedtuple

TYPE_CHECKING = False
if TYPE_CHECKING:
    Point = tuple[float, float]

Gaps = namedtuple("Gaps", ("hinge", "far", "head", "floor"))
"""Gaps asked for, inches: at the hinge side, at the side away from it, above and below."""

STEPS = 20  # Each narrows the error at least thirtyfold: sides lie within 10 degrees of square.


class Bay:
    """What one leaf closes.

    Parameters
    ----------
    points : list of points
        Its corners, inches, clockwise from the top left, y downwards.
    hinge : str
        left or right.
    bows : (float, float)
        How far the middle is tighter than the ends allow: the side away from the hinges stands
        in by that much there, the head hangs down.
    """

    def __init__(self, points: "list[Point]", hinge: str, bows: "tuple[float, float]") -> None:
        self.points, self.hinge, self.bows = points, hinge, bows
        # Hinge side from its top, then the other side.
        self.order = (0, 3, 1, 2) if hinge == "left" else (1, 2, 0, 3)
        (x, y), (end_x, end_y) = [points[at] for at in self.order[:2]]
        self.high = math.sqrt((end_x - x) ** 2 + (end_y - y) ** 2)
        down = (end_x - x) / self.high, (end_y - y) / self.high
        away = (down[1], -down[0]) if hinge == "left" else (-down[1], down[0])
        far = [(points[at][0] - x, points[at][1] - y) for at in self.order[2:]]
        self.start, self.away, self.down = (x, y), away, down
        self.across = [point[0] * away[0] + point[1] * away[1] for point in far]
        self.depth = [point[0] * down[0] + point[1] * down[1] for point in far]

    def head(self, across: float) -> float:
        """Return how far down the head is at a distance from the hinge side."""
        return self.depth[0] * across / self.across[0]

    def sill(self, across: float) -> float:
        """Return how far down the floor is at a distance from the hinge side."""
        return self.high + (self.depth[1] - self.high) * across / self.across[1]

    def far(self, down: float) -> float:
        """Return how far away the other side is at a distance down."""
        share = (down - self.depth[0]) / (self.depth[1] - self.depth[0])
        return self.across[0] + share * (self.across[1] - self.across[0])

    def top(self, near: float, far: float) -> float:
        """Return how far down the head reaches over a leaf between two distances across."""
        middle = self.head((near + far) / 2) + self.bows[1]
        return max(self.head(near), self.head(far), middle)

    def foot(self, near: float, far: float) -> float:
        """Return how far down there is room under a leaf between two distances across."""
        return min(self.sill(near), self.sill(far))

    def largest(self) -> "tuple[float, float]":
        """Return width and height of the largest square leaf without any gap: the full width.

        The width depends on where its corners are, their height on the width: found by steps.
        """
        wide = min(self.across)
        for _ in range(STEPS):
            top, foot = self.top(0.0, wide), self.foot(0.0, wide)
            middle = self.far((top + foot) / 2) - self.bows[0]
            wide = min(self.far(top), self.far(foot), middle)
        return wide, self.foot(0.0, wide) - self.top(0.0, wide)

    def placed(self, across: float, down: float) -> "Point":
        """Return the point at these distances, in the opening's own inches."""
        return (
            self.start[0] + across * self.away[0] + down * self.down[0],
            self.start[1] + across * self.away[1] + down * self.down[1],
        )


def bays_of(
    points: "list[Point]", leaves: int, hinge_side: str, bows: "tuple[float, float]"
) -> "list[Bay]":
    """Return the bay of an opening, or those left and right of the line through its middle."""
    if leaves == 1:
        return [Bay(points, hinge_side, bows)]
    left_top, right_top, right_low, left_low = points
    top, low = _between(left_top, right_top), _between(left_low, right_low)
    half = bows[0] / 2, bows[1]
    return [
        Bay([left_top, top, low, left_low], "left", half),
        Bay([top, right_top, right_low, low], "right", half),
    ]


def usable(bays: "list[Bay]") -> "tuple[float, float]":
    """Return width and height of the largest square opening that fits: equal leaves, no gaps."""
    sizes = [bay.largest() for bay in bays]
    return len(bays) * min([wide for wide, _ in sizes]), min([high for _, high in sizes])


def _between(start: "Point", end: "Point") -> "Point":
    return (start[0] + end[0]) / 2, (start[1] + end[1]) / 2
