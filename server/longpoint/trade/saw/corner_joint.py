"""Two pieces meet at this corner: what does the saw read?

The joint runs from the inner corner, where the inner edges meet, to the outer corner, where the
outer edges meet. Pieces of equal width share the corner evenly; of unequal width they do not.
"""

import math

from .. import degrees
from ..cautions import SAW, TEST_CUT, warn_if_sharp
from ..lengths import brief_angle, show_angle
from ..tool import Angle, Answer, Drawing, Given, Gives, Length, Refusal, Scale, Tool

LONGEST_RUN = 1200.0  # Inches; a longer joint is no joint that anyone cuts.

SHOWN = 0.05  # Degrees; less is shown as nothing.


class Corner:
    """One corner: its angle in degrees, the widths of its pieces in inches.

    Raises
    ------
    Refusal
        The corner is so sharp, or so flat for unequal widths, that the joint never ends.
    """

    def __init__(self, angle: float, width_a: float, width_b: float) -> None:
        self.angle = angle
        self.width_a = width_a
        self.width_b = width_b
        self.run_a = self._run(width_a, width_b)
        self.run_b = self._run(width_b, width_a)
        self.joint = math.sqrt(width_a * width_a + self.run_a * self.run_a)

    def _run(self, own: float, other: float) -> float:
        """Return how far the outer corner lies past the inner one, along the piece."""
        rise = degrees.sin(self.angle)
        along = other + own * degrees.cos(self.angle)
        if abs(along) > LONGEST_RUN * rise:
            shape = "sharp" if self.angle < 90 else "flat"
            raise Refusal(
                "corner",
                f"A corner of {show_angle(self.angle)} is too {shape} for pieces of these widths: "
                "their joint would run on for more than 100 feet.",
            )
        return along / rise


def work(given: Given, scale: Scale) -> Answer:
    """Return the settings, runs and joint of a corner."""
    width_a = given.number("width_a")
    corner = Corner(given.number("corner"), width_a, given.maybe("width_b") or width_a)
    saw_a = degrees.atan(corner.run_a / corner.width_a)
    saw_b = degrees.atan(corner.run_b / corner.width_b)
    answer = Answer(scale)
    _verdict(answer, corner, saw_a, saw_b)
    answer.angle("saw_a", saw_a, lead=True)
    answer.angle("saw_b", saw_b, lead=True)
    answer.length("run_a", corner.run_a)
    answer.length("run_b", corner.run_b)
    answer.length("joint", corner.joint)
    _scales(answer, saw_a, saw_b)
    answer.draw(lambda: _drawing(corner, scale))
    _notes(answer, corner, saw_a, saw_b)
    return answer


def _verdict(answer: Answer, corner: Corner, saw_a: float, saw_b: float) -> None:
    start = f"Corner {brief_angle(corner.angle)}: "
    if corner.width_a == corner.width_b:
        answer.verdict(f"{start}miter both pieces {brief_angle(saw_a)}, outer edge to the fence")
        return
    length = answer.scale.length
    answer.verdict(
        f"{start}A, {length(corner.width_a)} wide, {_cut(saw_a)}; B, {length(corner.width_b)} "
        f"wide, {_cut(saw_b)}",
        f"{start}A {_cut(saw_a)}; B {_cut(saw_b)}",
    )


def _cut(saw: float) -> str:
    if abs(saw) < SHOWN:
        return "square"
    return f"miter {brief_angle(abs(saw))}" + (", long point inside" if saw < 0 else "")


def _scales(answer: Answer, saw_a: float, saw_b: float) -> None:
    rows = [
        ["piece " + name, show_angle(saw), show_angle(90 - saw)]
        for name, saw in (("A", saw_a), ("B", saw_b))
    ]
    columns = ["Square cut reads", "0", "90"]
    answer.table("What the saw's scale reads", columns, rows)


def _notes(answer: Answer, corner: Corner, saw_a: float, saw_b: float) -> None:
    answer.note(
        "Outer edge against the fence: handle to the right for a joint on the piece's left end, "
        "to the left for one on its right end."
    )
    if corner.width_a != corner.width_b:
        turn = show_angle(180 - corner.angle)
        answer.note(f"The widths differ, so the settings do too; together they make {turn}.")
    for name, saw in (("A", saw_a), ("B", saw_b)):
        if saw < -SHOWN:
            answer.note(
                f"Piece {name} is so wide for this corner that its long point lies on the inner "
                "edge: miter the saw the other way."
            )
    warn_if_sharp(answer, saw_a, saw_b)


def _drawing(corner: Corner, scale: Scale) -> Drawing:
    """Draw A lying to the right of the inner corner and B turned up from it by the corner."""
    across = degrees.cos(corner.angle), -degrees.sin(corner.angle)
    outer = (-corner.run_a, corner.width_a)
    arm = 2.5 * max(corner.width_a, corner.width_b)
    arm_a, arm_b = arm + max(0.0, -corner.run_a), arm + max(0.0, -corner.run_b)
    out_b = (-degrees.sin(corner.angle), -degrees.cos(corner.angle))
    tip = (across[0] * arm_b, across[1] * arm_b)
    far = (tip[0] + out_b[0] * corner.width_b, tip[1] + out_b[1] * corner.width_b)
    view = Drawing(
        "The corner from the front",
        f"Two pieces meet at {show_angle(corner.angle)}; their joint is "
        f"{scale.length(corner.joint)} long.",
    )
    view.area("stock", [(0, 0), (arm_a, 0), (arm_a, corner.width_a), outer])
    view.area("stock", [(0, 0), tip, far, outer])
    view.line("cut", (0, 0), outer)
    view.arc("mark", (0, 0), arm / 4, 0, -corner.angle)
    half = corner.angle / 2
    view.text((degrees.cos(half) * arm / 2, -degrees.sin(half) * arm / 2), show_angle(corner.angle))
    view.tag((arm_a * 0.7, corner.width_a / 2), "A")
    view.tag(((tip[0] + far[0]) / 2 * 0.7, (tip[1] + far[1]) / 2 * 0.7), "B")
    view.dimension((arm_a, 0), (arm_a, corner.width_a), scale.length(corner.width_a))
    view.dimension(outer, (0, corner.width_a), scale.length(abs(corner.run_a)), -1)
    return view


TOOL = Tool(
    slug="corner-joint",
    place="saw",
    coated="girth",
    title="Corner joint",
    question="Two pieces meet at this corner: what does the saw read?",
    finds=("miter", "bevel", "butt", "casing", "baseboard", "protractor", "angle finder"),
    inputs=[
        Angle(
            "corner",
            "Corner",
            help="The angle between the inner edges, as an angle finder reads it.",
        ),
        Length("width_a", "Width of A"),
        Length("width_b", "Width of B", optional=True, default_text="as A"),
    ],
    work=work,
    gives=[
        Gives("saw_a", "angle", "Saw for A"),
        Gives("saw_b", "angle", "Saw for B"),
        Gives("run_a", "length", "A: long point past short point", short="A, past"),
        Gives("run_b", "length", "B: long point past short point", short="B, past"),
        Gives("joint", "length", "Joint line, heel to toe", short="Joint"),
    ],
    example={"corner": "90", "width_a": "3 1/2", "width_b": "2 1/4"},
    cautions=[SAW, TEST_CUT],
    sources=[
        "Plane geometry: the outer edges meet (w_b + w_a cos C) / sin C beyond the inner corner, "
        "measured along A.",
        "The stop near 50° of most miter saws: common practice, no source.",
    ],
)
