"""Scarf joints: a wall longer than the stick is made of several pieces of like length.

The left piece goes up first with its long point at the back; the right one lies over it with its
long point on the face. Each lap uses up thickness x tan(scarf angle) more than the wall is long.
"""

import math

from .. import degrees

MOST_PIECES = 12
NOISE = 1e-9
"""Inches by which sums of converted lengths may be off: no reason for another scarf."""


def lap(thickness: float, angle: float) -> float:
    """Return what one scarf costs in length; `angle` in degrees off square.

    >>> lap(0.625, 45)
    0.625
    """
    return thickness * degrees.tan(angle)


def fits(length: float, stick: float) -> bool:
    """Tell whether a piece comes out of a stick whole; inches, from point to point."""
    return length <= stick + NOISE


def pieces_needed(length: float, stick: float, lost: float) -> int:
    """Return how many pieces, each at most a stick, cover `length` if each scarf costs `lost`.

    Parameters
    ----------
    length, stick, lost : float
        Inches, `length` from point to point; `stick` must be more than `lost`.

    >>> pieces_needed(200, 192, 0.625), pieces_needed(192, 192, 0.625)
    (2, 1)
    """
    if fits(length, stick):
        return 1
    return math.ceil((length - lost) / (stick - lost) - NOISE)


def piece_length(length: float, pieces: int, lost: float) -> float:
    """Return the length, point to point, of each of several like pieces that cover `length`.

    More than half a stick whenever `pieces` is the fewest that will do, so no end is short.

    >>> piece_length(200, 2, 0.625)
    100.3125
    """
    return (length + (pieces - 1) * lost) / pieces
