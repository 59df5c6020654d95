"""A filler or a stile to a wall out of plumb: what to leave on, where to set the dividers?"""

from ...tool import Answer, Choice, Given, Gives, Length, Refusal, Rows, Scale, Tool
from .profile import HAIR, PARALLEL, Cut, Profile, profile_of
from .views import held_view

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...tool import Input

STRAIGHT = 1 / 32
"""Inches: a wall that strays less from a line is met by one straight cut."""


def work(given: Given, scale: Scale) -> Answer:
    """Return width, setting of the dividers, and what comes off at every height taped."""
    readings = [(row.number("up"), row.number("gap")) for row in given.rows("gaps")]
    wall = profile_of(readings, given.number("height"), scale)
    answer = Answer(scale)
    if given.text("piece") == "filler":
        _filler(answer, wall, given.number("spare"), given.maybe("blank"))
    else:
        _stile(answer, wall, given.maybe("stile"))
    _shape_notes(answer, wall)
    return answer


def _filler(answer: Answer, wall: Profile, spare: float, blank: "float | None") -> None:
    """Answer for a filler that closes the gap: how wide to rip it, and the dividers."""
    scale = answer.scale
    _refuse_filler(wall, blank, scale)
    is_parallel = wall.range <= PARALLEL and blank is None
    cut = Cut(wall, _width(wall, spare, blank, is_parallel))
    _decide_filler(answer, wall, cut, blank is not None, is_parallel)
    answer.length("dividers", cut.dividers if not is_parallel else 0.0, lead=True)
    answer.length("blank_width", cut.width, lead=True)
    answer.length("leave_on", cut.width - wall.smallest)
    _wall_figures(answer, wall)
    answer.piece("1", "Filler, as ripped", wall.height, width=cut.width)
    _line_table(answer, wall, cut, 0.0)
    answer.draw(held_view(wall, cut.width, cut.dividers, scale))
    answer.note(
        "Hold the filler plumb, parallel to the edge it will meet, so that it touches the wall at "
        "the nearest spot; clamp it. Keep the dividers level and run them down the wall."
    )
    if blank is not None and cut.off_least < spare - HAIR:
        answer.note(
            f"At the widest gap only {scale.length(cut.off_least)} comes off: the saw has little "
            "to follow there."
        )


def _width(wall: Profile, spare: float, blank: "float | None", is_parallel: bool) -> float:
    if blank is not None:
        return blank
    return wall.widest if is_parallel else wall.widest + spare


def _refuse_filler(wall: Profile, blank: "float | None", scale: Scale) -> None:
    if wall.smallest <= HAIR:
        raise Refusal(
            "gaps",
            f"A gap of 0 leaves no filler {scale.length(wall.nearest)} up: move the cabinet over, "
            "or scribe its stile.",
        )
    if blank is not None and blank < wall.widest - HAIR:
        raise Refusal(
            "blank",
            f"A filler {scale.length(blank)} wide doesn't reach where the gap is "
            f"{scale.length(wall.widest)}: rip it that wide or wider.",
        )


def _decide_filler(
    answer: Answer, wall: Profile, cut: Cut, is_ripped: bool, is_parallel: bool
) -> None:
    length = answer.scale.length
    if is_parallel:
        answer.verdict(f"The wall runs parallel: rip the filler {length(cut.width)}, no scribing")
        return
    rip = "Filler" if is_ripped else "Rip the filler"
    said = f"{rip} {length(cut.width)} ({length(cut.off_least)} spare)"
    dividers = f"dividers {length(cut.dividers)}"
    answer.verdict(
        f"{said}; touching {_spot(answer, wall)}, set the {dividers}{_taken(wall)}",
        f"{said}; touching the wall, set the {dividers}{_taken(wall)}",
        f"{said}; {dividers}{_taken(wall)}",
        f"{rip} {length(cut.width)}; {dividers}{_taken(wall)}",
    )


def _spot(answer: Answer, wall: Profile) -> str:
    """Return where the piece touches the wall first."""
    if wall.nearest <= HAIR:
        return "at the foot"
    if wall.nearest >= wall.height - HAIR:
        return "at the head"
    return f"{answer.scale.length(wall.nearest)} up"


def _taken(wall: Profile) -> str:
    """Return what was assumed beyond the readings."""
    return "; straight on at " + " and ".join(wall.unseen) if wall.unseen else ""


def _stile(answer: Answer, wall: Profile, stile: "float | None") -> None:
    """Answer for a stile in its place: what it needs to be wider by, and the dividers."""
    scale = answer.scale
    if stile is not None and stile <= wall.range:
        raise Refusal(
            "stile",
            f"The scribe takes {scale.length(wall.range)}, all of a stile "
            f"{scale.length(stile)} wide: make it wider by that much.",
        )
    cut = Cut(wall, wall.widest)
    _decide_stile(answer, wall, cut, stile)
    answer.length("dividers", cut.dividers, lead=True)
    answer.length("leave_on", cut.dividers, lead=True)
    if wall.smallest > HAIR:
        answer.length("slide", wall.smallest)
    if stile is not None:
        answer.length("narrowest", stile - wall.range)
    _wall_figures(answer, wall)
    _line_table(answer, wall, cut, (stile or 0.0) - cut.width)
    answer.draw(held_view(wall, stile or 3 * wall.range or 1.0, cut.dividers, scale))
    answer.note(
        "Set cabinet or frame plumb and level first, shimmed, so that it touches the wall at the "
        "nearest spot. Scribe, cut, and move it over by what the dividers were set to."
    )


def _decide_stile(answer: Answer, wall: Profile, cut: Cut, stile: "float | None") -> None:
    length = answer.scale.length
    slide = f"Slide it over {length(wall.smallest)} to touch; " if wall.smallest > HAIR else ""
    if wall.range <= PARALLEL:
        answer.verdict(
            f"The wall runs parallel: slide it over {length(wall.smallest)}, no scribing"
            if slide
            else "The wall runs parallel and it touches: no scribing"
        )
        return
    left = "" if stile is None else f", {length(stile - wall.range)} left at the narrowest"
    dividers = f"dividers {length(cut.dividers)}"
    moves = ", then it moves over as much"
    said = slide + (dividers if slide else dividers[:1].upper() + dividers[1:])
    answer.verdict(
        f"{said}{moves}{left}{_taken(wall)}",
        f"{said}{left}{_taken(wall)}",
        f"{said}{_taken(wall)}",
        said,
    )


def _wall_figures(answer: Answer, wall: Profile) -> None:
    answer.length("widest_gap", wall.widest)
    answer.length("smallest_gap", wall.smallest)
    answer.length("out_of_plumb", abs(wall.out))


def _line_table(answer: Answer, wall: Profile, cut: Cut, more: float) -> None:
    """Add what comes off and what is left at each height; `more` is what a stile has besides."""
    length, rows = answer.scale.length, []
    for up, gap in wall.points:
        left = length(cut.left(up) + more) if cut.width + more > 0 else ""
        rows.append([length(up), length(gap), length(cut.off(up)), left])
    answer.table("The line, to check it by", ["Up from the foot", "Gap", "Off", "Left"], rows)


def _shape_notes(answer: Answer, wall: Profile) -> None:
    """Say how the wall leans and waves, and how the cut is made."""
    length = answer.scale.length
    if abs(wall.out) > PARALLEL:
        way = "away from the piece" if wall.out > 0 else "toward the piece"
        answer.note(f"The wall leans {length(abs(wall.out))} {way} from foot to head.")
    if wall.wave <= STRAIGHT and wall.range > PARALLEL:
        answer.note(
            "Within a hair the wall is straight: join the line's foot and head with a "
            "straightedge and cut once."
        )
    if wall.unseen:
        answer.note(
            "Nobody taped at the " + " and ".join(wall.unseen) + ": the wall is taken to run "
            "straight on there. Tape a gap there before you rip."
        )
    answer.note(
        "Back-bevel the cut a few degrees, so that the face edge touches first, and plane to the "
        "line."
    )


GAP: "list[Input]" = [
    Length("up", "Up from the foot", least=0),
    Length("gap", "Gap", least=0, help="Level, from the plumb edge to the wall."),
]

TOOL = Tool(
    slug="scribe",
    place="site",
    coated="front",
    title="Scribe to a wall",
    question="A filler or a stile to a wall out of plumb: what to leave on, where to set the "
    "dividers?",
    finds=(
        "scribing",
        "filler strip",
        "cabinet",
        "built-in",
        "out of plumb",
        "compass",
        "end panel",
    ),
    inputs=[
        Choice(
            "piece",
            "What is scribed",
            [("filler", "a filler in a gap"), ("stile", "a stile in its place")],
            help="A filler closes the gap; a stile or panel moves to the wall with its cabinet.",
        ),
        Length("height", "Height of the piece"),
        Rows(
            "gaps",
            "Gaps to the wall",
            GAP,
            row="gap",
            least=2,
            help="From the edge the filler will meet, or from the stile's own, held plumb.",
        ),
        Length(
            "blank",
            "Filler width",
            optional=True,
            default_text="as the gap needs",
            help="If it is ripped already.",
            only_when=("piece", "filler"),
        ),
        Length(
            "spare",
            "Least to come off",
            default="1/8",
            least=0,
            most=2,
            help="At the widest gap, so that saw and plane have wood to follow.",
            only_when=("piece", "filler"),
        ),
        Length(
            "stile",
            "Stile width",
            optional=True,
            default_text="not said",
            only_when=("piece", "stile"),
            quantity="stile width",
        ),
    ],
    work=work,
    gives=[
        Gives("dividers", "length", "Dividers", short="dividers"),
        Gives("blank_width", "length", "Filler, as ripped", short="rip", sometimes=True),
        Gives("leave_on", "length", "To leave on for the scribe", short="leave on"),
        Gives("slide", "length", "Slide over first", short="slide", sometimes=True),
        Gives("narrowest", "length", "Stile left at its narrowest", short="left", sometimes=True),
        Gives("widest_gap", "length", "Widest gap", short="widest"),
        Gives("smallest_gap", "length", "Smallest gap", short="smallest"),
        Gives("out_of_plumb", "length", "Wall out of plumb, foot to head", short="out of plumb"),
    ],
    example={
        "piece": "filler",
        "height": "84",
        "gaps": [
            {"up": "0", "gap": "1 7/8"},
            {"up": "42", "gap": "1 5/8"},
            {"up": "84", "gap": "2 1/4"},
        ],
    },
    cautions=[
        "Clamp the piece down before you saw to the line, and keep hands behind the blade; old "
        "paint may hold lead: no dry sanding until you know.",
    ],
    sources=[
        "Plane geometry: a line as far from the wall everywhere as the dividers are set, and the "
        "piece moved over by as much.",
        "A stile's dividers at the widest gap, a filler held parallel to its place: trade articles "
        "on scribing cabinets.",
        "1/8 to come off at least, the back bevel: common practice, no source.",
    ],
)
