"""A run of molding from above, as thick as it takes to be seen."""

from ..tool import Drawing, Scale
from .ends import SCARF, TrimEnd
from .path import Line, gap_between, trace
from .pieces import Piece, stretches
from .run import Run

DRAWN = 0.035
"""Thickness that trim is drawn with, as a part of the run's greatest extent."""

ROOM_SIDE = -2
"""Lane of a dimension that lies in the room, clear of the trim."""


def plan(run: Run, pieces: "list[Piece]", scale: Scale) -> Drawing:
    """Return the run from above: wall line, trim, numbers and the walls' lengths."""
    lines = trace(run.walls, gap_between(run))
    thick = drawn_thickness(run, lines)
    view = Drawing("The run from above", _plan_words(run, thick, scale))
    for piece in pieces:
        _draw_piece(view, lines[piece.wall], piece, thick)
    for index, (wall, line) in enumerate(zip(run.walls, lines)):
        view.line("wall", line.at(0), line.at(wall.length))
        lane = ROOM_SIDE if _cramped(run, index, thick) else 1
        view.dimension(line.at(0), line.at(wall.length), scale.length(wall.length), lane)
    _draw_limits(view, run, lines, thick)
    for piece in pieces:
        middle = (piece.start + piece.end) / 2
        view.tag(lines[piece.wall].at(middle, 2.6 * thick), piece.tag)
    return view


def _cramped(run: Run, index: int, thick: float) -> bool:
    """Tell whether a short wall's dimension would cross that of the wall before it."""
    rounds = run.follows(index) and run.walls[index - 1].turn == "outside"
    return rounds and run.walls[index].length < 8 * thick


def drawn_thickness(run: Run, lines: "list[Line]") -> float:
    """Return a thickness that can be seen and still leaves something of every piece."""
    across = [line.start[0] for line in lines]
    down = [line.start[1] for line in lines]
    thick = DRAWN * max(max(across) - min(across), max(down) - min(down))
    parts = [part for index in range(len(run.walls)) for part in stretches(run, index)]
    while thick > run.thickness and [part for part in parts if not part.stands(thick)]:
        thick /= 2
    return max(thick, run.thickness)


def _plan_words(run: Run, thick: float, scale: Scale) -> str:
    words = "One wall" if len(run.walls) == 1 else f"{len(run.walls)} walls"
    if thick > run.thickness:
        words += (
            f". The trim is drawn {scale.bare(thick)} deep so that it can be seen; "
            f"it is {scale.length(run.thickness)}"
        )
    return words + "."


def _draw_piece(view: Drawing, line: Line, piece: Piece, thick: float) -> None:
    """Draw a piece as it stands, its corners made for stock as thick as drawn."""
    left, right = piece.left.standing(), piece.right.standing()
    start, end = piece.stretch.spans(left, right, thick)
    start = piece.start if left.kind in SCARF else start
    end = piece.end if right.kind in SCARF else end
    draw_stock(view, line, (start, end), (left, right), thick)


def draw_stock(
    view: Drawing,
    line: Line,
    span: "tuple[float, float]",
    ends: "tuple[TrimEnd, TrimEnd]",
    thick: float,
) -> None:
    """Draw stock along a wall: `span` is its back, left to right, with what is cut on its ends."""
    start, end = span
    view.area(
        "stock",
        [
            line.at(start),
            line.at(end),
            line.at(end + ends[1].reach(thick), thick),
            line.at(start - ends[0].reach(thick), thick),
        ],
    )


def _draw_limits(view: Drawing, run: Run, lines: "list[Line]", thick: float) -> None:
    """Draw what ends the run: casings, and walls that no trim is asked for."""
    count = len(run.walls)
    if not run.closed:
        _draw_limit(view, lines[0], 0.0, -1, run.first_end, thick)
    for index, wall in enumerate(run.walls):
        if wall.turn in ("casing", "open"):
            _draw_limit(view, lines[index], wall.length, 1, wall.turn, thick)
            if index + 1 < count:
                _draw_limit(view, lines[index + 1], 0.0, -1, wall.turn, thick)
        elif index + 1 == count and not run.closed:
            view.line("wall", lines[count].at(0), lines[count].at(4 * thick))
    for line, inside in zip(lines, run.openings):
        for each in inside:
            _draw_opening(view, line, (each.start, each.end), each.stop, thick)


def _draw_opening(
    view: Drawing, line: Line, span: "tuple[float, float]", stop: str, thick: float
) -> None:
    start, end = span
    ends = [line.at(start), line.at(end)]
    view.area("clearance", ends + [line.at(end, thick), line.at(start, thick)])
    if stop == "casing" and end - start > 4 * thick:
        _draw_limit(view, line, start, 1, stop, thick)
        _draw_limit(view, line, end, -1, stop, thick)


def _draw_limit(view: Drawing, line: Line, along: float, way: int, kind: str, thick: float) -> None:
    if kind == "wall":
        view.line("wall", line.at(along), line.at(along, 4 * thick))
    if kind == "casing":
        far = along + 2 * way * thick
        view.area(
            "panel",
            [line.at(along), line.at(far), line.at(far, 1.3 * thick), line.at(along, 1.3 * thick)],
        )
