"""Crown along a run of walls: pieces between two corners each, and the sticks they come out of.

From above crown is molding as thick as its projection: the bottom edge lies on the wall line, the
top edge one projection into the room.
"""

from ...cautions import warn_if_sharp
from ...geometry.laid_on_saw import flat
from ...lengths import brief_angle
from ...lumber.lineal import OVER_A_JOINT, lineal, to_buy
from ...runs.build import build, joint_count, scarf_count
from ...runs.ends import SCARF, TrimEnd
from ...runs.path import UNSAID, closes_unsaid, closing_notes
from ...runs.plan import plan
from ...runs.sticks import fewest_sticks
from ...tool import Answer, End, Scale, miter, square
from .views import flat_on_saw, nested_on_saw, section
from .words import COPED, add_saw_notes, add_settings, add_sizes, add_tables

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...runs.pieces import Piece
    from ...runs.run import Run
    from .crown import Crown

MITERED = ("cope", "miter", "outside")
SIDES = (("left", "right"), ("right", "left"))
"""A piece's end, and on which side of that joint the piece lies."""


def answer_run(crown: "Crown", run: "Run", kerf: float, bevels: str, scale: Scale) -> Answer:
    """Return the pieces of a run of crown, and the sticks to cut them from."""
    size = scale.length(run.thickness)
    pieces = build(run, scale, f"crown that projects {size}: use narrower crown")
    answer = Answer(scale)
    sticks, proved = _sticks(run, pieces, kerf)
    total = sum([piece.over_all(run.thickness) for piece in pieces])
    _verdict(answer, crown, run, pieces, total, len(sticks))
    corners = _corners(pieces)
    if len(corners) == 1:
        add_settings(answer, crown, corners[0], bevels)
    _figures(answer, run, pieces, total, sticks)
    add_sizes(answer, crown)
    _pieces(answer, crown, run, pieces, sticks, bevels)
    add_tables(answer, bevels)
    _draw(answer, crown, run, pieces, bevels)
    _notes(answer, crown, run, pieces, corners)
    if not proved:
        answer.note("Fewer sticks may do: the question Stick plan goes on looking.")
    if closes_unsaid(run):
        answer.caution(UNSAID)
    settings = [0.0] + [crown.miter(corner) for corner in corners]
    warn_if_sharp(answer, *(settings + [crown.nested(corner) for corner in corners]))
    return answer


def _corners(pieces: "list[Piece]") -> "list[float]":
    """Return the different angles that ends are mitered for."""
    ends = [end for piece in pieces for end in (piece.left, piece.right)]
    return sorted({end.angle for end in ends if end.kind in MITERED})


def _sticks(run: "Run", pieces: "list[Piece]", kerf: float) -> "tuple[list[list[int]], bool]":
    if run.stick is None:
        return [], True
    lengths = [piece.over_all(run.thickness) for piece in pieces]
    return fewest_sticks(lengths, run.stick, kerf)


def _verdict(
    answer: Answer,
    crown: "Crown",
    run: "Run",
    pieces: "list[Piece]",
    total: float,
    sticks: int,
) -> None:
    count = "1 piece" if len(pieces) == 1 else f"{len(pieces)} pieces"
    spring = f"spring {brief_angle(crown.spring)}"
    joints = ", ".join(_joints(run, pieces)) or "square ends"
    bought = ""
    if sticks and run.stick:
        each = answer.scale.feet(run.stick)
        each = each if answer.scale.units == "in" else answer.scale.length(run.stick)
        bought = f"; {sticks} stick{'s' if sticks > 1 else ''} of {each}"
    feet = lineal(total, answer.scale)
    answer.verdict(
        f"{count}, {feet} point to point, {spring}: {joints}{bought}",
        f"{count}, {feet}, {spring}: {joints}{bought}",
        f"{count}, {feet}, {spring}{bought}",
    )


def _joints(run: "Run", pieces: "list[Piece]") -> "list[str]":
    """Return how many joints of each kind two pieces meet in."""
    said = []
    inside = "cope" if run.inside == "cope" else "inside miter"
    for turn, word in (("inside", inside), ("outside", "outside miter")):
        met = [i for i in range(len(run.walls)) if run.meets(i) and run.walls[i].turn == turn]
        if met:
            said.append(f"{len(met)} {word}" + ("s" if len(met) > 1 else ""))
    scarfs = scarf_count(pieces)
    if scarfs:
        plural = "s" if scarfs > 1 else ""
        said.append(f"{scarfs} scarf{plural} nested {brief_angle(run.scarf)}")
    return said


def _figures(
    answer: Answer, run: "Run", pieces: "list[Piece]", total: float, sticks: "list[list[int]]"
) -> None:
    answer.length("total_length", total, lead=True)
    answer.figures[-1]["also"] = lineal(total, answer.scale)
    if sticks:
        answer.count("sticks", len(sticks), lead=True)
    buying = to_buy(total, joint_count(run, pieces))
    answer.length("to_buy", buying)
    answer.figures[-1]["also"] = lineal(buying, answer.scale)
    answer.count("piece_count", len(pieces))
    answer.length("longest_piece", max([piece.over_all(run.thickness) for piece in pieces]))


def _pieces(
    answer: Answer,
    crown: "Crown",
    run: "Run",
    pieces: "list[Piece]",
    sticks: "list[list[int]]",
    bevels: str,
) -> None:
    scale, out, rows = answer.scale, run.thickness, []
    stock = {at: f"Stick {place + 1}" for place, each in enumerate(sticks) for at in each}
    for at, piece in enumerate(pieces):
        ends = [
            _end(crown, end, side, other, bevels)
            for end, (_, side), other in zip((piece.left, piece.right), SIDES, piece.meets)
        ]
        answer.piece(
            piece.tag,
            f"Wall {piece.wall + 1}",
            piece.over_all(out),
            (ends[0], ends[1]),
            short_point=_short(piece, out),
            width=crown.width,
            stock=stock.get(at, ""),
        )
        lengths = (piece.marked(out), piece.face(out), piece.over_all(out))
        rows.append([piece.tag] + [scale.length(length) for length in lengths])
    columns = ["Piece", "Bottom edge", "Top edge", "Point to point"]
    answer.table("Lengths as they come off the saw, before coping", columns, rows)
    if sticks:
        listed = [
            [str(place + 1), ", ".join([pieces[at].tag for at in each])]
            for place, each in enumerate(sticks)
        ]
        answer.table("Pieces out of sticks", ["Stick", "Pieces"], listed)


def _short(piece: "Piece", out: float) -> "float | None":
    """Return the shorter edge where the other holds both long points, else None."""
    reaches = [piece.left.reach(out), piece.right.reach(out)]
    if max(reaches) > 0 > min(reaches) or reaches == [0.0, 0.0]:
        return None
    return min(piece.back(), piece.face(out))


def _end(crown: "Crown", end: TrimEnd, side: str, other: str, bevels: str) -> End:
    """Return an end in the answer's words; `side` says where at its joint the piece lies."""
    to = other or "the next"
    if end.kind in MITERED:
        turn = "outside" if end.kind == "outside" else "inside"
        keep = flat(turn, side, bevels).keep
        point = "top edge" if turn == "outside" else "bottom edge"
        words = f"{turn}, flat, keep {keep}, long at the {point}, to {to}"
        saw, bevel = crown.miter(end.angle), crown.bevel(end.angle)
        return End("cope" if end.kind == "cope" else "miter", saw, bevel, words)
    if end.kind in SCARF:
        edge = "bottom" if end.kind == "under" else "top"
        words = f"nested, {end.kind} {to}, long at the {edge} edge"
        return End("scarf", end.saw(), 0.0, words)
    if end.kind == "through" and end.saw():
        return miter(end.saw(), "nested, to the wall")
    return square("free end" if end.kind == "open" else "to the wall")


def _draw(answer: Answer, crown: "Crown", run: "Run", pieces: "list[Piece]", bevels: str) -> None:
    answer.draw(plan(run, pieces, answer.scale))
    for turn in ("inside", "outside"):
        kinds = ("outside",) if turn == "outside" else ("cope", "miter")
        ends = [end for piece in pieces for end in (piece.left, piece.right)]
        met = [end.angle for end in ends if end.kind in kinds]
        if met:
            # The corner farthest from square is the one that has to be looked at.
            odd = max([(abs(angle - 90), angle) for angle in met])[1]
            answer.draw(flat_on_saw(crown, odd, turn, bevels))
            answer.draw(nested_on_saw(crown, odd, turn))
    answer.draw(section(crown, answer.scale))


def _notes(
    answer: Answer,
    crown: "Crown",
    run: "Run",
    pieces: "list[Piece]",
    corners: "list[float]",
) -> None:
    scale = answer.scale
    for words in closing_notes(run, scale):
        answer.note(words)
    answer.note(
        f"Snap a line {scale.length(crown.drop or 0.0)} below the ceiling for the bottom edge, "
        "tape the walls along it, and mark every piece on its bottom edge."
    )
    answer.note(
        "Put the pieces up in the order of their numbers. Left and right ends are as you face "
        "the wall; the settings are for crown flat, face up, unless an end says nested."
    )
    if "cope" in [end.kind for piece in pieces for end in (piece.left, piece.right)]:
        answer.note(COPED)
    if [piece for piece in pieces if piece.right.kind in SCARF]:
        answer.note(
            f"Each scarf laps {scale.length(run.lap())}. Land it on blocking, glue it, and lay "
            "the piece with its long point at the top edge over the other."
        )
    over = scale.bare(OVER_A_JOINT) + (" in" if scale.units == "in" else "")
    count = joint_count(run, pieces)
    answer.note(f"To buy: the pieces point to point and {over} more for each joint, {count} here.")
    add_saw_notes(answer, crown, corners)
