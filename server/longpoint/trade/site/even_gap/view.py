"""The leaf and its jambs from the front, the strike gaps exaggerated."""

from ...tool import Drawing, Scale
from .tilt import Tilt, is_seen
from .words import VERBS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .tilt import Moves

SHOWN = 14.0  # Inches that the larger gap takes in the drawing.


def front_view(tilt: Tilt, moves: "Moves", scale: Scale) -> Drawing:
    """Return the leaf as it hangs now, and what is done at its hinges."""
    high, wide, fine = tilt.height, tilt.height * 0.85, scale.finer()
    more = SHOWN / max(tilt.top, tilt.bottom, 1 / 8)
    view = Drawing(
        "The leaf from the knuckle side, gaps not to scale",
        f"Gaps of {fine.length(tilt.top)} at the top and {fine.length(tilt.bottom)} at the bottom "
        "of the strike side, exaggerated.",
    )
    right, left = wide + SHOWN, SHOWN / 2
    top, bottom = right - tilt.top * more, right - tilt.bottom * more
    view.box("wall", -6, 0, 0, high)
    view.box("wall", right, 0, right + 6, high)
    view.area(
        "stock", [(left + top - wide, 0), (top, 0), (bottom, high), (left + bottom - wide, high)]
    )
    for number, (down, move) in enumerate(zip((tilt.first, tilt.last), moves)):
        edge = left + right - tilt.gap(down) * more - wide
        view.box("metal", 0, down - 2, edge, down + 2)
        if is_seen(move):
            words = VERBS[move > 0] + " " + fine.length(abs(move))
            view.text((edge + 2, down), words, "cut", "start")
        # The short one stands outside, so that no line runs through its number.
        view.dimension((-6, 0), (-6, down), scale.length(down), number - 2)
    view.dimension((top, 0), (right, 0), fine.length(tilt.top), 1)
    view.dimension((bottom, high), (right, high), fine.length(tilt.bottom), -1)
    return view
