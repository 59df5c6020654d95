"""Crown as a carpenter would sketch it: at the wall in section, and lying flat on the saw."""

from .. import degrees
from ..lengths import show_angle
from ..tool import Drawing, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..geometry.laid_on_saw import Cut

SKETCH_WIDTH = 4.0


def section(spring: float, width: "float | None", scale: Scale) -> Drawing:
    """Return the crown between wall and ceiling; sizes only where the face width is known."""
    face = width or SKETCH_WIDTH
    drop, out = face * degrees.cos(spring), face * degrees.sin(spring)
    band = face / 8
    view = Drawing(
        "Crown at the wall, cut through",
        f"The face leans {show_angle(spring)} from the wall."
        + (f" {scale.length(drop)} down, {scale.length(out)} out." if width else ""),
    )
    view.box("wall", -band, -band, 0, drop * 1.3)
    view.box("wall", 0, -band, out * 1.3, 0)
    thick = 0.35 * drop * out / face
    back_low = (0.0, drop - thick / degrees.sin(spring))
    back_high = (out - thick / degrees.cos(spring), 0.0)
    view.area("stock", [(0, drop), (out, 0), back_high, back_low])
    view.arc("mark", (0, drop), drop * 0.9, 270, spring)
    if width:
        view.dimension((-band, 0), (-band, drop), scale.length(drop), -1)
        view.dimension((0, -band), (out, -band), scale.length(out))
        view.dimension((0, drop), (out, 0), scale.length(face), -1)
    return view


def on_the_table(
    side: str, cut: "Cut", miter: float, bevel: float, width: "float | None"
) -> Drawing:
    """Return a piece flat on its back as seen from above, fence at the top."""
    face = width or SKETCH_WIDTH
    shift = face / 2 * degrees.tan(miter) * (1 if cut.handle == "left" else -1)
    end = abs(shift) + 0.8 * face
    left = [(-end, 0.0), (shift, 0.0), (-shift, face), (-end, face)]
    right = [(shift, 0.0), (end, 0.0), (end, face), (-shift, face)]
    kept, rest = (left, right) if cut.keep == "left" else (right, left)
    view = Drawing(
        f"The {side} piece, flat on the saw, seen from above",
        f"Face up, {cut.edge} edge to the fence, handle {cut.handle} {show_angle(miter)}, blade "
        f"tilted {show_angle(bevel)}; the {cut.keep} side is kept.",
    )
    view.box("wall", -end, -face / 6, end, 0)
    view.area("stock", kept).area("waste", rest)
    view.line("cut", (shift * 1.2, -face * 0.1), (-shift * 1.4, face * 1.2))
    middle = (end + abs(shift)) / 2 * (-1 if cut.keep == "left" else 1)
    view.text((middle, face * 0.55), "keep")
    view.text((middle, face * 0.18), cut.edge + " edge")
    view.text((-shift * 1.4, face * 1.36), "handle")
    return view
