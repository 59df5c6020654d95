"""A part wider or thicker than the stock: how many strips, and how wide is each one ripped?

Strips side by side and layers face to face are the same arithmetic: each glued side costs
what it takes to make it true.
"""

import math

from ..tool import Answer, Choice, Given, Length, Number, Refusal, Scale, Tool
from .glue_drawing import end_view, plan_view
from .glue_spread import add_clamps, add_glue

MOST = 60
_HAIR = 1e-9  # Of a strip: float noise must not add one where the widths come out exactly.


class Stack:
    """Strips that are glued to one part, all alike as ripped; all lengths in inches.

    Parameters
    ----------
    finished, trim : float
        Size of the part; what is cut off after gluing.
    stock : float
        Size of a strip as it comes.
    loss : float
        What each glued side loses when it is made true.
    """

    def __init__(self, finished: float, stock: float, loss: float, trim: float) -> None:
        self.glued = finished + trim
        self.stock = stock
        self.loss = loss
        self.strips = max(1, int(math.ceil((self.glued - 2 * loss) / (stock - 2 * loss) - _HAIR)))

    @property
    def joints(self) -> int:
        """Number of glue lines."""
        return self.strips - 1

    @property
    def rip(self) -> float:
        """Size of each strip before its glued sides are made true."""
        return (self.glued + 2 * self.joints * self.loss) / self.strips

    def shown(self, index: int) -> float:
        """Return what a strip measures in the part; the outer ones have one glued side."""
        sides = (index > 0) + (index < self.joints)
        return self.rip - sides * self.loss


def work(given: Given, scale: Scale) -> Answer:
    """Return strips or layers of a glued part, its clamps and its glue."""
    wider = given.text("way") == "wider"
    stack = _stack(given, wider, scale)
    answer = Answer(scale)
    _figures(answer, stack, wider)
    across = given.number("thickness") if wider else given.number("part_width")
    length = given.maybe("length")
    answer.draw(end_view(stack, across, wider, scale))
    if stack.joints and length is not None:
        clamps = add_clamps(answer, given, length * across)
        add_glue(answer, given, length * across * stack.joints)
        answer.draw(plan_view(stack, length, across, clamps, wider, scale))
    _pieces(answer, stack, wider, across, length)
    _table(answer, stack, wider)
    _notes(answer, stack, wider)
    return answer


def _stack(given: Given, wider: bool, scale: Scale) -> Stack:
    """Return the stack asked for, or refuse it."""
    names = ("finished_width", "strip_width", "joint_loss")
    if not wider:
        names = ("finished_thickness", "stock_thickness", "face_loss")
    finished, stock, loss = [given.number(name) for name in names]
    fine = scale.finer()
    if stock <= 2 * loss:
        raise Refusal(
            names[2],
            f"A loss of {fine.length(loss)} on both sides leaves nothing of {fine.length(stock)}: "
            f"use less than {fine.length(stock / 2)}.",
        )
    glued = finished + given.number("trim")
    if (glued - 2 * loss) / (stock - 2 * loss) > MOST:
        raise Refusal(
            names[1],
            f"Pieces of {fine.length(stock)} take more than {MOST} to make "
            f"{fine.length(glued)}: use larger stock.",
        )
    return Stack(finished, stock, loss, given.number("trim"))


def _figures(answer: Answer, stack: Stack, wider: bool) -> None:
    answer.count("strips", stack.strips, label="Strips" if wider else "Layers", lead=True)
    answer.length("rip_width", stack.rip, label="Rip to" if wider else "Plane to", lead=True)
    answer.count("joints", stack.joints, label="Glue lines")
    answer.length("glued_size", stack.glued, label="As glued")
    answer.length("to_spare", stack.stock - stack.rip, label="Left of each strip")
    if stack.joints:
        answer.length("outer_strip", stack.shown(0), label="Outer ones show")
    if stack.joints > 1:
        answer.length("inner_strip", stack.shown(1), label="Inner ones show")


def _pieces(
    answer: Answer, stack: Stack, wider: bool, across: float, length: "float | None"
) -> None:
    if length is None:
        return
    width, thickness = (stack.rip, across) if wider else (across, stack.rip)
    name = "Strip" if wider else "Layer"
    for index in range(stack.strips):
        answer.piece(str(index + 1), name, length, width=width, thickness=thickness)


def _table(answer: Answer, stack: Stack, wider: bool) -> None:
    """List the strips in order: which way the rings turn, and what each shows when glued."""
    rows = [
        [str(index + 1), _turned(index, stack, wider), answer.scale.length(stack.shown(index))]
        for index in range(stack.strips)
    ]
    answer.table("Strip by strip", ["Strip", "Bark side", "Shows"], rows)


def _turned(index: int, stack: Stack, wider: bool) -> str:
    """Return which way a strip's bark side faces: by turns side by side, inward in layers."""
    if wider:
        return "down" if index % 2 else "up"
    return "down" if 2 * index < stack.strips else "up"


def _notes(answer: Answer, stack: Stack, wider: bool) -> None:
    if not stack.joints:
        answer.note("One piece of this stock is enough: no glue-up is needed.")
        return
    if wider:
        answer.note(
            "Turn the growth rings up and down by turns, so that each strip's cup works against "
            "the next and the panel stays near flat. Where the face must look its best, choose "
            "it first and hold the panel flat by its frame."
        )
        answer.note(
            "Joint the edges one face in, the next face out against the fence: what the fence is "
            "off at one edge, its neighbor gives back."
        )
    else:
        answer.note(
            "Turn the bark sides in, toward the middle: what cups as it dries then presses its "
            "edges shut. Keep both halves alike in thickness and species, so that it doesn't bow."
        )
    answer.note(
        "Lay all out dry, surface grain rising the same way for the planer, and draw one big "
        "triangle across the strips: it shows order and direction at a glance."
    )
    answer.note(
        "Glue on the day you joint. Dry, every joint must close under the pressure of a hand: "
        "clamps hold a joint, they don't make it."
    )


TOOL = Tool(
    slug="glue-up",
    place="saw",
    title="Glue-up",
    question="A part wider or thicker than the stock: how many strips, how wide, what clamps?",
    finds=("laminate", "edge joint", "tabletop", "panel"),
    inputs=[
        Choice(
            "way",
            "The part is",
            [("wider", "wider than the stock"), ("thicker", "thicker than the stock")],
            default="wider",
        ),
        Length("finished_width", "Finished width", only_when=("way", "wider")),
        Length(
            "strip_width",
            "Strip width",
            help="The widest strip the stock gives, as it comes.",
            only_when=("way", "wider"),
        ),
        Length("finished_thickness", "Finished thickness", only_when=("way", "thicker")),
        Length(
            "stock_thickness",
            "Stock thickness",
            help="As it comes.",
            only_when=("way", "thicker"),
        ),
        Length("part_width", "Part width", only_when=("way", "thicker")),
        Length(
            "joint_loss",
            "Lost per edge",
            default="1/16",
            least=0,
            help="Jointing each glued edge.",
            only_when=("way", "wider"),
        ),
        Length(
            "face_loss",
            "Lost per face",
            default="1/32",
            least=0,
            help="Planing each glued face.",
            only_when=("way", "thicker"),
        ),
        Length(
            "trim",
            "To trim after",
            default=0,
            least=0,
            help="Taken off in all once the glue is dry; 1/2 is usual on a panel.",
        ),
        Length(
            "length", "Length", optional=True, help="Of the part as glued: for clamps and glue."
        ),
        Length("thickness", "Thickness", default="3/4", only_when=("way", "wider")),
        Choice("wood", "Wood", [("hard", "hardwood"), ("soft", "softwood")], default="hard"),
        Length("clamp_spacing", "Clamps every", default=8, least=1, help="At most."),
        Number(
            "film",
            "Glue film",
            default=6,
            most=20,
            unit="mil",
            help="Thousandths of an inch of wet glue, spread on one side.",
        ),
    ],
    work=work,
    example={
        "finished_width": "9 1/2",
        "strip_width": "3 1/2",
        "thickness": "1 3/8",
        "length": "36",
    },
    cautions=[
        "Ripping: guard, splitter and push stick in place. Wear gloves for glue, not at the saw.",
    ],
    sources=[
        "Arithmetic: every glued side but the two outermost costs one jointing.",
        "Clamp pressure of 100 to 250 pounds per square inch from light to dense wood: Wood "
        "Handbook chapter 10 as quoted on a woodworking page; 100 to 150 for softwood and 175 to "
        "250 for hardwood: glue makers, seen as reprinted.",
        "6 mils of wet glue, 1/16 lost per edge, 1/2 to trim, clamps about 8 apart: from memory.",
        "Rings by turns, bark sides in, edges jointed face in and face out, the triangle: common "
        "practice, no source.",
    ],
)
