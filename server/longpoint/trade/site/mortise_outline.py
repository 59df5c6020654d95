"""The outline of a hinge mortise at full size, to lay on the edge of a door or a jamb."""

from ..tool import Drawing, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .hinge_places import Layout

PAST = 0.75  # Inches of the edge drawn above and below the mortise, to line the paper up by.
LINE = 0.2  # Inches from one line of words to the next, at the size they are printed.


def mortise_outline(layout: "Layout", scale: Scale) -> Drawing:
    """Return the outline of one leaf's mortise on the edge it is let into, the depth in it.

    The knuckle face is on the left; turned end for end the paper serves the other hand.
    """
    thick, wide, high = layout.thickness, layout.width, layout.hinge
    depth = scale.finer().length(layout.depth)
    view = Drawing(
        "Mortise outline",
        f"The edge seen straight on: the mortise {scale.length(wide)} wide, "
        f"{scale.length(high)} long and {depth} deep, the screw heads of the leaf toward you.",
        full_size=True,
    )
    view.box("stock", 0, -PAST, thick, high + PAST)
    view.box("cut", 0, 0, wide, high)
    _words(view, wide / 2, high / 2 - 3 * LINE, ["mortise", depth, "deep"])
    _words(view, wide / 2, high / 2 + LINE, ["screw", "heads", "this side"])
    _words(view, thick / 2, -PAST / 2 - LINE / 2, ["\u2190 knuckle", "face"])
    _words(view, thick / 2, high + PAST / 2 - LINE / 2, ["turn for the", "other hand"])
    view.dimension((0, high), (0, 0), scale.length(high))
    view.dimension((0, -PAST), (wide, -PAST), scale.length(wide))
    view.dimension((thick, high + PAST), (0, high + PAST), scale.length(thick))
    return view


def _words(view: Drawing, x: float, y: float, lines: "list[str]") -> None:
    for number, words in enumerate(lines):
        view.text((x, y + number * LINE), words, "cut")
