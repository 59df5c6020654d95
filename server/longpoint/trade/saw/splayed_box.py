"""Sides that lean: what is set on the saw for mitered and for butted corners?"""

from .. import degrees
from ..cautions import SAW, TEST_CUT, warn_if_sharp
from ..lengths import show_angle
from ..tool import Angle, Answer, Choice, Count, Drawing, Given, Length, Refusal, Scale, Tool, miter
from .laid_on_saw import laid

FEATHER = 45.0  # Degrees of tilt past which a butted end runs out to a feather edge.
SKETCH = (12.0, 8.0)
"""Narrow side and height that are drawn while none are given, inches."""


class Box:
    """A box of `sides` equal sides, wider at the top: settings in degrees, sizes in inches.

    `butt` is positive where the outer face of a butted end is shorter than its inner face.
    """

    def __init__(self, given: Given) -> None:
        self.sides = given.count("sides")
        self.lean = given.number("lean")
        half = 180 / self.sides
        self.miter = degrees.atan(degrees.sin(self.lean) * degrees.tan(half))
        self.bevel = degrees.asin(degrees.cos(self.lean) * degrees.sin(half))
        level, upright = degrees.cos(self.lean), degrees.sin(self.lean)
        self.butt = degrees.asin(upright * upright + level * level * degrees.cos(2 * half))
        self.sized = given.maybe("narrow") is not None
        self.narrow = given.maybe("narrow") or SKETCH[0]
        self.height = given.maybe("height") or SKETCH[1]
        self.slant = self.height / level
        self.wide = self.narrow + 2 * self.slant * degrees.tan(self.miter)


def work(given: Given, scale: Scale) -> Answer:
    """Return the settings of both joints, how each end is laid, and the sides where asked."""
    _refuse_half_sized(given)
    box = Box(given)
    answer = Answer(scale)
    _figures(answer, box)
    if box.sized:
        _piece(answer, box)
    _table(answer, box, given.text("tilt"), butted=False)
    _table(answer, box, given.text("tilt"), butted=True)
    answer.draw(_board(box, scale))
    answer.draw(_section(box, scale))
    _notes(answer, box)
    warn_if_sharp(answer, box.miter, box.bevel, box.butt)
    return answer


def _refuse_half_sized(given: Given) -> None:
    for name, other, words in (
        ("narrow", "height", "how long the narrow edge is"),
        ("height", "narrow", "how high the box stands"),
    ):
        if given.maybe(name) is None and given.maybe(other) is not None:
            raise Refusal(name, f"To size the sides say {words} too, or leave both empty.")


def _figures(answer: Answer, box: Box) -> None:
    answer.angle("miter", box.miter, label="Swing, either joint", lead=True)
    answer.angle("bevel", box.bevel, label="Tilt, mitered", lead=True)
    answer.angle("butt_bevel", abs(box.butt), label="Tilt, butted")
    answer.angle("edge_bevel", box.lean, label="Top and bottom edges, rip at")
    if box.sized:
        answer.length("wide", box.wide, label="Wide edge, outer face")
        answer.length("slant", box.slant, label="Width of the board")


def _piece(answer: Answer, box: Box) -> None:
    end = miter(box.miter, bevel=box.bevel)
    answer.piece(
        "1",
        "Side, mitered, outer face",
        box.wide,
        (end, end),
        short_point=box.narrow,
        width=box.slant,
        count=box.sides,
    )


def _table(answer: Answer, box: Box, tilt: str, *, butted: bool) -> None:
    """List how each end lies, outer face up, as seen from outside with the wide edge up."""
    face_longer = box.butt < 0 if butted else True
    edges = {"top": "wide edge", "bottom": "narrow edge"}
    rows = []
    for end, side in (("left", "right"), ("right", "left")):
        cut = laid(side, tilt, "top", face_longer=face_longer)
        rows.append([end, edges[cut.edge], cut.swing, cut.keep])
    name = "Butted" if butted else "Mitered"
    bevel = abs(box.butt) if butted else box.bevel
    answer.table(
        f"{name}: outer face up, blade tilted {tilt} {show_angle(bevel)}",
        ["End", "At the fence", "Swing", "Keep"],
        rows,
    )


def _board(box: Box, scale: Scale) -> Drawing:
    overhang = (box.wide - box.narrow) / 2
    view = Drawing(
        "One side, outer face",
        f"Ends {show_angle(box.miter)} off square; {box.sides} sides alike.",
    )
    left, right = (overhang, box.slant), (overhang + box.narrow, box.slant)
    view.area("stock", [(0, 0), (box.wide, 0), right, left])
    view.line("cut", (0, 0), left).line("cut", (box.wide, 0), right)
    view.tag((box.wide / 2, box.slant / 2), "1")
    if box.sized:
        view.dimension((0, 0), (box.wide, 0), scale.length(box.wide))
        view.dimension(left, right, scale.length(box.narrow), -1)
        view.dimension((box.wide, 0), (box.wide, box.slant), scale.length(box.slant))
    return view


def _section(box: Box, scale: Scale) -> Drawing:
    out, thick = box.height * degrees.tan(box.lean), box.height / 10 / degrees.cos(box.lean)
    view = Drawing(
        "The lean, cut through", f"The side leans out {show_angle(box.lean)} from upright."
    )
    foot, head = (0.0, box.height), (out, 0.0)
    view.area("stock", [foot, head, (out - thick, 0), (-thick, box.height)])
    view.line("clearance", foot, (0, 0))
    view.line("wall", (-2 * thick, box.height), (max(out, thick), box.height))
    if box.lean:
        view.arc("mark", foot, box.height / 2, 270, box.lean)
    if box.sized:
        view.dimension((-2 * thick, box.height), (-2 * thick, 0), scale.length(box.height))
    return view


def _notes(answer: Answer, box: Box) -> None:
    answer.note(
        "Wide edge up, as seen from outside, unless the box is turned over. Swing says where the "
        "saw's handle goes, keep which side of the blade is yours."
    )
    answer.note(
        f"Rip the top and bottom edges at {show_angle(box.lean)} first, parallel to each other, "
        "so that they lie level when the side leans."
    )
    answer.note(
        "Butted: both ends of every board are cut at the same setting; the boards that run past "
        "are longer by what they cover."
    )
    if abs(box.butt) > FEATHER:
        answer.note(
            f"Butted at {show_angle(abs(box.butt))} of tilt the ends run out to feather edges: "
            "with this many sides miter them."
        )


TOOL = Tool(
    slug="splayed-box",
    place="saw",
    title="Splayed box",
    question="Sides that lean: what is set on the saw, mitered or butted?",
    finds=("hopper", "tray", "planter", "taper", "compound miter"),
    inputs=[
        Count("sides", "Sides", least=3, most=24),
        Angle("lean", "Lean", least=0, most=85, help="Of each side from upright."),
        Length(
            "narrow",
            "Narrow edge",
            optional=True,
            help="One side's outer face where the box is narrow.",
        ),
        Length("height", "Height", optional=True, help="Upright, not along the board."),
        Choice(
            "tilt",
            "Blade tilts",
            [("left", "to the left"), ("right", "to the right")],
            default="left",
            help="Where the top of the blade leans.",
        ),
    ],
    work=work,
    example={"sides": "4", "lean": "15", "narrow": "12", "height": "10"},
    cautions=[SAW, TEST_CUT],
    sources=[
        "Solid geometry, for n sides: swing is the arc tangent of sin(lean) tan(180 / n), tilt "
        "mitered the arc sine of cos(lean) sin(180 / n), tilt butted what the angle between two "
        "sides is off square.",
        "Manual of a compound miter saw: four sides 26 from level are cut at 42 and 18.",
        "Edges ripped first, feather edges: common practice, no source.",
    ],
)
