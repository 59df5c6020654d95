"""The two views of a jamb: the frame from the front, and a section through a leg."""

from ...tool import Drawing, Scale
from .pieces import HEAD, LEFT, RIGHT

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .frame import Jamb, Latch

LEAF = 1.5  # Inches of the leaf drawn in the section.


def front_view(jamb: "Jamb", latch: "Latch | None", scale: Scale) -> Drawing:
    """Return legs, head and the room for the leaves, from the hinge face."""
    wide, thick, head = jamb.wide, jamb.stock.thick, (jamb.head - jamb.wide) / 2
    view = Drawing(
        "The jamb from the front",
        f"{scale.length(wide)} by {scale.length(jamb.high)} inside, head "
        f"{scale.length(jamb.head)}, legs {scale.length(jamb.top + jamb.feet[0])} and "
        f"{scale.length(jamb.top + jamb.feet[1])}.",
    )
    high, top, (left, right) = jamb.high, jamb.high - jamb.top, jamb.feet
    view.box("stock", -thick, top, 0, high + left)
    view.box("stock", wide, top, wide + thick, high + right)
    view.box("stock", -head, -thick, wide + head, 0)
    hung = jamb.hung
    for number in range(hung.leaves):
        side = hung.side + number * (hung.width + hung.meeting)
        view.box("panel", side, hung.head, side + hung.width, high - hung.floor)
    view.line("wall", (-2 * thick, high + left), (wide + 2 * thick, high + right))
    legs = LEFT, LEFT if jamb.is_level else RIGHT
    view.tag((wide / 2, -thick / 2), HEAD)
    view.tag((-thick / 2, high * 0.4), legs[0]).tag((wide + thick / 2, high * 0.4), legs[1])
    view.dimension(
        (-head, min(top, -thick)), (wide + head, min(top, -thick)), scale.length(jamb.head)
    )
    view.dimension((-thick, high + left), (-thick, top), scale.length(jamb.top + left))
    if left != right:
        far = wide + thick
        view.dimension((far, top), (far, high + right), scale.length(jamb.top + right))
    view.dimension((0, high * 0.3), (wide, high * 0.3), scale.length(wide), 0)
    if latch is not None:
        view.line("mark", (-thick, high - latch.height), (wide + thick, high - latch.height))
        view.text((wide / 2, high - latch.height), "latch " + scale.length(latch.height))
    return view


def section_view(jamb: "Jamb", latch: "Latch | None", scale: Scale) -> Drawing:
    """Return a section through a leg, from above, the hinge face to the left."""
    stock, stop, hung = jamb.stock, jamb.stop, jamb.hung
    view = Drawing(
        "The stop on its leg, from above",
        f"The stop's edge stands {scale.length(jamb.line)} from the jamb's edge, "
        f"{scale.finer().length(stop.gap)} off the leaf.",
    )
    view.box("stock", 0, 0, stock.depth, stock.thick)
    view.box("stock", jamb.line, -stop.thick, jamb.far, 0)
    back = stop.setback + hung.thickness
    view.box("panel", stop.setback, -hung.side - LEAF, back, -hung.side)
    view.text(((stop.setback + back) / 2, -hung.side - LEAF * 0.6), "leaf")
    view.text((stock.depth / 2, stock.thick / 2), "leg")
    view.text(((jamb.line + jamb.far) / 2, -stop.thick / 2), "stop")
    view.dimension((0, stock.thick), (jamb.line, stock.thick), scale.length(jamb.line), -1)
    view.dimension((0, stock.thick), (stock.depth, stock.thick), scale.length(stock.depth), -2)
    if latch is not None:
        across = latch.in_from_edge
        view.line("mark", (across, -hung.side - LEAF), (across, stock.thick))
        level = -hung.side - LEAF
        view.dimension((0, level), (across, level), scale.length(across))
    if stop.gap:
        level = -stop.thick - LEAF / 2
        view.dimension((back, level), (jamb.line, level), scale.finer().length(stop.gap))
    return view
