"""The opening isn't square: each corner's own miter, each piece's own points."""

import math

from ... import degrees
from ...cautions import SAW, TEST_CUT, warn_if_sharp
from ...frames.directions import FRAME_ENDS
from ...frames.fit import fit, fitted_inside, reveal
from ...frames.rabbet import glass_outset, rabbet_inputs
from ...geometry.quadrilateral import CORNER_NAMES, CORNERS, SIDES, TAPE, Quadrilateral
from ...lengths import brief_angle, show_angle
from ...tool import Answer, Given, Gives, Length, Refusal, Scale, Tool, miter
from .drawing import front_view
from .shape import OddFrame

MEASURED = ("width_top", "height_right", "width_bottom", "height_left")
DIAGONAL = "diagonal_a"


def work(given: Given, scale: Scale) -> Answer:
    """Return every corner, its setting, and the points of every piece."""
    sides = [given.number(name) for name in MEASURED]
    opening = Quadrilateral(sides, given.number(DIAGONAL), scale, MEASURED + (DIAGONAL,))
    inside, width = given.text("fit") == "inside", given.number("trim_width")
    back = 0.0 if inside else given.number("reveal")
    frame = OddFrame(opening, width, 0.0 if inside else back + width)
    _refuse_swallowed(frame, scale)
    answer = Answer(scale)
    measured = given.maybe("diagonal_b")
    off = None if measured is None else measured - opening.other_diagonal()
    _verdict(answer, frame, inside, back, off)
    _figures(answer, frame, inside)
    if given.flag("rabbeted"):
        rabbet, play = given.number("rabbet"), given.number("rabbet_play")
        _glass(answer, frame.glass(glass_outset(rabbet, play, width, scale)))
    _diagonals(answer, opening, off)
    for side in range(4):
        _piece(answer, frame, side)
    answer.draw(front_view(frame, inside, scale))
    _notes(answer, frame, inside)
    warn_if_sharp(answer, *frame.saws)
    return answer


def _refuse_swallowed(frame: OddFrame, scale: Scale) -> None:
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


def _verdict(
    answer: Answer, frame: OddFrame, inside: bool, back: float, off: "float | None"
) -> None:
    """Say the four settings, or that the tapes contradict each other."""
    if off is not None and abs(off) >= TAPE:
        by = answer.scale.finer().length(abs(off))
        way = "longer" if off > 0 else "shorter"
        answer.verdict(f"Measure again: diagonal B is {by} {way} than the other tapes make it")
        return
    left, right, low_right, low_left = [brief_angle(saw) for saw in frame.saws]
    saws = f"top left {left}, right {right}; bottom left {low_left}, right {low_right}"
    starts = ("Frame inside the recess", "Frame inside")
    if not inside:
        of = ", reveal " + answer.scale.length(back)
        starts = ("Casing around the opening" + of, "Casing" + of)
    answer.verdict(*[f"{start}: saw {saws}" for start in starts], f"{starts[-1]}: {saws}")


def _figures(answer: Answer, frame: OddFrame, inside: bool) -> None:
    answer.length("top_long", frame.long(0), lead=True)
    for saw, corner in zip(frame.saws, CORNERS):
        answer.angle("saw_" + corner, saw, lead=True)
    for side, name in enumerate(SIDES):
        if side:
            answer.length(name + "_long", frame.long(side))
        answer.length(name + "_short", frame.short(side))
    for angle, corner in zip(frame.opening.corners, CORNERS):
        answer.angle("corner_" + corner, angle)


def _glass(answer: Answer, sizes: "list[float]") -> None:
    for name, size in zip(SIDES + ("diagonal",), sizes):
        answer.length("glass_" + name, size)


def _diagonals(answer: Answer, opening: Quadrilateral, off: "float | None") -> None:
    """Say how a measured second diagonal agrees with the one that the sides give."""
    answer.length("other_worked", opening.other_diagonal())
    if off is None:
        answer.note("Measure diagonal B too: it shows whether one of the tapes was off.")
        return
    answer.length("disagree", off, fine=True)
    if answer.scale.tick(off) == 0:
        answer.note("The two diagonals agree.")
        return
    text = answer.scale.finer().length(abs(off))
    answer.note(
        f"The diagonals disagree: B measures {text} {'more' if off > 0 else 'less'} "
        "than four sides and diagonal A allow. Measure all again, or look whether the "
        "opening is out of flat."
    )


def _piece(answer: Answer, frame: OddFrame, side: int) -> None:
    ends = [miter(frame.saws[at], CORNER_NAMES[at]) for at in (side, (side + 1) % 4)]
    answer.piece(
        str(side + 1),
        _upper(SIDES[side]),
        frame.long(side),
        (ends[0], ends[1]),
        short_point=frame.short(side),
        width=frame.width,
    )


def _notes(answer: Answer, frame: OddFrame, inside: bool) -> None:
    answer.note(
        "Each corner has its own setting, the same for both pieces that meet there. Number the "
        "pieces on the back as drawn; turned around or swapped, none of them fits."
    )
    answer.note(FRAME_ENDS)
    top, right = frame.opening.sides[0], frame.opening.sides[1]
    square_area = top * right * degrees.sin(frame.opening.corners[1])
    turn = math.degrees(frame.opening.diagonal / square_area) / 16
    answer.note(
        f"A diagonal taken 1/16 wrong turns the top right corner by {show_angle(turn)}. The "
        "drawing shows the top level; measure in the plane that the trim lies in."
    )
    if not inside:
        answer.note("Mark the reveal on the jamb first and hold the short points to it.")


def _upper(name: str) -> str:
    return name[:1].upper() + name[1:]


def _points(side: str) -> "list[Gives]":
    return [
        Gives(
            f"{side}_{point}",
            "length",
            f"{_upper(side)}, {point} point to {point} point",
            short=f"{_upper(side)}, {point}",
        )
        for point in ("long", "short")
    ]


def _gives() -> "list[Gives]":
    given = _points("top") + _points("right") + _points("bottom") + _points("left")
    for corner, name in zip(CORNERS, CORNER_NAMES):
        given.append(Gives("saw_" + corner, "angle", "Saw, " + name, short="Saw, " + name))
        given.append(Gives("corner_" + corner, "angle", "Corner, " + name))
    for name in SIDES + ("diagonal",):
        label = "Glass or panel, " + (name if name in SIDES else "diagonal A")
        given.append(Gives("glass_" + name, "length", label, sometimes=True))
    given.append(Gives("other_worked", "length", "Diagonal B, worked out"))
    given.append(Gives("disagree", "length", "Diagonal B measures longer by", sometimes=True))
    return given


def _size(name: str, label: str, quantity: str, was: str, help: str = "") -> Length:
    return Length(name, label, help=help, quantity=quantity, was=(was,))


TOOL = Tool(
    slug="odd-frame",
    place="saw",
    coated="girth",
    title="Out-of-square frame",
    question="The opening isn't square: how is trim mitered to it anyway?",
    finds=("crooked", "racked", "casing", "picture frame", "out of plumb", "rabbet", "glass"),
    inputs=[
        fit(),
        Length("trim_width", "Trim width", quantity="trim width"),
        reveal(),
        _size("width_top", "Width, top", "opening width at the top", "top"),
        _size("width_bottom", "Width, bottom", "opening width at the bottom", "bottom"),
        _size("height_left", "Height, left", "opening height at the left", "left"),
        _size("height_right", "Height, right", "opening height at the right", "right"),
        _size(
            "diagonal_a",
            "Diagonal A",
            "opening diagonal, top left to bottom right",
            "diagonal",
            "Top left to bottom right.",
        ),
        Length(
            "diagonal_b",
            "Diagonal B",
            optional=True,
            default_text="not measured",
            help="Top right to bottom left: it checks the other tapes.",
            quantity="opening diagonal, top right to bottom left",
            was=("other_diagonal",),
        ),
    ]
    + rabbet_inputs(),
    work=work,
    gives=_gives(),
    upgrades=(fitted_inside,),
    example={
        "fit": "around",
        "width_top": "30",
        "height_right": "40 1/4",
        "width_bottom": "31 1/2",
        "height_left": "39 1/2",
        "diagonal_a": "50 3/4",
        "trim_width": "3 1/2",
    },
    cautions=[SAW, TEST_CUT],
    sources=[
        "Plane geometry: the diagonal cuts the opening into two triangles, the law of cosines "
        "gives their angles, and trim of one width meets on the line that halves each corner.",
        "Reveal of about 3/16: NAVEDTRA 14044, Builder, interior trim.",
        "Number the pieces, check with the second diagonal, measure again from 1/8 on: common "
        "practice, no source.",
    ],
)
