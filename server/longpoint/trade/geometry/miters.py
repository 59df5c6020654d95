"""Saw settings where two pieces meet, degrees off a square cut."""

from .. import degrees


def settings(across: float, upright: float) -> "tuple[float, float]":
    """Return the settings of two pieces at a square corner, from their widths.

    Parameters
    ----------
    across, upright : float
        Widths of the level piece and of the upright one, in one unit.

    Source: the joint runs from the inner to the outer corner, so each setting is the arc tangent
    of the neighbor's width over the piece's own.

    >>> settings(2, 2), settings(4, 3)[0] + settings(4, 3)[1]
    ((45.0, 45.0), 90.0)
    """
    return degrees.atan(upright / across), degrees.atan(across / upright)
