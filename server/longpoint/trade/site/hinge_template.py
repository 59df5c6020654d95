"""The template that a router with a guide bushing follows to cut the mortise."""

from ..tool import Answer, Choice, Drawing, Flag, Given, Length, Refusal, Scale
from .hinge_places import Layout

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..tool import Input

_WHEN = ("template", True)
RADII = {"square": 0.0, "1/4": 0.25, "5/8": 0.625}
_HAIR = 1e-9

TEMPLATE_INPUTS: "list[Input]" = [
    Flag("template", "Router template?", help="For a router with a guide bushing."),
    Length("bushing", "Bushing, outside", default="3/4", only_when=_WHEN),
    Length("bit", "Bit", default="1/2", only_when=_WHEN),
    Choice(
        "corners",
        "Leaf corners",
        [("square", "square"), ("1/4", "1/4 radius"), ("5/8", "5/8 radius")],
        default="square",
        only_when=_WHEN,
    ),
]

TEMPLATE_SOURCES = [
    "Template: opening = mortise + 2 offsets, offset = (bushing - bit) / 2, as router users' "
    "answers give it; corner radii of 1/4 and 5/8: hinge sellers' guides."
]


def add_template(answer: Answer, given: Given, layout: Layout) -> None:
    """Add the template's opening and corners, and its drawing."""
    scale = answer.scale
    bushing, bit = given.number("bushing"), given.number("bit")
    offset = (bushing - bit) / 2
    if offset <= 0:
        raise Refusal(
            "bit",
            f"A bit of {scale.length(bit)} doesn't turn inside a bushing of "
            f"{scale.length(bushing)}: use a smaller bit.",
        )
    _room(layout, bit, scale)
    length, width = layout.hinge + 2 * offset, layout.width + offset
    answer.length("template_offset", offset, label="Bushing's offset", fine=True)
    answer.length("template_length", length, label="Template opening, long", fine=True)
    answer.length("template_width", width, label="Template opening, from the face", fine=True)
    radius = RADII[given.text("corners")]
    if radius and radius >= bit / 2 - _HAIR:
        answer.length(
            "template_radius", radius + offset, label="Template corners, radius", fine=True
        )
    answer.note(_corner_note(radius, bit, scale))
    answer.note(
        "The opening runs out past the knuckle face, so that the bit enters there. Set the depth "
        f"through the template: its thickness and {scale.finer().length(layout.depth)}."
    )
    answer.draw(_view(layout, offset, scale))


def _room(layout: Layout, bit: float, scale: Scale) -> None:
    """Refuse a bit that is larger than the mortise."""
    least = min(layout.hinge, layout.width)
    if bit > least:
        raise Refusal(
            "bit",
            f"A bit of {scale.length(bit)} is larger than a mortise {scale.length(layout.width)} "
            f"by {scale.length(layout.hinge)}: use {scale.length(least)} or less.",
        )


def _corner_note(radius: float, bit: float, scale: Scale) -> str:
    left = scale.finer().length(bit / 2)
    if not radius:
        return f"The bit leaves corners of {left} radius: square both with a chisel."
    if bit / 2 > radius + _HAIR:
        return (
            f"The bit leaves corners of {left} radius, rounder than the leaf's: pare them with a "
            f"chisel, or use a bit of {scale.length(2 * radius)} or less."
        )
    if bit / 2 > radius - _HAIR:
        return "The bit leaves just the leaf's corners, in a template with square corners too."
    return "With the template's corners rounded as given, the mortise fits the leaf's corners."


def _view(layout: Layout, offset: float, scale: Scale) -> Drawing:
    """Return the template on the door's edge, the knuckle face on top."""
    high, wide = layout.hinge, layout.width
    view = Drawing(
        "The template on the edge, knuckle face on top",
        f"An opening {scale.finer().length(high + 2 * offset)} long and "
        f"{scale.finer().length(wide + offset)} from the face, for a mortise "
        f"{scale.length(high)} by {scale.length(wide)}.",
    )
    view.box("stock", -1.5, 0, high + 1.5, layout.thickness)
    view.box("clearance", -offset, 0, high + offset, wide + offset)
    view.box("metal", 0, 0, high, wide)
    view.dimension((-offset, 0), (high + offset, 0), scale.finer().length(high + 2 * offset))
    right = high + offset
    view.dimension((right, 0), (right, wide + offset), scale.finer().length(wide + offset))
    return view
