"""The joints of a run that need a look, to scale."""

from ...lengths import show_angle
from ...runs.ends import SCARF, TrimEnd
from ...runs.path import Line, turned
from ...runs.pieces import Piece, left_end, right_end
from ...runs.plan import draw_stock
from ...runs.run import Run
from ...tool import Drawing, Scale


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
    draw_stock(view, come, (0.0, far), (TrimEnd("open"), right.standing()), thick)
    near = left.standing().inset(thick)
    draw_stock(view, go, (near, stub), (left.standing(), TrimEnd("open")), thick)
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
    draw_stock(view, line, (0.0, stub), (TrimEnd("open"), under), thick)
    draw_stock(view, line, (stub, 2 * stub - lost), (over, TrimEnd("open")), thick)
    view.line("wall", line.at(0), line.at(2 * stub - lost))
    view.dimension(line.at(stub - lost, thick), line.at(stub, thick), scale.length(lost), -1)
    view.dimension(line.at(0), line.at(0, thick), scale.length(thick), -1)
    return view
