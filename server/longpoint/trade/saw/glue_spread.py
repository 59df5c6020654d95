"""What a glue-up takes besides wood: clamps, their force, and glue."""

import math

from ..lengths import show_number

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..rows import Given
    from ..tool import Answer

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


def add_clamps(answer: "Answer", given: "Given", joint: float) -> int:
    """Add clamps and their force, and return how many.

    `joint` is one glue line's area in square inches. Clamps press through every line at
    once, so the number of lines doesn't add to the force.
    """
    length = given.number("length")
    clamps = clamps_along(length, given.number("clamp_spacing"))
    least, most = PRESSURE[given.text("wood")]
    answer.count("clamps", clamps, label="Clamps")
    answer.number("clamp_force", least * joint / clamps, "lb", label="Force of each", places=0)
    answer.length("clamp_gap", length / clamps, label="Clamp to clamp")
    sides = "over and under the work" if given.text("way") == "wider" else "from either edge"
    first = answer.scale.length(length / clamps / 2)
    low, high = [show_number(pressure * joint / clamps, 0) for pressure in (least, most)]
    answer.note(
        f"{clamps} clamps, by turns {sides}, the first {first} from the end. "
        f"{show_number(least)} to {show_number(most)} pounds on every square inch come to {low} "
        f"to {high} lb on each clamp: if yours can't press so hard, use more of them. Stiff "
        "battens spread it."
    )
    return clamps


def add_glue(answer: "Answer", given: "Given", area: float) -> None:
    """Add how much glue covers `area` square inches, all lines together."""
    cubic_inches = area * given.number("film") / 1000
    if answer.scale.units == "mm":
        answer.number("glue", cubic_inches * CUBIC_CM, "mL", label="Glue", places=0)
    else:
        answer.number("glue", cubic_inches * 128 / GALLON, "fl oz", label="Glue", places=1)
    answer.note(
        "Glue is for one side of each line, with nothing for squeeze-out or the brush: an even "
        "row of beads along the joint shows that there is enough."
    )
