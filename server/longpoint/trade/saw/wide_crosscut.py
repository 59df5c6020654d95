"""A board wide for the saw: one cut, two cuts that meet, or another way?

The saw travels along the cut, so at an angle it crosses less of the board than at square.
"""

from .. import degrees
from ..cautions import SAW, warn_if_sharp
from ..lengths import show_angle
from ..tool import Angle, Answer, Choice, Drawing, Given, Length, Scale, Tool

SCANT = 0.25
_HAIR = 1e-9  # Inches: float noise must not ask for a second cut where the first just does.


class Cut:
    """A board across the saw: width, capacity at square and at the angle, in inches and degrees."""

    def __init__(self, given: Given) -> None:
        self.width = given.number("board_width")
        self.capacity = given.number("capacity")
        self.angle = given.number("angle")
        self.error = given.number("fence_error")
        self.over = given.text("flip") == "over"
        self.reach = self.capacity * degrees.cos(self.angle)

    @property
    def number(self) -> int:
        """Cuts needed: 1, 2, or 0 where two don't meet."""
        for cuts in (1, 2):
            if self.width <= cuts * self.reach + _HAIR:
                return cuts
        return 0

    @property
    def length(self) -> float:
        """Length of the whole cut line."""
        return self.width / degrees.cos(self.angle)

    @property
    def shift(self) -> float:
        """How much farther along the line meets the one edge than the other."""
        return self.width * degrees.tan(self.angle)

    @property
    def meeting_error(self) -> float:
        """Angle between the two cuts, in degrees: none where board and blade turn together."""
        return 2 * self.error if self.over else 0.0

    @property
    def off_line(self) -> float:
        """How far a straightedge on the first half stands off the second at its edge."""
        return self.length / 2 * degrees.tan(self.meeting_error)


def work(given: Given, scale: Scale) -> Answer:
    """Return how many cuts a board takes, and how two of them are brought to meet."""
    cut = Cut(given)
    answer = Answer(scale)
    _figures(answer, cut)
    if cut.number == 2:
        _meeting(answer, cut)
        _flip_notes(answer, cut)
    elif cut.number == 1:
        answer.note("One cut does it: the board's one edge to the fence, all the way through.")
    else:
        _other_ways(answer, cut)
    answer.draw(_first_cut(cut, scale))
    if cut.number == 2:
        answer.draw(_second_cut(cut, scale))
    warn_if_sharp(answer, cut.angle)
    return answer


def _figures(answer: Answer, cut: Cut) -> None:
    if cut.number:
        answer.count("cuts", cut.number, label="Cuts", lead=True)
    else:
        answer.words("cuts", "another way", label="Cuts", lead=True)
    answer.length("effective_capacity", cut.reach, label="Saw's reach at this angle", lead=True)
    answer.length("cut_length", cut.length, label="Length of the cut")
    if cut.number == 1:
        answer.length("to_spare", cut.reach - cut.width, label="Reach to spare")
    if cut.number == 0:
        answer.length("short_by", cut.width - 2 * cut.reach, label="Two cuts fall short by")
    if cut.width <= cut.capacity:
        answer.angle("one_cut_to", _steepest(cut, 1), label="One cut does up to")
    if cut.width <= 2 * cut.capacity:
        answer.angle("two_cuts_to", _steepest(cut, 2), label="Two cuts do up to")


def _steepest(cut: Cut, cuts: int) -> float:
    """Return the angle at which so many cuts just cross the board."""
    return degrees.acos(cut.width / (cuts * cut.capacity))


def _meeting(answer: Answer, cut: Cut) -> None:
    answer.length("first_cut", cut.width / 2, label="Cut 1 stops past")
    overlap = 2 * cut.reach - cut.width
    answer.length("overlap", overlap, label="Overlap at most")
    if cut.over and cut.angle:
        answer.length("stop_shift", cut.shift, label="Move the stop by")
    answer.angle("meeting_error", cut.meeting_error, label="The two cuts part by")
    answer.length("off_line", cut.off_line, label="Off line at the far edge", fine=True)
    if overlap < SCANT:
        answer.note(
            f"The two cuts overlap by {answer.scale.finer().length(max(overlap, 0.0))} at most: "
            "try both reaches in scrap before you count on their meeting."
        )


def _flip_notes(answer: Answer, cut: Cut) -> None:
    answer.note(
        "Call the edges A and B and the faces 1 and 2. Knife the line round all four, the square "
        "held to edge A only. A and B must be parallel: any taper turns the second cut as much."
    )
    answer.note("Cut 1: edge A to the fence, face 1 up; cut just past the middle and stop.")
    if cut.over:
        _roll_notes(answer, cut)
    else:
        _turn_notes(answer)
    answer.note(
        "A blade out of square to the table shows twice over at the meeting too, whichever way "
        "the board is flipped."
    )


def _roll_notes(answer: Answer, cut: Cut) -> None:
    saw = "leave saw and stop as they are"
    if cut.angle:
        saw = (
            f"swing the saw to {show_angle(cut.angle)} on the other side, and move the stop by "
            f"{answer.scale.length(cut.shift)}, the way the line leans"
        )
    answer.note(
        "Cut 2: roll the board over on its length, face 2 up, edge B to the fence, the same end "
        f"against the stop; {saw}. Cut until the kerfs meet."
    )
    answer.note(
        f"Rolled over, the fence's error counts twice: {show_angle(cut.error)} off, and the two "
        f"cuts meet {show_angle(cut.meeting_error)} out of line. Half of what you see there is "
        "what to turn the fence by."
    )


def _turn_notes(answer: Answer) -> None:
    answer.note(
        "Cut 2: turn the board end for end, face 1 still up, edge B to the fence; leave the saw "
        "at its setting. What you keep now lies on the other side of the blade. No stop serves: "
        "with the saw off, lower the blade into the first kerf, hold the board there and clamp."
    )
    answer.note(
        "Turned end for end, the two cuts stay parallel: the fence's error doesn't show at the "
        "meeting, but the whole cut is off by it. Check it against a square."
    )


def _other_ways(answer: Answer, cut: Cut) -> None:
    reach = answer.scale.length(2 * cut.reach)
    answer.note(
        f"Two cuts reach {reach} at this angle: not across. Clamp a straightedge to the knifed "
        "line and run a circular saw along it, carry the board past the table saw on a sled, or "
        "saw by hand a hair off the line and plane to it."
    )


def _first_cut(cut: Cut, scale: Scale) -> Drawing:
    reach = scale.length(cut.reach)
    view = Drawing(
        "Cut 1 from above, the fence at the top",
        f"A board {scale.length(cut.width)} wide; the saw reaches {reach} from the fence.",
    )
    _board(view, cut, cut.shift, True)
    reached = _on_line(cut, cut.shift, min(1.0, cut.reach / cut.width))
    if cut.number == 2:
        _lines(view, cut, cut.shift, True)
    else:
        view.line("cut", (0, 0), reached)
    left, right = _ends(cut)
    view.line("clearance", (reached[0], cut.reach), (right, cut.reach))
    view.dimension((left, cut.width), (left, 0), scale.length(cut.width))
    view.dimension((right, 0), (right, cut.reach), reach)
    return view


def _second_cut(cut: Cut, scale: Scale) -> Drawing:
    """Draw the board after the flip: rolled over the line leans the other way."""
    how = "rolled over, face 2 up" if cut.over else "turned end for end, face 1 up"
    view = Drawing(
        "Cut 2: " + how,
        f"Edge B to the fence; the cut meets the first in the middle of {scale.length(cut.width)}.",
    )
    lean = -cut.shift if cut.over else cut.shift
    _board(view, cut, lean, cut.over)
    _lines(view, cut, lean, False)
    return view


def _ends(cut: Cut) -> "tuple[float, float]":
    """Return left and right end of the piece of board that is drawn about the cut."""
    side = cut.width * 0.6 + cut.shift
    return -side, side


def _on_line(cut: Cut, lean: float, share: float) -> "tuple[float, float]":
    """Return the point of the cut line at a share of the board's width from the fence."""
    return lean * share, cut.width * share


def _board(view: Drawing, cut: Cut, lean: float, keep_left: bool) -> None:
    left, right = _ends(cut)
    start, end = (0.0, 0.0), _on_line(cut, lean, 1.0)
    roles = ("stock", "waste") if keep_left else ("waste", "stock")
    view.area(roles[0], [(left, 0), start, end, (left, cut.width)])
    view.area(roles[1], [(right, 0), start, end, (right, cut.width)])
    view.line("wall", (left * 1.1, 0), (right * 1.1, 0))


def _lines(view: Drawing, cut: Cut, lean: float, is_first: bool) -> None:
    """Draw the half being cut, the other half, and the names of the edges."""
    left, _ = _ends(cut)
    half = _on_line(cut, lean, 0.5)
    near, far = ("1", "2") if is_first else ("2", "1")
    view.line("cut", (0, 0), half)
    view.line("clearance" if is_first else "cut", half, _on_line(cut, lean, 1.0))
    view.tag(_on_line(cut, lean, 0.25), near).tag(_on_line(cut, lean, 0.75), far)
    edges = ("edge A", "edge B") if is_first else ("edge B", "edge A")
    view.text((left * 0.6, cut.width * 0.1), edges[0])
    view.text((left * 0.6, cut.width * 0.9), edges[1])


TOOL = Tool(
    slug="wide-crosscut",
    place="saw",
    title="Wide crosscut",
    question="Will this board fit the saw; if not, cut, flip and cut again?",
    finds=("shelf", "stair tread", "miter saw"),
    inputs=[
        Length("board_width", "Board width"),
        Length("capacity", "Saw's reach at square", help="The widest board it cuts at 0°."),
        Angle("angle", "Angle", default=0, least=0, most=75, help="Off a square cut."),
        Choice(
            "flip",
            "Flip for cut 2",
            [("over", "roll over, same end"), ("round", "end for end, same face")],
            default="over",
        ),
        Angle(
            "fence_error",
            "Fence out of true by",
            default=0.1,
            least=0,
            most=5,
            help="To see what it does where two cuts meet; 0.1° is about 1/32 in 18 inches.",
        ),
    ],
    work=work,
    example={"board_width": "16", "capacity": "12"},
    cautions=[SAW],
    sources=[
        "Plane geometry: the saw's travel lies along the cut, so what it crosses square to the "
        "fence is its travel times the cosine of the angle.",
        "Rotations in space: rolling a board over mirrors the fence's error, turning it end for "
        "end does not; both mirror the tilt of the blade.",
        "Knifing the line and cutting past the middle: common practice, no source.",
    ],
)
