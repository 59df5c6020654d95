"""Crown as a carpenter would sketch it: at the wall in section, and lying on the saw."""

from ... import degrees
from ...drawing import Drawing
from ...geometry.laid_on_saw import flat, nested
from ...lengths import show_angle

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...geometry.laid_on_saw import Cut
    from ...lengths import Scale
    from .crown import Crown

SKETCH_WIDTH = 4.0
BLOCK = 2.1
"""Height of one piece on the saw with its fence and handle, in widths of the piece."""


def section(crown: "Crown", scale: "Scale") -> Drawing:
    """Return the crown between wall and ceiling; sizes only where the face width is known."""
    face, spring = crown.width or SKETCH_WIDTH, crown.spring
    drop, out = face * degrees.cos(spring), face * degrees.sin(spring)
    band = face / 8
    view = Drawing(
        "Crown at the wall, cut through",
        f"The face leans {show_angle(spring)} from the wall."
        + (f" {scale.length(drop)} down, {scale.length(out)} out." if crown.width else ""),
    )
    view.box("wall", -band, -band, 0, drop * 1.3)
    view.box("wall", 0, -band, out * 1.3, 0)
    thick = 0.35 * drop * out / face
    back_low = (0.0, drop - thick / degrees.sin(spring))
    back_high = (out - thick / degrees.cos(spring), 0.0)
    view.area("stock", [(0, drop), (out, 0), back_high, back_low])
    view.arc("mark", (0, drop), drop * 0.9, 270, spring)
    if crown.width:
        view.dimension((-band, 0), (-band, drop), scale.length(drop), -1)
        view.dimension((0, -band), (out, -band), scale.length(out))
        view.dimension((0, drop), (out, 0), scale.length(face), -1)
    return view


def flat_on_saw(crown: "Crown", corner: float, turn: str, bevels: str) -> Drawing:
    """Return both pieces of a joint flat on the saw, seen from above, fence at the top."""
    miter, bevel = crown.miter(corner), crown.bevel(corner)
    view = Drawing(
        f"Flat on the saw from above, {turn} corner",
        f"Face up, miter {show_angle(miter)}, blade beveled {bevels} {show_angle(bevel)}.",
    )
    cuts = [(side, flat(turn, side, bevels)) for side in ("left", "right")]
    _lay(view, cuts, miter, crown.width or SKETCH_WIDTH)
    return view


def nested_on_saw(crown: "Crown", corner: float, turn: str) -> Drawing:
    """Return both pieces nested upside down, seen from above: they reach out by the projection."""
    miter = crown.nested(corner)
    view = Drawing(
        f"Nested at the fence from above, {turn} corner",
        f"Upside down, ceiling edge on the table, miter {show_angle(miter)}, no bevel.",
    )
    cuts = [(side, nested(turn, side)) for side in ("left", "right")]
    _lay(view, cuts, miter, (crown.width or SKETCH_WIDTH) * degrees.sin(crown.spring))
    return view


def _lay(view: Drawing, cuts: "list[tuple[str, Cut]]", miter: float, deep: float) -> None:
    """Draw the pieces below each other, each with what is kept and where the handle goes."""
    half = deep / 2 * degrees.tan(miter)
    end = half + 1.8 * deep
    for place, (side, cut) in enumerate(cuts):
        top = place * BLOCK * deep
        shift = half if cut.handle == "left" else -half
        left = [(-end, top), (shift, top), (-shift, top + deep), (-end, top + deep)]
        right = [(shift, top), (end, top), (end, top + deep), (-shift, top + deep)]
        kept, rest = (left, right) if cut.keep == "left" else (right, left)
        view.box("wall", -end, top - deep / 6, end, top)
        view.area("stock", kept).area("waste", rest)
        view.line("cut", (shift * 1.2, top - deep * 0.1), (-shift * 1.4, top + deep * 1.2))
        middle = (end + half) / 2 * (-1 if cut.keep == "left" else 1)
        view.text((middle, top + deep * 0.2), cut.edge + " edge")
        view.text((middle, top + deep * 0.6), f"{side} piece")
        view.text((-middle, top + deep * 0.6), "waste", "waste")
        view.text((-shift * 1.4, top + deep * 1.45), "handle " + cut.handle)
