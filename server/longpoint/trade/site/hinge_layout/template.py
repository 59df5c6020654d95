"""The template that a router with a guide bushing follows to cut the mortise."""

from ...tool import Answer, Choice, Drawing, Flag, Length, Refusal, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...tool import Input
    from .mortise import Mortise

_WHEN = ("template", True)
RADII = {"square": 0.0, "1/4": 0.25, "5/8": 0.625}
_HAIR = 1e-9

TEMPLATE_INPUTS: "list[Input]" = [
    Flag(
        "template",
        "Router template?",
        help="For a router with a guide bushing; it prints at full size.",
        only_when=("kind", "butt"),
    ),
    Length("bushing", "Bushing, outside", default="3/4", only_when=_WHEN),
    Length("bit", "Bit", default="1/2", only_when=_WHEN),
    Choice(
        "corners",
        "Hinge leaf corners",
        [("square", "square"), ("1/4", "1/4 radius"), ("5/8", "5/8 radius")],
        default="square",
        only_when=_WHEN,
    ),
]

TEMPLATE_SOURCES = [
    "Template: opening = mortise + 2 offsets, offset = (bushing - bit) / 2, as router users' "
    "answers give it; corner radii of 1/4 and 5/8: hinge sellers' guides."
]


def add_template(
    answer: Answer, mortise: "Mortise", bushing: float, bit: float, corners: str
) -> None:
    """Add the template's opening and corners, and its drawing to print.

    Raises
    ------
    Refusal
        The bit does not turn in its bushing.
    """
    scale, offset = answer.scale, (bushing - bit) / 2
    if offset <= 0:
        raise Refusal(
            "bit",
            f"A bit of {scale.length(bit)} doesn't turn inside a bushing of "
            f"{scale.length(bushing)}: use a smaller bit.",
        )
    if mortise.length is None or mortise.width is None:
        answer.note("The template goes by the hinge's height and the door's thickness.")
        return
    least = min(mortise.length, mortise.width)
    if bit > least:
        answer.note(
            f"No template: a bit of {scale.length(bit)} is larger than a mortise "
            f"{scale.length(mortise.width)} by {scale.length(mortise.length)}; use "
            f"{scale.length(least)} or less."
        )
        return
    answer.length("template_offset", offset, fine=True)
    answer.length("template_length", mortise.length + 2 * offset, fine=True)
    answer.length("template_width", mortise.width + offset, fine=True)
    radius = RADII[corners]
    if radius and radius >= bit / 2 - _HAIR:
        answer.length("template_radius", radius + offset, fine=True)
    _notes(answer, radius, bit, mortise)
    answer.draw(_view(mortise, mortise.length, mortise.width, offset, scale))


def _notes(answer: Answer, radius: float, bit: float, mortise: "Mortise") -> None:
    answer.note(_corner_note(radius, bit, answer.scale))
    deep = "the depth of the mortise"
    if mortise.depth is not None:
        deep = answer.scale.finer().length(mortise.depth)
    answer.note(
        "The opening runs out past the knuckle face, so that the bit enters there. Set the depth "
        f"through the template: its thickness and {deep}."
    )


def _corner_note(radius: float, bit: float, scale: Scale) -> str:
    left = scale.finer().length(bit / 2)
    if not radius:
        return f"The bit leaves corners of {left} radius: square both with a chisel."
    if bit / 2 > radius + _HAIR:
        return (
            f"The bit leaves corners of {left} radius, rounder than the hinge leaf's: pare them "
            f"with a chisel, or use a bit of {scale.length(2 * radius)} or less."
        )
    if bit / 2 > radius - _HAIR:
        return "The bit leaves just the hinge leaf's corners, in a template with square ones too."
    return "With the template's corners rounded as given, the mortise fits the hinge leaf's."


def _view(mortise: "Mortise", high: float, wide: float, offset: float, scale: Scale) -> Drawing:
    """Return the template on the door's edge, the knuckle face on top."""
    fine, thick = scale.finer(), mortise.thickness or wide
    long, deep = fine.length(high + 2 * offset), fine.length(wide + offset)
    view = Drawing(
        "The template on the edge, knuckle face on top",
        f"An opening {long} long and {deep} from the face, for a mortise {scale.length(high)} by "
        f"{scale.length(wide)}.",
        full_size=True,
    )
    view.box("stock", -1.5, 0, high + 1.5, thick)
    view.box("clearance", -offset, 0, high + offset, wide + offset)
    view.box("metal", 0, 0, high, wide)
    view.dimension((-offset, 0), (high + offset, 0), long)
    right = high + offset
    view.dimension((right, 0), (right, wide + offset), deep)
    return view
