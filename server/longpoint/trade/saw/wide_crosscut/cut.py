"""A board across the saw: how many cuts it takes, and what the fence's error does to them."""

from ... import degrees

_HAIR = 1e-9  # Inches: float noise must not ask for a second cut where the first just does.


class Crosscut:
    """A cut across a board; inches and degrees.

    Parameters
    ----------
    width : float
        Of the board.
    capacity : float
        The widest board that the saw crosses at square.
    angle : float
        Off a square cut.
    error : float
        How far the fence is out of true.
    over : bool
        The board is rolled over for the second cut; else turned end for end.
    """

    def __init__(
        self, width: float, capacity: float, angle: float, error: float, over: bool
    ) -> None:
        self.width = width
        self.capacity = capacity
        self.angle = angle
        self.error = error
        self.over = over
        self.reach = capacity * degrees.cos(angle)

    @property
    def number(self) -> int:
        """Cuts needed: 1, 2, or 0 where two don't meet."""
        for cuts in (1, 2):
            if self.width <= cuts * self.reach + _HAIR:
                return cuts
        return 0

    @property
    def length(self) -> float:
        """Length of the whole cut line."""
        return self.width / degrees.cos(self.angle)

    @property
    def shift(self) -> float:
        """How much farther along the line meets the one edge than the other."""
        return self.width * degrees.tan(self.angle)

    @property
    def overlap(self) -> float:
        """By how much two cuts can pass each other, square across the board."""
        return 2 * self.reach - self.width

    @property
    def meeting_error(self) -> float:
        """Angle between the two cuts: none where board and blade turn together."""
        return 2 * self.error if self.over else 0.0

    @property
    def off_line(self) -> float:
        """How far the cut is off at the board's far edge, square to the line.

        Rolled over: the second half off a straightedge along the first half. Turned end for end
        the halves are one straight cut: off the line that was meant.
        """
        if self.over:
            return self.length / 2 * degrees.tan(self.meeting_error)
        return self.length * degrees.tan(self.error)

    def steepest(self, cuts: int) -> float:
        """Return the angle at which so many cuts just cross the board."""
        return degrees.acos(self.width / (cuts * self.capacity))
