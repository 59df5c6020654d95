"""A door or window trimmed out: what is every length, and where is it measured?"""

from ..cautions import SAW, warn_if_sharp
from ..geometry.miters import settings
from ..tool import Answer, Choice, Flag, Given, Length, Scale, Tool
from .casing_parts import Casing, casing_parts
from .casing_views import front_view, stool_view
from .stool_parts import Stool

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .casing_parts import Part

TINY = (
    "Returns are too small to hold: miter the end of a long piece first, then cut the return off "
    "it, and let the blade stop before you pick it up."
)


def work(given: Given, scale: Scale) -> Answer:
    """Return every part of the set in the order it is cut, and where each is measured."""
    casing = Casing(given, scale)
    stool = Stool(given, casing, scale) if casing.kind == "stool" else None
    parts = casing_parts(casing)
    if stool:
        parts = stool.stool() + parts + stool.under()
    answer = Answer(scale)
    _figures(answer, casing, parts)
    if stool:
        _stool(answer, stool)
    tags = _pieces(answer, parts)
    answer.mark(tags["Leg"], "Reveal line", "jamb's inner face", casing.reveal)
    if stool:
        for place, label in ((stool.horn, "left jamb"), (stool.horn + stool.width, "right jamb")):
            answer.mark(tags["Stool"], "Notch at the " + label, "stool's left end", place)
    answer.draw(front_view(casing, stool, tags, scale))
    if stool:
        answer.draw(stool_view(casing, stool, scale))
    _notes(answer, casing, stool)
    return answer


def _figures(answer: Answer, casing: Casing, parts: "list[Part]") -> None:
    named = {part.name: part for part in parts}
    for name in ("Head", "Leg"):
        part, field = named[name], name.lower()
        label = name if name == "Head" else "Legs"
        if part.short is None:
            answer.length(field + "_length", part.length, label=label, lead=True)
            continue
        answer.length(field + "_short", part.short, label=label + ", short point", lead=True)
        answer.length(field + "_long", part.length, label=label + ", long point")
    if casing.head == "miter":
        head, side = settings(casing.top, casing.side)
        answer.angle("saw_head", head, label="Saw, head")
        if head != side:
            answer.angle("saw_leg", side, label="Saw, legs")
        warn_if_sharp(answer, head, side)
    answer.length("outside_width", casing.outside[0], label="Casing over all, width")
    answer.length("outside_height", casing.outside[1], label="Casing over all, height")


def _stool(answer: Answer, stool: Stool) -> None:
    answer.length("stool_length", stool.length, label="Stool")
    answer.length("horn", stool.horn, label="Horns, past the jamb")
    answer.length("stool_out", stool.out, label="Stool out from the wall")
    answer.length("apron_length", stool.apron, label="Apron")
    if stool.returned:
        answer.caution(TINY)


def _pieces(answer: Answer, parts: "list[Part]") -> "dict[str, str]":
    """Add the parts and the table of where each is measured; return their tags by name."""
    tags, rows = {}, []
    for place, part in enumerate(parts):
        tags[part.name] = tag = str(place + 1)
        answer.piece(
            tag,
            part.name,
            part.length,
            part.ends,
            short_point=part.short,
            width=part.width,
            thickness=part.thick,
            count=part.count,
        )
        short = part.where.find("short point") >= 0
        shown = answer.scale.length(part.short if short else part.length)
        rows.append([tag + " " + part.name, part.where, shown])
    answer.table("Where it is measured", ["Piece", "Between", "Length"], rows)
    return tags


def _notes(answer: Answer, casing: Casing, stool: "Stool | None") -> None:
    answer.note(
        "Mark the reveal line on head and legs of the jamb first, and check every length against "
        "the lines before you cut: openings are seldom as square as the sum."
    )
    if casing.head == "miter":
        answer.note("Cut the head first, tack it to its line, then fit each leg to it.")
    elif casing.head == "butt":
        answer.note("Legs first, then the head across them; square-edged casing only is butted.")
    else:
        answer.note("Tack the legs, set the blocks centered on them, then fit the head between.")
    if casing.kind == "door":
        answer.note("One face of the door: cut the same again for the other.")
    if stool:
        answer.note(
            "Scribe the stool's horns to the wall with its tongue between the jambs; the casing "
            "stands on it. Returns are cut in pairs, one for each hand."
        )


def _inches(name: str, label: str, default: str, help: str, *when: str) -> Length:
    return Length(name, label, default=default, least=0, most=24, help=help, only_when=when or None)


def _maybe(name: str, label: str, words: str, help: str, *when: str) -> Length:
    return Length(name, label, optional=True, default_text=words, help=help, only_when=when or None)


TOOL = Tool(
    slug="casing-set",
    place="site",
    title="Casing set",
    question="A door or window trimmed out: what is every length, and where is it measured?",
    finds=("stool", "apron", "rosette", "plinth", "reveal", "window trim"),
    inputs=[
        Choice(
            "opening",
            "Opening",
            [
                ("door", "a door"),
                ("stool", "a window with stool and apron"),
                ("around", "a window cased all round"),
            ],
            default="door",
        ),
        Length("width", "Width", help="Between the jambs."),
        Length("height", "Height", help="From floor, stool or lower jamb to the head jamb."),
        Length("casing_width", "Casing width"),
        Choice(
            "head",
            "Head",
            [
                ("miter", "mitered"),
                ("butt", "butted on the legs"),
                ("blocks", "between corner blocks"),
            ],
            default="miter",
        ),
        _inches("reveal", "Reveal", "3/16", "How far the casing stands back from the jamb's face."),
        _maybe("head_width", "Head width", "as the legs", "", "head", "miter", "butt"),
        _inches("overhang", "Overhang", "1/2", "Of the head, past each leg.", "head", "butt"),
        _maybe(
            "block_size",
            "Corner block",
            "the casing and 1/4",
            "Square, centered on leg and head.",
            "head",
            "blocks",
        ),
        _maybe("plinth_height", "Plinth height", "no plinths", "", "opening", "door"),
        _maybe("plinth_width", "Plinth width", "the casing and 1/4", "", "opening", "door"),
        Length("casing_thickness", "Casing thickness", default="11/16"),
        _inches(
            "stool_nose",
            "Stool nose",
            "3/4",
            "Past the casing, in front and at the ends.",
            "opening",
            "stool",
        ),
        _maybe(
            "stool_inside",
            "Stool inside",
            "not measured",
            "From the wall's face in to the sash.",
            "opening",
            "stool",
        ),
        Length("stool_thickness", "Stool thickness", default="3/4", only_when=("opening", "stool")),
        _maybe("apron_width", "Apron width", "as the casing", "", "opening", "stool"),
        Length(
            "apron_thickness", "Apron thickness", default="11/16", only_when=("opening", "stool")
        ),
        Flag("returns", "Returned ends", default=True, only_when=("opening", "stool")),
    ],
    work=work,
    example={
        "opening": "stool",
        "width": "32 1/4",
        "height": "48 1/2",
        "casing_width": "3 1/2",
        "stool_inside": "2 5/8",
    },
    cautions=[SAW],
    sources=[
        "Reveal of about 3/16; molded casing mitered, square-edged butted: NAVEDTRA 14044, "
        "Builder, interior trim. Casing 11/16 thick: Navy Builder text.",
        "Lengths are sums; mitered ones are those of a mitered frame of the same sizes.",
        "Blocks 1/4 wider than the casing and centered on it, a stool that ends as far past the "
        "casing as it stands out before it, an apron as long as the casing is wide over all: "
        "common practice, no source.",
    ],
)
