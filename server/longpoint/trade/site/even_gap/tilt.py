"""A leaf out of line with its jamb, and which hinges bring it back; all in inches.

A hung leaf is stiff: what moves it at two hinges moves its strike edge along a straight line.
Moves are toward the strike, so a shim is positive and a deeper mortise negative.
"""

from collections import namedtuple

TYPE_CHECKING = False
if TYPE_CHECKING:
    Moves = tuple[float, float]

LEAST_GAP = 1 / 16
"""What a shim should leave at the strike; with less, the other hinge is let in deeper."""
TIGHT = 1 / 32
"""What it must leave where the other hinge has no room to go deeper."""
HAIR = 1e-9
"""Float noise must not turn just enough into too little."""
SEEN = 1 / 128
"""Less than half a 64th out passes for even."""

Fix = namedtuple("Fix", ("moves", "even"))
"""Moves at top and bottom hinge, and the strike gap they leave all along."""


class Tilt:
    """A leaf that leans in its opening.

    Parameters
    ----------
    top, bottom : float
        Gaps at the strike side's top and bottom corner.
    height, first, last : float
        Of the leaf; its hinges' centers from its top.
    """

    def __init__(self, top: float, bottom: float, height: float, first: float, last: float) -> None:
        self.top = top
        self.bottom = bottom
        self.height = height
        self.first = first
        self.last = last

    def gap(self, down: float) -> float:
        """Return the strike gap at a distance below the leaf's top."""
        return self.top + (self.bottom - self.top) * down / self.height

    def fix(self, even: float) -> Fix:
        """Return the moves that leave a gap of `even` all along."""
        return Fix((self.gap(self.first) - even, self.gap(self.last) - even), even)

    @property
    def ends(self) -> "tuple[float, float]":
        """The smaller and the larger of the gaps across from the hinges.

        One shim leaves the smaller one all along, one deeper mortise the larger one.
        """
        both = (self.gap(self.first), self.gap(self.last))
        return (min(both), max(both))

    def best(self, room: "float | None") -> "Fix | None":
        """Return the fix that works with the least work; None where no hinge has the room.

        One shim while it leaves enough; else one hinge deeper, where the gap on its side has room
        or was not measured; else a shim that leaves a tight gap; else both.
        """
        less, more = self.ends
        if less >= LEAST_GAP - HAIR:
            return self.fix(less)
        if room is None or more - less <= room + SEEN:
            return self.fix(more)
        if less >= TIGHT:
            return self.fix(less)
        even = min(LEAST_GAP, less + room)
        return self.fix(even) if even >= TIGHT else None

    def head_change(self, moves: "Moves", width: float) -> float:
        """Return by how much the gap over the leaf opens at its strike edge."""
        return (moves[0] - moves[1]) / (self.last - self.first) * width


def is_seen(move: float) -> bool:
    """Tell whether a move is large enough to make."""
    return abs(move) > SEEN
