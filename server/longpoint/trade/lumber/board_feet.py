"""How lumber is counted: a board foot is 144 cubic inches.

Stock thinner than an inch counts as an inch thick, surfaced stock by its size before surfacing:
NHLA rules as a dealer quotes them; for softwood, which counts by its label, from memory.
"""

CUBIC_INCHES = 144.0
"""In a board foot."""

CUBIC_METERS = 144 * 0.0254**3
"""In a board foot, exactly."""


def counted_thickness(thickness: float) -> float:
    """Return the thickness that is paid for, inches: never less than one."""
    return max(thickness, 1.0)


def board_feet(thickness: float, width: float, length: float) -> float:
    """Return the board feet that a yard counts; inches, sizes before surfacing.

    >>> board_feet(2, 6, 96), board_feet(0.75, 6, 96)
    (8.0, 4.0)
    """
    return counted_thickness(thickness) * width * length / CUBIC_INCHES
