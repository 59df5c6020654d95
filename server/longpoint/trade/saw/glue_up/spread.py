"""What a glue-up takes besides wood: clamps, their force, and glue."""

import math

from ...lengths import show_number

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...tool import Answer

PRESSURE = {"soft": (100.0, 150.0), "hard": (175.0, 250.0)}
"""Pounds per square inch of glue line, least and most; glue makers, seen as reprinted."""

GALLON = 231.0
"""Cubic inches in a US gallon of 128 fluid ounces, exactly."""

CUBIC_CM = 16.387064
"""Cubic centimeters, or milliliters, in a cubic inch: 2.54 cubed, exactly."""


def clamps_along(length: float, spacing: float) -> int:
    """Return how many clamps a length takes: at most `spacing` apart, half of it at each end.

    >>> clamps_along(36, 8), clamps_along(6, 8)
    (5, 2)
    """
    return max(2, int(math.ceil(length / spacing - 1e-9)))


def add_clamps(answer: "Answer", length: float, clamps: int, wider: bool) -> None:
    """Add how many clamps the work takes and where they stand; `length` in inches."""
    answer.count("clamps", clamps)
    answer.length("clamp_gap", length / clamps)
    sides = "over and under the work" if wider else "from one edge and the other"
    first = answer.scale.length(length / clamps / 2)
    answer.note(
        f"{clamps} clamps, alternating {sides}, the first {first} from the end. Stiff cauls "
        "spread their force."
    )


def add_force(answer: "Answer", clamps: int, wood: str, joint: float) -> None:
    """Add how hard each clamp presses.

    `joint` is one glue line's area in square inches. Clamps press through every line at
    once, so the number of lines doesn't add to the force.
    """
    least, most = PRESSURE[wood]
    answer.number("clamp_force", least * joint / clamps, "lb", places=0)
    low, high = [show_number(pressure * joint / clamps, 0) for pressure in (least, most)]
    answer.note(
        f"{show_number(least)} to {show_number(most)} pounds on every square inch come to {low} "
        f"to {high} lb on each clamp: if yours can't press so hard, use more of them."
    )


def add_glue(answer: "Answer", area: float, film: float) -> None:
    """Add how much glue covers `area` square inches, all lines together, `film` mils thick."""
    cubic_inches = area * film / 1000
    if answer.scale.units == "mm":
        answer.number("glue", cubic_inches * CUBIC_CM, "mL", places=0)
    else:
        answer.number("glue", cubic_inches * 128 / GALLON, "fl oz", places=1)
    answer.note(
        "Glue is for one side of each line, with nothing for squeeze-out or the brush: an even "
        "row of beads along the joint shows that there is enough."
    )
