"""What to say of a run of trim: the line that decides, order of work, how each joint is cut."""

from ...lengths import brief_angle, show_angle
from ...lumber.lineal import OVER_A_JOINT, lineal
from ...runs.build import joint_count, scarf_count
from ...runs.ends import DYING
from ...runs.path import closing_notes
from ...runs.pieces import Piece, left_end, right_end
from ...runs.run import ENDING, Run
from ...tool import Answer, Scale

OBTUSE = 150.0
"""Degrees; at a flatter inside corner the piece that runs through ends in a long sliver."""

_FIRST = {"wall": "Wall", "casing": "Casing", "open": "Free end"}
_LAST = {"inside": "wall", "casing": "casing", "open": "free end", "outside": "outside miter"}
_JOINED = {"cope": "cope", "butt": "butt", "miter": "inside miter"}


def decide(answer: Answer, run: Run, pieces: "list[Piece]", total: float) -> None:
    """Give the verdict: from where to where, how many pieces and feet, which joints at what."""
    way = "All around"
    if not run.closed:
        way = f"{_FIRST[run.first_end]} to {_LAST[run.walls[-1].turn]}"
    count = "1 piece" if len(pieces) == 1 else f"{len(pieces)} pieces"
    feet = lineal(total, answer.scale)
    joints = "; " + ", ".join(_joints(run, pieces)) if _joints(run, pieces) else ""
    answer.verdict(
        f"{way}: {count}, {feet} point to point{joints}",
        f"{way}: {count}, {feet}{joints}",
        f"{count}, {feet}{joints}",
        f"{way}: {count}, {feet} point to point",
    )


def _joints(run: Run, pieces: "list[Piece]") -> "list[str]":
    """Return how many joints of each kind there are, with their settings."""
    said = []
    for turn, word in (("inside", _JOINED[run.inside]), ("outside", "outside miter")):
        met = [i for i in range(len(run.walls)) if run.meets(i) and run.walls[i].turn == turn]
        saws = [(180 - run.walls[index].corner) / 2 for index in met]
        if met:
            is_mitered = turn == "outside" or run.inside == "miter"
            said.append(_many(len(met), word) + (" " + _range(saws) if is_mitered else ""))
    scarfs = scarf_count(pieces)
    if scarfs:
        said.append(f"{_many(scarfs, 'scarf')} {brief_angle(run.scarf)}")
    return said


def _many(count: int, word: str) -> str:
    return f"{count} {word}" + ("" if count == 1 else "s")


def _range(saws: "list[float]") -> str:
    low, high = brief_angle(min(saws)), brief_angle(max(saws))
    return low if low == high else f"{low} to {high}"


def notes(run: Run, pieces: "list[Piece]", scale: Scale) -> "list[str]":
    """Return the sentences that this run calls for, first things first."""
    said = closing_notes(run, scale)
    said.append(
        "Tape each wall at the line of the trim, and mark on the back, at the wall line. A + on an "
        "end says how far its long point goes past the mark."
    )
    said += _order_notes(run) + _inside_notes(run, pieces, scale)
    said += _outside_notes(run) + _scarf_notes(run, pieces, scale)
    said += _saw_notes(pieces)
    over = scale.bare(OVER_A_JOINT) + (" in" if scale.units == "in" else "")
    count = joint_count(run, pieces)
    said.append(
        f"To buy: the pieces point to point and {over} more for each joint, {count} here; a joint "
        "is a corner or a scarf where two pieces are cut to meet. Square both ends of every stick."
    )
    return said


def _order_notes(run: Run) -> "list[str]":
    said = ["Put the pieces up in the order of their numbers, cutting each after the last is up."]
    last = len(run.walls) - 1
    ends = (left_end(run, last).kind, right_end(run, last).kind)
    if ends[0] in DYING and ends[1] in DYING and not run.openings[last]:
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
            "of end, drawn straight on past the opening. For a door in the middle of a wall, list "
            "the whole wall and the door."
        )
    bare = [i for i in range(len(run.walls)) if run.is_bare(i, "left") or run.is_bare(i, "right")]
    if bare:
        said.append(
            f"An opening takes a corner of wall {bare[0] + 1}: the piece beside it is cut to the "
            "corner, so take off what its casing covers there."
        )
    return said


def _inside_notes(run: Run, pieces: "list[Piece]", scale: Scale) -> "list[str]":
    kinds = [piece.left.kind for piece in pieces] + [piece.right.kind for piece in pieces]
    said = []
    if "cope" in kinds:
        said.append(
            "Coped end: cut the inside miter first, long point at the back on the mark; then saw "
            "along the edge of the profile that shows, tipping the coping saw to cut the back away."
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
        "is free or goes around a corner gets none."
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
            f"Wall {len(run.walls)} ends in an outside miter, no wall listed around the corner: "
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
        "Settings are for trim that stands on its edge, back against the fence. Long point back: "
        "handle to the right for left ends, to the left for right ends. Long point face: the other "
        "way. Trim lying flat: bevel the blade by the same angle.",
    ]
