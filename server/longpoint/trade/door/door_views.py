"""What a door set looks like: from the front in its opening, and in section at the stile."""

from ..drawing import Drawing
from .door_parts import leaf_parts

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..lengths import Scale
    from .leaf import Leaf

JAMB = 1.5


def elevation(leaf: "Leaf", scale: "Scale") -> Drawing:
    """Return the set from the front, sizes on the left leaf; y is measured from the head."""
    wide, high = leaf.opening
    view = Drawing(
        "The door from the front" if leaf.leaves == 1 else "The pair from the front",
        f"Each leaf is {scale.length(leaf.width)} wide and {scale.length(leaf.height)} high.",
    )
    view.area(
        "wall",
        [
            (-JAMB, high), (-JAMB, -JAMB), (wide + JAMB, -JAMB), (wide + JAMB, high),
            (wide, high), (wide, 0), (0, 0), (0, high),
        ],
    )  # fmt: skip
    view.line("mark", (-JAMB, high), (wide + JAMB, high))
    for number in range(leaf.leaves):
        _draw_leaf(view, leaf, number)
    for number in range(leaf.leaves):
        _tag_leaf(view, leaf, number)
    _across(view, leaf, scale)
    _upright(view, leaf, scale)
    return view


def _left(leaf: "Leaf", number: int) -> float:
    return leaf.side_gap + number * (leaf.width + leaf.meeting_gap)


def _boxes(leaf: "Leaf", number: int) -> "list[tuple[str, float, float, float, float]]":
    """Return role and sides (left, lower, right, upper) of a leaf's parts, as they are numbered."""
    left = _left(leaf, number)
    right = left + leaf.width
    inner, outer = left + leaf.stile, right - leaf.stile
    boxes = [("stock", left, 0.0, inner, leaf.height), ("stock", outer, 0.0, right, leaf.height)]
    boxes += [("stock", inner, rail.low, outer, rail.high) for rail in leaf.rails]
    return boxes + [("panel", inner, low, outer, high) for low, high in leaf.openings]


def _draw_leaf(view: Drawing, leaf: "Leaf", number: int) -> None:
    foot = leaf.head_gap + leaf.height
    for role, x0, low, x1, high in _boxes(leaf, number):
        view.box(role, x0, foot - high, x1, foot - low)


def _tag_leaf(view: Drawing, leaf: "Leaf", number: int) -> None:
    foot = leaf.head_gap + leaf.height
    # The tags of two meeting stiles stand at different heights: side by side they would touch.
    stiles = foot - leaf.height * (0.3 if number else 0.7)
    for part, (_, x0, low, x1, high) in zip(leaf_parts(leaf, number), _boxes(leaf, number)):
        middle = stiles if part.kind == "stile" else foot - (low + high) / 2
        view.tag(((x0 + x1) / 2, middle), part.tag)


def _across(view: Drawing, leaf: "Leaf", scale: "Scale") -> None:
    top, foot = leaf.head_gap, leaf.head_gap + leaf.height
    left = _left(leaf, 0)
    inner, outer = left + leaf.stile, left + leaf.width - leaf.stile
    view.dimension((left, top), (left + leaf.width, top), scale.length(leaf.width))
    view.dimension((0, 0), (leaf.opening[0], 0), scale.length(leaf.opening[0]), 2)
    view.dimension((inner, foot), (left, foot), scale.length(leaf.stile))
    view.dimension((outer, foot), (inner, foot), scale.length(leaf.sight_width))


def _upright(view: Drawing, leaf: "Leaf", scale: "Scale") -> None:
    top, foot = leaf.head_gap, leaf.head_gap + leaf.height
    right = _left(leaf, leaf.leaves - 1) + leaf.width
    edges = [(rail.low, rail.high) for rail in leaf.rails] + leaf.openings
    for low, high in edges:
        view.dimension((right, foot - high), (right, foot - low), scale.length(high - low))
    view.dimension((right, top), (right, foot), scale.length(leaf.height), 3)
    left = _left(leaf, 0)
    for lane, rail in enumerate(reversed(leaf.mid_rails)):
        center = (rail.low + rail.high) / 2
        view.dimension((left, foot), (left, foot - center), scale.length(center), lane + 1)


def section(leaf: "Leaf", scale: "Scale") -> Drawing:
    """Return two sections at the stile: through the panel above, through a rail below."""
    view = Drawing(
        "Section at the stile",
        f"Above, the panel with {scale.length(leaf.play)} of play in a groove "
        f"{scale.length(leaf.groove)} deep; below, the rail's tenon.",
    )
    _through_panel(view, leaf, scale)
    _through_rail(view, leaf, scale)
    return view


def _shown(leaf: "Leaf") -> float:
    """Return how much of the stile's width is drawn: the joint matters, not the far edge."""
    return min(leaf.stile, max(leaf.groove, leaf.tenon) + 1.5 * leaf.thickness)


def _through_panel(view: Drawing, leaf: "Leaf", scale: "Scale") -> None:
    thick, edge = leaf.thickness, _shown(leaf)
    bottom = edge - leaf.groove
    half = leaf.panel_thickness / 2
    low, high = thick / 2 + half, thick / 2 - half
    view.box("stock", 0, 0, edge, thick).box("clearance", bottom, high, edge, low)
    view.box("panel", bottom + leaf.play, high, edge + 2 * thick, low)
    end = (edge + 2 * thick, low), (edge + 2 * thick, high)
    view.dimension(end[1], end[0], scale.finer().length(leaf.panel_thickness))
    view.dimension((bottom, 0), (edge, 0), scale.finer().length(leaf.groove))
    view.dimension((0, thick), (0, 0), scale.length(thick))
    if leaf.play:
        view.dimension((bottom + leaf.play, thick), (bottom, thick), scale.length(leaf.play))


def _through_rail(view: Drawing, leaf: "Leaf", scale: "Scale") -> None:
    thick, edge, top = leaf.thickness, _shown(leaf), 2.5 * leaf.thickness
    low, end = top + thick, edge - leaf.tenon
    half = leaf.panel_thickness / 2
    upper, lower = top + thick / 2 - half, top + thick / 2 + half
    view.box("stock", 0, top, edge, low)
    view.box("clearance", min(end, edge - leaf.groove), upper, edge, lower)
    far = edge + 2 * thick
    view.area(
        "stock",
        [
            (edge, top), (far, top), (far, low), (edge, low),
            (edge, lower), (end, lower), (end, upper), (edge, upper),
        ],
    )  # fmt: skip
    view.dimension((end, top), (edge, top), scale.finer().length(leaf.tenon))
