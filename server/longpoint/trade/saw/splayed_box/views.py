"""The boards of a splayed box as they are cut, and the lean in section."""

from ... import degrees
from ...drawing import Drawing
from ...lengths import show_angle

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale
    from .box import Box

SKETCH = (12.0, 8.0)
"""Narrow side and height that are drawn while none are given, inches."""


def board(
    box: "Box", edges: "tuple[float, float]", tag: str, title: str, sized: bool, scale: "Scale"
) -> Drawing:
    """Return one board's outer face, wide edge up; `edges` are its wide and narrow edge."""
    wide, narrow = edges
    start = box.slant * degrees.tan(box.miter)
    view = Drawing(title, f"Ends {show_angle(box.miter)} off square, {box.sides} sides.")
    left, right = (start, box.slant), (start + narrow, box.slant)
    view.area("stock", [(0, 0), (wide, 0), right, left])
    view.line("cut", (0, 0), left).line("cut", (wide, 0), right)
    view.tag((wide / 2, box.slant / 2), tag)
    if sized:
        view.dimension((0, 0), (wide, 0), scale.length(wide))
        view.dimension(left, right, scale.length(narrow), -1)
        view.dimension((wide, 0), (wide, box.slant), scale.length(box.slant))
    return view


def section(box: "Box", sized: bool, scale: "Scale") -> Drawing:
    """Return a side cut through: its lean, and its height where that is known."""
    out = box.height * degrees.tan(box.lean)
    thick = box.flat or box.height / 10 / degrees.cos(box.lean)
    view = Drawing(
        "The lean, cut through", f"The side leans out {show_angle(box.lean)} from upright."
    )
    foot, head = (0.0, box.height), (out, 0.0)
    view.area("stock", [foot, head, (out - thick, 0), (-thick, box.height)])
    view.line("clearance", foot, (0, 0))
    view.line("wall", (-2 * thick, box.height), (max(out, thick), box.height))
    if box.lean:
        view.arc("mark", foot, box.height / 2, 270, box.lean)
    if sized:
        view.dimension((-2 * thick, box.height), (-2 * thick, 0), scale.length(box.height))
    return view
