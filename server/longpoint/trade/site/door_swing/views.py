"""The views of a door's swing: the plan with its path, the tightest place, the edge to plane."""

from ... import degrees
from ...lengths import show_angle
from ...tool import Drawing, Scale
from .swing import Swing

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .edges import HingeEdge

    Point = tuple[float, float]

QUARTER = 90.0
PIN = 0.19  # Radius of a butt's knuckle as drawn; it decides nothing.


def plan(
    swing: Swing,
    relief: float,
    hinge: "HingeEdge",
    opening: float,
    other: "Swing | None",
    scale: Scale,
) -> Drawing:
    """Return the leaf from above, open by `opening` degrees, with its far corner's path."""
    width, thick = swing.width, swing.thickness
    view = Drawing(
        "The swing from above",
        f"A leaf {scale.length(width)} wide, open {show_angle(opening)}; its far corner comes as "
        f"near as {scale.finer().length(swing.tight_gap())} with a square edge.",
    )
    jamb = max(3.0, width / 8)
    view.area("wall", _hinge_jamb(hinge, thick, jamb))
    if other is None:
        view.box("wall", width + swing.gap, 0, width + swing.gap + jamb, 2 * thick)
    else:
        _other_leaf(view, swing, other, opening)
    view.area("clearance", swing.section(relief))
    pin = (-swing.pin_in, -swing.pin_out)
    far = degrees.atan((thick + swing.pin_out) / (width - relief + swing.pin_in))
    radius = swing.radius(width - relief, thick)
    view.arc("mark", pin, radius, far, -max(QUARTER, opening))
    view.area("stock", [swing.turned(point, opening) for point in swing.section(relief)])
    view.circle("metal", pin, PIN)
    view.text(swing.turned((width * 0.6, -thick), opening), show_angle(opening))
    view.dimension((0, 2 * thick), (width, 2 * thick), scale.length(width), -1)
    return view


def _hinge_jamb(hinge: "HingeEdge", thick: float, wide: float) -> "list[Point]":
    """Return the hinge jamb's corners, its face out of square by what it closes in."""
    face = -hinge.gap
    back = face + 2 * hinge.closes_in
    return [(face - wide, 0.0), (face, 0.0), (back, 2 * thick), (face - wide, 2 * thick)]


def _other_leaf(view: Drawing, swing: Swing, other: Swing, opening: float) -> None:
    """Draw the part of a closed other leaf next to the gap, or the whole one as it opens too."""
    if not swing.together:
        right = swing.width + swing.gap
        view.box("panel", right, 0, right + other.width / 3, other.thickness)
        return
    hinge = swing.width + swing.gap + other.width
    turned = [other.turned(point, opening) for point in other.section()]
    view.area("panel", [(hinge - x, y) for x, y in turned])
    view.circle("metal", (hinge + other.pin_in, -other.pin_out), PIN)
    jamb = hinge + 2 * other.pin_in
    view.box("wall", jamb, 0, jamb + max(3.0, other.width / 8), 2 * other.thickness)


def tight_view(swing: Swing, relief: float, scale: Scale) -> Drawing:
    """Return the strike edge where a square one comes nearest, the bevel's waste marked."""
    width, thick = swing.width, swing.thickness
    gap = scale.finer().length(swing.tight_gap())
    view = Drawing(
        "Where it is tightest",
        f"Open {show_angle(swing.tight_at)}: a square edge leaves {gap}"
        + (", the bevel takes the shaded corner away." if relief else "."),
    )
    limit = width + swing.gap / (2 if swing.together else 1)
    if swing.together:
        view.line("clearance", (limit, -thick), (limit, thick))
    else:
        view.box("wall", limit, 0, limit + thick, 1.5 * thick)
    square = [(width - 2 * thick, 0.0)] + swing.section()[1:3] + [(width - 2 * thick, thick)]
    view.area("stock", [swing.turned(point, swing.tight_at) for point in square])
    if relief:
        corner = [(width, swing.land), (width, thick), (width - relief, thick)]
        view.area("waste", [swing.turned(point, swing.tight_at) for point in corner])
    _path(view, swing)
    near = swing.turned((width, thick), swing.tight_at)
    view.dimension(near, (limit, near[1] if swing.together else 0.0), gap, 2)
    return view


def _path(view: Drawing, swing: Swing) -> None:
    """Draw the far corner's path on both sides of the tightest place."""
    radius = swing.radius(swing.width, swing.thickness)
    reach = min(20.0, degrees.atan(swing.thickness / radius))
    start = degrees.atan((swing.thickness + swing.pin_out) / (swing.width + swing.pin_in))
    pin = (-swing.pin_in, -swing.pin_out)
    view.arc("mark", pin, radius, start, -swing.tight_at - reach)


def edge_view(swing: Swing, relief: float, scale: Scale) -> Drawing:
    """Return the strike edge to plane: land, bevel and the line on the far face."""
    width, thick, land = swing.width, swing.thickness, swing.land
    fine = scale.finer()
    view = Drawing(
        "The edge to plane, knuckle face on top",
        f"{fine.length(relief)} comes off the far face, {show_angle(swing.bevel(relief))}.",
    )
    left = width - 1.5 * thick
    view.area("stock", [(left, 0.0)] + swing.section(relief)[1:-1] + [(left, thick)])
    view.area("waste", [(width, land), (width, thick), (width - relief, thick)])
    view.line("cut", (width, land), (width - relief, thick))
    view.dimension((width - relief, thick), (width, thick), fine.length(relief), -1)
    if land:
        view.dimension((width, 0), (width, land), fine.length(land), 1)
    view.dimension((left, thick), (left, 0), scale.length(thick), 1)
    view.text((left + 0.6 * thick, thick / 2), show_angle(swing.bevel(relief)))
    return view


def hinge_view(hinge: "HingeEdge", thick: float, scale: Scale) -> Drawing:
    """Return the closed hinge side from above, knuckle face on top: jamb, leaf, what comes off."""
    fine, relief = scale.finer(), hinge.relief
    view = Drawing(
        "The hinge side closed, knuckle face on top",
        f"{fine.length(hinge.gap)} at the knuckle face, {fine.length(hinge.far_gap)} at the far "
        f"face; {fine.length(relief)} comes off the hinge edge there.",
    )
    right = 1.5 * thick
    view.area("wall", _hinge_jamb(hinge, thick / 2, thick))
    view.area("stock", [(0.0, 0.0), (right, 0.0), (right, thick), (relief, thick)])
    if relief:
        view.area("waste", [(0.0, 0.0), (relief, thick), (0.0, thick)])
        view.line("cut", (0.0, 0.0), (relief, thick))
        view.dimension((0.0, thick), (relief, thick), fine.length(relief), -1)
    view.dimension((-hinge.gap, 0.0), (0.0, 0.0), fine.length(hinge.gap))
    view.text((0.8 * thick, thick / 2), show_angle(hinge.bevel))
    return view
