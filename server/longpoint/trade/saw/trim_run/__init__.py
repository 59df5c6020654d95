"""Baseboard, chair rail or any molding around a room: how long is each piece, what on each end?"""

from ...cautions import SAW, TEST_CUT, warn_if_sharp
from ...lumber.lineal import lineal, to_buy
from ...runs.build import build, joint_count, scarf_count
from ...runs.path import UNSAID, closes_unsaid
from ...runs.pieces import Piece
from ...runs.plan import plan
from ...runs.run import Joining, Molding, Opening, Run, Wall
from ...tool import Answer, Given, Gives, Scale, Tool
from .asked import INPUTS
from .views import joints
from .words import decide, notes


def work(given: Given, scale: Scale) -> Answer:
    """Return the pieces of a run of trim in the order they go up."""
    run = _run(given, scale)
    too_big = f"a piece {scale.length(run.thickness)} thick: use thinner stock"
    pieces = build(run, scale, too_big)
    answer = Answer(scale)
    total = sum([piece.over_all(run.thickness) for piece in pieces])
    decide(answer, run, pieces, total)
    _figures(answer, run, pieces, total)
    _pieces(answer, run, pieces)
    answer.draw(lambda: plan(run, pieces, scale))
    answer.draw(lambda: joints(run, pieces, scale))
    for note in notes(run, pieces, scale):
        answer.note(note)
    if closes_unsaid(run):
        answer.caution(UNSAID)
    warn_if_sharp(answer, *[end.saw() for piece in pieces for end in (piece.left, piece.right)])
    return answer


def _run(given: Given, scale: Scale) -> Run:
    walls = [
        Wall(row.number("length"), row.text("turn"), row.maybe("corner") or 90.0)
        for row in given.rows("walls")
    ]
    openings = []
    for place, row in enumerate(given.rows("openings")):
        start = row.number("from_left")
        end = start + row.number("width")
        openings.append(Opening(place, row.count("wall") - 1, start, end, row.text("stop")))
    return Run(
        walls,
        openings,
        (given.flag("closed"), given.text("first_end")),
        Molding(given.number("trim_thickness"), given.maybe("trim_width"), given.maybe("stick")),
        Joining(given.text("inside_joint"), given.maybe("spring") or 0.0, given.number("scarf")),
        scale,
    )


def _figures(answer: Answer, run: Run, pieces: "list[Piece]", total: float) -> None:
    thick = run.thickness
    answer.length("first_length", pieces[0].marked(thick), lead=True)
    answer.length("total_length", total, lead=True)
    answer.figures[-1]["also"] = lineal(total, answer.scale)
    buying = to_buy(total, joint_count(run, pieces))
    answer.length("to_buy", buying)
    answer.figures[-1]["also"] = lineal(buying, answer.scale)
    answer.count("piece_count", len(pieces))
    answer.count("joint_count", joint_count(run, pieces))
    answer.count("scarf_count", scarf_count(pieces))
    answer.length("longest_piece", max([piece.over_all(thick) for piece in pieces]))


def _pieces(answer: Answer, run: Run, pieces: "list[Piece]") -> None:
    scale, thick = answer.scale, run.thickness
    rows = []
    for piece in pieces:
        left = piece.left.end(scale, thick, piece.meets[0])
        right = piece.right.end(scale, thick, piece.meets[1])
        marked = piece.marked(thick)
        answer.piece(
            piece.tag,
            f"Wall {piece.wall + 1}",
            marked,
            (left, right),
            width=run.width,
            thickness=thick,
        )
        lengths = (marked, piece.face(thick), piece.over_all(thick))
        rows.append([piece.tag] + [scale.length(length) for length in lengths])
    columns = ["Piece", "Marked", "Face", "Point to point"]
    answer.table("Lengths as they come off the saw, before coping", columns, rows)


TOOL = Tool(
    slug="trim-run",
    place="saw",
    coated="girth",
    title="Trim run",
    question="Baseboard, chair rail or any molding around a room: how long is each piece and what "
    "is on each end?",
    finds=(
        "cope",
        "baseboard",
        "base shoe",
        "picture rail",
        "wainscot cap",
        "scarf",
        "inside corner",
        "quarter round",
        "chair rail",
        "lineal feet",
    ),
    inputs=INPUTS,
    work=work,
    gives=[
        Gives("first_length", "length", "First piece, mark at the wall line", short="first piece"),
        Gives("total_length", "length", "Total, point to point", short="total"),
        Gives("to_buy", "length", "To buy, 2 in more a joint", short="to buy"),
        Gives("piece_count", "count", "Pieces"),
        Gives("joint_count", "count", "Joints: corners and scarfs", short="joints"),
        Gives("scarf_count", "count", "Scarf joints", short="scarfs"),
        Gives("longest_piece", "length", "Longest piece, point to point", short="longest"),
    ],
    example={
        "walls": [
            {"length": "144"},
            {"length": "86 3/8", "turn": "outside"},
            {"length": "38 1/2", "turn": "casing"},
        ],
        "trim_thickness": "5/8",
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
