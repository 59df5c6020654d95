"""Trim around an opening or inside a recess: how long is each piece?

All corners are square; where they are not, each needs its own setting.
"""

from ..cautions import SAW, TEST_CUT, warn_if_sharp
from ..directions import FRAME_ENDS
from ..geometry.miters import settings
from ..lengths import show_angle
from ..tool import (
    Answer,
    Choice,
    Drawing,
    End,
    Given,
    Length,
    Refusal,
    Scale,
    Tool,
    miter,
    square,
)


class Frame:
    """The frame's sizes in inches: outside, the widths of its pieces, inside.

    `bottom` is 0 and `closed` False for a frame of three sides that stands on its feet.
    """

    def __init__(self, given: Given) -> None:
        self.closed = given.text("sides") == "4"
        self.inside = given.text("fit") == "inside"
        self.side = given.number("side_width")
        self.top = given.maybe("top_width") or self.side
        self.bottom = (given.maybe("bottom_width") or self.side) if self.closed else 0.0
        width, height = given.number("width"), given.number("height")
        if self.inside:
            play = given.number("play")
            self.width, self.height = width - play, height - play
        else:
            reveal = given.number("reveal")
            self.width = width + 2 * reveal + 2 * self.side
            feet = reveal + self.bottom if self.closed else 0.0
            self.height = height + reveal + self.top + feet

    @property
    def clear_width(self) -> float:
        """Width between the inner edges."""
        return self.width - 2 * self.side

    @property
    def clear_height(self) -> float:
        """Height between the inner edges, or from the feet to the top's inner edge."""
        return self.height - self.top - self.bottom


def work(given: Given, scale: Scale) -> Answer:
    """Return lengths, settings and pieces of a frame with square corners."""
    frame = Frame(given)
    _refuse_swallowed(given, frame, scale)
    answer = Answer(scale)
    _figures(answer, frame)
    _pieces(answer, frame)
    answer.draw(_drawing(given, frame, scale))
    _notes(answer, frame)
    warn_if_sharp(answer, *_all_settings(frame))
    return answer


def _refuse_swallowed(given: Given, frame: Frame, scale: Scale) -> None:
    if not frame.inside:
        return
    if frame.width <= 0 or frame.height <= 0:
        raise Refusal("play", "The play takes up the whole recess: use less.")
    if frame.clear_width <= 0:
        raise Refusal(
            "side_width",
            f"Two pieces {scale.length(frame.side)} wide leave no opening in a recess "
            f"{scale.length(given.number('width'))} wide. Use trim narrower than "
            f"{scale.finer().length(frame.width / 2)}, or measure the recess again.",
        )
    if frame.clear_height <= 0:
        field = "side_width" if given.maybe("top_width") is None else "top_width"
        raise Refusal(
            field,
            f"Trim {scale.length(frame.top + frame.bottom)} wide in all leaves no opening in a "
            f"recess {scale.length(given.number('height'))} high: use narrower trim.",
        )


def _figures(answer: Answer, frame: Frame) -> None:
    long_leads = frame.inside
    top, side = settings(frame.top, frame.side)
    answer.length("top_long", frame.width, label="Top, long point to long point", lead=long_leads)
    answer.length(
        "top_short", frame.clear_width, label="Top, short point to short point", lead=not long_leads
    )
    answer.angle("saw_top", top, label="Saw, top piece", lead=True)
    answer.angle("saw_side", side, label="Saw, sides at the top")
    ends = "long point to long point" if frame.closed else "long point to foot"
    answer.length("side_long", frame.height, label="Sides, " + ends)
    answer.length("side_short", frame.clear_height, label="Sides, " + ends.replace("long", "short"))
    if not frame.closed:
        return
    answer.length("bottom_long", frame.width, label="Bottom, long point to long point")
    answer.length("bottom_short", frame.clear_width, label="Bottom, short point to short point")
    if frame.bottom != frame.top:
        bottom, side = settings(frame.bottom, frame.side)
        answer.angle("saw_bottom", bottom, label="Saw, bottom piece")
        answer.angle("saw_side_bottom", side, label="Saw, sides at the bottom")


def _all_settings(frame: Frame) -> "tuple[float, ...]":
    top = settings(frame.top, frame.side)
    return top + settings(frame.bottom, frame.side) if frame.closed else top


def _pieces(answer: Answer, frame: Frame) -> None:
    top, side = settings(frame.top, frame.side)
    across = (frame.width, frame.clear_width)
    up = (frame.height, frame.clear_height)
    _piece(answer, "1", "Top", across, frame.top, (miter(top), miter(top)))
    if not frame.closed:
        _piece(answer, "2", "Right side", up, frame.side, (miter(side), square("foot")))
        _piece(answer, "3", "Left side", up, frame.side, (square("foot"), miter(side)))
        return
    bottom, low = settings(frame.bottom, frame.side)
    _piece(answer, "2", "Right side", up, frame.side, (miter(side), miter(low)))
    _piece(answer, "3", "Bottom", across, frame.bottom, (miter(bottom), miter(bottom)))
    _piece(answer, "4", "Left side", up, frame.side, (miter(low), miter(side)))


def _piece(
    answer: Answer,
    tag: str,
    name: str,
    points: "tuple[float, float]",
    width: float,
    ends: "tuple[End, End]",
) -> None:
    answer.piece(tag, name, points[0], ends, short_point=points[1], width=width)


def _drawing(given: Given, frame: Frame, scale: Scale) -> Drawing:
    wide, high, side = frame.width, frame.height, frame.side
    top, low = frame.top, frame.height - frame.bottom
    view = Drawing(
        "The frame from the front",
        f"{scale.length(wide)} wide and {scale.length(high)} high over all.",
    )
    _surround(view, given, frame)
    view.area("stock", [(0, 0), (wide, 0), (wide - side, top), (side, top)])
    view.area("stock", [(wide, 0), (wide, high), (wide - side, low), (wide - side, top)])
    if frame.closed:
        view.area("stock", [(wide, high), (0, high), (side, low), (wide - side, low)])
    view.area("stock", [(0, high), (0, 0), (side, top), (side, low)])
    middle = (low + top) / 2
    view.tag((wide / 2, top / 2), "1").tag((wide - side / 2, middle), "2")
    if frame.closed:
        view.tag((wide / 2, (high + low) / 2), "3")
    view.tag((side / 2, middle), "4" if frame.closed else "3")
    view.dimension((0, 0), (wide, 0), scale.length(wide))
    view.dimension((wide, 0), (wide, high), scale.length(high))
    view.dimension((side, top), (wide - side, top), scale.length(frame.clear_width), -1)
    return view


def _surround(view: Drawing, given: Given, frame: Frame) -> None:
    """Draw the edge of the recess or of the opening that the frame belongs to."""
    width, height = given.number("width"), given.number("height")
    if frame.inside:
        left = (frame.width - width) / 2
        top = (frame.height - height) / (2 if frame.closed else 1)
        view.box("wall", left, top, left + width, top + height)
        return
    left, top = (frame.width - width) / 2, frame.top + given.number("reveal")
    view.box("clearance", left, top, left + width, top + height)


def _notes(answer: Answer, frame: Frame) -> None:
    answer.note(
        "Start long and sneak up: cut each piece a little over, fit it to its corner, then take "
        "off the rest. Number the pieces on the back as drawn, so each stays with its corner."
    )
    answer.note(FRAME_ENDS)
    if frame.top != frame.side or (frame.closed and frame.bottom != frame.side):
        top, side = settings(frame.top, frame.side)
        answer.note(
            "The widths differ, so the two pieces of a corner are cut at different settings that "
            f"add up to 90.0°: {show_angle(top)} and {show_angle(side)} at the top."
        )
    if not frame.inside:
        answer.note("Mark the reveal on the jamb first and hold the short points to it.")


TOOL = Tool(
    slug="mitered-frame",
    place="saw",
    title="Mitered frame",
    question="Trim around an opening or inside a recess: how long is each piece?",
    finds=("picture frame", "mirror", "casing", "panel molding"),
    inputs=[
        Choice(
            "fit",
            "Fits",
            [("inside", "inside a recess"), ("around", "around an opening")],
            default="inside",
        ),
        Length("width", "Width", help="Of the recess, or of the opening from jamb to jamb."),
        Length(
            "height",
            "Height",
            help="Of the recess or the opening; with three sides, up from where the feet stand.",
        ),
        Length("side_width", "Trim width", help="Of the side pieces; the others follow it."),
        Choice(
            "sides",
            "Sides",
            [("4", "four, all round"), ("3", "three, open below")],
            default="4",
        ),
        Length(
            "reveal",
            "Reveal",
            default="3/16",
            least=0,
            help="How far the trim's inner edge stands back from the opening.",
            only_when=("fit", "around"),
        ),
        Length(
            "play",
            "Play",
            default=0,
            least=0,
            help="Total clearance in each direction, so that the frame goes in.",
            only_when=("fit", "inside"),
        ),
        Length("top_width", "Top width", optional=True, default_text="as the sides"),
        Length(
            "bottom_width",
            "Bottom width",
            optional=True,
            default_text="as the sides",
            only_when=("sides", "4"),
        ),
    ],
    work=work,
    example={"width": "27 13/16", "height": "60 1/8", "side_width": "2 1/2"},
    cautions=[SAW, TEST_CUT],
    sources=[
        "Plane geometry: the joint runs from the inner to the outer corner, so each setting is "
        "the arc tangent of the neighbor's width over the piece's own.",
        "Reveal of about 3/16: NAVEDTRA 14044, Builder, interior trim.",
        "Start long, sneak up, number the pieces: common practice, no source.",
    ],
)
