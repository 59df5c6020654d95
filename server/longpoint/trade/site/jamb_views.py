"""The two views of a jamb: the frame from the front, and a section through a leg."""

from ..tool import Drawing, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .jamb_frame import Jamb

LEAF = 1.5  # Inches of the door drawn in the section.


def front_view(jamb: "Jamb", scale: Scale) -> Drawing:
    """Return legs, head, stops and the room for the door, from the hinge face."""
    wide, thick, head = jamb.wide, jamb.thick, (jamb.head - jamb.wide) / 2
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
    side = jamb.side_gap
    view.box("panel", side, jamb.head_gap, wide - side, high - jamb.floor_gap)
    view.line("wall", (-2 * thick, high + left), (wide + 2 * thick, high + right))
    legs = "2", "2" if left == right else "3"
    view.tag((wide / 2, -thick / 2), "1")
    view.tag((-thick / 2, high * 0.4), legs[0]).tag((wide + thick / 2, high * 0.4), legs[1])
    view.dimension(
        (-head, min(top, -thick)), (wide + head, min(top, -thick)), scale.length(jamb.head)
    )
    view.dimension((-thick, high + left), (-thick, top), scale.length(jamb.top + left))
    if left != right:
        far = wide + thick
        view.dimension((far, top), (far, high + right), scale.length(jamb.top + right))
    view.dimension((0, high * 0.6), (wide, high * 0.6), scale.length(wide), 0)
    return view


def section_view(jamb: "Jamb", scale: Scale) -> Drawing:
    """Return a section through a leg, from above, the hinge face to the left."""
    view = Drawing(
        "The stop on its leg, from above",
        f"The stop's edge stands {scale.length(jamb.line)} from the jamb's edge, "
        f"{scale.finer().length(jamb.gap)} off the door.",
    )
    view.box("stock", 0, 0, jamb.depth, jamb.thick)
    view.box("stock", jamb.line, -jamb.stop, jamb.far, 0)
    door = jamb.setback + jamb.door
    view.box("panel", jamb.setback, -jamb.side_gap - LEAF, door, -jamb.side_gap)
    view.text(((jamb.setback + door) / 2, -jamb.side_gap - LEAF * 0.6), "door")
    view.text((jamb.depth / 2, jamb.thick / 2), "leg")
    view.text(((jamb.line + jamb.far) / 2, -jamb.stop / 2), "stop")
    view.dimension((0, jamb.thick), (jamb.line, jamb.thick), scale.length(jamb.line), -1)
    view.dimension((0, jamb.thick), (jamb.depth, jamb.thick), scale.length(jamb.depth), -2)
    if jamb.gap:
        level = -jamb.stop - LEAF / 2
        view.dimension((door, level), (jamb.line, level), scale.finer().length(jamb.gap))
    return view
