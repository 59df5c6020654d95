"""A board wide for the saw: one cut, two cuts that meet, or another way?

The saw travels along the cut, so at an angle it crosses less of the board than at square.
"""

from ...cautions import SAW, warn_if_sharp
from ...tool import Angle, Answer, Choice, Given, Gives, Length, Scale, Tool
from .cut import Crosscut
from .views import first_cut, second_cut
from .words import add_notes, add_verdict


def work(given: Given, scale: Scale) -> Answer:
    """Return how many cuts a board takes, and how two of them are brought to meet."""
    cut = Crosscut(
        given.number("board_width"),
        given.number("capacity"),
        given.number("angle"),
        given.number("fence_error"),
        given.text("flip") == "over",
    )
    answer = Answer(scale)
    add_verdict(answer, cut)
    _figures(answer, cut)
    if cut.number == 2:
        _meeting(answer, cut)
    add_notes(answer, cut)
    answer.draw(first_cut(cut, scale))
    if cut.number == 2:
        answer.draw(second_cut(cut, scale))
    warn_if_sharp(answer, cut.angle)
    return answer


def _figures(answer: Answer, cut: Crosscut) -> None:
    if cut.number:
        answer.count("cuts", cut.number, lead=True)
    else:
        answer.words("other_way", "straightedge and circular saw", lead=True)
    answer.length("effective_capacity", cut.reach, lead=True)
    answer.length("cut_length", cut.length)
    if cut.number == 1:
        answer.length("to_spare", cut.reach - cut.width)
    if cut.number == 0:
        answer.length("short_by", cut.width - 2 * cut.reach)
    if cut.width <= cut.capacity:
        answer.angle("one_cut_to", cut.steepest(1))
    if cut.width <= 2 * cut.capacity:
        answer.angle("two_cuts_to", cut.steepest(2))


def _meeting(answer: Answer, cut: Crosscut) -> None:
    answer.length("first_cut", cut.width / 2, lead=True)
    answer.length("overlap", cut.overlap)
    if cut.over and cut.angle:
        answer.length("stop_shift", cut.shift)
    answer.angle("meeting_error", cut.meeting_error)
    label = "Cut 2 off cut 1's line, at edge B" if cut.over else "Whole cut off its line, at edge B"
    answer.length("off_line", cut.off_line, label=label, fine=True)


TOOL = Tool(
    slug="wide-crosscut",
    place="saw",
    title="Wide crosscut",
    question="Will this board fit the saw; if not, cut, flip and cut again?",
    finds=("shelf", "stair tread", "miter saw", "capacity", "flip"),
    inputs=[
        Length("board_width", "Board width"),
        Length("capacity", "Crosscut capacity", help="The widest board the saw cuts at 0°."),
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
    gives=[
        Gives("cuts", "count", "Cuts", sometimes=True),
        Gives("other_way", "text", "Cut it with", sometimes=True),
        Gives("effective_capacity", "length", "Capacity at this angle", short="Capacity"),
        Gives("cut_length", "length", "Length of the cut"),
        Gives("to_spare", "length", "Capacity to spare", sometimes=True),
        Gives("short_by", "length", "Two cuts fall short by", sometimes=True),
        Gives("one_cut_to", "angle", "One cut does up to", sometimes=True),
        Gives("two_cuts_to", "angle", "Two cuts do up to", sometimes=True),
        Gives("first_cut", "length", "Cut 1 stops past", short="Stop past", sometimes=True),
        Gives("overlap", "length", "Overlap at most", sometimes=True),
        Gives("stop_shift", "length", "Move the stop by", sometimes=True),
        Gives("meeting_error", "angle", "The two cuts part by", sometimes=True),
        Gives("off_line", "length", "Off line at edge B", sometimes=True),
    ],
    example={"board_width": "16", "capacity": "12"},
    cautions=[SAW],
    sources=[
        "Plane geometry: the saw's travel lies along the cut, so what it crosses square to the "
        "fence is its travel times the cosine of the angle.",
        "Rotations in space: rolling a board over mirrors the fence's error, turning it end for "
        "end does not; both mirror a bevel of the blade.",
        "Knifing the line and cutting past the middle: common practice, no source.",
    ],
)
