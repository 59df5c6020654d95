"""What an outlet or a switch lands on: trim, a block, or nothing at all."""

import math

from .layout import HAIR, Frame, Layout

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .layout import Rectangle


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
    """Return what an obstacle lands on: numbers of frames, each with the name of a part."""
    met = [frame for frame in layout.frames if overlap(spot, frame.outside)]
    return [
        (frame.number, name) for frame in met for name, part in frame.parts() if overlap(spot, part)
    ]


class Landing:
    """What an obstacle lands on: in words, and how far it stays clear of the trim (0: on it)."""

    def __init__(self, layout: Layout, spot: "Rectangle") -> None:
        found = hits(layout, spot)
        self.is_clear = not found
        self.frame, self.room = self._nearest(layout, spot)
        if found:
            self.frame, self.room = found[0][0], 0.0
            self.words = _hit_words(found)
        elif overlap(spot, layout.frames[self.frame - 1].outside):
            self.words = f"inside frame {self.frame}"
        else:
            self.words = f"beside frame {self.frame}"

    def _nearest(self, layout: Layout, spot: "Rectangle") -> "tuple[int, float]":
        """Return the number of the frame whose trim is nearest, and how far that is."""
        rooms = [(self._room(frame, spot), frame.number) for frame in layout.frames]
        room, number = min(rooms)
        return number, room

    def _room(self, frame: Frame, spot: "Rectangle") -> float:
        return min([distance(spot, part) for _, part in frame.parts()])


def _hit_words(found: "list[tuple[int, str]]") -> str:
    said = []
    for number in sorted({number for number, _ in found}):
        names = [name for each, name in found if each == number]
        said.append(f"frame {number}, " + " and ".join(names))
    return "on " + "; ".join(said)
