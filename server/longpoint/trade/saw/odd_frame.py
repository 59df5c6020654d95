"""The opening isn't square: each corner's own miter, each piece's own points."""

import math

from .. import degrees
from ..cautions import SAW, TEST_CUT, warn_if_sharp
from ..frames.directions import FRAME_ENDS
from ..geometry.quadrilateral import CORNER_NAMES, CORNERS, SIDES, Quadrilateral
from ..lengths import show_angle
from ..tool import Answer, Choice, Drawing, Given, Length, Refusal, Scale, Tool, miter


class Frame:
    """Trim of one width along an opening: settings in degrees, long and short points in inches."""

    def __init__(self, given: Given, scale: Scale) -> None:
        sides = [given.number(side) for side in SIDES]
        self.opening = Quadrilateral(sides, given.number("diagonal"), scale, SIDES + ("diagonal",))
        self.width = given.number("trim_width")
        self.inside = given.text("fit") == "inside"
        reveal = 0.0 if self.inside else given.number("reveal")
        self.outer = 0.0 if self.inside else reveal + self.width
        self.inner = self.outer - self.width
        self.saws = [90 - corner / 2 for corner in self.opening.corners]

    def long(self, side: int) -> float:
        """Return a piece's length between its long points."""
        return self.opening.sides[side] + self.outer * self.opening.growth(side)

    def short(self, side: int) -> float:
        """Return a piece's length between its short points."""
        return self.opening.sides[side] + self.inner * self.opening.growth(side)


def work(given: Given, scale: Scale) -> Answer:
    """Return every corner, its setting, and the points of every piece."""
    frame = Frame(given, scale)
    _refuse_swallowed(frame, scale)
    answer = Answer(scale)
    _figures(answer, frame)
    _diagonals(answer, frame, given.maybe("other_diagonal"))
    for side in range(4):
        _piece(answer, frame, side)
    answer.draw(_drawing(frame, scale))
    _notes(answer, frame)
    warn_if_sharp(answer, *frame.saws)
    return answer


def _refuse_swallowed(frame: Frame, scale: Scale) -> None:
    swallowed = [side for side in range(4) if frame.short(side) <= 0]
    if not swallowed:
        return
    opening = frame.opening
    most = min([opening.sides[side] / opening.growth(side) for side in range(4)])
    raise Refusal(
        "trim_width",
        f"Trim {scale.length(frame.width)} wide leaves no opening: the short points of the "
        f"{SIDES[swallowed[0]]} piece pass each other. Use trim narrower than "
        f"{scale.length(most)}.",
    )


def _figures(answer: Answer, frame: Frame) -> None:
    first, second = ("long", "short") if frame.inside else ("short", "long")
    for side, name in enumerate(SIDES):
        for point in (first, second):
            _point(answer, frame, side, point, lead=name == "top" and point == first)
        if side == 0:
            answer.angle("saw_tl", frame.saws[0], label="Saw, top left", lead=True)
    for saw, corner, name in zip(frame.saws[1:], CORNERS[1:], CORNER_NAMES[1:]):
        answer.angle("saw_" + corner, saw, label="Saw, " + name)
    for angle, corner, name in zip(frame.opening.corners, CORNERS, CORNER_NAMES):
        answer.angle("corner_" + corner, angle, label="Corner, " + name)


def _point(answer: Answer, frame: Frame, side: int, point: str, *, lead: bool) -> None:
    name = SIDES[side]
    inches = frame.long(side) if point == "long" else frame.short(side)
    label = f"{name[0].upper()}{name[1:]}, {point} point to {point} point"
    answer.length(f"{name}_{point}", inches, label=label, lead=lead)


def _diagonals(answer: Answer, frame: Frame, measured: "float | None") -> None:
    """Say how a measured second diagonal agrees with the one that the sides give."""
    worked = frame.opening.other_diagonal()
    answer.length("other_worked", worked, label="Top right to bottom left, worked out")
    if measured is None:
        answer.note("Measure the other diagonal too: it shows whether one of the tapes was off.")
        return
    off = measured - worked
    answer.length("disagree", off, label="Measured diagonal is longer by", fine=True)
    if answer.scale.tick(off) == 0:
        answer.note("The two diagonals agree.")
        return
    text = answer.scale.finer().length(abs(off))
    answer.note(
        f"The diagonals disagree: the other one measures {text} {'more' if off > 0 else 'less'} "
        "than four sides and the first diagonal allow. Measure all again, or look whether the "
        "opening is out of flat."
    )


def _piece(answer: Answer, frame: Frame, side: int) -> None:
    name = SIDES[side]
    ends = [miter(frame.saws[at], CORNER_NAMES[at]) for at in (side, (side + 1) % 4)]
    answer.piece(
        str(side + 1),
        name[0].upper() + name[1:],
        frame.long(side),
        (ends[0], ends[1]),
        short_point=frame.short(side),
        width=frame.width,
    )


def _drawing(frame: Frame, scale: Scale) -> Drawing:
    corners = ", ".join([show_angle(corner) for corner in frame.opening.corners])
    view = Drawing("The frame from the front", f"Corners clockwise from the top left: {corners}.")
    outer, inner = frame.opening.moved(frame.outer), frame.opening.moved(frame.inner)
    view.area("wall" if frame.inside else "clearance", frame.opening.points())
    for side in range(4):
        after = (side + 1) % 4
        around = [outer[side], outer[after], inner[after], inner[side]]
        view.area("stock", around)
        middle = [sum([point[axis] for point in around]) / 4 for axis in (0, 1)]
        view.tag((middle[0], middle[1]), str(side + 1))
        if frame.inside:
            view.dimension(outer[side], outer[after], scale.length(frame.long(side)))
        else:
            view.dimension(inner[side], inner[after], scale.length(frame.short(side)), -1)
    return view


def _notes(answer: Answer, frame: Frame) -> None:
    answer.note(
        "Each corner has its own setting, the same for both pieces that meet there. Number the "
        "pieces on the back as drawn; turned round or swapped, none of them fits."
    )
    answer.note(FRAME_ENDS)
    top, right = frame.opening.sides[0], frame.opening.sides[1]
    square_area = top * right * degrees.sin(frame.opening.corners[1])
    turn = math.degrees(frame.opening.diagonal / square_area) / 16
    answer.note(
        f"A diagonal taken 1/16 wrong turns the top right corner by {show_angle(turn)}. The "
        "drawing shows the top level; measure in the plane that the trim lies in."
    )
    if not frame.inside:
        answer.note("Mark the reveal on the jamb first and hold the short points to it.")


def _side(name: str) -> Length:
    return Length(name, name[0].upper() + name[1:])


TOOL = Tool(
    slug="odd-frame",
    place="saw",
    title="Out-of-square frame",
    question="The opening isn't square: how is trim mitered to it anyway?",
    finds=("crooked", "racked", "casing", "picture frame"),
    inputs=[
        Choice(
            "fit",
            "Fits",
            [("inside", "inside a recess"), ("around", "around an opening")],
            default="inside",
        ),
        _side("top"),
        _side("right"),
        _side("bottom"),
        _side("left"),
        Length("diagonal", "Diagonal", help="From the top left to the bottom right corner."),
        Length("trim_width", "Trim width"),
        Length(
            "reveal",
            "Reveal",
            default="3/16",
            least=0,
            help="How far the trim's inner edge stands back from the opening.",
            only_when=("fit", "around"),
        ),
        Length(
            "other_diagonal",
            "Other diagonal",
            optional=True,
            help="From the top right to the bottom left corner: it checks the first.",
        ),
    ],
    work=work,
    example={
        "top": "30",
        "right": "40 1/4",
        "bottom": "31 1/2",
        "left": "39 1/2",
        "diagonal": "50 3/4",
        "trim_width": "3 1/2",
    },
    cautions=[SAW, TEST_CUT],
    sources=[
        "Plane geometry: the diagonal cuts the opening into two triangles, the law of cosines "
        "gives their angles, and trim of one width meets on the line that halves each corner.",
        "Reveal of about 3/16: NAVEDTRA 14044, Builder, interior trim.",
        "Number the pieces, check with the second diagonal: common practice, no source.",
    ],
)
