"""A part wider or thicker than the stock: how many strips, and how wide is each one ripped?"""

from ...lumber.strips import Strips, is_used_up
from ...tool import Answer, Choice, Given, Gives, Length, Number, Refusal, Scale, Tool
from .spread import add_clamps, add_force, add_glue, clamps_along
from .views import end_view, plan_view

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

MOST = 60
_SIZES = {
    True: ("finished_width", "board_width", "joint_loss"),
    False: ("finished_thickness", "stock_thickness", "face_loss"),
}  # Inputs of a part wider than the stock, and of one thicker.


def work(given: Given, scale: Scale) -> Answer:
    """Return strips or layers of a glued part, its clamps and its glue."""
    wider, trim = given.text("way") == "wider", given.number("trim")
    finished, stock, loss = [given.number(name) for name in _SIZES[wider]]
    _refuse(finished + trim, stock, loss, wider, scale)
    strips = Strips(finished + trim, stock, loss)
    across = given.maybe("thickness") if wider else given.number("part_width")
    length = given.maybe("length")
    answer = Answer(scale)
    _verdict(answer, strips, wider, trim)
    _figures(answer, strips, stock, wider)
    answer.draw(end_view(strips, across, wider, scale))
    if strips.joints and length is not None:
        clamps = clamps_along(length, given.number("clamp_spacing"))
        add_clamps(answer, length, clamps, wider)
        if across is not None:
            add_force(answer, clamps, given.text("wood"), length * across)
            add_glue(answer, length * across * strips.joints, given.number("film"))
        answer.draw(plan_view(strips, length, None if wider else across, clamps, scale))
    if length is not None:
        _piece(answer, strips, wider, across, length)
    _table(answer, strips, wider)
    _notes(answer, strips, wider)
    return answer


def _refuse(glued: float, stock: float, loss: float, wider: bool, scale: Scale) -> None:
    """Refuse what no glue-up can make, in inches."""
    fine = scale.finer()
    _, of_stock, of_loss = _SIZES[wider]
    if glued <= stock:
        return
    if is_used_up(stock, loss):
        raise Refusal(
            of_loss,
            f"A loss of {fine.length(loss)} on both sides leaves nothing of {fine.length(stock)}: "
            f"use less than {fine.length(stock / 2)}.",
        )
    if (glued - 2 * loss) / (stock - 2 * loss) > MOST:
        raise Refusal(
            of_stock,
            f"Pieces of {fine.length(stock)} take more than {MOST} to make "
            f"{fine.length(glued)}: use larger stock.",
        )


def _verdict(answer: Answer, strips: Strips, wider: bool, trim: float) -> None:
    """Say what is ripped or planed, what truing takes off, and what is trimmed after."""
    say, fine = answer.scale.length, answer.scale.finer().length
    rip, made = say(strips.rip), say(strips.size)
    if not strips.joints:
        answer.verdict(
            f"No glue-up: one board, ripped to {rip}" if wider else f"No glue-up: plane to {rip}"
        )
        return
    many = f"{strips.count} {'strips' if wider else 'layers'}"
    what = f"{'Rip' if wider else 'Plane'} {many} to {rip}"
    if strips.loss and wider:
        what += f", joint {fine(strips.loss)} off each glued edge"
    elif strips.loss:
        what += f", then {fine(strips.loss)} off each glued face"
    then = f"{made} as glued" + (f", trim {say(trim)}" if trim else "")
    answer.verdict(f"{what}: {then}", what, f"{many} of {rip}: {then}")


def _figures(answer: Answer, strips: Strips, stock: float, wider: bool) -> None:
    layers, plane = ("", "") if wider else ("Layers", "Plane to")
    answer.count("strips", strips.count, label=layers, lead=True)
    answer.length("rip_width", strips.rip, label=plane, lead=True)
    answer.count("joints", strips.joints)
    answer.length("glued_size", strips.size)
    answer.length("to_spare", stock - strips.rip)
    if strips.joints:
        answer.length("outer_strip", strips.shows(0))
    if strips.joints > 1:
        answer.length("inner_strip", strips.shows(1))


def _piece(
    answer: Answer, strips: Strips, wider: bool, across: "float | None", length: float
) -> None:
    """Add the strips, which are cut alike, as one line of the cut list."""
    tag, name = ("S", "Strip") if wider else ("L", "Layer")
    width, thickness = (strips.rip, across) if wider else (across, strips.rip)
    answer.piece(tag, name, length, width=width, thickness=thickness, count=strips.count)


def _table(answer: Answer, strips: Strips, wider: bool) -> None:
    """List the strips in order: which way the rings turn, and what each shows when glued."""
    rows = [
        [str(index + 1), _turned(index, strips, wider), answer.scale.length(strips.shows(index))]
        for index in range(strips.count)
    ]
    answer.table("Strip by strip", ["Strip", "Bark side", "Shows"], rows)


def _turned(index: int, strips: Strips, wider: bool) -> str:
    """Return which way a strip's bark side faces: alternating side by side, inward in layers."""
    if wider:
        return "down" if index % 2 else "up"
    return "down" if 2 * index < strips.count else "up"


def _notes(answer: Answer, strips: Strips, wider: bool) -> None:
    if not strips.joints:
        answer.note("One piece of this stock is enough: no glue-up is needed.")
        return
    if wider:
        answer.note(
            "Alternate the growth rings, bark side up and bark side down, so that each strip's "
            "cup works against the next and the panel stays near flat. Where the face must look "
            "its best, choose it first and hold the panel flat by its frame."
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


def _with_thickness(raw: "dict[str, Any]") -> "dict[str, Any]":
    """Put in the 3/4 inch that the first version of the form took for a thickness not given."""
    kept = dict(raw)
    if kept.get("way") in (None, "", "wider") and kept.get("thickness") in (None, ""):
        kept["thickness"] = 0.75
    return kept


TOOL = Tool(
    slug="glue-up",
    place="saw",
    title="Glue-up",
    question="A part wider or thicker than the stock: how many strips, how wide, what clamps?",
    finds=("laminate", "edge joint", "tabletop", "panel", "clamp", "strip", "stave"),
    inputs=[
        Choice(
            "way",
            "The part is",
            [("wider", "wider than the stock"), ("thicker", "thicker than the stock")],
            default="wider",
        ),
        Length("finished_width", "Finished width", only_when=("way", "wider")),
        Length(
            "board_width",
            "Board width",
            help="The widest strip the stock gives, as it comes.",
            only_when=("way", "wider"),
            quantity="board width",
            was=("strip_width",),
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
        Length("length", "Length", optional=True, help="Of the part as glued: for clamps."),
        Length(
            "thickness",
            "Thickness",
            optional=True,
            only_when=("way", "wider"),
            help="Of the strips as glued: for the force of the clamps and the glue.",
        ),
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
    gives=[
        Gives("strips", "count", "Strips"),
        Gives("rip_width", "length", "Rip to", short="rip"),
        Gives("joints", "count", "Glue lines"),
        Gives("glued_size", "length", "As glued"),
        Gives("to_spare", "length", "Left of each piece"),
        Gives("outer_strip", "length", "Outer ones show", sometimes=True),
        Gives("inner_strip", "length", "Inner ones show", sometimes=True),
        Gives("clamps", "count", "Clamps", sometimes=True),
        Gives("clamp_gap", "length", "Clamp to clamp", sometimes=True),
        Gives("clamp_force", "number", "Force of each clamp", sometimes=True),
        Gives("glue", "number", "Glue", sometimes=True),
    ],
    upgrades=(_with_thickness,),
    example={
        "finished_width": "9 1/2",
        "board_width": "3 1/2",
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
        "Alternating rings, bark sides in, edges jointed face in and face out, the triangle: "
        "common practice, no source.",
    ],
)
