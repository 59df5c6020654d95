"""The run from above, and the joint that needs a look to scale."""

from ...lengths import show_angle
from ...tool import Drawing, Scale
from .ends import SCARF, TrimEnd
from .path import Line, gap_between, trace, turned
from .pieces import Piece, left_end, right_end, stretches
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
            f". The trim is drawn {scale.bare(thick)} thick so that it can be seen; "
            f"the stock is {scale.length(run.thickness)}"
        )
    return words + "."


def _draw_piece(view: Drawing, line: Line, piece: Piece, thick: float) -> None:
    """Draw a piece as it stands, its corners made for stock as thick as drawn."""
    left, right = piece.left.standing(), piece.right.standing()
    start, end = piece.stretch.spans(left, right, thick)
    start = piece.start if left.kind in SCARF else start
    end = piece.end if right.kind in SCARF else end
    _draw_stock(view, line, (start, end), (left, right), thick)


def _draw_stock(
    view: Drawing,
    line: Line,
    span: "tuple[float, float]",
    ends: "tuple[TrimEnd, TrimEnd]",
    thick: float,
) -> None:
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


def joints(run: Run, pieces: "list[Piece]", scale: Scale) -> "list[Drawing]":
    """Return the corner farthest from square that two pieces share, and a scarf, to scale."""
    views = []
    shared = [(-abs(run.walls[i].corner - 90), i) for i in range(len(run.walls)) if run.meets(i)]
    if shared:
        views.append(_corner_view(run, min(shared)[1], pieces, scale))
    if [piece for piece in pieces if piece.right.kind in SCARF]:
        views.append(_scarf_view(run, scale))
    return views


def _corner_view(run: Run, index: int, pieces: "list[Piece]", scale: Scale) -> Drawing:
    """Draw a corner from above, each wall's trim cut off some thicknesses away."""
    after, thick = (index + 1) % len(run.walls), run.thickness
    right, left = right_end(run, index), left_end(run, after)
    one = [piece.tag for piece in pieces if piece.wall == index][-1]
    other = next(piece.tag for piece in pieces if piece.wall == after)
    stub = 3.5 * thick + max([end.standing().inset(thick) for end in (left, right)])
    stub += max([abs(end.standing().reach(thick)) for end in (left, right)])
    corner = run.walls[index]
    view = Drawing(
        f"Joint of {one} and {other} from above, to scale",
        f"{corner.turn[0].upper()}{corner.turn[1:]} corner of {show_angle(corner.corner)}, stock "
        f"{scale.length(thick)}; saw {show_angle(right.saw())} on {one}, "
        f"{show_angle(left.saw())} on {other}.{_coped_words(right, left)}",
    )
    come, go = Line((-stub, 0.0), 0.0), Line((0.0, 0.0), turned(corner))
    far = stub - right.standing().inset(thick)
    _draw_stock(view, come, (0.0, far), (TrimEnd("open"), right.standing()), thick)
    near = left.standing().inset(thick)
    _draw_stock(view, go, (near, stub), (left.standing(), TrimEnd("open")), thick)
    view.line("wall", come.at(0), come.at(stub)).line("wall", go.at(0), go.at(stub))
    view.tag(come.at(stub / 4, thick / 2), one)
    view.tag(go.at(stub * 3 / 4, thick / 2), other)
    view.dimension(come.at(0), come.at(0, thick), scale.length(thick), -1)
    _measure_end(view, come, right, stub, thick, scale)
    _measure_end(view, go, left, 0.0, thick, scale)
    return view


def _coped_words(right: TrimEnd, left: TrimEnd) -> str:
    return " Drawn after coping." if "cope" in (right.kind, left.kind) else ""


def _measure_end(
    view: Drawing, line: Line, joint: TrimEnd, corner: float, thick: float, scale: Scale
) -> None:
    """Show what a butt loses along the wall, or how far an outside miter's face passes it."""
    way = 1 if corner == 0.0 else -1
    if joint.kind == "butt":
        ends = [line.at(corner), line.at(corner + way * joint.inset(thick))]
        ends = ends if way > 0 else [ends[1], ends[0]]
        view.dimension(ends[0], ends[1], scale.length(joint.inset(thick)))
    if joint.kind == "outside" and way < 0:
        past = joint.reach(thick)
        view.dimension(
            line.at(corner, thick), line.at(corner + past, thick), scale.length(past), -1
        )


def _scarf_view(run: Run, scale: Scale) -> Drawing:
    """Draw a scarf from above: the left piece's long point lies at the back."""
    thick, lost = run.thickness, run.lap()
    stub = 4 * thick + lost
    view = Drawing(
        "Scarf from above, to scale",
        f"Cut {show_angle(run.scarf)} off square; the lap costs {scale.length(lost)}.",
    )
    line = Line((0.0, 0.0), 0.0)
    under, over = TrimEnd("under", run.scarf), TrimEnd("over", run.scarf)
    _draw_stock(view, line, (0.0, stub), (TrimEnd("open"), under), thick)
    _draw_stock(view, line, (stub, 2 * stub - lost), (over, TrimEnd("open")), thick)
    view.line("wall", line.at(0), line.at(2 * stub - lost))
    view.dimension(line.at(stub - lost, thick), line.at(stub, thick), scale.length(lost), -1)
    view.dimension(line.at(0), line.at(0, thick), scale.length(thick), -1)
    return view
