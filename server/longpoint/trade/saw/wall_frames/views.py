"""Frames on a wall drawn: the whole wall, and one frame with its pieces."""

from ...tool import Drawing, Scale
from .layout import Group, Layout
from .pieces import LEVEL, UPRIGHT, tag_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .layout import FrameTrim, Rectangle

MOST_NUMBERS = 12


def wall_view(layout: Layout, spots: "list[Rectangle]", where: str, scale: Scale) -> Drawing:
    """Draw the wall with its frames, openings and obstacles.

    Balloons are the tags of the pieces, on the first frame of each size; numbers in the frames
    are those of the marks.
    """
    long, high = layout.length, layout.wall_height
    count = len(layout.frames)
    view = Drawing(
        f"The {where} from the front",
        f"{count} frames on {scale.length(long)} by {scale.length(high)}.",
    )
    view.box("wall", 0, 0, long, high)
    for opening in layout.openings:
        top = 0.0 if opening.top is None else max(0.0, high - opening.top)
        view.box("clearance", opening.left, top, opening.right, high - (opening.bottom or 0.0))
    for frame in layout.frames:
        _frame(view, frame.outside, layout.trim, high)
        if count <= MOST_NUMBERS:
            view.text(_middle(frame.outside, high), str(frame.number))
    for x0, y0, x1, y1 in spots:
        view.box("metal", x0, high - y0, x1, high - y1)
    for group in layout.groups:
        _balloons(view, group, layout.trim, high)
    _wall_dimensions(view, layout, scale)
    return view


def _middle(outside: "Rectangle", high: float) -> "tuple[float, float]":
    x0, y0, x1, y1 = outside
    return (x0 + x1) / 2, high - (y0 + y1) / 2


def _balloons(view: Drawing, group: Group, trim: "FrameTrim", high: float) -> None:
    """Put the tags of a size of frame on a level and an upright piece of its first one.

    In a run that is the bottom, out of the way of the frame over an opening beside it.
    """
    x0, y0, x1, y1 = group.frames[0].outside
    half = trim.width / 2
    level = high - y0 - half if group.kind == "run" else high - y1 + half
    view.tag(((x0 + x1) / 2, level), tag_of(group, LEVEL))
    view.tag((x1 - half, high - (y0 + y1) / 2), tag_of(group, UPRIGHT))


def _wall_dimensions(view: Drawing, layout: Layout, scale: Scale) -> None:
    """Draw the wall's length, the first frame of each run and the first gap, and the height."""
    long, high = layout.length, layout.wall_height
    view.dimension((0, 0), (long, 0), scale.length(long))
    for group in layout.runs:
        x0, _, x1, _ = group.frames[0].outside
        view.dimension((x0, high), (x1, high), scale.length(group.width), -1)
        if len(group.frames) > 1:
            after = group.frames[1].outside[0]
            view.dimension((x1, high), (after, high), scale.length(layout.margins.between), -2)
    view.dimension(
        (long, high - layout.high),
        (long, high - layout.low),
        scale.length(layout.high - layout.low),
    )


def one_frame(layout: Layout, scale: Scale) -> Drawing:
    """Draw the first frame with its outside size and its pieces."""
    group = layout.groups[0]
    wide, high, mid = group.width, group.height, layout.trim.width / 2
    view = Drawing(
        "One frame and its pieces",
        f"{scale.length(wide)} by {scale.length(high)} outside.",
    )
    _frame(view, (0.0, 0.0, wide, high), layout.trim, high)
    for y in (mid, high - mid):
        view.tag((wide / 2, y), tag_of(group, LEVEL))
    for x in (mid, wide - mid):
        view.tag((x, high / 2), tag_of(group, UPRIGHT))
    view.dimension((0, 0), (wide, 0), scale.length(wide))
    view.dimension((wide, 0), (wide, high), scale.length(high))
    return view


def _frame(view: Drawing, outside: "Rectangle", trim: "FrameTrim", wall_high: float) -> None:
    """Draw a frame on a wall `wall_high` high: four mitered sides and their blocks."""
    x0, y0, x1, y1 = outside
    top, low, width = wall_high - y1, wall_high - y0, trim.width
    outer = [(x0, top), (x1, top), (x1, low), (x0, low)]
    inner = [
        (x0 + width, top + width),
        (x1 - width, top + width),
        (x1 - width, low - width),
        (x0 + width, low - width),
    ]
    for index in range(4):
        after = (index + 1) % 4
        view.area("stock", [outer[index], outer[after], inner[after], inner[index]])
    if trim.block:
        size, set_in = trim.block, trim.set_in
        for left in (x0 + set_in, x1 - set_in - size):
            for up in (top + set_in, low - set_in - size):
                view.box("panel", left, up, left + size, up + size)
