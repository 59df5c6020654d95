"""A door or window trimmed out: what is every length, and where is it measured?"""

from ...cautions import SAW, warn_if_sharp
from ...geometry.miters import settings
from ...lumber.lineal import lineal
from ...tool import Answer, Given, Gives, Scale, Tool
from .asked import INPUTS
from .buying import sections
from .casing import NAMES, STOCKS, Casing, CasingSizes, block_of, casing_parts
from .stool import ApronSizes, Stool, StoolSizes
from .views import front_view, stool_view
from .words import add_notes, give_verdict

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .casing import CasingPart

TINY = (
    "Returns are too small to hold: miter the end of a long piece first, then cut the return off "
    "it, and let the blade stop before you pick it up."
)
USUAL_INSIDE = 3.0
"""Inches from wall to sash taken where nobody taped them: more than most windows need, since too
wide a stool is ripped down and too narrow a one is lost (from memory)."""


def work(given: Given, scale: Scale) -> Answer:
    """Return every part of the set in the order it is cut, and where each is measured."""
    casing = _casing(given, scale)
    stool = _stool(given, casing, scale) if casing.kind == "stool" else None
    is_taped = given.maybe("stool_inside") is not None
    parts = casing_parts(casing)
    if stool:
        parts = stool.above() + parts + stool.below()
    answer = Answer(scale)
    give_verdict(answer, casing, stool, is_taped)
    _figures(answer, casing)
    if stool:
        _stool_figures(answer, stool)
    tags = _pieces(answer, parts)
    _buying(answer, casing, parts)
    answer.mark(tags["leg"], "Reveal line", "jamb's inner face", casing.reveal)
    if stool:
        _notch_marks(answer, stool, tags["stool"])
    answer.draw(lambda: front_view(casing, stool, tags, scale))
    if stool:
        answer.draw(lambda: stool_view(casing, stool, scale))
    add_notes(answer, casing, stool, is_taped)
    return answer


def _casing(given: Given, scale: Scale) -> Casing:
    side = given.number("casing_width")
    sizes = CasingSizes(
        given.text("opening"),
        given.text("head"),
        given.number("opening_width"),
        given.number("opening_height"),
        side,
        given.maybe("head_width") or side,
        given.number("casing_thickness"),
        given.number("reveal"),
        given.maybe("overhang") or 0.0,
    )
    size = given.maybe("block_size")
    corner = block_of(size, size, given.maybe("block_thickness"), sizes)
    plinth = [given.maybe("plinth_" + name) for name in ("height", "width", "thickness")]
    return Casing(sizes, corner, block_of(plinth[0], plinth[1], plinth[2], sizes), scale)


def _stool(given: Given, casing: Casing, scale: Scale) -> Stool:
    inside = given.maybe("stool_inside") or USUAL_INSIDE
    return Stool(
        casing,
        StoolSizes(given.number("stool_nose"), given.number("stool_thickness"), inside),
        ApronSizes(
            given.maybe("apron_width") or casing.side,
            given.maybe("apron_thickness") or casing.thick,
        ),
        given.flag("returns"),
        scale,
    )


def _figures(answer: Answer, casing: Casing) -> None:
    if casing.head == "miter":
        _mitered_figures(answer, casing)
    else:
        long = casing.outer + 2 * casing.over
        head = casing.between if casing.head == "blocks" else long
        answer.length("head_length", head, lead=True)
        answer.length("leg_length", casing.leg, lead=True)
    answer.length("outside_width", casing.outside[0])
    answer.length("outside_height", casing.outside[1])


def _mitered_figures(answer: Answer, casing: Casing) -> None:
    frame = casing.frame
    answer.length("head_short", frame.clear_width, lead=True)
    answer.length("head_long", frame.width)
    answer.length("leg_short", frame.clear_height, lead=True)
    answer.length("leg_long", frame.height)
    head, side = settings(casing.top, casing.side)
    answer.angle("saw_head", head)
    if head != side:
        answer.angle("saw_leg", side)
    warn_if_sharp(answer, head, side)


def _stool_figures(answer: Answer, stool: Stool) -> None:
    answer.length("stool_length", stool.length)
    answer.length("stool_width", stool.width)
    answer.length("notch_depth", stool.inside)
    answer.length("horn", stool.horn)
    answer.length("stool_out", stool.out)
    answer.length("apron_length", stool.apron)
    if stool.returned:
        answer.caution(TINY)


def _buying(answer: Answer, casing: Casing, parts: "list[CasingPart]") -> None:
    """Add what to buy of each trim that is sold by the foot, each section of its own."""
    rows = []
    for section in sections(casing, parts):
        if (section.width, section.thick) == (casing.side, casing.thick):
            answer.length("casing_to_buy", section.inches)
        size = f"{answer.scale.length(section.thick)} x {answer.scale.length(section.width)}"
        names = ", ".join([NAMES[kind] for kind in section.kinds])
        rows.append([size, names, lineal(section.inches, answer.scale)])
    answer.table("Trim to buy", ["Section", "For", "Lineal"], rows)


def _pieces(answer: Answer, parts: "list[CasingPart]") -> "dict[str, str]":
    """Add the parts and the table of where each is measured; return their tags by kind."""
    tags, rows = {}, []
    for place, part in enumerate(parts):
        tags[part.kind] = tag = str(place + 1)
        answer.piece(
            tag,
            NAMES[part.kind],
            part.length,
            part.ends,
            short_point=part.short,
            width=part.width,
            thickness=part.thick,
            count=part.count,
            role=STOCKS.get(part.kind, "casing"),
        )
        shown = answer.scale.length(part.short if part.by_short else part.length)
        rows.append([tag + " " + NAMES[part.kind], part.where, shown])
    answer.table("Where it is measured", ["Piece", "Between", "Length"], rows)
    return tags


def _notch_marks(answer: Answer, stool: Stool, tag: str) -> None:
    for place, label in ((stool.horn, "left jamb"), (stool.horn + stool.opening, "right jamb")):
        answer.mark(tag, "Notch at the " + label, "stool's left end", place)
    answer.mark(tag, "Notches, how deep", "stool's edge at the sash", stool.inside)


def _said_defaults(raw: "dict[str, Any]") -> "dict[str, Any]":
    """Fill in what version 1 took where nothing was said."""
    kept = {"opening": "door", "casing_thickness": '11/16"', "apron_thickness": '11/16"'}
    kept.update({name: value for name, value in raw.items() if value not in (None, "")})
    return kept


TOOL = Tool(
    slug="casing-set",
    place="site",
    coated="girth",
    title="Casing set",
    question="A door or window trimmed out: what is every length, and where is it measured?",
    finds=("stool", "apron", "rosette", "plinth", "reveal", "window trim", "lineal feet"),
    inputs=INPUTS,
    work=work,
    gives=[
        Gives("head_short", "length", "Head, short point", short="Head", sometimes=True),
        Gives("head_long", "length", "Head, long point", short="long point", sometimes=True),
        Gives("leg_short", "length", "Legs, short point", short="Legs", sometimes=True),
        Gives("leg_long", "length", "Legs, long point", short="long point", sometimes=True),
        Gives("head_length", "length", "Head", sometimes=True),
        Gives("leg_length", "length", "Legs", sometimes=True),
        Gives("saw_head", "angle", "Saw, head", short="Saw", sometimes=True),
        Gives("saw_leg", "angle", "Saw, legs", sometimes=True),
        Gives("outside_width", "length", "Casing over all, width", short="over all"),
        Gives("outside_height", "length", "Casing over all, height", short="over all"),
        Gives("stool_length", "length", "Stool", sometimes=True),
        Gives("stool_width", "length", "Stool width", short="wide", sometimes=True),
        Gives(
            "notch_depth", "length", "Notches in the stool, how deep", short="notch", sometimes=True
        ),
        Gives("horn", "length", "Horns, past the jamb", short="Horns", sometimes=True),
        Gives("stool_out", "length", "Stool out from the wall", short="out", sometimes=True),
        Gives("apron_length", "length", "Apron", sometimes=True),
        Gives("casing_to_buy", "length", "Casing to buy", short="to buy"),
    ],
    upgrades=(_said_defaults,),
    example={
        "opening": "door",
        "opening_width": "36 1/4",
        "opening_height": "80 3/8",
        "casing_width": "3 1/2",
        "casing_thickness": "11/16",
    },
    cautions=[SAW],
    sources=[
        "Reveal of about 3/16; molded casing mitered, square-edged butted: NAVEDTRA 14044, "
        "Builder, interior trim. Casing 11/16 thick: Navy Builder text.",
        "Lengths are sums; mitered ones are those of a mitered frame of the same sizes.",
        "2 in more for each corner and return when buying: trade articles on base molding.",
        "Blocks 1/4 wider and thicker than the casing and centered on it, 3 in from wall to sash: "
        "from memory.",
        "A stool that ends as far past the "
        "casing as it stands out before it, an apron as long as the casing is wide over all: "
        "common practice, no source.",
    ],
)
