"""A board planed down, drawn from its end, and its blank from the edge."""

from ...lengths import Scale
from ...tool import Drawing
from .passes import Milling

MOST_TAGS = 8


def end_view(milling: Milling, scale: Scale) -> Drawing:
    """Draw the board from its end: what each pass takes, and what stays."""
    fine, high = scale.finer(), milling.rough
    wide = high * 3
    view = Drawing(
        "The board from its end, face 2 up",
        f"{milling.passes} passes from {fine.length(high)} to {fine.length(milling.finished)}.",
    )
    core = (milling.off_face(2), high - milling.off_face(1))
    view.box("stock", 0, core[0], wide, core[1])
    layers = _layers(milling)
    for top, bottom in layers:
        view.box("waste", 0, top, wide, bottom)
    # After all the layers, whose hatching would run through the numbers.
    for index, (top, bottom) in enumerate(layers if milling.passes <= MOST_TAGS else []):
        across = wide * (index + 1) / (milling.passes + 1)
        view.tag((across, (top + bottom) / 2), str(index + 1))
    view.dimension((0, high), (0, 0), fine.length(high))
    view.dimension((wide, core[0]), (wide, core[1]), fine.length(milling.finished))
    return view


def _layers(milling: Milling) -> "list[tuple[float, float]]":
    """Return the layer each pass takes: its upper and lower edge, down from rough face 2."""
    layers, top, bottom = [], 0.0, milling.rough
    for index, take in enumerate(milling.takes()):
        if milling.face(index) == 2:
            layers.append((top, top + take))
            top += take
        else:
            layers.append((bottom - take, bottom))
            bottom -= take
    return layers


def side_view(milling: Milling, part: float, snipe: float, scale: Scale) -> Drawing:
    high, long = milling.finished, part + 2 * snipe
    view = Drawing(
        "The blank from its edge",
        f"A part {scale.length(part)} long from a blank {scale.length(long)} long.",
    )
    view.box("stock", snipe, 0, snipe + part, high)
    if snipe:
        view.box("waste", 0, 0, snipe, high).box("waste", snipe + part, 0, long, high)
        view.dimension((0, high), (snipe, high), scale.length(snipe), -1)
    view.dimension((0, 0), (long, 0), scale.length(long), 2)
    view.dimension((snipe, 0), (snipe + part, 0), scale.length(part))
    return view
