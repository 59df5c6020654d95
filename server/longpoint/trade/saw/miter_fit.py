"""The joint is open at the heel or the toe: how far, and which way, is the saw set?"""

from .. import degrees
from ..cautions import SAW, warn_if_sharp
from ..lengths import brief_angle, show_angle
from ..steps import FINEST
from ..tool import Angle, Answer, Choice, Drawing, Given, Gives, Length, Refusal, Scale, Tool

TYPE_CHECKING = False
if TYPE_CHECKING:
    Point = tuple[float, float]

SHIM_AT = 6.0
"""Inches from where the piece touches the fence again to the shim."""
LEAST_DRAWN = 8.0
"""Degrees at which the gap is drawn where it is less: a gap that nobody sees shows no way."""
READ = 0.05
"""Degrees; what is less is shown as nothing and set on no saw."""


class OpenMiter:
    """A miter as it stands: lengths in inches, angles in degrees.

    Parameters
    ----------
    width, gap : float
        Width of both pieces, and what stands open at one end of the joint.
    corner : float
        The corner that the pieces were cut for.
    at_heel : bool
        It is open at the short points; else at the long points.

    The pieces touch at one end of the joint line; `turn` is what stands between their faces.
    """

    def __init__(self, width: float, gap: float, corner: float, at_heel: bool) -> None:
        self.width = width
        self.gap = gap
        self.corner = corner
        self.at_heel = at_heel
        self.line = width / degrees.sin(corner / 2)
        self.saw = 90 - corner / 2
        self.turn = degrees.atan(gap / self.line)

    @property
    def end(self) -> str:
        """The end that is open."""
        return "heel" if self.at_heel else "toe"

    def turned(self, turn: float) -> float:
        """Return the setting that is off the old one by `turn`, the way that closes the joint."""
        return self.saw - turn if self.at_heel else self.saw + turn


def work(given: Given, scale: Scale) -> Answer:
    """Return the turn for one piece and for both, the new settings and the shim that makes them."""
    at_heel = given.text("open_at") == "heel"
    width, gap = given.number("trim_width"), given.number("gap")
    joint = OpenMiter(width, gap, given.number("corner"), at_heel)
    _refuse_hopeless(joint, scale)
    answer = Answer(scale)
    _verdict(answer, joint)
    _figures(answer, joint)
    _table(answer, joint)
    answer.draw(_drawing(joint, scale))
    _notes(answer, joint)
    warn_if_sharp(answer, joint.saw, joint.turned(joint.turn), joint.turned(joint.turn / 2))
    return answer


def _refuse_hopeless(joint: OpenMiter, scale: Scale) -> None:
    if 0 < joint.turned(joint.turn) < 90:
        return
    most = joint.saw if joint.at_heel else 90 - joint.saw
    limit = ""
    if most < 90:
        limit = f" Less than {scale.length(joint.line * degrees.tan(most))} could be."
    raise Refusal(
        "gap",
        f"A gap of {scale.length(joint.gap)} on a joint {scale.length(joint.line)} long can't be "
        f"closed at the saw: it asks for {show_angle(joint.turn)} more or less.{limit} Measure the "
        "corner and cut both pieces anew.",
    )


def _verdict(answer: Answer, joint: OpenMiter) -> None:
    start = f"Open at the {joint.end}: "
    each = joint.turn / 2
    if each < READ:
        shim = answer.scale.finer(FINEST).length(_shim(joint))
        where = "close to" if joint.at_heel else "away from"
        answer.verdict(
            f"{start}leave the saw set, recut both over a shim of {shim}, {where} the blade",
            f"{start}recut both over a shim of {shim}, {where} the blade",
        )
        return
    way = "less" if joint.at_heel else "more"
    saw = brief_angle(joint.turned(each))
    answer.verdict(f"{start}recut both pieces {brief_angle(each)} {way}, saw at {saw}")


def _shim(joint: OpenMiter) -> float:
    """Return how thick a shim is that turns both pieces by half of what is open."""
    return SHIM_AT * degrees.tan(joint.turn / 2)


def _figures(answer: Answer, joint: OpenMiter) -> None:
    answer.angle("turn_each", joint.turn / 2, lead=True)
    way = "less: toward square" if joint.at_heel else "more: away from square"
    answer.words("way", way, lead=True)
    answer.angle("saw_each", joint.turned(joint.turn / 2), lead=True)
    where = answer.scale.length(SHIM_AT)
    label = f"Shim for both pieces, {where} along the fence"
    answer.length("shim", _shim(joint), label=label, fine=True)
    answer.angle("turn_one", joint.turn)
    answer.angle("saw_one", joint.turned(joint.turn))
    answer.length("joint", joint.line)
    answer.length("gap_degree", joint.line * degrees.tan(1), fine=True)
    answer.angle("corner_true", 180 - 2 * joint.turned(joint.turn / 2))


def _table(answer: Answer, joint: OpenMiter) -> None:
    """List what corners a little off open a joint cut for this one by."""
    fine = answer.scale.finer()
    rows = []
    for off in (-2, -1, 1, 2):
        corner = joint.corner + off
        if 0 < corner < 180:
            opens = joint.line * degrees.tan(abs(off))
            end = "heel, short point" if off > 0 else "toe, long point"
            rows.append([show_angle(corner), end, fine.length(opens)])
    name = f"Cut for {show_angle(joint.corner)}: what the wall's corner opens"
    answer.table(name, ["Corner", "Opens at", "By"], rows)


def _drawing(joint: OpenMiter, scale: Scale) -> Drawing:
    """Return the corner with its gap: one piece lies still, the other is turned open.

    A gap too small to be seen is drawn wider, and the title says so.
    """
    end = "short point" if joint.at_heel else "long point"
    drawn = max(joint.turn, LEAST_DRAWN)
    view = Drawing(
        "The joint as it stands" + (", its gap drawn wider" if drawn > joint.turn else ""),
        f"Open at the {end} by {scale.finer().length(joint.gap)}, closed at the other end.",
    )
    run = joint.width / degrees.tan(joint.corner / 2)
    reach = run + 1.2 * joint.width
    toe, heel = (0.0, 0.0), (run, joint.width)
    still = [toe, (reach, 0.0), (reach, joint.width), heel]
    mirrored = [_across(point, joint.corner) for point in still]
    about = toe if joint.at_heel else heel
    turn = drawn if joint.at_heel else -drawn
    swung = [_turned(point, about, turn) for point in mirrored]
    view.area("stock", still).area("stock", swung)
    open_at, moved = (heel, swung[3]) if joint.at_heel else (toe, swung[0])
    view.area("waste", [about, open_at, moved])
    view.line("cut", about, open_at)
    view.dimension(open_at, moved, scale.finer().length(joint.gap), 1 if joint.at_heel else -1)
    view.dimension((reach, 0), (reach, joint.width), scale.length(joint.width))
    return view


def _across(point: "Point", corner: float) -> "Point":
    """Return a point mirrored in the joint line, which leaves the toe at half the corner."""
    x, y = point
    cos, sin = degrees.cos(corner), degrees.sin(corner)
    return x * cos + y * sin, x * sin - y * cos


def _turned(point: "Point", about: "Point", turn: float) -> "Point":
    """Return a point turned clockwise on screen about another."""
    x, y = point[0] - about[0], point[1] - about[1]
    cos, sin = degrees.cos(turn), degrees.sin(turn)
    return about[0] + x * cos - y * sin, about[1] + x * sin + y * cos


def _notes(answer: Answer, joint: OpenMiter) -> None:
    if joint.at_heel:
        answer.note("Open at the heel: the long points meet first, so cut a blunter miter.")
        place = "close to the blade; the piece then touches the fence again farther out"
    else:
        answer.note("Open at the toe: the short points meet first, so cut a sharper miter.")
        place = "away from the blade; the piece then touches the fence again close to the blade"
    answer.note(
        "Instead of reading a fraction of a degree off the saw, leave it set and hold a shim "
        f"between the piece's outer edge and the fence, {place}."
    )
    one, old = joint.turned(joint.turn), joint.saw
    step = abs(joint.width / degrees.cos(one) - joint.width / degrees.cos(old))
    answer.note(
        "Recutting one piece alone makes its joint line differ from the other's by "
        f"{answer.scale.finer().length(step)}: where a profile must meet, recut both."
    )
    answer.note(
        "First see that both pieces lie flat: a jamb or wallboard that stands proud opens a "
        "miter that is cut right."
    )


TOOL = Tool(
    slug="miter-fit",
    place="saw",
    title="Open miter",
    question="The joint is open at the heel or the toe: how far, and which way, is the saw set?",
    finds=("gap", "adjust", "casing", "picture frame", "shim", "miter"),
    inputs=[
        Length(
            "trim_width",
            "Trim width",
            help="Of both pieces, measured square across the face.",
            quantity="trim width",
            was=("width",),
        ),
        Length("gap", "Gap", help="At the open end of the joint, while the other end touches."),
        Choice(
            "open_at",
            "Open at",
            [("heel", "the heel, short points"), ("toe", "the toe, long points")],
            default="heel",
        ),
        Angle(
            "corner",
            "Cut for",
            default=90,
            least=1,
            most=179,
            help="The corner that the saw was set for.",
        ),
    ],
    work=work,
    gives=[
        Gives("turn_each", "angle", "Change the saw by, both pieces", short="Change"),
        Gives("way", "text", "Which way"),
        Gives("saw_each", "angle", "Set the saw at, both pieces", short="Saw"),
        Gives("shim", "length", "Shim for both pieces", short="Shim"),
        Gives("turn_one", "angle", "Change the saw by, one piece alone"),
        Gives("saw_one", "angle", "Set the saw at, one piece alone"),
        Gives("joint", "length", "Joint line, heel to toe", short="Joint"),
        Gives("gap_degree", "length", "One degree opens it by"),
        Gives("corner_true", "angle", "The corner really is", short="Corner"),
    ],
    example={"trim_width": "3 1/2", "gap": "1/8", "open_at": "heel"},
    cautions=[SAW],
    sources=[
        "Plane geometry: the joint line is the width over the sine of half the corner, and the "
        "gap at its end is the turn's tangent times that line.",
        "Heel for the short point, toe for the long point: a finish carpenter's page on the "
        "terms of miters.",
        "Shims at the fence, look for a proud jamb first: common practice, no source.",
    ],
)
