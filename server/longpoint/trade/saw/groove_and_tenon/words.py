"""What groove and tenon say: the setup in one line, how to cut, what to beware of."""

from ...lengths import show_number
from .joint import GrooveJoint
from .plow import LOOSE, Kit
from .stacks import engraved, stack_words

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...answer import Answer
    from ...lengths import Scale

THIN_WALL = 3 / 16
TAPE = 0.005
"""Inches that a layer of painter's tape measures, about: woodworking magazine article."""


def cutter_words(joint: GrooveJoint, kit: "Kit | None", noun: str, scale: "Scale") -> str:
    """Return what plows the groove, as it is set up."""
    plow = joint.plow
    if kit is None or plow.stack is None:
        return f"one {noun}, {engraved(plow.cut, scale)}"
    said = stack_words(plow.stack, kit.chippers, kit.shims, scale)
    if plow.shim:
        said += f", 1 shim {engraved(plow.shim, scale)} more"
    return said


def verdict(answer: "Answer", joint: GrooveJoint, cutter: str) -> None:
    """Say the setup, the groove it cuts, and the tenon."""
    plow, scale = joint.plow, answer.scale
    cutter = cutter[0].upper() + cutter[1:]
    turned = f", {plow.passes} passes" if plow.passes > 1 else ""
    groove = f": groove {scale.decimal(joint.groove)}"
    tenon = f", tenon {scale.finer(32).length(joint.tenon_length)} long"
    fence = f", fence {scale.decimal(joint.wall)} off"
    shoulder = f", shoulders {scale.decimal(joint.shoulder)}"
    tail = fence if turned else shoulder
    # The tenon stays: it says how deep the groove is taken to be.
    stack = f"A stack of {scale.decimal(plow.cut)}"
    answer.verdict(
        cutter + turned + groove + tail + tenon,
        cutter + turned + groove + tenon,
        stack + turned + groove + tail + tenon,
        stack + turned + groove + tenon,
    )


def add_notes(answer: "Answer", joint: GrooveJoint, kit: "Kit | None", noun: str) -> None:
    """Say how groove and tenon are cut."""
    if joint.plow.passes > 1:
        _passes_note(answer, joint)
    else:
        answer.note(
            "Plow the grooves first, the show face of every piece against the fence, and mark it. "
            "Then try the tenon in scrap, a cut from each face: where the groove sits off center, "
            "set the cutter anew for the second face until the faces are flush."
        )
    if joint.plow.stack is not None:
        answer.note(
            "Stagger the chippers' teeth into the outer blades' gullets and spread the shims over "
            "the gaps between blades. Plow a scrap and try the panel: paint and a thick finish "
            "need room too."
        )
    if kit is not None and joint.plow.shim:
        _shim_note(answer, joint, kit)
    _tenon_note(answer, joint, noun)
    deeper = joint.tenon_length - joint.depth
    if deeper > 1e-9:
        answer.note(
            f"The tenon is {answer.scale.finer().length(deeper)} longer than the groove is deep: "
            "mortise the groove's bottom by that much more at each joint."
        )
    elif deeper > -1e-9:
        answer.note(
            "The tenon reaches the groove's bottom: leave 1/32 for glue, or the shoulders may "
            "not close."
        )


def _passes_note(answer: "Answer", joint: GrooveJoint) -> None:
    scale, passes = answer.scale, joint.plow.passes
    middle = "" if passes == 2 else f" Then clear the middle: {passes} passes in all."
    answer.note(
        f"Set the fence {scale.decimal(joint.wall)} from the cutter's near side. Run the piece, "
        "turn it face for face and run it again: the groove comes out centered." + middle
    )


def _shim_note(answer: "Answer", joint: GrooveJoint, kit: Kit) -> None:
    """Say where a shim that is not in the kit may come from, and what does without one."""
    scale, plow = answer.scale, joint.plow
    words = f"The kit is {engraved(plow.shim, scale)} short: add a shim of that thickness. "
    if abs(plow.shim - TAPE) < 0.002:
        words += f"Painter's tape measures about {scale.decimal(TAPE)}. "
    answer.note(
        words + f"Without one, one outer blade cuts the groove too, the fence "
        f"{scale.decimal(joint.wall)} off, the piece turned face for face, and the middle cleared "
        "after."
    )


def _tenon_note(answer: "Answer", joint: GrooveJoint, noun: str) -> None:
    if joint.passes > 1:
        guide = "on the router table" if noun == "bit" else "on the miter gauge"
        answer.note(
            f"Tenons in {joint.passes} passes per face {guide}: set a stop for the shoulder, cut "
            "it first, then move out to the end."
        )
    elif noun == "bit":
        answer.note(
            "Tenons in one pass per face on the router table: the rail's end along the fence, "
            "a square backer behind it."
        )
    else:
        answer.note(
            "Tenons in one pass per face: a sacrificial fence covers "
            f"{answer.scale.decimal(joint.bury)} of the cutter, the rail's end runs against it on "
            "the miter gauge. Raise the blades into that fence slowly."
        )


def warn(answer: "Answer", joint: GrooveJoint) -> None:
    """Warn of a groove too wide for the stock, and of walls that split."""
    share = joint.groove / joint.stock
    if share > 0.5:
        answer.caution(
            f"The groove takes {show_number(100 * share, 0)} % of the thickness: more than half "
            "leaves the walls too weak. Use thicker stock, or rabbet the panel to a thinner tongue."
        )
    elif joint.groove > joint.stock / 3 + LOOSE:
        answer.note(
            f"The groove takes {show_number(100 * share, 0)} % of the thickness, more than the "
            "old third; up to a half is accepted where machines cut the joint."
        )
    if joint.wall < THIN_WALL:
        answer.caution(
            f"Walls only {answer.scale.finer().length(joint.wall)} thick split easily: don't "
            "lever the panel in, and keep nails out of them."
        )
