"""What is said of a wide crosscut: its verdict, and how two cuts are brought to meet."""

from ...lengths import brief_angle, show_angle

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...tool import Answer
    from .cut import Crosscut

SCANT = 0.25
"""Inches of overlap below which both cuts are tried in scrap first."""


def add_verdict(answer: "Answer", cut: "Crosscut") -> None:
    """Say how many cuts, and what is done between them."""
    length = answer.scale.length
    at = f" at {brief_angle(cut.angle)}" if cut.angle else ""
    if cut.number == 1:
        answer.verdict(f"One cut{at} does it: {length(cut.reach - cut.width)} of capacity to spare")
    elif cut.number == 0:
        short = length(cut.width - 2 * cut.reach)
        answer.verdict(
            f"Too wide: two cuts{at} fall short by {short}; use a straightedge and circular saw",
            f"Too wide: two cuts{at} fall short by {short}; use a straightedge",
        )
    else:
        start = f"Two cuts{at}: past {length(cut.width / 2)}, "
        answer.verdict(*[start + words for words in _between(answer, cut)])


def _between(answer: "Answer", cut: "Crosscut") -> "list[str]":
    if not cut.over:
        return [
            "turn end for end, same face up, blade into the first kerf",
            "turn end for end, blade into the first kerf",
        ]
    if not cut.angle:
        return ["roll it over, edge B to the fence, same end at the stop"]
    shift = answer.scale.length(cut.shift)
    return [
        f"roll over, saw {brief_angle(cut.angle)} the other way, move the stop {shift}",
        f"roll over, saw the other way, move the stop {shift}",
        f"roll over, mirror the saw, move stop {shift}",
    ]


def add_notes(answer: "Answer", cut: "Crosscut") -> None:
    """Say how the board is held for each cut, and what an error does."""
    if cut.number == 1:
        answer.note("One cut does it: the board's one edge to the fence, all the way through.")
        return
    if cut.number == 0:
        _other_ways(answer, cut)
        return
    if cut.overlap < SCANT:
        answer.note(
            f"The two cuts overlap by {answer.scale.finer().length(max(cut.overlap, 0.0))} at "
            "most: try both in scrap before you count on their meeting."
        )
    answer.note(
        "Call the edges A and B and the faces 1 and 2. Knife the line around all four, the square "
        "held to edge A only. A and B must be parallel: any taper turns the second cut as much."
    )
    answer.note("Cut 1: edge A to the fence, face 1 up; cut just past the middle and stop.")
    if cut.over:
        _rolled(answer, cut)
    else:
        _turned(answer, cut)
    answer.note(
        "A blade out of square to the table shows twice over at the meeting too, whichever way "
        "the board is flipped."
    )


def _rolled(answer: "Answer", cut: "Crosscut") -> None:
    saw = "leave saw and stop as they are"
    if cut.angle:
        shift = answer.scale.length(cut.shift)
        saw = (
            f"miter the saw to {show_angle(cut.angle)} on the other side, and move the stop by "
            f"{shift}: farther from the blade if the line lies farther from that end at edge B, "
            "nearer if it lies nearer"
        )
    answer.note(
        "Cut 2: roll the board over on its length, face 2 up, edge B to the fence, the same end "
        f"against the stop; {saw}. Cut until the kerfs meet."
    )
    fine = answer.scale.finer()
    answer.note(
        f"Rolled over, the fence's error counts twice: {show_angle(cut.error)} off, and the two "
        f"cuts meet {show_angle(cut.meeting_error)} out of line. A straightedge along cut 1 "
        f"stands {fine.length(cut.off_line)} off cut 2 at edge B. Half the angle you see there is "
        "what to set the fence by."
    )


def _turned(answer: "Answer", cut: "Crosscut") -> None:
    answer.note(
        "Cut 2: turn the board end for end, face 1 still up, edge B to the fence; leave the saw "
        "at its setting. What you keep now lies on the other side of the blade. No stop serves: "
        "with the saw off, lower the blade into the first kerf, hold the board there and clamp."
    )
    answer.note(
        "Turned end for end, the two cuts stay parallel: the fence's error doesn't show at the "
        f"meeting, but the whole cut is off by it, {answer.scale.finer().length(cut.off_line)} at "
        "edge B. Check it against a square."
    )


def _other_ways(answer: "Answer", cut: "Crosscut") -> None:
    reach = answer.scale.length(2 * cut.reach)
    answer.note(
        f"Two cuts cross {reach} at this angle: not the whole board. Clamp a straightedge to the "
        "knifed line and run a circular saw along it, carry the board past the table saw on a "
        "sled, or saw by hand a hair off the line and plane to it."
    )
