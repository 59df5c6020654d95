"""What is this opening really, and what door goes in?"""

import math

from .. import degrees
from ..cautions import FIRE_DOOR
from ..door import gaps
from ..tool import Angle, Answer, Choice, Given, Length, Refusal, Scale, Tool
from .leaf_taper import leaves_of
from .opening_shape import Opening
from .opening_view import opening_view
from .survey_words import (
    DOUBTFUL,
    add_assumption,
    add_contradictions,
    add_errors,
    add_leaf,
    add_notes,
)


def work(given: Given, scale: Scale) -> Answer:
    """Return the leaf, how far the opening is out, and what comes off which corner."""
    opening = Opening(given, scale)
    size = _square_leaf(given, opening, scale)
    leaves = leaves_of(opening)
    if not all(leaf.closed for leaf in leaves):
        raise Refusal("width_top", "So far out of square, this leaves no leaf: measure again.")
    answer = Answer(scale)
    each = ", each leaf" if len(leaves) > 1 else ""
    answer.length("door_width", size[0], label="Door width" + each, lead=True)
    answer.length("door_height", size[1], label="Door height", lead=True)
    doubt = DOUBTFUL if opening.assumed else ""
    for place, leaf in enumerate(leaves):
        add_leaf(answer, leaf, (place, len(leaves)), size, given.number("door_thickness"), doubt)
    add_errors(answer, opening)
    _details(answer, given, size)
    answer.draw(opening_view(opening, leaves, scale))
    add_assumption(answer, opening, any(leaf.tapers for leaf in leaves))
    add_contradictions(answer, opening)
    add_notes(answer, opening, leaves)
    return answer


def _square_leaf(given: Given, opening: Opening, scale: Scale) -> "tuple[float, float]":
    """Return width and height of a leaf that clears the tightest places by the gaps."""
    wide, high = opening.tight
    wide -= 2 * given.number("side_gap") + (given.maybe("meeting_gap") or 0.0)
    high -= given.number("head_gap") + given.number("floor_gap")
    for field, left, tight in (
        ("side_gap", wide, opening.tight[0]),
        ("floor_gap", high, opening.tight[1]),
    ):
        if left <= 0:
            words = f"The gaps fill all of {scale.length(tight)}: use smaller ones."
            raise Refusal(field, words)
    return wide / int(given.text("leaves")), high


def _details(answer: Answer, given: Given, size: "tuple[float, float]") -> None:
    """Add the diagonal of a square leaf, what the bevel takes, and what the jamb has left."""
    thick, depth = given.number("door_thickness"), given.maybe("depth")
    diagonal = math.sqrt(size[0] * size[0] + size[1] * size[1])
    answer.length("door_diagonal", diagonal, label="Diagonals of a square leaf")
    bevel = thick * degrees.tan(given.number("bevel"))
    answer.length("bevel_off", bevel, label="The bevel takes off the far face", fine=True)
    if depth is None:
        return
    if depth <= thick:
        raise Refusal(
            "depth",
            f"A jamb {answer.scale.length(depth)} deep holds no door "
            f"{answer.scale.length(thick)} thick: measure it again, or take a thinner door.",
        )
    answer.length("depth_left", depth - thick, label="Jamb behind the door")


def _size(name: str, label: str, help: str = "", *, optional: bool = False) -> Length:
    words = "not measured" if optional else ""
    return Length(name, label, help=help, optional=optional, default_text=words)


def _reading(name: str, label: str, way: str) -> Length:
    return Length(
        name,
        label,
        least=-4,
        most=4,
        optional=True,
        default_text="not read",
        help=f"Gap at the level's end, bubble centered: + {way}, - the other way.",
    )


TOOL = Tool(
    slug="opening-survey",
    place="site",
    title="Opening survey",
    question="What is this opening really, and what door goes in?",
    finds=("rough opening", "plumb", "level", "diagonal", "out of square"),
    inputs=[
        _size("width_top", "Width, top", "Between the jambs."),
        _size("width_middle", "Width, middle", optional=True),
        _size("width_bottom", "Width, bottom"),
        _size("height_left", "Height, left", "From the finished floor to the head."),
        _size("height_middle", "Height, middle", optional=True),
        _size("height_right", "Height, right"),
        _size("diagonal_a", "Diagonal A", "Top left to bottom right.", optional=True),
        _size("diagonal_b", "Diagonal B", "Top right to bottom left.", optional=True),
        gaps.leaves(),
        Choice(
            "hinges",
            "Hinges",
            [("left", "left"), ("right", "right")],
            default="left",
            only_when=("leaves", "1"),
        ),
        _reading("plumb_left", "Plumb, left", "where its top is off to the right"),
        _reading("plumb_right", "Plumb, right", "where its top is off to the right"),
        Length("plumb_over", "Plumb over", default="48", least=6, help="Length of that level."),
        _reading("level_head", "Level, head", "where its right end is high"),
        _reading("level_sill", "Level, sill", "where its right end is high"),
        Length("level_over", "Level over", default="24", least=6, help="Length of that level."),
        Length(
            "strings",
            "Crossed strings",
            least=0,
            most=6,
            optional=True,
            default_text="not tried",
            help="From corner to corner, touching the jamb's edges: the gap where they cross.",
        ),
        Length("depth", "Depth", optional=True, help="Of the jamb, at its shallowest."),
    ]
    + gaps.leaf_gaps()
    + [
        Length("door_thickness", "Door thickness", default="1 3/8"),
        Angle("bevel", "Edge bevel", default=3, least=0, most=10),
    ],
    work=work,
    example={
        "width_top": "36 1/8",
        "width_middle": "36 1/16",
        "width_bottom": "36 3/8",
        "height_left": "80 3/4",
        "height_middle": "80 11/16",
        "height_right": "80 5/8",
        "diagonal_a": "88 3/16",
        "diagonal_b": "88 11/16",
        "plumb_left": "1/8",
        "level_head": "1/16",
    },
    cautions=[FIRE_DOOR],
    sources=[
        "Gaps of 1/8 at head and jambs, 1/16 per leaf where a pair meets, 1/2 above the floor: "
        "Architectural Woodwork Standards, 1st edition, appendix B, typical prefit.",
        "Prefit width is the opening less 1/4, edges beveled 3°: the same, 4.1.17.2.",
        "Frames plumb and level within 1/8 in 96: ANSI/AWI 0620-2018, 3.1.",
        "Corners from four sides and a diagonal, tapers, crossed strings: plane geometry.",
        "Tapers from 1/16; tapes that differ by 1/8 and levels by 0.3° are called a "
        "contradiction: common practice, no source.",
    ],
)
