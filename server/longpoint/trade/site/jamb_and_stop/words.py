"""What a jamb comes to, in sentences."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale
    from .frame import Jamb

SNUG = 1 / 8
"""Inches of shim; with less a frame can't be set plumb in a leaning rough opening."""


def verdict_words(jamb: "Jamb", shim: "float | None", scale: "Scale") -> "list[str]":
    """Return the lengths to cut and what was assumed, ever shorter; `shim` is each side's room."""
    length, stock = scale.length, jamb.stock
    left, right = length(jamb.legs[0]), length(jamb.legs[1])
    legs = f"Legs {left}" if jamb.is_level else f"Legs {left} left, {right} right"
    joint = {
        "housed": f"housed {length(stock.housing)}",
        "between": "between the legs",
        "over": "over the legs",
    }[stock.joint]
    cut = f"{legs}, head {length(jamb.head)} {joint}"
    section = f"jamb {length(stock.thick)} x {length(stock.depth)}"
    stop = f"stop line {length(jamb.line)}"
    said = [
        f"{cut}, {section}; {stop} for a {length(jamb.hung.thickness)} door",
        f"{cut}, {section}; {stop}",
        f"{cut}; {length(stock.depth)} deep; {stop}",
        f"{cut}; {stop}",
        cut,
        f"{legs}, head {length(jamb.head)}",
    ]
    if shim is None or shim >= SNUG:
        return said
    tight = f"only {scale.finer().length(shim)} a side for shims"
    return [words + "; " + tight for words in (f"{cut}, {section}", cut, said[-1])]


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
