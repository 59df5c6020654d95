"""Proportions that have long looked right, worked out for this leaf: offered, never imposed."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..lengths import Scale
    from .leaf import Leaf


def proportion_notes(leaf: "Leaf", scale: "Scale") -> "list[str]":
    """Return a sentence for each aid that this leaf doesn't follow yet."""
    notes = [_equal_sight_lines(leaf, scale), _taller_bottom(leaf, scale)]
    notes += [_thirds(leaf, scale), _equal_panels(leaf, scale)]
    return ["If you like: " + note for note in notes if note]


def _equal_sight_lines(leaf: "Leaf", scale: "Scale") -> str:
    widths = [rail.high - rail.low for rail in leaf.rails]
    if max([abs(width - leaf.stile) for width in widths]) < 1e-9:
        return ""
    return (
        f"equal sight lines come from rails all as wide as the stiles, {scale.length(leaf.stile)}."
    )


def _taller_bottom(leaf: "Leaf", scale: "Scale") -> str:
    if leaf.bottom_rail > 1.4 * leaf.top_rail:
        return ""
    return (
        "a bottom rail about twice the top rail, "
        f"{scale.length(2 * leaf.top_rail)}, gives the door a foot to stand on."
    )


def _clear(leaf: "Leaf", mid: float) -> float:
    return leaf.height - leaf.top_rail - leaf.bottom_rail - mid


def _one_mid(leaf: "Leaf") -> "float | None":
    """Return the width of the one mid rail, or of one like the top rail where there is none."""
    if len(leaf.mid_rails) > 1:
        return None
    for rail in leaf.mid_rails:
        return float(rail.high - rail.low)
    return leaf.top_rail


def _thirds(leaf: "Leaf", scale: "Scale") -> str:
    mid = _one_mid(leaf)
    if mid is None or _clear(leaf, mid) <= 0:
        return ""
    center = leaf.bottom_rail + _clear(leaf, mid) / 3 + mid / 2
    return (
        f"thirds: a mid rail {scale.length(mid)} wide centered {scale.length(center)} up makes "
        "what shows of the upper panel twice as high as the lower."
    )


def _equal_panels(leaf: "Leaf", scale: "Scale") -> str:
    count = len(leaf.mid_rails)
    if count < 1:
        return ""
    mids = sum([rail.high - rail.low for rail in leaf.mid_rails])
    each = _clear(leaf, mids) / (count + 1)
    centers, edge = [], leaf.bottom_rail
    for rail in reversed(leaf.mid_rails):
        width = rail.high - rail.low
        centers.append(scale.length(edge + each + width / 2))
        edge += each + width
    return f"equal panels: center from the bottom at {', '.join(centers)}."
