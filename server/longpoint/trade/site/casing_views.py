"""The views of a set of casing: from the front, and the stool from above."""

from ..tool import Drawing, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .casing_parts import Casing
    from .stool_parts import Stool

    Tags = dict[str, str]


def front_view(casing: "Casing", stool: "Stool | None", tags: "Tags", scale: Scale) -> Drawing:
    """Return the trimmed opening; heights run down from the jamb's head."""
    wide, high = [scale.length(size) for size in casing.outside]
    view = Drawing("The casing from the front", f"{wide} wide and {high} high over all.")
    view.box("clearance", 0, 0, casing.width, casing.height)
    if casing.head == "miter":
        _mitered(view, casing)
    else:
        _squared(view, casing)
    _plinths(view, casing, tags)
    if stool:
        _stool(view, casing, stool, tags)
    _tags(view, casing, tags)
    left, right, top = -casing.reveal, casing.width + casing.reveal, -casing.outside[1]
    top = -casing.reveal - (casing.side + casing.proud if casing.head == "blocks" else casing.top)
    over = (casing.outside[0] - casing.clear) / 2
    view.dimension((left - over, top), (right + over, top), wide)
    view.dimension(
        (left, casing.height / 3), (right, casing.height / 3), scale.length(casing.clear), 0
    )
    leg = casing.frame.clear_height if casing.head == "miter" else casing.leg
    low = casing.height - casing.foot
    if casing.around:
        low += casing.reveal - (casing.proud if casing.head == "blocks" else 0.0)
    view.dimension((right + casing.side, low - leg), (right + casing.side, low), scale.length(leg))
    return view


def _mitered(view: Drawing, casing: "Casing") -> None:
    """Draw head, legs and bottom from their corners: inner at the reveal, outer a width away."""
    gap, side, top = casing.reveal, casing.side, casing.top
    left, right, low = -gap, casing.width + gap, casing.height - casing.foot
    foot = low
    if casing.around:
        low, foot = low + gap, low + gap + top
        view.area(
            "stock",
            [(left, low), (right, low), (right + side, foot), (left - side, foot)],
        )
    head = -gap - top
    view.area("stock", [(left - side, head), (right + side, head), (right, -gap), (left, -gap)])
    view.area("stock", [(left - side, head), (left, -gap), (left, low), (left - side, foot)])
    view.area("stock", [(right + side, head), (right, -gap), (right, low), (right + side, foot)])


def _squared(view: Drawing, casing: "Casing") -> None:
    """Draw butted legs and pieces across, with their blocks if they have any."""
    gap, side, top = casing.reveal, casing.side, casing.top
    left, right = -gap, casing.width + gap
    blocks = casing.head == "blocks"
    proud, over = (casing.proud, 0.0) if blocks else (0.0, casing.over)
    start, low = -gap + proud, -gap + proud + casing.leg
    for x in (left - side, right):
        view.box("stock", x, start, x + side, low)
    rows = [-gap - top] + ([casing.height + gap] if casing.around else [])
    for y in rows:
        if not blocks:
            view.box("stock", left - side - over, y, right + side + over, y + top)
            continue
        view.box("stock", left + proud, y, right - proud, y + side)
        for x in (left - side - proud, right - proud):
            view.box("panel", x, y - proud, x + casing.block, y + side + proud)


def _plinths(view: Drawing, casing: "Casing", tags: "Tags") -> None:
    if not casing.foot:
        return
    wide, half = casing.plinth_wide, casing.reveal + casing.side / 2
    for center in (-half, casing.width + half):
        x = center - wide / 2
        view.box("stock", x, casing.height - casing.foot, x + wide, casing.height)
        view.tag((center, casing.height - casing.foot / 2), tags["Plinth"])


def _stool(view: Drawing, casing: "Casing", stool: "Stool", tags: "Tags") -> None:
    middle, low = casing.width / 2, casing.height + stool.thick
    half, apron = stool.length / 2, stool.apron / 2
    view.box("stock", middle - half, casing.height, middle + half, low)
    view.box("stock", middle - apron, low, middle + apron, low + stool.apron_wide)
    # Both are thin: in the middle of each the balloons would lie on one another.
    view.tag((middle / 3, casing.height + stool.thick / 2), tags["Stool"])
    view.tag((middle, low + stool.apron_wide / 2), tags["Apron"])


def _tags(view: Drawing, casing: "Casing", tags: "Tags") -> None:
    half = casing.reveal + casing.side / 2
    for x in (-half, casing.width + half):
        view.tag((x, casing.height * 0.6), tags["Leg"])
        if casing.head == "blocks":
            view.tag((x, -half), tags["Corner block"])
    view.tag((casing.width / 2, -casing.reveal - casing.top / 2), tags["Head"])
    if casing.around:
        low = casing.height + casing.reveal + casing.top / 2
        view.tag((casing.width / 2, low), tags["Bottom"])


def stool_view(casing: "Casing", stool: "Stool", scale: Scale) -> Drawing:
    """Return the stool from above, the room at the bottom: its horns lie on the wall."""
    view = Drawing(
        "The stool from above",
        f"{scale.length(stool.length)} long, horns {scale.length(stool.horn)} beside the jambs, "
        f"{scale.length(stool.out)} out from the wall.",
    )
    left, right = -stool.horn, stool.width + stool.horn
    inside = stool.inside or stool.out
    view.box("wall", left, -inside, 0, 0)
    view.box("wall", stool.width, -inside, right, 0)
    tongue = [(0.0, 0.0), (0.0, -inside), (stool.width, -inside), (stool.width, 0.0)]
    view.area(
        "stock", [(left, stool.out), (left, 0.0)] + tongue + [(right, 0.0), (right, stool.out)]
    )
    if stool.returned:
        view.line("cut", (left, stool.out), (left + stool.out, 0))
        view.line("cut", (right, stool.out), (right - stool.out, 0))
    view.dimension((right, stool.out), (left, stool.out), scale.length(stool.length))
    view.dimension((left, -inside), (0, -inside), scale.length(stool.horn))
    view.dimension((right, 0), (right, stool.out), scale.length(stool.out))
    view.dimension((0, -inside), (stool.width, -inside), scale.length(stool.width))
    return view
