"""A jamb for this door: how long are legs and head, and where does the stop go?"""

from ..cautions import FIRE_DOOR, SAW
from ..door import gaps
from ..tool import Answer, Choice, End, Given, Length, Refusal, Scale, Tool, miter, square
from .jamb_frame import Jamb
from .jamb_views import front_view, section_view

SNUG = 1 / 8  # Inches of shim; with less a frame can't be set plumb in a leaning rough opening.


def work(given: Given, scale: Scale) -> Answer:
    """Return legs, head, stops, the lines to mark, and what the rough opening must hold."""
    jamb = Jamb(given, scale)
    answer = Answer(scale)
    legs = [jamb.top + foot for foot in jamb.feet]
    if legs[0] == legs[1]:
        answer.length("leg_length", legs[0], label="Legs", lead=True)
    else:
        answer.length("leg_left", legs[0], label="Left leg", lead=True)
        answer.length("leg_right", legs[1], label="Right leg")
    answer.length("head_length", jamb.head, label="Head", lead=True)
    answer.length("stop_line", jamb.line, label="Stop line, from the edge")
    answer.length("opening_width", jamb.wide, label="Opening between the legs")
    answer.length("opening_height", jamb.high, label="Opening, floor to head")
    _rough(answer, given, jamb)
    _pieces(answer, given, jamb, legs)
    _marks(answer, jamb)
    answer.draw(front_view(jamb, scale))
    answer.draw(section_view(jamb, scale))
    _notes(answer, given, jamb)
    return answer


def _rough(answer: Answer, given: Given, jamb: Jamb) -> None:
    """Add what the rough opening must measure, and what one that is given leaves for shims."""
    shim = given.number("shim")
    for name, outside, sides in (
        ("width", jamb.outside[0], 2),
        ("height", jamb.outside[1], 1),
    ):
        rough = given.maybe("rough_" + name)
        needed = outside + sides * shim
        answer.length("rough_needed_" + name, needed, label=f"Rough {name} wanted")
        if rough is None:
            continue
        _check_rough(answer, name, rough, outside)
        where = "Shims, each side" if name == "width" else "Left above the frame"
        answer.length("shim_" + name, (rough - outside) / sides, label=where)
        if name == "width" and rough - outside < 2 * SNUG:
            answer.note(
                "Less than 1/8 a side is left for shims: check the rough opening for plumb over "
                "its whole height before you cut."
            )


def _check_rough(answer: Answer, name: str, rough: float, outside: float) -> None:
    if rough < outside - 1e-9:
        length = answer.scale.length
        raise Refusal(
            "rough_" + name,
            f"The frame is {length(outside)} over all, a rough {name} of {length(rough)} doesn't "
            f"take it: use a smaller door or thinner jambs, or open it up by "
            f"{length(outside - rough)}.",
        )


def _pieces(answer: Answer, given: Given, jamb: Jamb, legs: "list[float]") -> None:
    """Add the frame's pieces, then the stops: head first, the legs' stops up against it."""
    into = {"housed": "in its housing", "between": "against the leg", "over": "over the leg"}
    end = square(into[jamb.joint])
    size = jamb.depth, jamb.thick
    answer.piece("1", "Head", jamb.head, (end, end), width=size[0], thickness=size[1])
    _upright(answer, "leg", legs, square(), size)
    mitered = given.text("stop_joint") == "miter"
    end, size = miter(0, bevel=45) if mitered else square(), (jamb.far - jamb.line, jamb.stop)
    short = jamb.wide - 2 * jamb.stop if mitered else None
    answer.piece(
        str(jamb.stop_tag),
        "Head stop",
        jamb.wide,
        (end, end),
        short_point=short,
        width=size[0],
        thickness=size[1],
    )
    up = jamb.high if mitered else jamb.high - jamb.stop
    stands = [up + foot - min(jamb.feet) for foot in jamb.feet]
    _upright(answer, "leg stop", stands, end, size, jamb.stop if mitered else None)


def _upright(
    answer: Answer,
    name: str,
    lengths: "list[float]",
    top: End,
    size: "tuple[float, float]",
    drop: "float | None" = None,
) -> None:
    """Add the left and the right piece, or both as one; `drop` is from long to short point."""
    alike = lengths[0] == lengths[1]
    names = [name[0].upper() + name[1:]] if alike else ["Left " + name, "Right " + name]
    for label, length in zip(names, lengths):
        answer.piece(
            str(len(answer.pieces) + 1),
            label,
            length,
            (square("foot"), top),
            short_point=None if drop is None else length - drop,
            width=size[0],
            thickness=size[1],
            count=3 - len(names),
        )


def _marks(answer: Answer, jamb: Jamb) -> None:
    if jamb.joint != "over":
        start = "legs' upper end"
        answer.mark("1", "Head, upper face", start, jamb.horn)
        answer.mark("1", "Head, lower face", start, jamb.horn + jamb.thick)
    tag = str(jamb.stop_tag)
    start = "jamb's edge, hinge face"
    answer.mark(tag, "Stop, edge toward the door", start, jamb.line)
    answer.mark(tag, "Stop, far edge", start, jamb.far)


def _notes(answer: Answer, given: Given, jamb: Jamb) -> None:
    if jamb.joint == "housed":
        depth = answer.scale.length(jamb.housing)
        answer.note(
            f"House the legs {depth} deep between the two marks, as wide as the head really is; "
            "lay both legs side by side and mark them from their upper ends at once."
        )
    if given.number("floor_falls"):
        answer.note(
            "The floor falls: the legs differ, so the head is level. Floor gap and opening "
            "height are those at the higher side."
        )
    answer.note(
        "Set the stop on the hinge side to its line, so that the door does not bind on it; on "
        "the strike side and at the head hold it to the latched door, then nail."
    )
    if given.text("stop_joint") == "square":
        answer.note("A molded stop is coped or mitered at the head: leave its legs long for that.")


TOOL = Tool(
    slug="jamb-and-stop",
    place="site",
    title="Jamb and stop",
    question="A jamb for this door: how long are legs and head, and where does the stop go?",
    finds=("door frame", "rough opening", "door stop"),
    inputs=[
        Length("door_width", "Door width", help="Of one leaf, at its wider face."),
        Length("door_height", "Door height"),
        Length("door_thickness", "Door thickness", default="1 3/8"),
        gaps.leaves(),
        Choice(
            "head_joint",
            "Head joint",
            [
                ("housed", "let into a housing"),
                ("between", "butted between the legs"),
                ("over", "butted on the legs"),
            ],
            default="housed",
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
        Length("jamb_thickness", "Jamb thickness", default="3/4"),
        Length("jamb_depth", "Jamb depth", default="4 5/8", help="Wall with its board on both."),
    ]
    + gaps.leaf_gaps()
    + [
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
        gaps.gap("stop_gap", "Gap at the stop", "1/16", "Between the closed door and the stop."),
        gaps.gap("setback", "Setback", "0", "Of the door's hinge face from the jamb's edge."),
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
    example={
        "door_width": "32",
        "door_height": "80",
        "horn": "3/4",
        "rough_width": "34 1/2",
        "rough_height": "83",
    },
    cautions=[SAW, FIRE_DOOR],
    sources=[
        "Gaps of 1/8 at head and jambs, 1/16 per leaf where a pair meets, 1/2 above the floor: "
        "Architectural Woodwork Standards, 1st edition, appendix B, typical prefit.",
        "Rough opening: the door's height and 3, its width and 2 1/2; jamb 4 5/8 deep with 1/2 "
        "board on both sides: Navy Builder text on interior doors.",
        "Housing 3/8 deep: Carpenter's Guide, inside finish, 1910s.",
        "Stop 1/16 off the door, 1/8 a side for shims at least, horns: common practice, no "
        "source. Lengths are sums.",
    ],
)
