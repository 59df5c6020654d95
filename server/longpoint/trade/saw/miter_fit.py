"""The joint is open at the heel or the toe: how far, and which way, is the saw turned?"""

from .. import degrees
from ..cautions import SAW, warn_if_sharp
from ..lengths import show_angle
from ..tool import Angle, Answer, Choice, Drawing, Given, Length, Refusal, Scale, Tool

TYPE_CHECKING = False
if TYPE_CHECKING:
    Point = tuple[float, float]

SHIM_AT = 6.0
"""Inches from where the piece touches the fence again to the shim."""


class Joint:
    """A miter joint as it stands: lengths in inches, angles in degrees.

    The pieces touch at one end of the joint line; `turn` is what stands between their faces.
    """

    def __init__(self, given: Given) -> None:
        self.width = given.number("width")
        self.gap = given.number("gap")
        self.corner = given.number("corner")
        self.at_heel = given.text("open_at") == "heel"
        self.line = self.width / degrees.sin(self.corner / 2)
        self.saw = 90 - self.corner / 2
        self.turn = degrees.atan(self.gap / self.line)

    def turned(self, turn: float) -> float:
        """Return the setting that is off the old one by `turn`, the way that closes the joint."""
        return self.saw - turn if self.at_heel else self.saw + turn


def work(given: Given, scale: Scale) -> Answer:
    """Return the turn for one piece and for both, the new settings and the shim that makes them."""
    joint = Joint(given)
    _refuse_hopeless(joint, scale)
    answer = Answer(scale)
    _figures(answer, joint)
    _table(answer, joint)
    answer.draw(_drawing(joint, scale))
    _notes(answer, joint)
    warn_if_sharp(answer, joint.saw, joint.turned(joint.turn), joint.turned(joint.turn / 2))
    return answer


def _refuse_hopeless(joint: Joint, scale: Scale) -> None:
    if 0 < joint.turned(joint.turn) < 90:
        return
    most = joint.saw if joint.at_heel else 90 - joint.saw
    limit = ""
    if most < 90:
        limit = f" Less than {scale.length(joint.line * degrees.tan(most))} could be."
    raise Refusal(
        "gap",
        f"A gap of {scale.length(joint.gap)} on a joint {scale.length(joint.line)} long can't be "
        f"closed at the saw: it asks for {show_angle(joint.turn)} of turn.{limit} Measure the "
        "corner and cut both pieces anew.",
    )


def _figures(answer: Answer, joint: Joint) -> None:
    answer.angle("turn_one", joint.turn, label="Turn for one piece", lead=True)
    answer.angle("turn_each", joint.turn / 2, label="Turn for each of both", lead=True)
    way = "less: toward square" if joint.at_heel else "more: away from square"
    answer.words("way", way, label="Which way")
    answer.angle("saw_one", joint.turned(joint.turn), label="Setting then, one piece")
    answer.angle("saw_each", joint.turned(joint.turn / 2), label="Setting then, both")
    shim = SHIM_AT * degrees.tan(joint.turn / 2)
    where = answer.scale.length(SHIM_AT)
    answer.length("shim", shim, label=f"Shim for both, {where} along the fence", fine=True)
    answer.length("joint", joint.line, label="Joint line, heel to toe")
    opens = joint.line * degrees.tan(1)
    answer.length("gap_degree", opens, label="One degree opens it by", fine=True)
    answer.angle(
        "corner_true", 180 - 2 * joint.turned(joint.turn / 2), label="The corner then really is"
    )


def _table(answer: Answer, joint: Joint) -> None:
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


def _drawing(joint: Joint, scale: Scale) -> Drawing:
    """Return the corner with its gap: one piece lies still, the other is swung open."""
    end = "short point" if joint.at_heel else "long point"
    view = Drawing(
        "The joint as it stands",
        f"Open at the {end} by {scale.finer().length(joint.gap)}, closed at the other end.",
    )
    run = joint.width / degrees.tan(joint.corner / 2)
    reach = run + 1.6 * joint.width
    toe, heel = (0.0, 0.0), (run, joint.width)
    still = [toe, (reach, 0.0), (reach, joint.width), heel]
    mirrored = [_across(point, joint.corner) for point in still]
    about = toe if joint.at_heel else heel
    turn = joint.turn if joint.at_heel else -joint.turn
    swung = [_swung(point, about, turn) for point in mirrored]
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


def _swung(point: "Point", about: "Point", turn: float) -> "Point":
    """Return a point turned clockwise on screen about another."""
    x, y = point[0] - about[0], point[1] - about[1]
    cos, sin = degrees.cos(turn), degrees.sin(turn)
    return about[0] + x * cos - y * sin, about[1] + x * sin + y * cos


def _notes(answer: Answer, joint: Joint) -> None:
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
        "Turning for one piece alone makes its joint line differ from the other's by "
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
    question="The joint is open at the heel or the toe: how far is the saw turned?",
    finds=("gap", "adjust", "casing", "picture frame"),
    inputs=[
        Length("width", "Trim width", help="Of both pieces, measured square across the face."),
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
    example={"width": "3 1/2", "gap": "1/8", "open_at": "heel"},
    cautions=[SAW],
    sources=[
        "Plane geometry: the joint line is the width over the sine of half the corner, and the "
        "gap at its end is the turn's tangent times that line.",
        "Heel for the short point, toe for the long point: a finish carpenter's page on the "
        "terms of miters.",
        "Shims at the fence, look for a proud jamb first: common practice, no source.",
    ],
)
