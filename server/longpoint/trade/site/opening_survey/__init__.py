"""What is this opening really, and what leaf goes in?"""

import math

from ... import degrees
from ...cautions import FIRE_DOOR
from ...door import gaps
from ...tool import Answer, Choice, Given, Gives, Length, Refusal, Scale, Tool
from . import words
from .asked import reading, size
from .bays import Gaps, bays_of, usable
from .routes import MIDDLE, STRIKE, Left, SquareLeaf, TaperedLeaf
from .shape import Opening, Readings
from .view import opening_view

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .bays import Bay

    Leaf = SquareLeaf | TaperedLeaf


def work(given: Given, scale: Scale) -> Answer:
    """Return the leaf by the route chosen, how far the opening is out, and what both leave."""
    opening = Opening(_readings(given), scale)
    bays = bays_of(
        opening.points, int(given.text("leaves")), given.text("hinge_side"), opening.bows
    )
    asked = _gaps(given)
    squares = _square_leaves(given, bays, asked, scale)
    tapereds = [TaperedLeaf(bay, asked) for bay in bays]
    if not all(leaf.closed for leaf in tapereds):
        raise Refusal("width_top", "So far out of square, this leaves no leaf: measure again.")
    tapered = given.text("route") == "tapered"
    leaves: list[Leaf] = list(tapereds) if tapered else list(squares)
    answer = Answer(scale)
    left = _all_left(leaves)
    words.verdict(answer, opening, leaves, [each for gaps_left in left for each in gaps_left])
    _figures(answer, given, leaves, left)
    doubt = words.DOUBTFUL if opening.assumed else ""
    for place, leaf in enumerate(leaves):
        words.add_leaf(answer, leaf, place, len(bays), given.number("door_thickness"), doubt)
    _details(answer, given, leaves)
    words.add_errors(answer, opening, given.maybe("strings"))
    _routes(answer, squares, tapereds)
    answer.draw(lambda: opening_view(opening, leaves, scale))
    words.add_warnings(answer, opening, tapered and any(leaf.tapers for leaf in leaves))
    words.add_notes(answer, opening, leaves, bool(given.maybe("strings")))
    return answer


def _readings(given: Given) -> Readings:
    return Readings(
        _read(given, "width_top", "width_middle", "width_bottom"),
        _read(given, "height_left", "height_middle", "height_right"),
        (given.maybe("diagonal_a"), given.maybe("diagonal_b")),
        [_slope(given, "plumb_" + side, "plumb_over") for side in ("left", "right")],
        [_slope(given, "level_" + end, "level_over") for end in ("head", "sill")],
    )


def _read(given: Given, *names: str) -> "list[float]":
    return [given.number(name) for name in names if given.maybe(name) is not None]


def _slope(given: Given, name: str, over: str) -> "float | None":
    off = given.maybe(name)
    return None if off is None else off / given.number(over)


def _gaps(given: Given) -> Gaps:
    """Return the gaps of one leaf: leaves of a pair share the gap where they meet."""
    side = given.number("side_gap")
    far = (given.maybe("meeting_gap") or 0.0) / 2 if given.text("leaves") == "2" else side
    return Gaps(side, far, given.number("head_gap"), given.number("floor_gap"))


def _square_leaves(
    given: Given, bays: "list[Bay]", asked: Gaps, scale: Scale
) -> "list[SquareLeaf]":
    """Return leaves that are the largest square opening less the gaps, all alike."""
    room = usable(bays)
    wide = room[0] / len(bays) - asked.hinge - asked.far
    high = room[1] - asked.head - asked.floor
    for field, left, whole in (("side_gap", wide, room[0]), ("floor_gap", high, room[1])):
        if left <= 0:
            raise Refusal(field, f"The gaps fill all of {scale.length(whole)}: use smaller ones.")
    return [SquareLeaf(bay, asked, (wide, high)) for bay in bays]


def _all_left(leaves: "list[Leaf]") -> "list[list[Left]]":
    """Return the gaps that each leaf leaves; where two meet, the whole gap between them."""
    each = [leaf.left() for leaf in leaves]
    if len(each) == 1:
        return each
    return [
        [_met(left, each[1 - place]) if left.edge == STRIKE else left for left in gaps_left]
        for place, gaps_left in enumerate(each)
    ]


def _met(left: Left, others: "list[Left]") -> Left:
    """Return a gap and the one at the same height of the other leaf as one."""
    facing = {0: 1, 1: 0, 2: 3, 3: 2, MIDDLE: MIDDLE}[left.end]
    other = next(each for each in others if each.edge == STRIKE and each.end == facing)
    return Left(STRIKE, left.end, left.gap + other.gap, left.asked + other.asked)


def _figures(answer: Answer, given: Given, leaves: "list[Leaf]", left: "list[list[Left]]") -> None:
    wide, high = words.largest(leaves)
    answer.length("leaf_width", wide, lead=True)
    answer.length("leaf_height", high, lead=True)
    pair = len(leaves) > 1
    meeting = (given.maybe("meeting_gap") or 0.0) if pair else 0.0
    across = 2 * given.number("side_gap") + meeting
    answer.length("opening_width", len(leaves) * wide + across)
    answer.length("opening_height", high + given.number("head_gap") + given.number("floor_gap"))
    worst = words.worst_of([each for gaps_left in left for each in gaps_left])
    where = words.where_words(worst, len(leaves))
    answer.length("worst_gap", worst.gap, label="Gap farthest off, " + where, short="worst gap")
    if pair and given.text("route") == "tapered":
        for side, leaf in zip(("left", "right"), leaves):
            answer.length("blank_width_" + side, leaf.blank[0])
            answer.length("blank_height_" + side, leaf.blank[1])


def _routes(answer: Answer, squares: "list[SquareLeaf]", tapereds: "list[TaperedLeaf]") -> None:
    """Set both routes side by side, leaf by leaf."""
    square_left, tapered_left = _all_left(list(squares)), _all_left(list(tapereds))
    for place, (square, tapered) in enumerate(zip(squares, tapereds)):
        both: list[tuple[str, Leaf, list[Left]]] = [
            ("Leaf stays square", square, square_left[place]),
            ("Leaf tapered to fit", tapered, tapered_left[place]),
        ]
        words.add_routes(answer, both, words.leaf_name(place, len(squares)), len(squares))


def _details(answer: Answer, given: Given, leaves: "list[Leaf]") -> None:
    """Add the diagonal of a square leaf, what the bevel takes, and what the jamb has left."""
    thick, depth = given.number("door_thickness"), given.maybe("depth")
    wide, high = words.largest(leaves)
    answer.length("door_diagonal", math.sqrt(wide * wide + high * high))
    answer.length("bevel_off", thick * degrees.tan(given.number("bevel")), fine=True)
    if depth is None:
        return
    if depth <= thick:
        raise Refusal(
            "depth",
            f"A jamb {answer.scale.length(depth)} deep holds no door "
            f"{answer.scale.length(thick)} thick: measure it again, or take a thinner door.",
        )
    answer.length("depth_left", depth - thick)


def _with_its_route(raw: "dict[str, Any]") -> "dict[str, Any]":
    """Return a form of version 1 with its route: the piece was the tapered one."""
    kept = {"route": "tapered"}
    kept.update(raw)
    return kept


TOOL = Tool(
    slug="opening-survey",
    place="site",
    title="Opening survey",
    question="What is this opening really, and what leaf goes in?",
    finds=("rough opening", "plumb", "level", "diagonal", "out of square", "prehung", "slab"),
    inputs=[
        size("width_top", "Width, top", "Between jambs.", quantity="opening width at the top"),
        size("width_bottom", "Width, bottom", quantity="opening width at the bottom"),
        size(
            "height_left",
            "Height, left",
            "From the bottom up to the head; of a door from the finished floor.",
            quantity="opening height at the left",
        ),
        size("height_right", "Height, right", quantity="opening height at the right"),
        size(
            "diagonal_a",
            "Diagonal A",
            "Top left to bottom right.",
            optional=True,
            quantity="opening diagonal, top left to bottom right",
        ),
        size(
            "diagonal_b",
            "Diagonal B",
            "Top right to bottom left.",
            optional=True,
            quantity="opening diagonal, top right to bottom left",
        ),
        gaps.leaves(),
        Choice(
            "hinge_side",
            "Hinge side",
            [("left", "left"), ("right", "right")],
            default="left",
            only_when=("leaves", "1"),
            was=("hinges",),
        ),
        Choice(
            "route",
            "Leaf",
            [("square", "stays square"), ("tapered", "tapered to fit")],
            default="square",
        ),
        size("width_middle", "Width, middle", optional=True),
        size("height_middle", "Height, middle", optional=True),
        reading("plumb_left", "Plumb, left", "where its top is off to the right"),
        reading("plumb_right", "Plumb, right", "where its top is off to the right"),
        Length("plumb_over", "Plumb over", default="48", least=6, help="Length of that level."),
        reading("level_head", "Level, head", "where its right end is high"),
        reading("level_sill", "Level, sill", "where its right end is high"),
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
    + [gaps.door_thickness(), gaps.edge_bevel(default=3)],
    work=work,
    gives=[
        Gives("leaf_width", "length", "Leaf width", short="leaf", quantity="leaf width"),
        Gives("leaf_height", "length", "Leaf height", short="high", quantity="leaf height"),
        Gives("opening_width", "length", "Opening width", quantity="opening width"),
        Gives("opening_height", "length", "Opening height", quantity="opening height"),
        Gives("worst_gap", "length", "Gap farthest off"),
        Gives("blank_width_left", "length", "Left blank, width", sometimes=True),
        Gives("blank_height_left", "length", "Left blank, height", sometimes=True),
        Gives("blank_width_right", "length", "Right blank, width", sometimes=True),
        Gives("blank_height_right", "length", "Right blank, height", sometimes=True),
        Gives("door_diagonal", "length", "Diagonals of the square leaf", short="diagonals"),
        Gives("bevel_off", "length", "The bevel takes off the narrower face", short="bevel"),
        Gives("depth_left", "length", "Jamb behind the leaf", short="behind", sometimes=True),
        Gives(
            "out_of_square",
            "length",
            "Out of square, diagonals differ by",
            short="out of square",
            sometimes=True,
        ),
        Gives("disagree", "length", "Diagonals and sides disagree by", sometimes=True),
        Gives("out_of_plumb_left", "length", "Left side out of plumb", sometimes=True),
        Gives("out_of_plumb_right", "length", "Right side out of plumb", sometimes=True),
        Gives("out_of_level_head", "length", "Head out of level", sometimes=True),
        Gives("out_of_level_sill", "length", "Sill out of level", sometimes=True),
        Gives("out_of_plane", "length", "Out of plane, corner to corner", sometimes=True),
    ],
    upgrades=(_with_its_route,),
    example={
        "width_top": "36 1/8",
        "width_bottom": "36 3/8",
        "height_left": "80 3/4",
        "height_right": "80 5/8",
        "diagonal_a": "88 3/16",
        "diagonal_b": "88 11/16",
        "width_middle": "36 1/16",
        "height_middle": "80 11/16",
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
