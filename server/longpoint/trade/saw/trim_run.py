"""Baseboard, chair rail or any molding round a room: how long is each piece, what on each end?"""

from ..cautions import SAW, TEST_CUT, warn_if_sharp
from ..lengths import show_angle
from ..tool import (
    Angle,
    Answer,
    Choice,
    Flag,
    Given,
    Length,
    Refusal,
    Rows,
    Scale,
    Tool,
)
from .scarf import MOST_PIECES, fits, piece_length, pieces_needed
from .trim_joints import Joint
from .trim_notes import UNSAID, notes, run_of_stock
from .trim_path import closes_unsaid
from .trim_pieces import ENDING, Piece, Run, name_neighbors, split, whole_piece
from .trim_views import joints, plan, stands

FEWEST_CLOSED = 3
STEEPEST = 85.0


def work(given: Given, scale: Scale) -> Answer:
    """Return the pieces of a run of trim in the order they go up."""
    run = Run(given)
    _refuse_unclosed(run)
    walls = [_pieces_of_wall(run, index, scale) for index in range(len(run.walls))]
    name_neighbors(run, walls)
    pieces = [piece for wall in walls for piece in wall]
    answer = Answer(scale)
    _figures(answer, run, pieces)
    _pieces(answer, run, pieces)
    _drawings(answer, run, pieces)
    for note in notes(run, pieces, scale):
        answer.note(note)
    if closes_unsaid(run):
        answer.caution(UNSAID)
    warn_if_sharp(answer, *[end.saw() for piece in pieces for end in (piece.left, piece.right)])
    return answer


def _refuse_unclosed(run: Run) -> None:
    count = len(run.walls)
    if run.closed and count < FEWEST_CLOSED:
        raise Refusal(
            "walls",
            f"A closed run needs {FEWEST_CLOSED} walls or more, {count} given: add the others, or "
            "say that the run is not closed.",
        )
    if run.closed and run.walls[-1].turn in ENDING:
        raise Refusal(
            f"walls.{count - 1}.turn",
            "In a closed run the last wall meets the first: make its turn inside or outside, or "
            "say that the run is not closed.",
        )


def _pieces_of_wall(run: Run, index: int, scale: Scale) -> "list[Piece]":
    whole = whole_piece(run, index)
    _refuse_sliver(index, whole.right)
    _refuse_sliver((index - 1) % len(run.walls), whole.left)
    _refuse_nothing_left(run, whole, scale)
    _refuse_short_stick(run, whole, scale)
    pieces = split(run, whole)
    for piece in pieces:
        if min(piece.back(), piece.face(run.thickness)) <= 0:
            raise Refusal(
                "scarf",
                f"A scarf at {show_angle(run.scarf)} laps {scale.length(run.lap())}, too much for "
                f"the pieces of wall {index + 1}: use a smaller angle or a longer stick.",
            )
    return pieces


def _refuse_sliver(index: int, joint: Joint) -> None:
    """Refuse a corner that would need an end drawn out to a sliver; `index` is its wall."""
    if joint.saw() <= STEEPEST:
        return
    advice = "check the angle" if joint.angle < 90 else "miter it, or take both walls as one"
    raise Refusal(
        f"walls.{index}.corner",
        f"A corner of {show_angle(joint.angle)} needs an end cut {show_angle(joint.saw())} off "
        f"square, {show_angle(STEEPEST)} at most: {advice}.",
    )


def _refuse_nothing_left(run: Run, whole: Piece, scale: Scale) -> None:
    """Refuse a wall whose ends, as cut or as they stand, take all of it."""
    thick, wall = run.thickness, run.walls[whole.wall]
    if stands(run, whole, thick) and whole.face(thick) > 0:
        return
    raise Refusal(
        f"walls.{whole.wall}.length",
        f"Wall {whole.wall + 1} is {scale.length(wall.length)} long, and its ends take all of a "
        f"piece {scale.length(thick)} thick: use thinner stock, or check the wall and the corners "
        "beside it.",
    )


def _refuse_short_stick(run: Run, whole: Piece, scale: Scale) -> None:
    over_all, lost = whole.over_all(run.thickness), run.lap()
    if run.stick is None or fits(over_all, run.stick):
        return
    if run.stick <= lost:
        raise Refusal(
            "stick",
            f"A scarf at {show_angle(run.scarf)} laps {scale.length(lost)}, all of a stick "
            f"{scale.length(run.stick)} long: use longer sticks or a smaller angle.",
        )
    number = pieces_needed(over_all, run.stick, lost)
    if number > MOST_PIECES:
        raise Refusal(
            "stick",
            f"Sticks {scale.length(run.stick)} long would make {number} pieces of wall "
            f"{whole.wall + 1}, and {MOST_PIECES} are the most: use sticks longer than "
            f"{scale.length(piece_length(over_all, MOST_PIECES, lost))}.",
        )


def _figures(answer: Answer, run: Run, pieces: "list[Piece]") -> None:
    thick = run.thickness
    first = pieces[0]
    answer.length(
        "first_length",
        first.marked(thick),
        label=f"Piece {first.tag}, mark at the wall line",
        lead=True,
    )
    marked = sum([piece.marked(thick) for piece in pieces])
    answer.length("total_length", marked, label="Total, as marked", lead=True)
    answer.figures[-1]["also"] = run_of_stock(marked, answer.scale)
    answer.count("piece_count", len(pieces), label="Pieces")
    answer.count("scarf_count", len(pieces) - len(run.walls), label="Scarf joints")
    longest = max([piece.over_all(thick) for piece in pieces])
    answer.length("longest_piece", longest, label="Longest piece, point to point")


def _pieces(answer: Answer, run: Run, pieces: "list[Piece]") -> None:
    scale, thick = answer.scale, run.thickness
    for piece in pieces:
        ends = (
            piece.left.end(scale, thick, piece.meets[0]),
            piece.right.end(scale, thick, piece.meets[1]),
        )
        part = "" if piece.tag[-1].isdigit() else ", part " + piece.tag[-1]
        name = f"Wall {piece.wall + 1}{part}"
        answer.piece(piece.tag, name, piece.marked(thick), ends, thickness=thick)
    rows = [
        [
            piece.tag,
            scale.length(piece.marked(thick)),
            scale.length(piece.back()),
            scale.length(piece.face(thick)),
            scale.length(piece.over_all(thick)),
        ]
        for piece in pieces
    ]
    columns = ["Piece", "Marked", "Back", "Face", "Point to point"]
    answer.table("Lengths as they come off the saw, before coping", columns, rows)


def _drawings(answer: Answer, run: Run, pieces: "list[Piece]") -> None:
    answer.draw(plan(run, pieces, answer.scale))
    for view in joints(run, pieces, answer.scale):
        answer.draw(view)


WALL = [
    Length(
        "length",
        "Length",
        help="Wall to wall at the line of the trim; walls go clockwise, seen from above.",
    ),
    Choice(
        "turn",
        "At its right end",
        [
            ("inside", "inside corner"),
            ("outside", "outside corner"),
            ("casing", "casing"),
            ("open", "open end"),
        ],
        default="inside",
        help="An inside corner after which no wall is listed: the piece runs through to the wall.",
    ),
    Angle(
        "corner",
        "Corner",
        default=90,
        help="The angle to the next wall, in the room at an inside corner, over the corner at an "
        "outside one: square is 90 for both.",
        only_when=("turn", "inside", "outside"),
    ),
]

TOOL = Tool(
    slug="trim-run",
    place="saw",
    title="Trim run",
    question="Baseboard, chair rail or any molding round a room: how long is each piece and what "
    "is on each end?",
    finds=(
        "cope",
        "baseboard",
        "base shoe",
        "picture rail",
        "wainscot cap",
        "scarf",
        "inside corner",
    ),
    inputs=[
        Rows(
            "walls",
            "Walls, clockwise seen from above",
            WALL,
            row="wall",
            help="Facing each from the room, its right end meets the next one's left end.",
        ),
        Length("thickness", "Thickness", help="Of the stock, from back to face."),
        Choice(
            "inside_joint",
            "Inside corners",
            [("cope", "coped"), ("miter", "mitered"), ("butt", "butted")],
            default="cope",
        ),
        Flag("closed", "Closed run", help="The last wall meets the first."),
        Choice(
            "first_end",
            "First left end",
            [("wall", "at a wall"), ("casing", "at a casing"), ("open", "open end")],
            default="wall",
            only_when=("closed", False),
        ),
        Length(
            "spring",
            "Spring",
            default=0,
            least=0,
            most=1,
            help="Extra length of a coped piece that is held at both ends, to bow it into place.",
            only_when=("inside_joint", "cope"),
        ),
        Length(
            "stick",
            "Longest stick",
            optional=True,
            default_text="any length",
            help="Usable length of the stock: a longer wall gets scarf joints.",
        ),
        Angle("scarf", "Scarf angle", default=45, most=STEEPEST, help="Off a square cut."),
    ],
    work=work,
    example={
        "walls": [
            {"length": "144"},
            {"length": "86 3/8", "turn": "outside"},
            {"length": "38 1/2", "turn": "casing"},
        ],
        "thickness": "5/8",
    },
    cautions=[SAW, TEST_CUT],
    sources=[
        "Plane geometry: lines one thickness off two walls meet thickness / tan(corner / 2) from "
        "the corner along each wall, and one such line meets the other wall thickness / "
        "sin(corner) from it.",
        "Profiled base coped at inside corners, square-edged base butted, outside corners mitered: "
        "NAVEDTRA 14044, Builder, interior trim.",
        "Scarfs at 30° or 45°, glued over a stud, and 2 in more per joint when buying: trade "
        "articles on base molding.",
        "Spring and starting a hair long: common practice, from memory.",
    ],
)
