"""A mitered frame with four square corners, or three sides that stand on their feet."""


class SquareFrame:
    """The frame's sizes in inches: over all, the widths of its pieces, inside.

    Parameters
    ----------
    width, height : float
        Over all, between long points; to the feet where it stands on them.
    side, top : float
        Widths of the pieces.
    bottom : float
        Width of the bottom piece; 0 for a frame that is open below.

    >>> frame = SquareFrame(30, 40, 2, 3, 0)
    >>> frame.clear_width, frame.clear_height, frame.closed
    (26, 37, False)
    """

    def __init__(self, width: float, height: float, side: float, top: float, bottom: float) -> None:
        self.width = width
        self.height = height
        self.side = side
        self.top = top
        self.bottom = bottom

    @property
    def closed(self) -> bool:
        """Tell whether there is a bottom piece."""
        return self.bottom > 0

    @property
    def clear_width(self) -> float:
        """Width between the inner edges."""
        return self.width - 2 * self.side

    @property
    def clear_height(self) -> float:
        """Height between the inner edges, or from the feet to the top's inner edge."""
        return self.height - self.top - self.bottom


def frame_around(
    opening: "tuple[float, float]", reveal: float, side: float, top: float, bottom: float
) -> SquareFrame:
    """Return the frame whose inner edges stand back from an opening by the reveal.

    Parameters
    ----------
    opening : tuple of float
        Width and height in inches; the height from the feet where the frame is open below.
    reveal, side, top, bottom : float
        Inches; `bottom` 0 for a frame open below.

    >>> frame_around((30, 80), 0.25, 2, 2, 0).height
    82.25
    """
    width = opening[0] + 2 * (reveal + side)
    below = reveal + bottom if bottom else 0.0
    return SquareFrame(width, opening[1] + reveal + top + below, side, top, bottom)
