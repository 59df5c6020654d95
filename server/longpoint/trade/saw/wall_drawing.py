"""Frames on a wall drawn: the whole wall, and one frame with its corners and pieces."""

from ..tool import Drawing, Scale
from .wall_layout import CORNERS, Layout

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .wall_layout import Rectangle

MOST_TAGS = 12


def wall_view(layout: Layout, spots: "list[Rectangle]", where: str, scale: Scale) -> Drawing:
    """Draw the wall with its frames and obstacles, dimensions along top, bottom and right."""
    long, high = layout.length, layout.wall_height
    view = Drawing(
        f"The {where} from the front",
        f"{layout.count} frames {scale.length(layout.width)} wide and "
        f"{scale.length(layout.height)} high on {scale.length(long)} by {scale.length(high)}.",
    )
    view.box("wall", 0, 0, long, high)
    for index in range(layout.count):
        left = layout.left(index)
        _frame(view, layout, left, layout.top)
        if layout.count <= MOST_TAGS:
            center = (left + layout.width / 2, layout.top + layout.height / 2)
            view.tag(center, str(index + 1))
    for x0, y0, x1, y1 in spots:
        view.box("metal", x0, high - y0, x1, high - y1)
    _wall_dimensions(view, layout, scale)
    return view


def _wall_dimensions(view: Drawing, layout: Layout, scale: Scale) -> None:
    long, high, first = layout.length, layout.wall_height, layout.left(0)
    right = first + layout.width
    view.dimension((0, 0), (long, 0), scale.length(long))
    view.dimension((first, high), (right, high), scale.length(layout.width), -1)
    if layout.count > 1:
        second = layout.left(1)
        view.dimension((right, high), (second, high), scale.length(layout.between), -2)
    top = layout.top
    view.dimension((long, top), (long, top + layout.height), scale.length(layout.height))


def one_frame(layout: Layout, scale: Scale) -> Drawing:
    """Draw one frame with its outside size, its corners A to D and its pieces 1 to 4."""
    wide, high, trim = layout.width, layout.height, layout.trim
    view = Drawing(
        "One frame: corners A to D, pieces 1 to 4",
        f"{scale.length(wide)} by {scale.length(high)} outside.",
    )
    _frame(view, layout, 0.0, 0.0)
    mid = trim / 2
    spots = ((wide / 2, mid), (wide - mid, high / 2), (wide / 2, high - mid), (mid, high / 2))
    for index, spot in enumerate(spots):
        view.tag(spot, str(index + 1))
    inset = layout.corner * 1.6
    corners = ((inset, inset), (wide - inset, inset), (wide - inset, high - inset))
    for name, spot in zip(CORNERS, corners + ((inset, high - inset),)):
        view.text(spot, name)
    view.dimension((0, 0), (wide, 0), scale.length(wide))
    view.dimension((wide, 0), (wide, high), scale.length(high))
    return view


def _frame(view: Drawing, layout: Layout, x: float, y: float) -> None:
    """Draw a frame whose outer top left corner is at x, y."""
    wide, high, trim = layout.width, layout.height, layout.trim
    outer = [(x, y), (x + wide, y), (x + wide, y + high), (x, y + high)]
    inner = [
        (x + trim, y + trim),
        (x + wide - trim, y + trim),
        (x + wide - trim, y + high - trim),
        (x + trim, y + high - trim),
    ]
    for index in range(4):
        after = (index + 1) % 4
        view.area("stock", [outer[index], outer[after], inner[after], inner[index]])
    if layout.block:
        size, low = layout.block, layout.set_in
        for left in (x + low, x + wide - low - size):
            for top in (y + low, y + high - low - size):
                view.box("panel", left, top, left + size, top + size)
