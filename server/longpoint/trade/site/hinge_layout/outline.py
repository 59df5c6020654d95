"""The outline of a hinge mortise at full size, to lay on the edge of a door or a jamb."""

from ...tool import Drawing, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .mortise import Mortise

PAST = 0.75  # Inches of the edge drawn above and below, to line the paper up by.


def mortise_outline(
    mortise: "Mortise", wide: float, high: float, depth: float, scale: Scale
) -> Drawing:
    """Return the outline of one mortise on the edge it is let into, the depth in it.

    The knuckle face is on the left; turned end for end the paper serves where it is on the right.
    """
    thick, deep = mortise.thickness or wide, scale.finer().length(depth)
    view = Drawing(
        "Mortise outline",
        f"On the edge of leaf or jamb: {scale.length(wide)} wide, {scale.length(high)} long, "
        f"{deep} deep, the screw heads toward you. Turned end for end, it serves where the "
        "knuckle face is on the right.",
        full_size=True,
    )
    view.box("stock", 0, -PAST, thick, high + PAST)
    view.box("cut", 0, 0, wide, high)
    view.text((thick / 2, -PAST / 2), "\u2190 knuckle", "cut")
    for number, words in enumerate((deep + " deep", "heads up")):
        view.text((wide / 12, high * (number + 1) / 3), words, "cut", "start")
    view.dimension((0, high), (0, 0), scale.length(high))
    view.dimension((0, -PAST), (wide, -PAST), scale.length(wide))
    view.dimension((thick, high + PAST), (0, high + PAST), scale.length(thick))
    return view
