"""A wall as it was taped against a plumb edge, and what a piece scribed to it loses."""

from ...tool import FieldError, Refusal, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    Reading = tuple[float, float]

HAIR = 1e-9
PARALLEL = 1 / 64
"""Inches: gaps that differ by no more are the same on the tape."""


class Profile:
    """The gap between a plumb edge and a wall, from the foot of a piece to its head; inches.

    Parameters
    ----------
    readings : list of (float, float)
        Height above the foot and the gap there, from the foot up, two at least.
    height : float
        Of the piece. Beyond the readings the wall is taken to run straight on.

    >>> wall = Profile([(0, 1), (48, 1.5)], 96)
    >>> wall.at(24), wall.at(96), wall.smallest, wall.widest, wall.nearest
    (1.25, 2.0, 1, 2.0, 0)
    """

    def __init__(self, readings: "list[Reading]", height: float) -> None:
        self.readings = readings
        self.height = height
        self.points = self._points()
        gaps = [gap for _, gap in self.points]
        self.smallest, self.widest = min(gaps), max(gaps)
        self.nearest = min([(gap, up) for up, gap in self.points])[1]

    @property
    def out(self) -> float:
        """How much farther the wall is from plumb at the head than at the foot; less than 0: in."""
        return self.at(self.height) - self.at(0.0)

    @property
    def range(self) -> float:
        """The widest gap less the smallest."""
        return self.widest - self.smallest

    @property
    def wave(self) -> float:
        """How far the wall strays from a straight line between foot and head."""
        foot, slope = self.at(0.0), self.out / self.height
        return max([abs(gap - foot - slope * up) for up, gap in self.points])

    @property
    def unseen(self) -> "list[str]":
        """Which ends the readings don't reach: foot, head."""
        head = self.readings[-1][0] < self.height - HAIR
        ends = (("foot", self.readings[0][0] > HAIR), ("head", head))
        return [name for name, is_beyond in ends if is_beyond]

    def at(self, up: float) -> float:
        """Return the gap at a height."""
        pairs = list(zip(self.readings, self.readings[1:]))
        within = [pair for pair in pairs if up <= pair[1][0]] or pairs[-1:]
        (low, start), (high, end) = within[0]
        return start + (end - start) * (up - low) / (high - low)

    def _points(self) -> "list[Reading]":
        ends = [(0.0, self.at(0.0))] if self.readings[0][0] > HAIR else []
        head = [(self.height, self.at(self.height))]
        return ends + self.readings + (head if "head" in self.unseen else [])


def profile_of(readings: "list[Reading]", height: float, scale: Scale) -> Profile:
    """Return the wall from readings in any order.

    Raises
    ------
    Refusal
        For readings above the piece, two at one height, and a wall that would pass the edge.
    """
    errors = []
    for row, (up, _) in enumerate(readings):
        path = f"gaps.{row}.up"
        if up > height + HAIR:
            words = f"It is above the piece, {scale.length(height)} high: measure again."
            errors.append(FieldError(path, words))
        if [other for other, _ in readings[:row] if abs(other - up) <= HAIR]:
            words = f"Two gaps are given {scale.length(up)} up: one is enough."
            errors.append(FieldError(path, words))
    if errors:
        raise Refusal.of(errors)
    wall = Profile(sorted(readings), height)
    if wall.smallest < -HAIR:
        raise Refusal(
            "gaps",
            f"Straight on, the wall would pass the edge {scale.length(wall.nearest)} up: measure "
            "a gap at foot and head too.",
        )
    return wall


class Cut:
    """A piece to be scribed: how wide it is, where the dividers are set, what comes off; inches.

    The piece is held plumb so that it touches the wall at the nearest spot. Its other edge then
    lies as far from its place as the dividers are set, and the line they draw leaves at each
    height what the gap is there.

    >>> cut = Cut(Profile([(0, 1), (48, 1.5)], 48), 2.0)
    >>> cut.dividers, cut.off(0), cut.off(48), cut.left(48)
    (1.0, 1.0, 0.5, 1.5)
    """

    def __init__(self, wall: Profile, width: float) -> None:
        self.wall = wall
        self.width = width
        self.dividers = width - wall.smallest

    @property
    def off_least(self) -> float:
        """What comes off at the widest gap."""
        return self.width - self.wall.widest

    def off(self, up: float) -> float:
        """Return what comes off the wall edge at a height."""
        return self.width - self.wall.at(up)

    def left(self, up: float) -> float:
        """Return what is left of the piece at a height."""
        return self.width - self.off(up)
