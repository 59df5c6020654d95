"""Trim is sold by the lineal foot: what to buy for pieces that are cut to meet."""

from ..lengths import Scale, show_number

OVER_A_JOINT = 2.0
"""Inches to buy over the pieces' own lengths for each joint: trade articles on base molding."""


def to_buy(pieces: float, joints: int) -> float:
    """Return the length to buy for pieces of trim, inches.

    Parameters
    ----------
    pieces : float
        Sum of the pieces from point to point, inches.
    joints : int
        Places where two of them are cut to meet: a corner, a scarf, a return.

    >>> to_buy(528, 4)
    536.0
    """
    return pieces + joints * OVER_A_JOINT


def lineal(inches: float, scale: Scale) -> str:
    """Return a run of trim as the yard says it: in feet, or meters among millimeters.

    >>> lineal(528, Scale()), lineal(528, Scale("mm"))
    ('44 ft', '13.41 m')
    """
    if scale.units == "in":
        return show_number(inches / 12, 1) + " ft"
    return show_number(inches * 0.0254) + " m"
