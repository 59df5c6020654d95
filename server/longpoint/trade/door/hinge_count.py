"""How many hinges a leaf takes, and what each is called: for all tools that hang one."""

import math

TALL_PER_HINGE = 30.0


def usual_count(leaf_height: float) -> int:
    """Return the usual number of hinges: 2 to 60 inches, one more for each 30 or part of it.

    >>> [usual_count(height) for height in (24, 60, 61, 90, 91, 120)]
    [2, 2, 3, 3, 4, 4]
    """
    return max(2, math.ceil(leaf_height / TALL_PER_HINGE))


def hinge_names(count: int) -> "list[str]":
    """Return what the hinges are called, from the top.

    >>> hinge_names(3), hinge_names(4)
    (['Top', 'Middle', 'Bottom'], ['Top', 'Second', 'Third', 'Bottom'])
    """
    if count == 3:
        return ["Top", "Middle", "Bottom"]
    ordinals = ["Second", "Third", "Fourth", "Fifth", "Sixth", "Seventh", "Eighth", "Ninth"]
    return (["Top"] + ordinals[: count - 2] + ["Bottom"])[:count]
