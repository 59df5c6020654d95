"""The views of a hinge layout: a section through one hinge, and the edge with all of them."""

from ...tool import Drawing, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .lines import Lines
    from .mortise import Mortise

WOOD = 2.2  # Inches of leaf and jamb drawn on either side of the gap.
THICK = 1.375  # Inches of thickness drawn where it is not known; it decides nothing.
KNUCKLE = 0.19  # Radius of a butt's knuckle as drawn; it decides nothing.
GAP = 0.125  # Inches of gap drawn where it is not known.
FACE = 14.0  # Inches of the leaf's face drawn beside its edge.
JAMB = 4.5
TICK = 2.0  # Inches that a top line is drawn past the leaf, to where its number stands.


def section_view(mortise: "Mortise", depth: float, gap: float, scale: Scale) -> Drawing:
    """Return a section through a hinge from above, the knuckle face on top."""
    thick = mortise.thickness or THICK
    wide = mortise.width or 0.8 * THICK
    view = Drawing(
        "A hinge from above, door closed",
        f"Each hinge leaf lies {scale.finer().length(depth)} deep in its mortise; "
        f"{scale.finer().length(gap)} is left between leaf and jamb.",
    )
    view.box("stock", -WOOD, 0, 0, thick)
    view.box("stock", gap, 0, gap + WOOD, thick)
    _hinge_leaf(view, mortise, wide, 0.0, -1.0)
    _hinge_leaf(view, mortise, wide, gap, 1.0)
    view.circle("metal", (gap / 2, -KNUCKLE), KNUCKLE)
    view.text((-WOOD * 0.6, thick * 0.55), "leaf")
    view.text((gap + WOOD * 0.6, thick * 0.55), "jamb")
    view.dimension((0, thick), (gap, thick), "gap " + scale.finer().length(gap), -1)
    right = gap + WOOD
    if mortise.width is not None:
        view.dimension((right, 0), (right, wide), scale.length(wide))
    return view


def _hinge_leaf(view: Drawing, mortise: "Mortise", wide: float, face: float, inward: float) -> None:
    """Draw a hinge leaf in its mortise; `inward` is the way into the wood from its `face`."""
    back = face + inward * ((mortise.depth or 0.0) - mortise.shim)
    front = back - inward * (mortise.leaf or 0.0)
    if mortise.shim:
        view.box("panel", face, 0, back, wide)
    view.box("metal", back, -KNUCKLE / 2, front, wide)


def edge_view(lines: "Lines", head_gap: float, gap: "float | None", scale: Scale) -> Drawing:
    """Return the hinge side from the front: the leaf's face, the jamb, and every hinge."""
    high, gap = lines.leaf_height, GAP if gap is None else gap
    view = Drawing(
        "The hinge side from the front",
        f"{lines.count} hinges on a leaf {scale.length(high)} high, their top lines from the "
        "leaf's top.",
    )
    view.box("stock", gap, -head_gap, gap + JAMB, high)
    view.box("panel", -FACE, 0, 0, high)
    for number, top in enumerate(lines.tops):
        view.box("metal", -gap, top, 2 * gap, top + lines.hinge)
        view.tag((-FACE / 2, top + lines.hinge / 2), str(number + 1))
        view.line("mark", (0, top), (-FACE - TICK, top))
        view.text((-FACE - 1.5 * TICK, top), scale.length(top), anchor="end")
    view.dimension((gap + JAMB, 0), (gap + JAMB, high), scale.length(high))
    return view
