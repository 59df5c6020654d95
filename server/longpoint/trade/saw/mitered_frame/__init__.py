"""Trim around an opening or inside a recess: how long is each piece?

All corners are square; where they are not, each needs its own setting.
"""

from ...cautions import SAW, TEST_CUT, warn_if_sharp
from ...frames.fit import fit, fitted_inside, reveal
from ...frames.rabbet import glass_outset, rabbet_inputs
from ...geometry.miters import settings
from ...geometry.square_frame import SquareFrame, frame_around
from ...tool import (
    Answer,
    Choice,
    End,
    Given,
    Gives,
    Length,
    Refusal,
    Scale,
    Tool,
    miter,
    square,
)
from .drawing import front_view
from .words import LEVEL_POINTS, add_notes, add_verdict, names


def work(given: Given, scale: Scale) -> Answer:
    """Return lengths, settings and pieces of a frame with square corners."""
    opening = given.number("opening_width"), given.number("opening_height")
    inside, closed = given.text("fit") == "inside", given.text("sides") == "4"
    side = given.number("trim_width")
    top = given.maybe("top_width") or side
    bottom = (given.maybe("bottom_width") or side) if closed else 0.0
    if inside:
        play = given.number("play")
        frame = SquareFrame(opening[0] - play, opening[1] - play, side, top, bottom)
        _refuse_swallowed(frame, opening, given.maybe("top_width") is not None, scale)
    else:
        frame = frame_around(opening, given.number("reveal"), side, top, bottom)
    glass = _glass(given, frame, scale)
    answer = Answer(scale)
    stand_off = given.number("play" if inside else "reveal")
    add_verdict(answer, frame, inside, stand_off, glass)
    _figures(answer, frame, inside, glass)
    _pieces(answer, frame, inside)
    answer.draw(lambda: front_view(frame, opening, inside, stand_off, scale))
    add_notes(answer, frame, inside)
    warn_if_sharp(answer, *_all_settings(frame))
    return answer


def _refuse_swallowed(
    frame: SquareFrame, recess: "tuple[float, float]", own_top: bool, scale: Scale
) -> None:
    if frame.width <= 0 or frame.height <= 0:
        raise Refusal("play", "The play takes up the whole recess: use less.")
    if frame.clear_width <= 0:
        raise Refusal(
            "trim_width",
            f"Two pieces {scale.length(frame.side)} wide leave no opening in a recess "
            f"{scale.length(recess[0])} wide. Use trim narrower than "
            f"{scale.finer().length(frame.width / 2)}, or measure the recess again.",
        )
    if frame.clear_height <= 0:
        raise Refusal(
            "top_width" if own_top else "trim_width",
            f"Trim {scale.length(frame.top + frame.bottom)} wide in all leaves no opening in a "
            f"recess {scale.length(recess[1])} high: use narrower trim.",
        )


def _glass(given: Given, frame: SquareFrame, scale: Scale) -> "list[float]":
    """Return width and height of what lies in the rabbet; none where there is no rabbet."""
    if not given.flag("rabbeted"):
        return []
    rabbet, play = given.number("rabbet"), given.number("rabbet_play")
    outset = glass_outset(rabbet, play, min(frame.side, frame.top, frame.bottom), scale)
    return [frame.clear_width + 2 * outset, frame.clear_height + 2 * outset]


def _figures(answer: Answer, frame: SquareFrame, inside: bool, glass: "list[float]") -> None:
    head, legs = names(frame, inside)
    top, side = settings(frame.top, frame.side)
    ends = LEVEL_POINTS if frame.closed else "long point to foot"
    other = ends.replace("long", "short")
    label = f"{head}, {LEVEL_POINTS}"
    answer.length("top_long", frame.width, label=label, short=head, lead=True)
    answer.angle("saw_top", top, lead=True)
    answer.length("side_long", frame.height, label=f"{legs}, {ends}", short=legs, lead=True)
    answer.length("top_short", frame.clear_width, label=head + ", short point to short point")
    answer.length("side_short", frame.clear_height, label=f"{legs}, {other}")
    answer.angle("saw_side", side)
    if frame.closed:
        _bottom_figures(answer, frame)
    if glass:
        answer.length("glass_width", glass[0], lead=True)
        answer.length("glass_height", glass[1], lead=True)


def _bottom_figures(answer: Answer, frame: SquareFrame) -> None:
    answer.length("bottom_long", frame.width)
    answer.length("bottom_short", frame.clear_width)
    if frame.bottom != frame.top:
        bottom, side = settings(frame.bottom, frame.side)
        answer.angle("saw_bottom", bottom)
        answer.angle("saw_side_bottom", side)


def _all_settings(frame: SquareFrame) -> "tuple[float, ...]":
    top = settings(frame.top, frame.side)
    return top + settings(frame.bottom, frame.side) if frame.closed else top


def _pieces(answer: Answer, frame: SquareFrame, inside: bool) -> None:
    head, legs = names(frame, inside)
    top, side = settings(frame.top, frame.side)
    across = (frame.width, frame.clear_width)
    up = (frame.height, frame.clear_height)
    upright = " leg" if legs == "Legs" else " side"
    _piece(answer, "1", head, across, frame.top, (miter(top), miter(top)))
    if not frame.closed:
        _piece(answer, "2", "Right" + upright, up, frame.side, (miter(side), square("foot")))
        _piece(answer, "3", "Left" + upright, up, frame.side, (square("foot"), miter(side)))
        return
    bottom, low = settings(frame.bottom, frame.side)
    _piece(answer, "2", "Right" + upright, up, frame.side, (miter(side), miter(low)))
    _piece(answer, "3", "Bottom", across, frame.bottom, (miter(bottom), miter(bottom)))
    _piece(answer, "4", "Left" + upright, up, frame.side, (miter(low), miter(side)))


def _piece(
    answer: Answer,
    tag: str,
    name: str,
    points: "tuple[float, float]",
    width: float,
    ends: "tuple[End, End]",
) -> None:
    answer.piece(tag, name, points[0], ends, short_point=points[1], width=width)


TOOL = Tool(
    slug="mitered-frame",
    place="saw",
    coated="girth",
    title="Mitered frame",
    question="Trim around an opening or inside a recess: how long is each piece?",
    finds=("casing", "picture frame", "window trim", "face frame", "rabbet", "glass", "miter"),
    inputs=[
        fit(),
        Length(
            "opening_width",
            "Opening width",
            help="Of the opening or the recess, from side to side.",
            quantity="opening width",
            was=("width",),
        ),
        Length(
            "opening_height",
            "Opening height",
            quantity="opening height",
            was=("height",),
        ),
        Length(
            "trim_width",
            "Trim width",
            help="Of the side pieces; the others follow it.",
            quantity="trim width",
            was=("side_width",),
        ),
        reveal(),
        Length(
            "play",
            "Play",
            default=0,
            least=0,
            help="Total clearance in each direction, so that the frame goes in.",
            only_when=("fit", "inside"),
        ),
        Choice(
            "sides",
            "Sides",
            [("4", "four, all around"), ("3", "three, open below")],
            default="4",
        ),
        Length("top_width", "Top width", optional=True, default_text="as the sides"),
        Length(
            "bottom_width",
            "Bottom width",
            optional=True,
            default_text="as the sides",
            only_when=("sides", "4"),
        ),
    ]
    + rabbet_inputs(("sides", "4")),
    work=work,
    gives=[
        Gives("top_long", "length", "Top, long point to long point", short="Top"),
        Gives("saw_top", "angle", "Saw, top piece", short="Saw"),
        Gives("side_long", "length", "Sides, long point to long point", short="Sides"),
        Gives("top_short", "length", "Top, short point to short point", short="Top, short point"),
        Gives("side_short", "length", "Sides, short point to short point", short="Sides, short"),
        Gives("saw_side", "angle", "Saw, sides at the top", short="Saw, sides"),
        Gives("bottom_long", "length", "Bottom, long point to long point", sometimes=True),
        Gives("bottom_short", "length", "Bottom, short point to short point", sometimes=True),
        Gives("saw_bottom", "angle", "Saw, bottom piece", sometimes=True),
        Gives("saw_side_bottom", "angle", "Saw, sides at the bottom", sometimes=True),
        Gives("glass_width", "length", "Glass or panel width", short="Glass wide", sometimes=True),
        Gives(
            "glass_height", "length", "Glass or panel height", short="Glass high", sometimes=True
        ),
    ],
    upgrades=(fitted_inside,),
    example={
        "fit": "around",
        "opening_width": "36 1/4",
        "opening_height": "80 3/8",
        "trim_width": "3 1/2",
        "reveal": "1/4",
        "sides": "3",
    },
    cautions=[SAW, TEST_CUT],
    sources=[
        "Plane geometry: the joint runs from the inner to the outer corner, so each setting is "
        "the arc tangent of the neighbor's width over the piece's own.",
        "Reveal of about 3/16: NAVEDTRA 14044, Builder, interior trim.",
        "Start long, sneak up, number the pieces: common practice, no source.",
    ],
)
