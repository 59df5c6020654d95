"""What to say with a run of trim: order of work, how each joint is cut, what to look out for."""

from ..lengths import show_angle, show_number
from ..tool import Scale
from .trim_joints import DYING
from .trim_path import closing_notes
from .trim_pieces import ENDING, Piece, Run, left_joint, right_joint

BUYING = 2.0
"""Inches to buy over the marked length for each joint."""

OBTUSE = 150.0
"""Degrees; at a flatter inside corner the piece that runs through ends in a long sliver."""

UNSAID = (
    "These walls come round to where they began, so the last piece and piece 1 would both run "
    "square into the same corner and collide. If the trim goes all round, set Closed run to yes."
)


def notes(run: Run, pieces: "list[Piece]", scale: Scale) -> "list[str]":
    """Return the sentences that this run calls for, first things first."""
    said = closing_notes(run, scale)
    said.append(
        "Tape each wall at the line of the trim, and mark on the back, at the wall line; an end "
        "that goes past its mark says by how much."
    )
    said += _order_notes(run) + _inside_notes(run, pieces, scale)
    said += _outside_notes(run) + _scarf_notes(run, pieces, scale)
    said += _saw_notes(pieces)
    over = scale.bare(BUYING) + (" in" if scale.units == "in" else "")
    said.append(
        f"Buy the total and {over} more for each joint, and square both ends of every stick."
    )
    return said


def run_of_stock(inches: float, scale: Scale) -> str:
    """Return a total as the yard says it: in feet, or in meters where millimeters are in force.

    >>> run_of_stock(528, Scale())
    '44 ft'
    """
    if scale.units == "in":
        return show_number(inches / 12, 1) + " ft"
    return show_number(inches * 0.0254) + " m"


def _order_notes(run: Run) -> "list[str]":
    said = ["Put the pieces up in the order of their numbers, cutting each after the last is up."]
    last = len(run.walls) - 1
    if right_joint(run, last).kind in DYING and left_joint(run, last).kind in DYING:
        said.append(f"Wall {last + 1} is done last: its trim dies in at both ends.")
        ended = [index for index, wall in enumerate(run.walls) if wall.turn != "inside"]
        if ended:
            said.append(
                f"To have no wall with two such ends, list the walls from wall {ended[0] + 2} on: "
                "then the run starts past an end that dies into nothing."
            )
    if [wall for wall in run.walls[:-1] if wall.turn in ENDING]:
        said.append(
            "A casing or an open end stops the run; the next wall starts anew with the same kind "
            "of end, drawn straight on past the opening."
        )
    return said


def _inside_notes(run: Run, pieces: "list[Piece]", scale: Scale) -> "list[str]":
    kinds = [piece.left.kind for piece in pieces] + [piece.right.kind for piece in pieces]
    said = []
    if "cope" in kinds:
        said.append(
            "Coped end: cut the inside miter first, long point at the back on the mark; then saw "
            "along the edge of the profile that shows, leaning the saw to cut the back away."
        )
        said.append(_long_note(run, scale))
    if "butt" in kinds:
        said.append("Butt only square-edged stock; cope what has a profile.")
    if "miter" in kinds:
        said.append("A mitered inside corner opens when the wood dries; a coped one does not show.")
    flat = [wall.corner for wall in run.walls if wall.turn == "inside" and wall.corner > OBTUSE]
    if flat and "through" in kinds:
        said.append(
            f"An inside corner of {show_angle(max(flat))} is so flat that the piece that runs "
            "through ends in a sliver: miter it instead."
        )
    return said


def _long_note(run: Run, scale: Scale) -> str:
    if not run.spring:
        return "Start coped pieces a hair long, try them, then shave."
    return (
        f"The spring of {scale.finer().length(run.spring)} is in the length of coped pieces held "
        "at both ends: bow them out in the middle and let them snap in. A piece with an end that "
        "is free or goes round a corner gets none."
    )


def _outside_notes(run: Run) -> "list[str]":
    outside = [index for index, wall in enumerate(run.walls) if wall.turn == "outside"]
    if not outside:
        return []
    said = [
        "Outside corner: cut both pieces a hair long and try them together before you nail either."
    ]
    if not run.closed and outside[-1] + 1 == len(run.walls):
        said.append(
            f"Wall {len(run.walls)} ends in an outside miter with no wall listed round the corner: "
            "add that wall, or cut a return."
        )
    return said


def _scarf_notes(run: Run, pieces: "list[Piece]", scale: Scale) -> "list[str]":
    lapped = [piece for piece in pieces if piece.left.kind == "over"]
    if not lapped or run.stick is None:
        return []
    longest = max([piece.over_all(run.thickness) for piece in pieces if _scarfed(piece)])
    return [
        f"Each scarf costs {scale.length(run.lap())}. Nail the piece with its long point at the "
        "back first, glue, and lay the other over it.",
        f"Land each scarf on a stud: the stick leaves {scale.length(run.stick - longest)} to move "
        "it either way, one piece longer by what the other is shorter.",
    ]


def _scarfed(piece: Piece) -> bool:
    return "over" in (piece.left.kind, piece.right.kind) or piece.right.kind == "under"


def _saw_notes(pieces: "list[Piece]") -> "list[str]":
    if not [piece for piece in pieces if piece.left.saw() or piece.right.saw()]:
        return []
    return [
        "Settings are for trim that stands on its edge, back against the fence. Long point at the "
        "back: for a left end swing the saw's handle to the right, for a right end to the left. "
        "Long point on the face: the other way. Trim lying flat: tilt the blade by the same angle.",
    ]
