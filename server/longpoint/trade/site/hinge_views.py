"""The two views of a hinge layout: a section through one hinge, and the edge with all of them."""

from ..tool import Drawing, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .hinge_places import Layout

WOOD = 2.2  # Inches of door and jamb drawn on either side of the gap.
KNUCKLE = 0.19  # Radius of a butt's knuckle as drawn; it decides nothing.
FACE = 14.0  # Inches of the door's face drawn beside its edge.
JAMB = 4.5
TICK = 2.0  # Inches that a top line is drawn past the door, to where its number stands.


def section_view(layout: "Layout", scale: Scale) -> Drawing:
    """Return a section through a hinge from above, the knuckle face on top."""
    gap, thick = layout.gap, layout.thickness
    view = Drawing(
        "A hinge from above, door closed",
        f"Each leaf lies {scale.finer().length(layout.depth)} deep in its mortise; "
        f"{scale.finer().length(gap)} is left between door and jamb.",
    )
    view.box("stock", -WOOD, 0, 0, thick)
    view.box("stock", gap, 0, gap + WOOD, thick)
    _leaf(view, layout, 0.0, -1.0)
    _leaf(view, layout, gap, 1.0)
    view.circle("metal", (gap / 2, -KNUCKLE), KNUCKLE)
    view.text((-WOOD * 0.6, thick * 0.55), "door")
    view.text((gap + WOOD * 0.6, thick * 0.55), "jamb")
    view.dimension((0, thick), (gap, thick), "gap " + scale.finer().length(gap), -1)
    right = gap + WOOD
    view.dimension((right, 0), (right, layout.width), scale.length(layout.width))
    return view


def _leaf(view: Drawing, layout: "Layout", face: float, inward: float) -> None:
    """Draw a leaf in its mortise; `inward` is the way into the wood from its `face`."""
    back = face + inward * (layout.depth - layout.packing)
    front = back - inward * layout.leaf
    if layout.packing:
        view.box("panel", face, 0, back, layout.width)
    view.box("metal", back, -KNUCKLE / 2, front, layout.width)


def edge_view(layout: "Layout", scale: Scale) -> Drawing:
    """Return the hinge side from the front: the door's face, the jamb, and every hinge."""
    high, gap = layout.door_height, layout.gap
    view = Drawing(
        "The hinge side from the front",
        f"{layout.count} hinges on a door {scale.length(high)} high, their top lines "
        "from the door's top.",
    )
    view.box("stock", gap, -layout.head_gap, gap + JAMB, high)
    view.box("panel", -FACE, 0, 0, high)
    for number, top in enumerate(layout.tops):
        view.box("metal", -gap, top, 2 * gap, top + layout.hinge)
        view.tag((-FACE / 2, top + layout.hinge / 2), str(number + 1))
        view.line("mark", (0, top), (-FACE - TICK, top))
        view.text((-FACE - 1.5 * TICK, top), scale.length(top), anchor="end")
    view.dimension((gap + JAMB, 0), (gap + JAMB, high), scale.length(high))
    return view
