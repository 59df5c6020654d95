"""What a jamb comes to, in sentences."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    from ...lengths import Scale
    from .frame import Jamb

SNUG = 1 / 8
"""Inches of shim; with less a frame can't be set plumb in a leaning rough opening."""


def verdict_words(jamb: "Jamb", shim: "float | None", scale: "Scale") -> "list[str]":
    """Return the lengths to cut and what was assumed, ever shorter; `shim` is each side's room.

    Joint, depth and door are asked; housing, thickness and gaps have usual sizes, so they are said.
    """
    length, hung = scale.length, jamb.hung
    left, right = [length(leg) for leg in jamb.legs]
    head, joint = f"head {length(jamb.head)}", _joint(jamb, length)
    thick = f"jamb {length(jamb.stock.thick)}"
    floor, stop = f"floor {length(hung.floor)}", f"stop line {length(jamb.line)}"
    gaps = _gaps(jamb, length)
    if shim is not None and shim < SNUG:
        stop = f"shims only {scale.finer().length(shim)}"
    sides = f"Legs {left}" if jamb.is_level else f"Legs {left} left, {right} right"
    both = f"Legs {left}" if jamb.is_level else f"Legs {left}, {right}"
    bare = ", ".join([_joint(jamb, scale.number), "jamb " + scale.number(jamb.stock.thick)])
    bare += ", " + ", ".join([_gaps(jamb, scale.number), "floor " + scale.given(hung.floor)])
    assumed = f"{thick}; {gaps}, {floor}"
    said = [f"{legs}, {head} {joint}, {assumed}" for legs in (sides, both)]
    plain = [f"{legs}, {head}; {bare}" for legs in (sides, both)]
    brief = ", ".join([scale.bare(leg) for leg in jamb.legs[: 1 if jamb.is_level else 2]])
    last = f"Legs {brief}, head {scale.bare(jamb.head)}; {bare}"
    return [f"{words}; {stop}" for words in said + plain] + said + plain + [last]


def _joint(jamb: "Jamb", length: "Callable[[float], str]") -> str:
    """Return how the head is joined, in the shortest words that can't be misread."""
    joint: str = jamb.stock.joint
    return "housed " + length(jamb.stock.housing) if joint == "housed" else joint + " the legs"


def _gaps(jamb: "Jamb", length: "Callable[[float], str]") -> str:
    """Return the gaps beside, above and between the leaves: one number where they are alike."""
    hung = jamb.hung
    found = [length(hung.side), length(hung.head)]
    if hung.leaves > 1:
        found.append(length(hung.meeting))
    return "gaps " + (found[0] if len(set(found)) == 1 else ", ".join(found))


def notes(jamb: "Jamb", scale: "Scale") -> "list[str]":
    """Return how the frame is put together."""
    hung, length = jamb.hung, scale.length
    said = [
        f"Gaps taken: {length(hung.side)} at the sides, {length(hung.head)} at the head, "
        f"{length(hung.floor)} at the floor"
        + (f", {length(hung.meeting)} between the leaves." if hung.leaves > 1 else ".")
    ]
    if jamb.stock.joint == "housed":
        said.append(
            f"House the legs {length(jamb.stock.housing)} deep between the two marks, as wide as "
            "the head really is; lay both legs side by side and mark them from their upper ends "
            "at once."
        )
    if not jamb.is_level:
        said.append(
            "The floor falls: the legs differ, so the head is level. Floor gap and opening "
            "height are those at the higher side."
        )
    said.append(
        "Set the stop on the hinge side to its line, so that the leaf does not bind on it; on "
        "the strike side and at the head hold it to the latched leaf, then nail."
    )
    if not jamb.stop.mitered:
        said.append("A molded stop is coped or mitered at the head: leave its legs long for that.")
    return said
