"""The part inside the board's section, and the glued part from its end."""

from ...lengths import Scale
from ...tool import Drawing
from .ways import Part, Way

_MOST_DRAWN = 12  # More pieces side by side than this are a gray comb on a phone.


def stock_view(way: Way, part: Part, scale: Scale) -> Drawing:
    """Draw the board cut through: what is kept of it, and round it what is milled away."""
    offer, say = way.offer, scale.finer().length
    high, wide = offer.thickness, offer.width
    view = Drawing(
        "The board cut through",
        f"{offer.label}, really {say(high)} x {say(wide)}: {say(way.layer)} x {say(way.strip)} "
        "is left of it, the rest is milled away.",
    )
    view.box("waste", 0, 0, wide, high)
    top = way.to_mill
    for at in _lefts(way, part):
        view.box("stock", at, top, at + way.strip, top + way.layer)
    left = part.edge
    view.dimension((0, 0), (wide, 0), say(wide))
    view.dimension((wide, 0), (wide, high), say(high))
    view.dimension((left, high), (left + way.strip, high), say(way.strip), -1)
    view.dimension((0, top), (0, top + way.layer), say(way.layer), -1)
    return view


def _lefts(way: Way, part: Part) -> "list[float]":
    """Return where each piece's left edge lies once it is jointed."""
    across = min(way.across, way.pieces, _MOST_DRAWN)
    return [part.edge + index * (way.rip + part.kerf) for index in range(across)]


def glued_view(way: Way, part: Part, scale: Scale) -> Drawing:
    """Draw the finished part from its end, layer on layer and strip beside strip."""
    say = scale.finer().length
    view = Drawing(
        "The part from its end",
        f"{way.layers} layers of {way.strips} strips make {say(part.thickness)} x "
        f"{say(part.width)}.",
    )
    for row in range(way.layers):
        for column in range(way.strips):
            x, y = column * way.strip, row * way.layer
            view.box("stock", x, y, x + way.strip, y + way.layer)
    view.dimension((0, 0), (part.width, 0), say(part.width))
    view.dimension((part.width, 0), (part.width, part.thickness), say(part.thickness))
    return view
