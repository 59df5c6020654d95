"""What is said of a splayed box: its verdict, how its ends are laid on the saw, its notes."""

from ...geometry.laid_on_saw import laid
from ...lengths import brief_angle, show_angle

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...tool import Answer
    from .box import Box

FEATHER = 45.0  # Degrees of bevel past which a butted end runs out to a feather edge.


def add_verdict(answer: "Answer", box: "Box", butted: bool, sized: bool) -> None:
    """Say the joint, what is set, and the boards where their sizes are known."""
    joint, bevel = ("Butted", abs(box.butt)) if butted else ("Mitered", box.bevel)
    saw = f"{joint}: miter {brief_angle(box.miter)}, bevel {brief_angle(bevel)}"
    edges = f", rip edges {brief_angle(box.lean)}" if box.lean else ""
    boards = _boards(answer, box, butted) if sized else [f"; {box.sides} sides"]
    answer.verdict(*[f"{saw}{edges}{words}" for words in boards], saw + boards[-1])


def _boards(answer: "Answer", box: "Box", butted: bool) -> "list[str]":
    """Return the boards at their wide edge, in ever fewer words."""
    wide, number = answer.scale.length(box.wide), box.sides
    if not butted:
        return [f"; {number} boards {wide} at the wide edge", f"; {number} boards {wide} wide edge"]
    short = answer.scale.length(box.butted(box.wide))
    if not box.alternates:
        return [f"; {number} boards {short}, each against the next", f"; {number} boards {short}"]
    half = number // 2
    return [
        f"; wide edges {half} at {wide}, {half} between at {short}",
        f"; {half} at {wide}, {half} between {short}",
    ]


def add_laying(answer: "Answer", box: "Box", bevels: str, butted: bool) -> None:
    """List how each end lies, outer face up, as seen from outside with the wide edge up."""
    face_longer = box.butt < 0 if butted else True
    edges = {"top": "wide edge", "bottom": "narrow edge"}
    rows = []
    for end, side in (("left", "right"), ("right", "left")):
        cut = laid(side, bevels, "top", face_longer=face_longer)
        rows.append([end, edges[cut.edge], cut.handle, cut.keep])
    name, bevel = ("Butted", abs(box.butt)) if butted else ("Mitered", box.bevel)
    answer.table(
        f"{name}: outer face up, blade beveled {bevels} {show_angle(bevel)}",
        ["End", "At the fence", "Handle", "Keep"],
        rows,
    )


def add_notes(answer: "Answer", box: "Box", butted: bool, sized: bool) -> None:
    """Say how the board is held, what is ripped first, and how butted boards meet."""
    answer.note(
        "Wide edge up, as seen from outside, unless the box is turned over. Handle says where "
        "the saw's handle goes, keep which side of the blade is yours."
    )
    if box.lean:
        answer.note(
            f"Rip the top and bottom edges at {show_angle(box.lean)} first, parallel to each "
            "other, so that they lie level when the side leans."
        )
    if butted:
        _butted_notes(answer, box, sized)
    if abs(box.butt) > FEATHER:
        answer.note(
            f"Butted at a bevel of {show_angle(abs(box.butt))} the ends run out to feather "
            "edges: with this many sides miter them."
        )


def _butted_notes(answer: "Answer", box: "Box", sized: bool) -> None:
    how = "every other board runs past at both ends, the ones between butt against it"
    if not box.alternates:
        how = "each board butts against the next at one end and runs past at the other"
    answer.note(f"Both ends of every board are cut at the same setting; {how}.")
    if sized and box.butted_back > 0:
        back = answer.scale.finer().length(box.butted_back)
        answer.note(
            f"Lengths are marked on the outer face; the inner one is {back} longer at each end: "
            "leave that on the blank."
        )
