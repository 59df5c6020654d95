"""The views of a set of casing: from the front, and the stool from above."""

from ...tool import Drawing, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .casing import Casing
    from .stool import Stool

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
    left, right = -casing.reveal, casing.width + casing.reveal
    top = -casing.reveal - (casing.side + casing.proud if casing.head == "blocks" else casing.top)
    over = (casing.outside[0] - casing.clear) / 2
    view.dimension((left - over, top), (right + over, top), wide)
    view.dimension(
        (left, casing.height / 3), (right, casing.height / 3), scale.length(casing.clear), 0
    )
    low = casing.height - casing.foot
    if casing.head == "miter":
        leg, foot = (
            casing.frame.height,
            low + (casing.reveal + casing.top if casing.around else 0.0),
        )
    else:
        leg, foot = casing.leg, low + (casing.reveal - casing.proud if casing.around else 0.0)
    edge = right + casing.side
    view.dimension((edge, foot - leg), (edge, foot), scale.length(leg))
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
            view.box("panel", x, y - proud, x + casing.corner.width, y + side + proud)


def _plinths(view: Drawing, casing: "Casing", tags: "Tags") -> None:
    if not casing.foot:
        return
    wide, half = casing.plinth.width, casing.reveal + casing.side / 2
    for center in (-half, casing.width + half):
        x = center - wide / 2
        view.box("stock", x, casing.height - casing.foot, x + wide, casing.height)
        view.tag((center, casing.height - casing.foot / 2), tags["plinth"])


def _stool(view: Drawing, casing: "Casing", stool: "Stool", tags: "Tags") -> None:
    middle, low = casing.width / 2, casing.height + stool.thick
    half, apron = stool.length / 2, stool.apron / 2
    view.box("stock", middle - half, casing.height, middle + half, low)
    view.box("stock", middle - apron, low, middle + apron, low + stool.apron_wide)
    # Both are thin: in the middle of each the balloons would lie on one another.
    view.tag((middle / 3, casing.height + stool.thick / 2), tags["stool"])
    view.tag((middle, low + stool.apron_wide / 2), tags["apron"])


def _tags(view: Drawing, casing: "Casing", tags: "Tags") -> None:
    half = casing.reveal + casing.side / 2
    for x in (-half, casing.width + half):
        view.tag((x, casing.height * 0.6), tags["leg"])
        if casing.head == "blocks":
            view.tag((x, -half), tags["corner block"])
    view.tag((casing.width / 2, -casing.reveal - casing.top / 2), tags["head"])
    if casing.around:
        low = casing.height + casing.reveal + casing.top / 2
        view.tag((casing.width / 2, low), tags["bottom"])


def stool_view(casing: "Casing", stool: "Stool", scale: Scale) -> Drawing:
    """Return the stool from above, the room at the bottom: its horns lie on the wall."""
    inside = stool.inside
    view = Drawing(
        "The stool from above",
        f"{scale.length(stool.length)} long, horns {scale.length(stool.horn)} beside the jambs, "
        f"notched {scale.length(inside)} deep for the wall, {scale.length(stool.out)} out from it.",
    )
    left, right = -stool.horn, stool.opening + stool.horn
    view.box("wall", left, -inside, 0, 0)
    view.box("wall", stool.opening, -inside, right, 0)
    tongue = [(0.0, 0.0), (0.0, -inside), (stool.opening, -inside), (stool.opening, 0.0)]
    view.area(
        "stock", [(left, stool.out), (left, 0.0)] + tongue + [(right, 0.0), (right, stool.out)]
    )
    if stool.returned:
        view.line("cut", (left, stool.out), (left + stool.out, 0))
        view.line("cut", (right, stool.out), (right - stool.out, 0))
    view.dimension((right, stool.out), (left, stool.out), scale.length(stool.length))
    view.dimension((left, -inside), (0, -inside), scale.length(stool.horn))
    view.dimension((right, 0), (right, stool.out), scale.length(stool.out))
    view.dimension((0, -inside), (stool.opening, -inside), scale.length(stool.opening))
    view.dimension((left, 0), (left, -inside), scale.length(inside))
    return view
