"""Which way a piece lies on the saw: edge to the fence, handle, and the side that is kept.

Left and right of a joint are meant as you face the corner from the room. Seen face on, the left
piece is cut at its right end. Crown is long at the bottom edge in an inside corner, where its back
reaches farther than its face, and at the top edge in an outside one, where its face does.
"""

from collections import namedtuple

Cut = namedtuple("Cut", ("edge", "handle", "keep"))
"""Edge at the fence (top or bottom), where the handle goes, which side of the blade is kept."""

OTHER = {"left": "right", "right": "left"}


def flat(turn: str, side: str, bevel: str = "left") -> Cut:
    """Return how a piece lies flat on its back.

    Parameters
    ----------
    turn : str
        inside or outside.
    side : str
        left or right of the joint.
    bevel : str
        Where the top of the blade leans.

    Source: planes cut by planes; the top edge goes to the fence for an inside left and an outside
    right piece, as printed manuals of compound miter saws say.

    >>> flat("inside", "left")
    Cut(edge='top', handle='right', keep='left')
    """
    return laid(side, bevel, _long_edge(turn), face_longer=turn == "outside")


def laid(side: str, bevel: str, long_edge: str, *, face_longer: bool) -> Cut:
    """Return how a piece lies face up for a cut slanted both ways.

    Parameters
    ----------
    side : str
        left or right of the joint; a left piece is cut at its right end.
    bevel : str
        Where the top of the blade leans.
    long_edge : str
        top or bottom: the edge that reaches farther at this end.
    face_longer : bool
        The face reaches farther than the back.

    >>> laid("right", "left", "top", face_longer=True)
    Cut(edge='top', handle='right', keep='right')
    """
    keep = OTHER[bevel] if face_longer else bevel
    edge = "top" if keep == side else "bottom"
    return Cut(edge, _handle(long_edge, edge, keep), keep)


def nested(turn: str, side: str) -> Cut:
    """Return how a piece stands upside down at its spring, wall edge to the fence.

    >>> nested("inside", "left")
    Cut(edge='bottom', handle='right', keep='right')
    """
    keep = OTHER[side]
    return Cut("bottom", _handle(_long_edge(turn), "bottom", keep), keep)


def _long_edge(turn: str) -> str:
    return "bottom" if turn == "inside" else "top"


def _handle(long_edge: str, edge: str, keep: str) -> str:
    """Return the handle's side: a kept piece longer at the fence has the handle on its own side."""
    return keep if edge == long_edge else OTHER[keep]
