"""What a raised panel looks like: its edge in the groove, and on the saw."""

from ... import degrees
from ...drawing import Drawing
from .section import MilledPanel, SawnPanel

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...drawing import Point
    from ...lengths import Scale

WALL = 0.25
"""Inches of groove wall that are drawn where the frame's thickness is not known."""


def section_view(
    panel: "SawnPanel | MilledPanel", stock: "float | None", scale: "Scale"
) -> Drawing:
    """Return the panel's edge in its groove, face up; the frame at the left."""
    seat, inside = panel.seat, panel.inside
    wall = WALL if stock is None else (stock - seat.width) / 2
    view = Drawing(
        "The panel's edge in its groove",
        f"The tongue is {scale.decimal(panel.tongue)} thick, {scale.length(inside)} of it sits in "
        f"the groove; {scale.length(panel.shows)} of the bevel shows.",
    )
    frame = -(seat.depth + 1.5 * wall + 0.5)
    top, bottom, low = -seat.width - wall, wall, -seat.depth
    view.area(
        "stock",
        [
            (frame, top), (0, top), (0, -seat.width), (low, -seat.width),
            (low, 0), (0, 0), (0, bottom), (frame, bottom),
        ],
    )  # fmt: skip
    view.area("panel", [(x - inside, -y) for x, y in outline(panel)])
    fine = scale.finer()
    over = min(-panel.blank, top)
    view.dimension((-inside, over), (panel.shows, over), scale.length(panel.width), 2)
    view.dimension((0, over), (panel.shows, over), scale.length(panel.shows))
    view.dimension((-seat.depth, wall), (0, wall), fine.length(seat.depth), -1)
    far = panel.width + panel.blank - inside
    view.dimension((far, -panel.blank), (far, 0), scale.length(panel.blank))
    return view


def outline(panel: "SawnPanel | MilledPanel") -> "list[Point]":
    """Return the section from the edge inward, x from the edge and y from the tongue's back."""
    far = panel.width + panel.blank
    if isinstance(panel, SawnPanel):
        low, face = [(0.0, 0.0), (far, 0.0)], panel.blank
        up = [(panel.width, panel.blank - panel.step), (0.0, panel.edge)]
    else:
        low, face = [(0.0, 0.0), (far, 0.0)], panel.blank - panel.relief
        if panel.relief:
            rabbet = panel.seat.depth
            low = [(0.0, 0.0), (rabbet, 0.0), (rabbet, -panel.relief), (far, -panel.relief)]
        up = [(panel.cutter.flat, panel.tongue), (0.0, panel.tongue)]
    return low + [(far, face), (panel.width, face)] + up


def saw_view(panel: SawnPanel, scale: "Scale") -> Drawing:
    """Return the saw from the front: the panel on edge, its back to the fence, the blade leaning.

    The table is the line below, the fence at the left.
    """
    view = Drawing(
        "The bevel on the saw",
        f"The blade leans {scale.decimal(panel.width * degrees.tan(panel.angle))} away from the "
        f"fence over a height of {scale.length(panel.width)}.",
    )
    tall = panel.width + 2 * panel.blank
    lean = panel.width * degrees.tan(panel.angle)
    view.box("wall", -panel.blank, -tall, 0, 0)
    view.box("stock", 0, -tall, panel.blank, 0)
    start, end = (panel.edge, 0.0), (panel.edge + lean, -panel.width)
    kept_off = panel.blank - panel.step
    view.area("waste", [start, end, (panel.blank, -panel.width), (panel.blank, 0.0)])
    view.line("cut", (panel.edge - 0.25 * lean / panel.width, 0.25), end)
    view.line("cut", (kept_off, -panel.width), (panel.blank, -panel.width))
    view.line("mark", (-panel.blank, 0), (3 * panel.blank, 0))
    view.dimension((panel.edge, 0), (0, 0), scale.finer().length(panel.edge))
    view.dimension((panel.blank, -panel.width), (panel.blank, 0), scale.length(panel.width))
    return view
