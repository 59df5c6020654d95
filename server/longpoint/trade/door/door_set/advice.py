"""Proportions that have long looked right, worked out for this leaf: offered, never imposed."""

from ..gaps import PASSAGE
from .leaf import FramedLeaf

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale

TALL_CUPBOARD = 60.0
"""Inches above which a cupboard's leaf takes a mid rail: Architectural Woodwork Standards, 1st
edition 2009, 4.4.6.10."""


def advice(leaf: FramedLeaf, scale: "Scale") -> "list[str]":
    """Return a sentence for each aid that fits the kind and that this leaf doesn't follow yet."""
    notes = [_equal_sight_lines(leaf, scale), _equal_panels(leaf, scale)]
    if leaf.kind == PASSAGE:
        notes += [_taller_bottom(leaf, scale), _thirds(leaf, scale)]
    elif not leaf.frame.mid_rails and leaf.height > TALL_CUPBOARD:
        notes.append(f"a cupboard's leaf over {scale.length(TALL_CUPBOARD)} high takes a mid rail.")
    return ["If you like: " + note for note in notes if note]


def _equal_sight_lines(leaf: FramedLeaf, scale: "Scale") -> str:
    stile = leaf.frame.stile
    widths = [rail.high - rail.low for rail in leaf.rails]
    if max([abs(width - stile) for width in widths]) < 1e-9:
        return ""
    return f"equal sight lines come from rails all as wide as the stiles, {scale.length(stile)}."


def _taller_bottom(leaf: FramedLeaf, scale: "Scale") -> str:
    if leaf.frame.bottom_rail > 1.4 * leaf.frame.top_rail:
        return ""
    return (
        "a bottom rail about twice the top rail, "
        f"{scale.length(2 * leaf.frame.top_rail)}, gives the door a foot to stand on."
    )


def _clear(leaf: FramedLeaf, mid: float) -> float:
    return float(leaf.height - leaf.frame.top_rail - leaf.frame.bottom_rail - mid)


def _one_mid(leaf: FramedLeaf) -> "float | None":
    """Return the width of the one mid rail, or of one like the top rail where there is none."""
    mids = leaf.frame.mid_rails
    if len(mids) > 1:
        return None
    return float(mids[0].high - mids[0].low if mids else leaf.frame.top_rail)


def _thirds(leaf: FramedLeaf, scale: "Scale") -> str:
    mid = _one_mid(leaf)
    if mid is None or _clear(leaf, mid) <= 0:
        return ""
    center = leaf.frame.bottom_rail + _clear(leaf, mid) / 3 + mid / 2
    return (
        f"thirds: a mid rail {scale.length(mid)} wide centered {scale.length(center)} up makes "
        "what shows of the upper panel twice as high as the lower."
    )


def _equal_panels(leaf: FramedLeaf, scale: "Scale") -> str:
    count = len(leaf.frame.mid_rails)
    if count < 1:
        return ""
    mids = sum([rail.high - rail.low for rail in leaf.frame.mid_rails])
    each = _clear(leaf, mids) / (count + 1)
    centers, edge = [], leaf.frame.bottom_rail
    for rail in reversed(leaf.frame.mid_rails):
        width = rail.high - rail.low
        centers.append(scale.length(edge + each + width / 2))
        edge += each + width
    return f"equal panels: center from the bottom at {', '.join(centers)}."
