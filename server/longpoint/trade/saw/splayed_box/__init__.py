"""Sides that lean: what is set on the saw for mitered and for butted corners, and the boards."""

from ...cautions import SAW, TEST_CUT, warn_if_sharp
from ...tool import (
    Angle,
    Answer,
    Choice,
    Count,
    End,
    Given,
    Gives,
    Length,
    Refusal,
    Scale,
    Tool,
    miter,
)
from .box import Box
from .views import SKETCH, board, section
from .words import add_laying, add_notes, add_verdict


def work(given: Given, scale: Scale) -> Answer:
    """Return the settings of both joints, how each end is laid, and the boards where asked."""
    narrow, height = given.maybe("narrow"), given.maybe("height")
    sized, butted = narrow is not None, given.text("joint") == "butt"
    _refuse_half_sized(narrow, height)
    thickness = given.maybe("stock_thickness")
    if sized and butted and thickness is None:
        words = "Butted boards are shorter by the thickness of the others: say how thick."
        raise Refusal("stock_thickness", words)
    sides, lean = given.count("sides"), given.number("lean")
    box = Box(sides, lean, narrow or SKETCH[0], height or SKETCH[1], thickness or 0.0)
    if sized:
        _refuse_thick(box, butted, scale)
    answer = Answer(scale)
    add_verdict(answer, box, butted, sized)
    _settings(answer, box, butted)
    if sized:
        _sizes(answer, box, butted)
        _pieces(answer, box, butted)
    for joint in (butted, not butted):
        add_laying(answer, box, given.text("tilt"), joint)
    _draw(answer, box, butted, sized)
    add_notes(answer, box, butted, sized)
    warn_if_sharp(answer, box.miter, abs(box.butt) if butted else box.bevel)
    return answer


def _refuse_half_sized(narrow: "float | None", height: "float | None") -> None:
    missing = {"narrow": "how long the narrow edge is", "height": "how high the box stands"}
    if (narrow is None) != (height is None):
        name = "narrow" if narrow is None else "height"
        words = f"To size the sides say {missing[name]} too, or leave both empty."
        raise Refusal(name, words)


def _refuse_thick(box: Box, butted: bool, scale: Scale) -> None:
    least = box.inside(box.narrow)
    if butted:
        least = min(least, box.butted(box.narrow))
    if box.thickness and least <= 0:
        raise Refusal(
            "stock_thickness",
            f"Boards {scale.length(box.thickness)} thick meet in the middle of a narrow edge of "
            f"{scale.length(box.narrow)}: use thinner ones, or a longer edge.",
        )


def _settings(answer: Answer, box: Box, butted: bool) -> None:
    answer.angle("miter", box.miter, lead=True)
    answer.angle("bevel", box.bevel, lead=not butted)
    answer.angle("butt_bevel", abs(box.butt), lead=butted)
    answer.angle("edge_bevel", box.lean)


def _sizes(answer: Answer, box: Box, butted: bool) -> None:
    answer.length("wide", box.wide, lead=True)
    if butted:
        answer.length("butt_wide", box.butted(box.wide), lead=True)
        answer.length("butt_narrow", box.butted(box.narrow))
    answer.length("slant", box.slant)
    if not box.thickness:
        return
    answer.length("blank_width", box.blank)
    ends = (("wide", box.wide), ("narrow", box.narrow))
    for name, edge in ends:
        answer.length("inside_" + name, box.inside(edge))
    # With four sides the distance across is a side.
    if box.sides != 4:
        for name, edge in ends:
            answer.length("across_" + name, box.across(box.inside(edge)))


def _pieces(answer: Answer, box: Box, butted: bool) -> None:
    whole = (box.wide, box.narrow)
    if not butted:
        end = miter(box.miter, bevel=box.bevel)
        _piece(answer, box, "1", "Side, outer face", whole, end, box.sides)
        return
    short = (box.butted(box.wide), box.butted(box.narrow))
    end = End("butt", box.miter, abs(box.butt), "")
    if not box.alternates:
        _piece(answer, box, "1", "Side, outer face", short, end, box.sides)
        return
    half = box.sides // 2
    _piece(answer, box, "1", "Side that runs past, outer face", whole, end, half)
    _piece(answer, box, "2", "Side between, outer face", short, end, half)


def _piece(
    answer: Answer,
    box: Box,
    tag: str,
    name: str,
    edges: "tuple[float, float]",
    end: End,
    count: int,
) -> None:
    answer.piece(
        tag,
        name,
        edges[0],
        (end, end),
        short_point=edges[1],
        width=box.slant,
        thickness=box.thickness or None,
        count=count,
    )


def _draw(answer: Answer, box: Box, butted: bool, sized: bool) -> None:
    scale = answer.scale
    whole = (box.wide, box.narrow)
    short = (box.butted(box.wide), box.butted(box.narrow))
    if butted and sized and not box.alternates:
        whole = short
    answer.draw(board(box, whole, "1", "One side, outer face", sized, scale))
    if butted and sized and box.alternates:
        answer.draw(board(box, short, "2", "A side between, outer face", sized, scale))
    answer.draw(section(box, sized, scale))


TOOL = Tool(
    slug="splayed-box",
    place="saw",
    title="Splayed box",
    question="Sides that lean: what is set on the saw, mitered or butted?",
    finds=("hopper", "tray", "planter", "taper", "compound miter", "bevel", "butt"),
    inputs=[
        Count("sides", "Sides", least=3, most=24),
        Angle("lean", "Lean", least=0, most=85, help="Of each side from upright."),
        Choice("joint", "Corners", [("miter", "mitered"), ("butt", "butted")], default="miter"),
        Length(
            "narrow",
            "Narrow edge",
            optional=True,
            help="One side's outer face where the box is narrow.",
        ),
        Length("height", "Height", optional=True, help="Upright, not along the board."),
        Length(
            "stock_thickness",
            "Stock thickness",
            optional=True,
            default_text="not known",
            help="Of the boards: for the inside, and for butted lengths.",
            quantity="stock thickness",
        ),
        Choice(
            "tilt",
            "Blade bevels",
            [("left", "to the left"), ("right", "to the right")],
            default="left",
            help="Where the top of the blade leans.",
        ),
    ],
    work=work,
    gives=[
        Gives("miter", "angle", "Miter, either joint", short="Miter"),
        Gives("bevel", "angle", "Bevel, mitered", short="Bevel"),
        Gives("butt_bevel", "angle", "Bevel, butted", short="Bevel"),
        Gives("edge_bevel", "angle", "Rip top and bottom edges at", short="Edges"),
        Gives("wide", "length", "Wide edge, outer face", short="Wide edge", sometimes=True),
        Gives(
            "butt_wide", "length", "Wide edge, board that butts", short="Butting", sometimes=True
        ),
        Gives("butt_narrow", "length", "Narrow edge, board that butts", sometimes=True),
        Gives("slant", "length", "Width of the board, edges ripped", sometimes=True),
        Gives("blank_width", "length", "Blank width, before the edges are ripped", sometimes=True),
        Gives("inside_wide", "length", "Inside a side, wide end", sometimes=True),
        Gives("inside_narrow", "length", "Inside a side, narrow end", sometimes=True),
        Gives("across_wide", "length", "Inside across flats, wide end", sometimes=True),
        Gives("across_narrow", "length", "Inside across flats, narrow end", sometimes=True),
    ],
    example={
        "sides": "4",
        "lean": "15",
        "narrow": "12",
        "height": "10",
        "stock_thickness": "3/4",
    },
    cautions=[SAW, TEST_CUT],
    sources=[
        "Solid geometry, for n sides: miter is the arc tangent of sin(lean) tan(180 / n), bevel "
        "mitered the arc sine of cos(lean) sin(180 / n), bevel butted what the angle between two "
        "sides is off square.",
        "Manual of a compound miter saw: four sides 26 from level are cut at 42 and 18.",
        "Edges ripped first, feather edges: common practice, no source.",
    ],
)
