"""Draw the end of a board with its growth, and how it moves, far larger than it does."""

import math

from ...degrees import acos
from ...lengths import Scale
from ...tool import Drawing
from .moving import Moving

_THICK = 0.18  # Of the width: an end that is easy to read, whatever the board's thickness.
_SHOWN = 0.14  # Of the width: about how large the change is drawn.
_RING = 0.075  # Of the width, from ring to ring.
_PLIES = 5


def end_view(moving: Moving, scale: Scale) -> Drawing:
    """Return the end of the board: solid as it starts, dashed as it ends."""
    wide, change = moving.width, moving.change()
    high = wide * _THICK
    times = exaggeration(wide, change)
    view = Drawing(_title(moving), _words(moving, times, scale))
    shown = wide + change * times
    if change > 0:
        view.box("clearance", -shown / 2, 0, shown / 2, high)
    view.box("stock", -wide / 2, 0, wide / 2, high)
    _growth(view, moving, high)
    if change < 0:
        view.box("clearance", -shown / 2, 0, shown / 2, high)
    view.dimension((-wide / 2, 0), (wide / 2, 0), scale.length(wide))
    if change:
        each = small_words(abs(change) / 2, scale)
        edges = sorted([wide / 2, shown / 2])
        for side in (-1, 1):
            left, right = sorted([side * edge for edge in edges])
            view.dimension((left, high), (right, high), each, -1)
        if times > 1:
            view.text((0, high * 1.9), f"change × {times}")
    return view


def exaggeration(wide: float, change: float) -> int:
    """Return how many times too large a change is drawn: a round number.

    >>> exaggeration(24, 0.3), exaggeration(24, 0)
    (10, 1)
    """
    if not change:
        return 1
    times = max(1, int(min(_SHOWN * wide / abs(change), 1e6)))
    round_to: int = 10 ** (len(str(times)) - 1)
    return times // round_to * round_to


def small_words(inches: float, scale: Scale) -> str:
    """Return a small length to 1/64, as a decimal where it is too small for that.

    >>> small_words(0.1406, Scale()), small_words(0.005, Scale())
    ('9/64', '0.005')
    """
    fine = scale.finer()
    return fine.length(inches) if fine.tick(inches) or not inches else fine.decimal(inches)


def _title(moving: Moving) -> str:
    if moving.species in ("plywood", "mdf"):
        return "The sheet's edge"
    return f"The board's end, {moving.cut}"


def _words(moving: Moving, times: int, scale: Scale) -> str:
    change = moving.change()
    if not change:
        return "The width stays as it is."
    way = "swells" if change > 0 else "shrinks"
    words = (
        f"A width of {scale.length(moving.width)} {way} by {small_words(abs(change), scale)}, "
        "half on each side"
    )
    return words + (f"; the change is drawn {times} times as large." if times > 1 else ".")


def _growth(view: Drawing, moving: Moving, high: float) -> None:
    if moving.species == "mdf":
        return
    if moving.species == "plywood":
        for ply in range(1, _PLIES):
            y = high * ply / _PLIES
            view.line("stock", (-moving.width / 2, y), (moving.width / 2, y))
    elif moving.cut == "flat-sawn":
        _rings(view, moving.width, high)
    else:
        _upright(view, moving.width, high)


def _upright(view: Drawing, wide: float, high: float) -> None:
    """Draw growth that stands on the face, a little aslant."""
    lean = high / 8
    for at in range(1, int(1 / _RING) + 1):
        x = -wide / 2 + at * _RING * wide
        if x + lean < wide / 2:
            view.line("stock", (x - lean, high), (x + lean, 0))


def _rings(view: Drawing, wide: float, high: float) -> None:
    """Draw growth round a heart that lies a fifth of the width below the board."""
    deep = high + wide / 5
    radius = wide / 5 + _RING * wide / 2
    while radius < math.sqrt(wide * wide / 4 + deep * deep):
        _ring(view, (0.0, deep), radius, wide / 2, high)
        radius += _RING * wide


def _ring(
    view: Drawing, heart: "tuple[float, float]", radius: float, half: float, high: float
) -> None:
    """Draw what a board `high` inches thick and twice `half` wide shows of one ring."""
    below = heart[1] - high
    outer = min(half, math.sqrt(max(0.0, radius * radius - below * below)))
    low = acos(outer / radius)
    if radius <= heart[1]:
        view.arc("stock", heart, radius, low - 180, 180 - 2 * low)
        return
    steep = acos(math.sqrt(radius * radius - heart[1] * heart[1]) / radius)
    if steep > low:
        view.arc("stock", heart, radius, -steep, steep - low)
        view.arc("stock", heart, radius, low - 180, steep - low)
