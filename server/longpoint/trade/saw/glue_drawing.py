"""A glue-up drawn: the strips from their ends with their rings, and the panel under its clamps."""

import math

from ..tool import Drawing

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..lengths import Scale
    from .glue_up import Stack

MOST_TAGS = 12
RINGS = (0.35, 0.7)  # How high the drawn rings rise, in parts of a strip's height.


def end_view(stack: "Stack", across: float, wider: bool, scale: "Scale") -> Drawing:
    """Draw the part from its end: strips left to right, or layers top to bottom."""
    view = Drawing(
        "The part from its end",
        f"{stack.strips} pieces make {scale.length(stack.glued)}, rings as they should lie.",
    )
    at, above = 0.0, -stack.glued * 0.06  # Balloons over a thin panel would hide its rings.
    for index in range(stack.strips):
        size = stack.shown(index)
        box = (at, 0.0, at + size, across) if wider else (0.0, at, across, at + size)
        view.box("stock", box[0], box[1], box[2], box[3])
        up = index % 2 == 0 if wider else 2 * index >= stack.strips
        _rings(view, box, up)
        if stack.strips <= MOST_TAGS:
            down = above if wider else at + size / 2
            view.tag(((box[0] + box[2]) / 2, down), str(index + 1))
        at += size
    if wider:
        high = 2 * above
        view.dimension((0, high), (stack.glued, high), scale.length(stack.glued))
        view.dimension((0, across), (stack.shown(0), across), scale.length(stack.shown(0)), -1)
        view.dimension((stack.glued, 0), (stack.glued, across), scale.length(across))
    else:
        view.dimension((0, stack.glued), (0, 0), scale.length(stack.glued))
        view.dimension((0, 0), (across, 0), scale.length(across))
    return view


def _rings(view: Drawing, box: "tuple[float, float, float, float]", up: bool) -> None:
    """Draw two growth rings inside a strip; the bark side is where they bulge to."""
    wide, high = box[2] - box[0], box[3] - box[1]
    for part in RINGS:
        rise = high * part
        half = min(wide * 0.4, rise * 4)
        radius = (half * half + rise * rise) / (2 * rise)
        middle = (box[0] + box[2]) / 2
        reach = math.degrees(math.atan2(half, radius - rise))
        if up:
            view.arc("mark", (middle, box[3] - rise + radius), radius, 270 - reach, 2 * reach)
        else:
            view.arc("mark", (middle, box[1] + rise - radius), radius, 90 - reach, 2 * reach)


def plan_view(
    stack: "Stack", length: float, across: float, clamps: int, wider: bool, scale: "Scale"
) -> Drawing:
    """Draw the work from above, `clamps` over it and under it by turns.

    `across` is what the clamps' view shows of layers: the part's width.
    """
    high = stack.glued if wider else across
    view = Drawing(
        "Clamps from above: whole lines over the work, broken lines under it",
        f"{clamps} clamps along {scale.length(length)}.",
    )
    at = 0.0
    for index in range(stack.strips if wider else 1):
        size = stack.shown(index) if wider else across
        view.box("stock", 0, at, length, at + size)
        at += size
    for index in range(clamps):
        place = length * (index + 0.5) / clamps
        role = "clearance" if index % 2 else "mark"
        view.line(role, (place, -high * 0.1), (place, high * 1.1))
    first, gap = length / clamps / 2, length / clamps
    view.dimension((0, high * 1.1), (first, high * 1.1), scale.length(first), -1)
    if clamps > 1:
        text = scale.length(gap)
        view.dimension((first, high * 1.1), (first + gap, high * 1.1), text, -1)
    view.dimension((0, -high * 0.1), (length, -high * 0.1), scale.length(length))
    return view
