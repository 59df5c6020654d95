"""The views of hardware on its leaves: the whole from the front, and a template at full size."""

from ...tool import Drawing, Scale
from .places import Places

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    Point = tuple[float, float]

MEETING = 0.125  # Inches drawn between the leaves of a pair.
POINT = 3 / 64  # Radius of a hole on the template: a center punch's dot.
MARGIN = 1.0  # Inches of the part on the template beyond the hardware.


def front(places: Places, sides: "list[str]", scale: Scale) -> Drawing:
    """Return the leaves from the front; `sides` says at which side each one opens."""
    view = Drawing(
        "From the front" if len(sides) == 1 else "The pair from the front",
        f"A leaf {scale.length(places.width)} by {scale.length(places.height)}, "
        f"{len(places.holes)} holes in its {places.where}.",
    )
    for number, side in enumerate(sides):
        left = number * (places.width + MEETING)
        _leaf(view, places, left, side)
    _front_sizes(view, places, sides[0], scale)
    return view


def _on_leaf(places: Places, left: float, side: str) -> "Callable[[Point], Point]":
    """Return what turns inches from the two edges into the drawing's."""

    def placed(point: "Point") -> "Point":
        x = left + (places.width - point[0] if side == "right" else point[0])
        return (x, point[1] if places.end == "top" else places.height - point[1])

    return placed


def _leaf(view: Drawing, places: Places, left: float, side: str) -> None:
    width, height, stile, rail = places.width, places.height, places.stile, places.rail
    view.box("panel", left + stile, rail, left + width - stile, height - rail)
    for edge in (left, left + width - stile):
        view.box("stock", edge, 0, edge + stile, height)
    for top in (0, height - rail):
        view.box("stock", left + stile, top, left + width - stile, top + rail)
    placed = _on_leaf(places, left, side)
    across, along = places.wide / 2, places.run / 2
    half = (across, along) if places.upright else (along, across)
    for x, y in places.centers:
        (x0, y0), (x1, y1) = [placed((x + sign * half[0], y + sign * half[1])) for sign in (-1, 1)]
        if x0 != x1 and y0 != y1:
            view.box("metal", x0, y0, x1, y1)
        elif places.run:
            view.line("metal", (x0, y0), (x1, y1))
    for hole in places.holes:
        view.circle("cut", placed(hole), places.width / 90)


def _front_sizes(view: Drawing, places: Places, side: str, scale: Scale) -> None:
    """Draw the first hole's way from both edges."""
    placed = _on_leaf(places, 0.0, side)
    x, y = places.holes[0]
    lane = 1 if (side == "right") == (places.end == "bottom") else -1
    view.dimension(placed((x, 0)), placed((0, 0)), scale.length(x), -lane)
    view.dimension(placed((places.width, 0)), placed((places.width, y)), scale.length(y), lane)


def template(places: Places, scale: Scale) -> Drawing:
    """Return one piece of hardware on its part at full size, the part's outer edge on the left.

    The middle line lies across the part at the hardware's center, where the leaf is marked.
    """
    lengthwise = places.lengthwise
    long = places.run if lengthwise else places.wide
    half, middle, wide = long / 2 + MARGIN, places.across, float(places.member.wide)
    view = Drawing(
        f"Template for the {places.member.name}",
        f"The {places.member.name}, {scale.length(wide)} wide, its outer edge on the left; the "
        "middle line lies on the mark of the center.",
        full_size=True,
    )
    view.box("stock", 0, -half, wide, half)
    if places.wide and places.run:
        across = places.filled / 2
        view.box("clearance", middle - across, -long / 2, middle + across, long / 2)
    view.line("mark", (0, 0), (wide, 0))
    view.line("mark", (middle, -half), (middle, half))
    shift = places.spacing / 2
    spots = [(middle, -shift), (middle, shift)] if lengthwise else [(middle - shift, 0.0)]
    for spot in spots + ([] if lengthwise else [(middle + shift, 0.0)]):
        view.circle("cut", spot, POINT)
    view.dimension((0, -half), (middle, -half), scale.length(middle))
    if shift:
        opposite = (2 * middle - spots[0][0], -spots[0][1])
        view.dimension(spots[0], opposite, scale.length(places.spacing))
    return view
