"""The mortise of a hinge at full size: cut the print out, lay it on the edge, knife round it."""

from ..tool import Drawing, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .hinge_places import Layout

BESIDE = 1.0  # Inches of the edge drawn above and below the mortise.


def mortise_template(layout: "Layout", scale: Scale) -> Drawing:
    """Return one mortise on the door's edge, the knuckle face on the left, true to size."""
    high, wide = layout.hinge, layout.width
    view = Drawing(
        "Mortise, full size",
        f"A mortise {scale.length(high)} long and {scale.length(wide)} wide from the knuckle face, "
        f"{scale.finer().length(layout.depth)} deep; its top line on the hinge's top line.",
        full_size=True,
    )
    view.box("stock", 0, -BESIDE, layout.thickness, high + BESIDE)
    view.box("cut", 0, 0, wide, high)
    view.dimension((0, 0), (wide, 0), scale.length(wide))
    view.dimension((wide, 0), (wide, high), scale.length(high))
    return view
