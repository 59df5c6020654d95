"""Trim of one width along an opening out of square."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...geometry.quadrilateral import Point, Quadrilateral


class OddFrame:
    """Settings in degrees and points in inches, by side and corner clockwise from the top.

    Parameters
    ----------
    opening : Quadrilateral
        The opening or the recess.
    width : float
        Of the trim, inches.
    outer : float
        How far the trim's outer edges lie outside the opening, inches: 0 inside a recess.
    """

    def __init__(self, opening: "Quadrilateral", width: float, outer: float) -> None:
        self.opening = opening
        self.width = width
        self.outer = outer
        self.inner = outer - width
        self.saws = [90 - corner / 2 for corner in opening.corners]

    def long(self, side: int) -> float:
        """Return a piece's length between its long points."""
        return self._side(side, self.outer)

    def short(self, side: int) -> float:
        """Return a piece's length between its short points."""
        return self._side(side, self.inner)

    def glass(self, outset: float) -> "list[float]":
        """Return sides, from the top clockwise, and diagonal A of glass.

        `outset` is how far past the frame's inner edges it reaches, inches.
        """
        corners = self.opening.moved(self.inner + outset)
        sides = [self._side(side, self.inner + outset) for side in range(4)]
        return sides + [_distance(corners[0], corners[2])]

    def _side(self, side: int, outwards: float) -> float:
        return self.opening.sides[side] + outwards * self.opening.growth(side)


def _distance(start: "Point", end: "Point") -> float:
    across, down = end[0] - start[0], end[1] - start[1]
    distance: float = (across * across + down * down) ** 0.5
    return distance
