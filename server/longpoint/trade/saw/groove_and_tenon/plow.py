"""Which cutter plows a groove of a certain width, and in how many passes.

A cutter narrower than the groove is run twice at one setting of the fence, the piece turned face
for face between: the groove then comes out centered and as wide as the fence says.
"""

import math
from collections import namedtuple

from ...refusal import Refusal
from .stacks import Stack, TooManySums, nearest_stacks

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale

LOOSE = 1 / 64
"""Inches that a groove may be wider than wanted before the panel rattles."""
_HAIR = 1e-9

Kit = namedtuple("Kit", ("outer", "chippers", "shims", "per_gap"))
"""A stack's parts: thickness of each outer blade, rows of (thickness, count) of chippers and of
shims, and the most shims for each gap between blades; inches."""

Plow = namedtuple("Plow", ("cut", "groove", "passes", "stack", "shim", "nearest"))
"""How a groove is plowed: what one pass cuts, how wide it gets, in how many passes; the stack to
assemble or None, a shim to add to it that is not in the kit or 0, and the nearest stacks below and
above the width wanted, each a Stack or None."""


def with_cutter(wanted: float, cutter: float, field: str, scale: "Scale") -> Plow:
    """Return how one blade or bit plows a groove.

    Raises
    ------
    Refusal
        On `field`: the cutter is wider than the groove.

    >>> from longpoint.trade.lengths import Scale
    >>> plow = with_cutter(0.255, 0.125, "kerf", Scale())
    >>> plow.groove, plow.passes
    (0.255, 3)
    """
    if cutter > wanted + LOOSE:
        raise Refusal(
            field,
            f"One pass cuts {scale.decimal(cutter)}, more than the groove wanted, "
            f"{scale.decimal(wanted)}: use a narrower cutter.",
        )
    groove = max(cutter, wanted)
    passes = max(1, int(math.ceil(groove / cutter - _HAIR)))
    return Plow(cutter, groove, passes, None, 0.0, (None, None))


def with_stack(wanted: float, kit: Kit, scale: "Scale") -> Plow:
    """Return how a dado stack plows a groove.

    First choice is a stack of the kit in one pass, then one with a single shim added, then a
    narrower stack, or one outer blade alone, in more passes.

    Raises
    ------
    Refusal
        The kit makes too many stacks to search, or its outer blade is wider than the groove.
    """
    if 2 * kit.outer > wanted + LOOSE:
        return with_cutter(wanted, kit.outer, "outer_blade", scale)
    below, above = nearest = _nearest(wanted, kit)
    if above is not None and above.width <= wanted + LOOSE:
        return Plow(above.width, above.width, 1, above, 0.0, nearest)
    return _narrower(wanted, below or bare(kit), kit, nearest)


def _narrower(
    wanted: float, stack: Stack, kit: Kit, nearest: "tuple[Stack | None, Stack | None]"
) -> Plow:
    """Return how a stack narrower than the groove plows it: with a shim more, or in passes."""
    short = wanted - stack.width
    if short <= _room(stack, kit) + _HAIR:
        return Plow(wanted, wanted, 1, stack, short, nearest)
    passes = int(math.ceil(wanted / stack.width - _HAIR))
    return Plow(stack.width, wanted, passes, stack, 0.0, nearest)


def bare(kit: Kit) -> Stack:
    """Return the two outer blades alone."""
    return Stack(2 * kit.outer, (0,) * len(kit.chippers), (0,) * len(kit.shims))


def _nearest(wanted: float, kit: Kit) -> "tuple[Stack | None, Stack | None]":
    try:
        above, below = nearest_stacks(wanted, kit.outer, kit.chippers, kit.shims, kit.per_gap)
    except TooManySums:
        raise Refusal(
            "shims",
            "These chippers and shims make too many different stacks to search: list only "
            "those worth trying.",
        )
    return below, above


def _room(stack: Stack, kit: Kit) -> float:
    """Return the inches of shims that the gaps of a stack still have room for."""
    gaps = sum(stack.chippers) + 1
    used = sum([shim[0] * count for shim, count in zip(kit.shims, stack.shims)])
    return float(gaps * kit.per_gap - used)
