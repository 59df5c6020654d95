"""A piece held to the wall for scribing: wall, piece, and the line the dividers draw."""

from ...tool import Drawing, Scale

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .profile import Profile

DRAWN = 0.4
"""Width of wall and piece in the drawing, as a part of the height: gaps are small beside it."""


def held_view(wall: "Profile", width: float, dividers: float, scale: Scale) -> Drawing:
    """Draw the piece touching the wall at the nearest spot, widths as many times too large.

    The wall is on the right; x counts from where the piece's wall edge is.
    """
    times = max(1, int(DRAWN * wall.height / (width + wall.range)))
    view = Drawing(
        "Held plumb against the wall, ready to scribe",
        f"Widths are drawn {times} times as large as heights. The dividers stand at "
        f"{scale.length(dividers)}, level, one leg on the wall.",
    )
    high = wall.height
    edge = [((gap - wall.smallest) * times, high - up) for up, gap in wall.points]
    far = max([x for x, _ in edge]) + width * times / 4
    view.area("wall", edge + [(far, edge[-1][1]), (far, edge[0][1])])
    line = [(x - dividers * times, y) for x, y in edge]
    left = -width * times
    view.area("stock", [(left, high)] + line + [(left, 0.0)])
    view.area("waste", line + [(0.0, 0.0), (0.0, high)])
    for place in range(len(line) - 1):
        view.line("cut", line[place], line[place + 1])
    _sizes(view, wall, (left, dividers, times), scale)
    return view


def _sizes(view: Drawing, wall: "Profile", held: "tuple[float, float, int]", scale: Scale) -> None:
    """Draw the width as ripped, and the dividers where the piece touches the wall."""
    left, dividers, times = held
    high = wall.height
    y = high - wall.nearest
    # At the end that is farther from where the dividers are drawn.
    end, lane = (0.0, 1) if y > high / 2 else (high, -1)
    view.dimension((left, end), (0.0, end), scale.length(-left / times), lane)
    view.line("mark", (-dividers * times, y), (0.0, y))
    view.dimension((-dividers * times, y), (0.0, y), scale.length(dividers), 0)
