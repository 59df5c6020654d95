"""What a door set looks like: from the front in its opening, and in section at the stile."""

from ...drawing import Drawing
from ..gaps import PASSAGE
from .leaf import FramedLeaf
from .parts import STILE, leaf_parts

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale

JAMB = 1.5


def elevation(leaf: FramedLeaf, scale: "Scale") -> Drawing:
    """Return the set from the front, sizes on the left leaf; y is measured from the head."""
    wide, high = leaf.place.width, leaf.place.height
    view = Drawing(
        "The leaf from the front" if leaf.leaves == 1 else "The pair from the front",
        f"Each leaf is {scale.length(leaf.width)} wide and {scale.length(leaf.height)} high.",
    )
    view.box("wall", -JAMB, -JAMB, 0, high).box("wall", wide, -JAMB, wide + JAMB, high)
    view.box("wall", 0, -JAMB, wide, 0)
    if leaf.kind == PASSAGE:
        view.line("mark", (-JAMB, high), (wide + JAMB, high))
    else:
        view.box("wall", -JAMB, high, wide + JAMB, high + JAMB)
    # The leaf that laps behind is drawn first: its lap is out of sight.
    for number in reversed(range(leaf.leaves)):
        _draw_leaf(view, leaf, number)
    for number in range(leaf.leaves):
        _tag_leaf(view, leaf, number)
    _across(view, leaf, scale)
    _upright(view, leaf, scale)
    return view


def _left(leaf: FramedLeaf, number: int) -> float:
    """Return where a leaf's own left edge lies, the lap of a rabbeted one included."""
    left = float(leaf.place.sides + number * (leaf.width + leaf.between))
    return left - (leaf.lap if number else 0.0)


def _boxes(leaf: FramedLeaf, number: int) -> "list[tuple[str, float, float, float, float]]":
    """Return role and sides (left, lower, right, upper) of a leaf's parts, as they are numbered."""
    left = _left(leaf, number)
    right = left + leaf.widths[number]
    inner, outer = left + leaf.stile_width(number, 0), right - leaf.stile_width(number, 1)
    boxes = [("stock", left, 0.0, inner, leaf.height), ("stock", outer, 0.0, right, leaf.height)]
    boxes += [("stock", inner, rail.low, outer, rail.high) for rail in leaf.rails]
    return boxes + [("panel", inner, low, outer, high) for low, high in leaf.openings]


def _foot(leaf: FramedLeaf) -> float:
    """Return how far below the opening's head the leaf ends."""
    return float(leaf.place.head + leaf.height)


def _draw_leaf(view: Drawing, leaf: FramedLeaf, number: int) -> None:
    foot = _foot(leaf)
    for role, x0, low, x1, high in _boxes(leaf, number):
        view.box(role, x0, foot - high, x1, foot - low)


def _tag_leaf(view: Drawing, leaf: FramedLeaf, number: int) -> None:
    foot = _foot(leaf)
    # The tags of two meeting stiles stand at different heights: side by side they would touch.
    stiles = foot - leaf.height * (0.3 if number else 0.7)
    for part, (_, x0, low, x1, high) in zip(leaf_parts(leaf, number), _boxes(leaf, number)):
        middle = stiles if part.kind == STILE else foot - (low + high) / 2
        view.tag(((x0 + x1) / 2, middle), part.tag)


def _across(view: Drawing, leaf: FramedLeaf, scale: "Scale") -> None:
    top, foot, stile = leaf.place.head, _foot(leaf), leaf.frame.stile
    left = _left(leaf, 0)
    inner, outer = left + stile, left + leaf.width - stile
    view.dimension((left, top), (left + leaf.width, top), scale.length(leaf.width))
    view.dimension((0, 0), (leaf.place.width, 0), scale.length(leaf.place.width), 2)
    view.dimension((inner, foot), (left, foot), scale.length(stile))
    view.dimension((outer, foot), (inner, foot), scale.length(leaf.sight_width))


def _upright(view: Drawing, leaf: FramedLeaf, scale: "Scale") -> None:
    top, foot = leaf.place.head, _foot(leaf)
    right = _left(leaf, leaf.leaves - 1) + leaf.widths[-1]
    edges = [(rail.low, rail.high) for rail in leaf.rails] + leaf.openings
    for low, high in edges:
        view.dimension((right, foot - high), (right, foot - low), scale.length(high - low))
    view.dimension((right, top), (right, foot), scale.length(leaf.height), 3)
    left = _left(leaf, 0)
    for lane, rail in enumerate(reversed(leaf.frame.mid_rails)):
        center = (rail.low + rail.high) / 2
        view.dimension((left, foot), (left, foot - center), scale.length(center), lane + 1)


def section(leaf: FramedLeaf, scale: "Scale") -> Drawing:
    """Return two sections at the stile: through the panel above, through a rail below."""
    view = Drawing(
        "Section at the stile",
        f"Above, the panel with {scale.length(leaf.groove.play)} of play in a groove "
        f"{scale.length(leaf.groove.depth)} deep; below, the rail's tenon.",
    )
    _through_panel(view, leaf, scale)
    _through_rail(view, leaf, scale)
    return view


def _shown(leaf: FramedLeaf) -> float:
    """Return how much of the stile's width is drawn: the joint matters, not the far edge."""
    return float(
        min(
            leaf.frame.stile,
            max(leaf.groove.depth, leaf.groove.tenon) + 1.5 * leaf.frame.thickness,
        )
    )


def _through_panel(view: Drawing, leaf: FramedLeaf, scale: "Scale") -> None:
    thick, edge, groove = leaf.frame.thickness, _shown(leaf), leaf.groove
    bottom = edge - groove.depth
    half, room = groove.panel / 2, groove.width / 2
    low, high = thick / 2 + half, thick / 2 - half
    view.box("stock", 0, 0, edge, thick)
    view.box("clearance", bottom, thick / 2 - room, edge, thick / 2 + room)
    view.box("panel", bottom + groove.play, high, edge + 2 * thick, low)
    end = (edge + 2 * thick, low), (edge + 2 * thick, high)
    view.dimension(end[1], end[0], scale.finer().length(groove.panel))
    view.dimension((bottom, 0), (edge, 0), scale.finer().length(groove.depth))
    view.dimension((0, thick), (0, 0), scale.length(thick))
    if groove.play:
        view.dimension((bottom + groove.play, thick), (bottom, thick), scale.length(groove.play))


def _through_rail(view: Drawing, leaf: FramedLeaf, scale: "Scale") -> None:
    thick, edge, groove = leaf.frame.thickness, _shown(leaf), leaf.groove
    top = 2.5 * thick
    low, end = top + thick, edge - groove.tenon
    half = groove.width / 2
    upper, lower = top + thick / 2 - half, top + thick / 2 + half
    view.box("stock", 0, top, edge, low)
    view.box("clearance", min(end, edge - groove.depth), upper, edge, lower)
    far = edge + 2 * thick
    view.area(
        "stock",
        [
            (edge, top), (far, top), (far, low), (edge, low),
            (edge, lower), (end, lower), (end, upper), (edge, upper),
        ],
    )  # fmt: skip
    view.dimension((end, top), (edge, top), scale.finer().length(groove.tenon))
