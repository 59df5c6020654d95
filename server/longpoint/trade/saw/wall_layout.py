"""Where frames stand on a wall or a panel, and what an outlet or a switch lands on.

Measured from the left end and from the bottom; all lengths in inches.
"""

import math

TYPE_CHECKING = False
if TYPE_CHECKING:
    Rectangle = tuple[float, float, float, float]

HAIR = 1e-9
"""Inches: float noise must not make touching edges overlap."""

CORNERS = ("A", "B", "C", "D")
"""Corners of a frame: top left, top right, bottom right, bottom left."""


class Layout:
    """Frames of one size in a row.

    Parameters
    ----------
    field : (float, float)
        Length and height of the wall or panel.
    margins : (float, float, float, float)
        At each end, between, above, below.
    trim : float
        Width of the trim.
    block : (float, float)
        Side of the corner blocks and how far they stand in from the frame's outer edges;
        0 and 0 for none.
    count : int
        Number of frames.
    """

    def __init__(
        self,
        field: "tuple[float, float]",
        margins: "tuple[float, float, float, float]",
        trim: float,
        block: "tuple[float, float]",
        count: int,
    ) -> None:
        self.length, self.wall_height = field
        self.margins = margins
        self.end, self.between, self.top, self.bottom = margins
        self.trim = trim
        self.block, self.set_in = block
        self.count = count
        self.width = (self.length - 2 * self.end - (count - 1) * self.between) / count
        self.height = self.wall_height - self.top - self.bottom

    def with_count(self, count: int) -> "Layout":
        """Return the same wall with another number of frames."""
        field, block = (self.length, self.wall_height), (self.block, self.set_in)
        return Layout(field, self.margins, self.trim, block, count)

    @property
    def corner(self) -> float:
        """What a corner takes of each side: the trim's width, or how far its block reaches."""
        return max(self.trim, self.set_in + self.block)

    def left(self, index: int) -> float:
        """Return where a frame's left edge stands, frames counted from 0."""
        return self.end + index * (self.width + self.between)

    def near(self, spot: "Rectangle") -> "list[int]":
        """Return the frames that `spot` can touch and their neighbors; at least one."""
        pitch = self.width + self.between
        first = int(math.floor((spot[0] - self.end) / pitch)) - 1
        last = int(math.floor((spot[2] - self.end) / pitch)) + 1
        first = min(max(first, 0), self.count - 1)
        return list(range(first, max(first, min(last, self.count - 1)) + 1))

    def outside(self, index: int) -> "Rectangle":
        """Return a frame's outer rectangle: left, bottom, right, top."""
        left = self.left(index)
        return left, self.bottom, left + self.width, self.bottom + self.height

    def sides(self, index: int) -> "list[tuple[str, Rectangle]]":
        """Return what a frame is made of: its four sides and its blocks, each with its name."""
        x0, y0, x1, y1 = self.outside(index)
        trim, reach = self.trim, self.set_in + self.block
        parts = [
            ("left side", (x0, y0, x0 + trim, y1)),
            ("right side", (x1 - trim, y0, x1, y1)),
            ("bottom", (x0, y0, x1, y0 + trim)),
            ("top", (x0, y1 - trim, x1, y1)),
        ]
        if self.block:
            low, high = (x0 + self.set_in, x1 - reach), (y0 + self.set_in, y1 - reach)
            places = ((low[0], high[1]), (low[1], high[1]), (low[1], high[0]), (low[0], high[0]))
            for name, (x, y) in zip(CORNERS, places):
                parts.append(("block at " + name, (x, y, x + self.block, y + self.block)))
        return parts


def count_near(layout: Layout, target: float) -> int:
    """Return the number of frames whose width comes nearest to `target`, the fewer if alike."""
    exact = (layout.length - 2 * layout.end + layout.between) / (target + layout.between)
    few = max(1, int(math.floor(exact)))
    off = [(abs(layout.with_count(count).width - target), count) for count in (few, few + 1)]
    return min(off)[1]


def most_frames(layout: Layout) -> int:
    """Return the largest number of frames that still have an opening, 0 if not even one."""
    least = 2 * layout.corner
    room = layout.length - 2 * layout.end + layout.between
    count = int(math.ceil(room / (least + layout.between) - HAIR)) - 1
    return max(0, count)


def overlap(one: "Rectangle", other: "Rectangle") -> bool:
    """Tell whether two rectangles share more than an edge."""
    across = min(one[2], other[2]) - max(one[0], other[0])
    up = min(one[3], other[3]) - max(one[1], other[1])
    return across > HAIR and up > HAIR


def distance(one: "Rectangle", other: "Rectangle") -> float:
    """Return the clear distance between two rectangles, 0 where they touch."""
    across = max(other[0] - one[2], one[0] - other[2], 0.0)
    up = max(other[1] - one[3], one[1] - other[3], 0.0)
    return math.sqrt(across * across + up * up)


def hits(layout: Layout, spot: "Rectangle") -> "list[tuple[int, str]]":
    """Return what an obstacle lands on: frames counted from 0, each with the name of a part."""
    met = [index for index in layout.near(spot) if overlap(spot, layout.outside(index))]
    return [
        (index, name) for index in met for name, part in layout.sides(index) if overlap(spot, part)
    ]


class Landing:
    """What an obstacle lands on: in words, and how far it stays clear of the trim (0: on it)."""

    def __init__(self, layout: Layout, spot: "Rectangle") -> None:
        found = hits(layout, spot)
        self.is_clear = not found
        self.words = _hit_words(found) if found else _clear_words(layout, spot)
        self.room = 0.0
        if self.is_clear:
            parts = [part for index in layout.near(spot) for _, part in layout.sides(index)]
            self.room = min([distance(spot, part) for part in parts])


def _hit_words(found: "list[tuple[int, str]]") -> str:
    frames = sorted({index for index, _ in found})
    said = []
    for frame in frames:
        names = [name for index, name in found if index == frame]
        said.append("frame " + str(frame + 1) + ", " + " and ".join(names))
    return "on " + "; ".join(said)


def _clear_words(layout: Layout, spot: "Rectangle") -> str:
    """Say which frame or gap an obstacle lies in that touches no trim."""
    middle = (spot[0] + spot[2]) / 2
    for index in range(layout.count):
        outside = layout.outside(index)
        if overlap(spot, outside):
            return f"inside frame {index + 1}"
        if middle < outside[0]:
            return _gap_words(index, spot, outside)
        if middle <= outside[2]:
            return _level(spot, outside) + f"frame {index + 1}"
    return "in the right end margin"


def _gap_words(index: int, spot: "Rectangle", outside: "Rectangle") -> str:
    """Name the gap left of a frame."""
    if index == 0:
        return "in the left end margin"
    level = _level(spot, outside) or "in "
    return level + f"the gap between frames {index} and {index + 1}"


def _level(spot: "Rectangle", outside: "Rectangle") -> str:
    if spot[3] <= outside[1] + HAIR:
        return "below "
    return "above " if spot[1] >= outside[3] - HAIR else ""
