"""The frame from the front, each corner with what is set on the saw for it."""

from ...drawing import Drawing
from ...lengths import show_angle

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...geometry.quadrilateral import Point
    from ...lengths import Scale
    from .shape import OddFrame

INWARDS = 0.3
"""Of the way from an inner corner to the middle: where the corner's setting stands."""


def front_view(frame: "OddFrame", inside: bool, scale: "Scale") -> Drawing:
    """Return the pieces with their lengths and the saw's setting at every corner."""
    saws = ", ".join([show_angle(saw) for saw in frame.saws])
    title = "The frame from the front, the saw's setting at each corner"
    view = Drawing(title, f"Saw, clockwise from the top left: {saws}.")
    outer, inner = frame.opening.moved(frame.outer), frame.opening.moved(frame.inner)
    view.area("wall" if inside else "clearance", frame.opening.points())
    for side in range(4):
        after = (side + 1) % 4
        around = [outer[side], outer[after], inner[after], inner[side]]
        view.area("stock", around)
        view.tag(_middle(around), str(side + 1))
        view.dimension(outer[side], outer[after], scale.bare(frame.long(side)))
    x, y = _middle(inner)
    for (left, top), saw in zip(inner, frame.saws):
        at = (left + (x - left) * INWARDS, top + (y - top) * INWARDS)
        view.text(at, show_angle(saw))
    return view


def _middle(points: "list[Point]") -> "Point":
    across, down = [sum([point[axis] for point in points]) / 4 for axis in (0, 1)]
    return across, down
