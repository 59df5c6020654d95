"""A jamb for this door: how long are legs and head, and where does the stop go?"""

from ...cautions import FIRE_DOOR, SAW
from ...door import gaps
from ...tool import Answer, Choice, Given, Gives, Length, Refusal, Scale, Tool
from .frame import Hung, Jamb, Latch, Stock, Stop
from .pieces import add_marks, add_pieces
from .views import front_view, section_view
from .words import SNUG, notes, verdict_words

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


def work(given: Given, scale: Scale) -> Answer:
    """Return legs, head, stops, the lines to mark, and what the rough opening must hold."""
    jamb = _jamb(given, scale)
    height = given.maybe("latch_height")
    latch = None if height is None else Latch(jamb, height, scale)
    rough = given.maybe("rough_width")
    shim = None if rough is None else (rough - jamb.outside[0]) / 2
    answer = Answer(scale)
    answer.verdict(*verdict_words(jamb, shim, scale))
    _figures(answer, jamb, latch)
    _rough(answer, given, jamb)
    add_pieces(answer, jamb)
    add_marks(answer, jamb, latch)
    answer.draw(lambda: front_view(jamb, latch, scale))
    answer.draw(lambda: section_view(jamb, latch, scale))
    for words in notes(jamb, scale):
        answer.note(words)
    if latch is not None:
        answer.note(
            "The strike's height is the latch's: mark it on the leg of the strike side alone, and "
            "try it with the hung leaf before you mortise."
        )
    return answer


def _jamb(given: Given, scale: Scale) -> Jamb:
    leaves = int(given.text("leaves"))
    hung = Hung(
        leaves,
        given.number("leaf_width"),
        given.number("leaf_height"),
        given.number("door_thickness"),
        given.number("side_gap"),
        given.number("head_gap"),
        given.number("floor_gap"),
        given.maybe("meeting_gap") or 0.0,
    )
    stock = Stock(
        given.number("jamb_thickness"),
        given.number("jamb_depth"),
        given.text("head_joint"),
        given.maybe("housing_depth") or 0.0,
        given.maybe("horn") or 0.0,
    )
    stop = Stop(
        given.number("stop_width"),
        given.number("stop_thickness"),
        given.number("stop_gap"),
        given.number("setback"),
        given.text("stop_joint") == "miter",
    )
    below, falls = given.number("floor_below"), given.number("floor_falls")
    return Jamb(hung, stock, stop, (below + max(0.0, -falls), below + max(0.0, falls)), scale)


def _figures(answer: Answer, jamb: Jamb, latch: "Latch | None") -> None:
    if jamb.is_level:
        answer.length("leg_length", jamb.legs[0], lead=True)
    else:
        answer.length("leg_left", jamb.legs[0], lead=True)
        answer.length("leg_right", jamb.legs[1])
    answer.length("head_length", jamb.head, lead=True)
    answer.length("stop_line", jamb.line)
    answer.length("opening_width", jamb.wide)
    answer.length("opening_height", jamb.high)
    if latch is not None:
        answer.length("strike_down", latch.down_leg)
        answer.length("strike_in", latch.in_from_edge)
        answer.length("latch_up", latch.up_leaf)


def _rough(answer: Answer, given: Given, jamb: Jamb) -> None:
    """Add what the rough opening must measure, and what one that is given leaves for shims."""
    shim = given.number("shim")
    for name, outside, sides in (("width", jamb.outside[0], 2), ("height", jamb.outside[1], 1)):
        rough = given.maybe("rough_" + name)
        answer.length("rough_needed_" + name, outside + sides * shim)
        if rough is None:
            continue
        _check_rough(name, rough, outside, answer.scale)
        answer.length("shim_" + name, (rough - outside) / sides)
        if name == "width" and rough - outside < 2 * SNUG:
            answer.note(
                f"Less than {answer.scale.length(SNUG)} a side is left for shims: check the rough "
                "opening for plumb over its whole height before you cut."
            )


def _check_rough(name: str, rough: float, outside: float, scale: Scale) -> None:
    if rough < outside - 1e-9:
        raise Refusal(
            "rough_" + name,
            f"The frame is {scale.length(outside)} over all, a rough {name} of "
            f"{scale.length(rough)} doesn't take it: use a smaller door or thinner jambs, or open "
            f"it up by {scale.length(outside - rough)}.",
        )


def with_the_usual_jamb(raw: "dict[str, Any]") -> "dict[str, Any]":
    """Say what version 1 took for granted: door and jamb of the usual size, the head housed.

    >>> with_the_usual_jamb({"jamb_depth": "5"})["jamb_depth"]
    '5'
    """
    kept = dict(raw)
    for name, usual in (("jamb_depth", '4 5/8"'), ("door_thickness", '1 3/8"')):
        kept[name] = raw.get(name) or usual
    kept["head_joint"] = raw.get("head_joint") or "housed"
    return kept


TOOL = Tool(
    slug="jamb-and-stop",
    place="site",
    coated="front",
    title="Jamb and stop",
    question="A jamb for this door: how long are legs and head, and where does the stop go?",
    finds=("door frame", "rough opening", "door stop", "prehung", "double door", "strike"),
    inputs=[
        gaps.leaf_width("door_width", help="Of one leaf, at its wider face."),
        gaps.leaf_height("door_height"),
        gaps.door_thickness(default=None),
        gaps.leaves(),
        Length("jamb_depth", "Jamb depth", help="Wall with its drywall on both sides."),
        Choice(
            "head_joint",
            "Head joint",
            [
                ("housed", "let into a housing"),
                ("between", "butted between the legs"),
                ("over", "butted on the legs"),
            ],
        ),
        Length(
            "housing_depth",
            "Housing depth",
            default="3/8",
            only_when=("head_joint", "housed"),
        ),
        Length(
            "horn",
            "Horns",
            default=0,
            least=0,
            most=24,
            help="How far the legs run on above the head.",
            only_when=("head_joint", "housed", "between"),
        ),
        gaps.jamb_thickness(),
    ]
    + gaps.leaf_gaps()
    + [
        gaps.latch_height(
            optional=True,
            default_text="not marked",
            help="From the finished floor to the latch's center.",
            only_when=("leaves", "1"),
        ),
        gaps.gap(
            "floor_below", "Floor to come", "0", "Where the legs stand lower than the finish."
        ),
        Length(
            "floor_falls",
            "Floor falls",
            default="0",
            least=-4,
            most=4,
            help="Between the legs: + to the right, - to the left.",
        ),
        Length("stop_width", "Stop width", default="1 3/8", help="Along the jamb's depth."),
        Length("stop_thickness", "Stop thickness", default="3/8"),
        gaps.gap("stop_gap", "Gap at the stop", "1/16", "Between the closed leaf and the stop."),
        gaps.gap("setback", "Setback", "0", "Of the leaf's hinge face from the jamb's edge."),
        Choice(
            "stop_joint",
            "Stop joint",
            [("square", "butted under the head's"), ("miter", "mitered")],
            default="square",
        ),
        Length("rough_width", "Rough width", optional=True, default_text="not checked"),
        Length(
            "rough_height",
            "Rough height",
            optional=True,
            default_text="not checked",
            help="From where the legs stand.",
        ),
        gaps.gap("shim", "Room for shims", "3/8", "Each side, and above the head."),
    ],
    work=work,
    gives=[
        Gives("leg_length", "length", "Legs", sometimes=True),
        Gives("leg_left", "length", "Left leg", sometimes=True),
        Gives("leg_right", "length", "Right leg", sometimes=True),
        Gives("head_length", "length", "Head"),
        Gives("stop_line", "length", "Stop line, from the edge", short="stop line"),
        Gives("opening_width", "length", "Opening width", quantity="opening width"),
        Gives("opening_height", "length", "Opening height", quantity="opening height"),
        Gives(
            "strike_down",
            "length",
            "Strike center, down the leg",
            short="strike down",
            sometimes=True,
        ),
        Gives(
            "strike_in",
            "length",
            "Strike center, in from the jamb's edge",
            short="strike in",
            sometimes=True,
        ),
        Gives("latch_up", "length", "Latch center, up the leaf", short="latch up", sometimes=True),
        Gives("rough_needed_width", "length", "Rough width wanted", short="rough width"),
        Gives("rough_needed_height", "length", "Rough height wanted", short="rough height"),
        Gives("shim_width", "length", "Shims, each side", short="shims", sometimes=True),
        Gives("shim_height", "length", "Left above the frame", short="above", sometimes=True),
    ],
    upgrades=(with_the_usual_jamb,),
    example={
        "leaf_width": "32",
        "leaf_height": "80",
        "door_thickness": "1 3/8",
        "jamb_depth": "4 5/8",
        "head_joint": "housed",
        "horn": "3/4",
        "rough_width": "34 1/2",
        "rough_height": "83",
    },
    cautions=[SAW, FIRE_DOOR],
    sources=[
        "Gaps of 1/8 at head and jambs, 1/16 per leaf where a pair meets, 1/2 above the floor: "
        "Architectural Woodwork Standards, 1st edition, appendix B, typical prefit.",
        "Rough opening: the door's height and 3, its width and 2 1/2; jamb 4 5/8 deep with 1/2 "
        "board on both sides; knob 36 to 38 above the floor: Navy Builder text on interior doors.",
        "Housing 3/8 deep: Carpenter's Guide, inside finish, 1910s.",
        "Stop 1/16 off the leaf, 1/8 a side for shims at least, horns, a strike in line with the "
        "middle of the door's thickness: common practice, no source. Lengths are sums.",
    ],
)
