"""Which way round crown goes on the saw: edge to the fence, swing, and the side that is kept.

Left and right of a joint are meant as you face the corner from the room. Seen face on, the left
piece is cut at its right end. Crown on the wall is long at the bottom edge in an inside corner
and at the top edge in an outside one, and so is the side of the cut that goes with it.
"""

from collections import namedtuple

Cut = namedtuple("Cut", ("edge", "swing", "keep"))
"""Edge at the fence (top or bottom), where the handle swings, which side of the blade is kept."""

OTHER = {"left": "right", "right": "left"}


def flat(turn: str, side: str, tilt: str = "left") -> Cut:
    """Return how a piece lies flat on its back.

    Parameters
    ----------
    turn : str
        inside or outside.
    side : str
        left or right of the joint.
    tilt : str
        Where the top of the blade leans.

    Source: planes cut by planes; the top edge goes to the fence for an inside left and an outside
    right piece, as printed manuals of compound miter saws say.

    >>> flat("inside", "left")
    Cut(edge='top', swing='right', keep='left')
    """
    keep = tilt if turn == "inside" else OTHER[tilt]
    edge = "top" if keep == side else "bottom"
    return Cut(edge, _swing(turn, edge, keep), keep)


def nested(turn: str, side: str) -> Cut:
    """Return how a piece stands upside down at its spring, wall edge to the fence.

    >>> nested("inside", "left")
    Cut(edge='bottom', swing='right', keep='right')
    """
    keep = OTHER[side]
    return Cut("bottom", _swing(turn, "bottom", keep), keep)


def _swing(turn: str, edge: str, keep: str) -> str:
    """Return the handle's side: a kept piece longer at the fence has the handle on its own side."""
    long_edge = "bottom" if turn == "inside" else "top"
    return keep if edge == long_edge else OTHER[keep]
