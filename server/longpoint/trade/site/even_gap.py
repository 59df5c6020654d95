"""The gap on the strike side is uneven: which hinge is packed or let in deeper, and by how much?

A hung door is stiff: what moves it at two hinges moves its strike edge along a straight line.
All moves are inches toward the strike, so packing is positive and deepening negative.
"""

from ..cautions import FIRE_DOOR, HEAVY_DOOR
from ..tool import Answer, Count, Drawing, Given, Length, Refusal, Scale, Tool
from .hinge_places import hinge_names, usual_count

LEAST_GAP = 1 / 16
"""Inches: packing must leave that much on the strike side, or the other hinge is let in."""
SEEN = 1 / 128
"""Inches: less than half a 64th out passes for even."""
SHOWN = 14.0  # Inches that the larger gap takes in the drawing, where errors are exaggerated.


class Tilt:
    """A door out of line with its jamb: gaps and moves at its top and its bottom hinge.

    Parameters
    ----------
    top, bottom : float
        Gaps at the strike side's top and bottom corner, inches.
    height, first, last : float
        Of the door; its hinges' centers from its top, inches.
    """

    def __init__(self, top: float, bottom: float, height: float, first: float, last: float) -> None:
        self.top = top
        self.bottom = bottom
        self.height = height
        self.first = first
        self.last = last

    def gap(self, down: float) -> float:
        """Return the gap at a distance below the door's top."""
        return self.top + (self.bottom - self.top) * down / self.height

    def moves_to(self, wanted: float) -> "tuple[float, float]":
        """Return the moves at top and bottom hinge that leave a gap all along."""
        return (self.gap(self.first) - wanted, self.gap(self.last) - wanted)

    @property
    def ends(self) -> "tuple[float, float]":
        """The gaps across from the hinges: the smaller one is left by packing, the larger one by
        deepening."""
        both = (self.gap(self.first), self.gap(self.last))
        return (min(both), max(both))


def work(given: Given, scale: Scale) -> Answer:
    """Return what is done at each hinge, the gap then left, and the door as it hangs."""
    tilt = _tilt(given, scale)
    wanted = given.maybe("wanted")
    less, more = tilt.ends
    even = wanted
    if even is None:
        even = less if less >= LEAST_GAP else more
    moves = tilt.moves_to(even)
    _check(given, moves, scale)
    answer = Answer(scale)
    _figures(answer, moves, even)
    if given.maybe("door_width") is not None:
        turn = (moves[0] - moves[1]) / (tilt.last - tilt.first)
        opens = turn * given.number("door_width")
        answer.length("head_change", opens, label="Head gap at the strike opens", fine=True)
    _each_hinge(answer, moves, given.maybe_count("hinges") or usual_count(tilt.height))
    answer.draw(_drawing(tilt, moves, scale))
    if wanted is None and more - less > SEEN:
        _other_way(answer, tilt, more if even == less else less)
    answer.note(
        "Tighten every screw first: a door that sags often hangs on loose ones. Packing goes "
        "behind a leaf's whole face, and may be shared between the door's and the jamb's."
    )
    return answer


def _tilt(given: Given, scale: Scale) -> Tilt:
    height = given.number("door_height")
    first, last = given.number("top_center"), height - given.number("bottom_center")
    if first >= height:
        raise Refusal(
            "top_center",
            f"A hinge {scale.length(first)} below its top is off a door {scale.length(height)} "
            "high: use less.",
        )
    if last <= first:
        raise Refusal(
            "bottom_center",
            f"{scale.length(given.number('bottom_center'))} up, the bottom hinge is not below the "
            f"top one: use less than {scale.length(height - first)}.",
        )
    return Tilt(given.number("gap_top"), given.number("gap_bottom"), height, first, last)


def _check(given: Given, moves: "tuple[float, float]", scale: Scale) -> None:
    """Refuse to let a hinge in deeper than the gap on its side has room for."""
    room, least = given.maybe("hinge_gap"), min(moves)
    if room is not None and room + least < -SEEN:
        fine = scale.finer()
        raise Refusal(
            "hinge_gap",
            f"A hinge would go {fine.length(-least)} deeper, but there is a gap of only "
            f"{fine.length(room)} on its side: ask for a smaller gap at the strike, or plane it.",
        )


def _figures(answer: Answer, moves: "tuple[float, float]", even: float) -> None:
    done = []
    for which, move in zip(("top", "bottom"), moves):
        if abs(move) > SEEN:
            name, verb = ("pack_", "Pack") if move > 0 else ("deepen_", "Deepen")
            answer.length(
                name + which, abs(move), label=f"{verb} {which} hinge", lead=True, fine=True
            )
            done.append(which)
    if not done:
        answer.words("hinge", "neither", label="Which hinge", lead=True)
    else:
        answer.words("hinge", "both" if len(done) == 2 else done[0], label="Which hinge")
    answer.length("even_gap", even, label="Strike gap then", fine=True)


def _each_hinge(answer: Answer, moves: "tuple[float, float]", count: int) -> None:
    """List every hinge: those between must follow, or the door is strained."""
    rows = []
    for number, name in enumerate(hinge_names(count)):
        move = moves[0] + (moves[1] - moves[0]) * number / (count - 1)
        rows.append([name] + _words(answer.scale.finer(), move))
    answer.table("Each hinge", ["Hinge", "Do", "By", "Decimal"], rows)
    if count > 2 and max(abs(moves[0]), abs(moves[1])) > SEEN:
        answer.note("The hinges between follow as listed, or they strain the door.")


def _words(scale: Scale, move: float) -> "list[str]":
    if abs(move) <= SEEN:
        return ["leave", "", ""]
    verb = "pack" if move > 0 else "deepen"
    return [verb, scale.length(abs(move)), scale.decimal(abs(move))]


def _other_way(answer: Answer, tilt: Tilt, even: float) -> None:
    """Say what the other hinge alone would do."""
    fine = answer.scale.finer()
    top, bottom = tilt.moves_to(even)
    which, move = ("top", top) if abs(top) > abs(bottom) else ("bottom", bottom)
    verb = "pack" if move > 0 else "deepen"
    answer.note(
        f"Or {verb} the {which} hinge alone by {fine.length(abs(move))}: the gap is then "
        f"{fine.length(even)} all along."
    )


def _drawing(tilt: Tilt, moves: "tuple[float, float]", scale: Scale) -> Drawing:
    """Return door and jambs from the front, the strike gaps exaggerated."""
    high, wide = tilt.height, tilt.height * 0.4
    more = SHOWN / max(tilt.top, tilt.bottom, 1 / 8)
    view = Drawing(
        "The door from the knuckle side, gaps not to scale",
        f"Gaps of {scale.finer().length(tilt.top)} at the top and "
        f"{scale.finer().length(tilt.bottom)} at the bottom of the strike side, exaggerated.",
    )
    right = wide + SHOWN
    top, bottom = right - tilt.top * more, right - tilt.bottom * more
    left = SHOWN / 2
    view.box("wall", -6, 0, 0, high)
    view.box("wall", right, 0, right + 6, high)
    view.area(
        "stock", [(left + top - wide, 0), (top, 0), (bottom, high), (left + bottom - wide, high)]
    )
    for number, (down, move) in enumerate(zip((tilt.first, tilt.last), moves)):
        edge = left + right - tilt.gap(down) * more - wide
        view.box("metal", 0, down - 2, edge, down + 2)
        if abs(move) > SEEN:
            view.text((edge + 2, down), _words(scale.finer(), move)[0], "cut", "start")
        # The short one stands outside, so that no line runs through its number.
        view.dimension((-6, 0), (-6, down), scale.length(down), number - 2)
    view.dimension((top, 0), (right, 0), scale.finer().length(tilt.top), 1)
    view.dimension((bottom, high), (right, high), scale.finer().length(tilt.bottom), -1)
    return view


def _gap(name: str, label: str) -> Length:
    return Length(name, label, least=0, most=2, help="On the strike side; 0 where it rubs.")


TOOL = Tool(
    slug="even-gap",
    place="site",
    title="Even gap",
    question="The strike gap is uneven: which hinge is packed or deepened, by how much?",
    finds=("shim", "reveal", "sag", "hinge bind", "hang a door"),
    inputs=[
        _gap("gap_top", "Gap at the top"),
        _gap("gap_bottom", "Gap at the bottom"),
        Length("door_height", "Door height"),
        Length(
            "top_center",
            "Top hinge",
            default="6 5/8",
            help="From the door's top to the hinge's center.",
        ),
        Length(
            "bottom_center",
            "Bottom hinge",
            default="11 1/4",
            help="From the door's bottom to the hinge's center.",
        ),
        Length("wanted", "Gap wanted", optional=True, most=2, default_text="even, at one hinge"),
        Length(
            "hinge_gap",
            "Gap at the hinges",
            optional=True,
            least=0,
            default_text="not measured",
            help="On the hinge side, as it is now.",
        ),
        Count("hinges", "Hinges", least=2, most=10, optional=True, default_text="by height"),
        Length(
            "door_width",
            "Door width",
            optional=True,
            default_text="not needed",
            help="To see what happens to the gap at the head.",
        ),
    ],
    work=work,
    example={
        "gap_top": "3/16",
        "gap_bottom": "3/32",
        "door_height": "79",
        "door_width": "30",
    },
    cautions=[HEAVY_DOOR, FIRE_DOOR],
    sources=[
        "A stiff door moves along a straight line between its hinges (plane geometry); the gap "
        "across from a hinge shrinks by what is packed behind it.",
        "Hinges as the hinge layout places them; packing before deepening while 1/16 is left: "
        "common practice, no source.",
    ],
)
