"""The board on the saw from above, for its first cut and, flipped, for its second."""

from ...drawing import Drawing

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale
    from .cut import Crosscut


def first_cut(cut: "Crosscut", scale: "Scale") -> Drawing:
    """Return the board for its first cut, with what the saw crosses of it."""
    reach = scale.length(cut.reach)
    view = Drawing(
        "Cut 1 from above, the fence at the top",
        f"A board {scale.length(cut.width)} wide; the saw crosses {reach} from the fence.",
    )
    _board(view, cut, cut.shift, True)
    reached = _on_line(cut, cut.shift, min(1.0, cut.reach / cut.width))
    if cut.number == 2:
        _lines(view, cut, cut.shift, True)
    else:
        view.line("cut", (0, 0), reached)
    left, right = _ends(cut)
    view.line("clearance", (reached[0], cut.reach), (right, cut.reach))
    view.dimension((left, cut.width), (left, 0), scale.length(cut.width))
    view.dimension((right, 0), (right, cut.reach), reach)
    return view


def second_cut(cut: "Crosscut", scale: "Scale") -> Drawing:
    """Return the board after the flip: rolled over the line leans the other way."""
    how = "rolled over, face 2 up" if cut.over else "turned end for end, face 1 up"
    view = Drawing(
        "Cut 2: " + how,
        f"Edge B to the fence; the cut meets the first in the middle of {scale.length(cut.width)}.",
    )
    lean = -cut.shift if cut.over else cut.shift
    _board(view, cut, lean, cut.over)
    _lines(view, cut, lean, False)
    return view


def _ends(cut: "Crosscut") -> "tuple[float, float]":
    """Return left and right end of the piece of board that is drawn about the cut."""
    side = cut.width * 0.6 + cut.shift
    return -side, side


def _on_line(cut: "Crosscut", lean: float, share: float) -> "tuple[float, float]":
    """Return the point of the cut line at a share of the board's width from the fence."""
    return lean * share, cut.width * share


def _board(view: Drawing, cut: "Crosscut", lean: float, keep_left: bool) -> None:
    left, right = _ends(cut)
    start, end = (0.0, 0.0), _on_line(cut, lean, 1.0)
    roles = ("stock", "waste") if keep_left else ("waste", "stock")
    view.area(roles[0], [(left, 0), start, end, (left, cut.width)])
    view.area(roles[1], [(right, 0), start, end, (right, cut.width)])
    view.line("wall", (left * 1.1, 0), (right * 1.1, 0))


def _lines(view: Drawing, cut: "Crosscut", lean: float, is_first: bool) -> None:
    """Draw the half being cut, the other half, and the names of the edges."""
    left, _ = _ends(cut)
    half = _on_line(cut, lean, 0.5)
    near, far = ("1", "2") if is_first else ("2", "1")
    view.line("cut", (0, 0), half)
    view.line("clearance" if is_first else "cut", half, _on_line(cut, lean, 1.0))
    view.tag(_on_line(cut, lean, 0.25), near).tag(_on_line(cut, lean, 0.75), far)
    edges = ("edge A", "edge B") if is_first else ("edge B", "edge A")
    view.text((left * 0.6, cut.width * 0.1), edges[0])
    view.text((left * 0.6, cut.width * 0.9), edges[1])
