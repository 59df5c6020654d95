"""What to say of a set of casing: the sentence that decides, and the order of work."""

from ...geometry.miters import settings
from ...lengths import brief_angle

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...tool import Answer
    from .casing import Casing
    from .stool import Stool


LONG_POINT = " long point"


def give_verdict(answer: "Answer", casing: "Casing", stool: "Stool | None", is_taped: bool) -> None:
    """Say head and legs and how they meet; for a window's stool its section and length first."""
    length = answer.scale.length
    reveal = f"reveal {length(casing.reveal)}"
    long, how = _head_and_legs(answer, casing)
    if stool is None:
        answer.verdict(f"Casing: {long}, {how}, {reveal}", f"{long}, {how}, {reveal}", long)
        return
    _decide_stool(answer, stool, is_taped, (long, how, reveal))


def _decide_stool(
    answer: "Answer", stool: "Stool", is_taped: bool, casing: "tuple[str, str, str]"
) -> None:
    """Give the verdict of a window's stool and casing, the stool's own assumptions first."""
    length, (long, how, reveal) = answer.scale.length, casing
    brief = long.replace(LONG_POINT, "")
    size = f"{length(stool.thick)} x {length(stool.width)} x {length(stool.length)}"
    notch = "" if is_taped else f" (notch {length(stool.inside)} not taped)"
    ends = " returned" if stool.returned else ""
    nose = f", nose {length(stool.nose)}"
    answer.verdict(
        f"Stool {size}{notch}{ends}{nose}; {long}, {how}, {reveal}",
        f"Stool {size}{notch}{ends}{nose}; {brief}, {how}, {reveal}",
        f"Stool {size}{notch}{ends}{nose}; {brief}, {how}",
        f"Stool {size}{notch}{ends}{nose}; {brief}",
        f"Stool {size}{notch}{ends}; {brief}",
        f"Stool {size}{notch}; {brief}",
        f"Stool {length(stool.width)} x {length(stool.length)}{notch}; {brief}",
        f"Stool {length(stool.length)}; {brief}",
    )


def _head_and_legs(answer: "Answer", casing: "Casing") -> "tuple[str, str]":
    """Return head and legs with their lengths, and in words how they meet."""
    length = answer.scale.length
    if casing.head == "miter":
        head, legs = settings(casing.top, casing.side)
        saw = brief_angle(head) if head == legs else f"{brief_angle(head)}/{brief_angle(legs)}"
        words = f"head {length(casing.frame.width)}, legs {length(casing.frame.height)}"
        return words + LONG_POINT, "saw " + saw
    if casing.head == "butt":
        long = casing.outer + 2 * casing.over
        over = f", {length(casing.over)} past" if casing.over else ""
        return f"legs {length(casing.leg)}, head {length(long)}", "butted on them" + over
    words = f"legs {length(casing.leg)}, head {length(casing.between)}"
    return words, f"blocks {length(casing.corner.width)}"


def add_notes(answer: "Answer", casing: "Casing", stool: "Stool | None", is_taped: bool) -> None:
    if stool and not is_taped:
        answer.note(
            "Nobody taped from the wall's face in to the sash: "
            f"{answer.scale.length(stool.inside)} is taken, more than most windows need. Tape it "
            "before you rip the stool."
        )
    answer.note(
        "Mark the reveal line on head and legs of the jamb first, and check every length against "
        "the lines before you cut: openings are seldom as square as the sum."
    )
    if casing.head == "miter":
        answer.note("Cut the head first, tack it to its line, then fit each leg to it.")
    elif casing.head == "butt":
        answer.note("Legs first, then the head across them; square-edged casing only is butted.")
    else:
        answer.note("Tack the legs, set the blocks centered on them, then fit the head between.")
    if casing.kind == "door":
        answer.note("One face of the door: cut the same again for the other.")
    if stool:
        answer.note(
            "Scribe the stool's horns to the wall with its tongue between the jambs; the casing "
            "stands on it. Returns are cut in pairs, one for each hand."
        )
    answer.note(
        "To buy: the pieces point to point and 2 in more for each corner and return, where two "
        "pieces are cut to meet; one side of the opening."
    )
