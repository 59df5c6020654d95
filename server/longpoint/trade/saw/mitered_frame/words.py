"""What the pieces of a frame with square corners are called, and what is said of it."""

from ...frames.directions import FRAME_ENDS
from ...geometry.miters import settings
from ...lengths import brief_angle, show_angle

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...geometry.square_frame import SquareFrame
    from ...tool import Answer

LEVEL_POINTS = "long point to long point"


def names(frame: "SquareFrame", inside: bool) -> "tuple[str, str]":
    """Return what the level piece above and the upright ones are called."""
    if inside:
        return "Top", "Sides"
    return "Head", "Sides" if frame.closed else "Legs"


def add_verdict(
    answer: "Answer", frame: "SquareFrame", inside: bool, stand_off: float, glass: "list[float]"
) -> None:
    """Say where the frame goes, its first length, the saw, and play or reveal."""
    length = answer.scale.length
    head, legs = names(frame, inside)
    top = head.lower() + " " + length(frame.width)
    saw = _saw(frame, legs.lower())
    start, brief = _starts(frame.closed, inside)
    end = ", no play"
    if stand_off or not inside:
        end = f", {'play' if inside else 'reveal'} {length(stand_off)}"
    bare = end
    if glass:
        end += "; glass " + " x ".join([length(size) for size in glass])
    answer.verdict(
        f"{start}: {top} {LEVEL_POINTS}, {saw}{end}",
        f"{brief}: {top} {LEVEL_POINTS}, {saw}{end}",
        f"{brief}: {top} long point, {saw}{end}",
        f"{brief}: {top}, {saw}{end}",
        f"{brief}: {top} long point, saw as listed{end}",
        f"{brief}: {top}, saw as listed{end}",
        f"{brief}: {top}, {saw}{bare}",
        f"{brief}: {top}, saw as listed{bare}",
    )


def _starts(closed: bool, inside: bool) -> "tuple[str, str]":
    """Return how the sentence begins, and shorter."""
    if inside:
        below = ("Frame inside, open below", "Inside, open below")
        return ("Frame inside the recess", "Frame inside") if closed else below
    if closed:
        return "Casing all around the opening", "Casing all around"
    return "Casing around the opening", "Casing"


def _saw(frame: "SquareFrame", upright: str) -> str:
    top, side = settings(frame.top, frame.side)
    if frame.closed and frame.bottom != frame.top:
        bottom, low = settings(frame.bottom, frame.side)
        return (
            f"saw {brief_angle(top)}, bottom {brief_angle(bottom)}, {upright} "
            f"{brief_angle(side)} and {brief_angle(low)}"
        )
    if top == side:
        return "saw " + brief_angle(top)
    return f"saw {brief_angle(top)}, {upright} {brief_angle(side)}"


def add_notes(answer: "Answer", frame: "SquareFrame", inside: bool) -> None:
    """Say how the pieces are cut and fitted."""
    answer.note(
        "Start long and sneak up: cut each piece a little over, fit it to its corner, then take "
        "off the rest. Number the pieces on the back as drawn, so each stays with its corner."
    )
    answer.note(FRAME_ENDS)
    if frame.top != frame.side or (frame.closed and frame.bottom != frame.side):
        top, side = settings(frame.top, frame.side)
        answer.note(
            "The widths differ, so the two pieces of a corner are cut at different settings that "
            f"add up to 90.0°: {show_angle(top)} and {show_angle(side)} at the top."
        )
    if not inside:
        answer.note("Mark the reveal on the jamb first and hold the short points to it.")
