"""The views of cup hinges: the leaf from behind with its cups, and a section through one."""

from ...tool import Drawing, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .cups import Cups

FACE = 14.0  # Inches of the leaf drawn from its hinge edge.
CENTER = 0.9  # Inches from the edge to a center as drawn where it is not known.
TICK = 2.0


def back_view(cups: "Cups", leaf_height: float, centers: "list[float]", scale: Scale) -> Drawing:
    """Return the leaf from behind, its hinge edge on the left, every cup with its number."""
    across = CENTER if cups.center is None else cups.center
    view = Drawing(
        "The leaf from behind, hinge edge on the left",
        f"{len(centers)} cups on a leaf {scale.length(leaf_height)} high, their centers from its "
        "top.",
    )
    view.box("panel", 0, 0, FACE, leaf_height)
    for number, center in enumerate(centers):
        view.circle("cut", (across, center), cups.bore / 2)
        view.tag((across + 2 * cups.bore, center), str(number + 1))
        view.line("mark", (0, center), (-TICK, center))
        view.text((-1.5 * TICK, center), scale.length(center), anchor="end")
    if cups.center is not None:
        view.dimension((0, 0), (cups.center, 0), scale.finer().length(cups.center))
    view.dimension((FACE, 0), (FACE, leaf_height), scale.length(leaf_height))
    return view


def bore_view(cups: "Cups", center: float, depth: float, thick: float, scale: Scale) -> Drawing:
    """Return a section through a cup from above, the back of the leaf on top."""
    fine = scale.finer()
    view = Drawing(
        "A cup from above, back of the leaf on top",
        f"Bored {fine.length(depth)} deep with {fine.length(cups.bore)}, its center "
        f"{fine.length(center)} from the hinge edge; {fine.length(thick - depth)} of wood is left.",
    )
    left, right = center - cups.bore / 2, center + cups.bore / 2
    view.box("stock", 0, 0, 2 * right, thick)
    view.box("cut", left, 0, right, depth)
    view.dimension((0, 0), (center, 0), fine.length(center))
    view.dimension((right, 0), (right, depth), fine.length(depth))
    view.dimension((left, depth), (left, thick), fine.length(thick - depth), 1)
    return view
