"""A glue-up drawn: the strips from their ends with their rings, and the panel under its clamps."""

import math

from ...tool import Drawing

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale
    from ...lumber.strips import Strips

MOST_TAGS = 12
RINGS = (0.35, 0.7)  # How high the drawn rings rise, in parts of a strip's height.


def end_view(strips: "Strips", across: "float | None", wider: bool, scale: "Scale") -> Drawing:
    """Draw the part from its end: strips left to right, or layers top to bottom.

    `across` is the other size of the end, None where it isn't known: then it has no dimension.
    """
    view = Drawing(
        "The part from its end",
        f"{strips.count} pieces make {scale.length(strips.size)}, rings as they should lie.",
    )
    high = across or strips.size / 12
    at, above = 0.0, -strips.size * 0.06  # Balloons over a thin panel would hide its rings.
    for index in range(strips.count):
        size = strips.shows(index)
        box = (at, 0.0, at + size, high) if wider else (0.0, at, high, at + size)
        view.box("stock", box[0], box[1], box[2], box[3])
        up = index % 2 == 0 if wider else 2 * index >= strips.count
        _rings(view, box, up)
        if strips.count <= MOST_TAGS:
            down = above if wider else at + size / 2
            view.tag(((box[0] + box[2]) / 2, down), str(index + 1))
        at += size
    whole = scale.length(strips.size)
    if wider:
        view.dimension((0, 2 * above), (strips.size, 2 * above), whole)
        if across is not None:
            view.dimension((strips.size, 0), (strips.size, high), scale.length(across))
    else:
        view.dimension((0, strips.size), (0, 0), whole)
        view.dimension((0, 0), (high, 0), scale.length(high))
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
    strips: "Strips", length: float, across: "float | None", clamps: int, scale: "Scale"
) -> Drawing:
    """Draw the work from above, `clamps` alternating over it and under it.

    `across` is the width of a part made of layers; None where the strips lie side by side.
    """
    high = strips.size if across is None else across
    view = Drawing(
        "Clamps from above: whole lines over the work, broken lines under it",
        f"{clamps} clamps along {scale.length(length)}.",
    )
    at = 0.0
    for index in range(strips.count if across is None else 1):
        size = strips.shows(index) if across is None else across
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
