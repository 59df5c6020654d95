"""A signature drawn on the screen, as a job keeps it: the strokes of a finger, mere numbers."""

from .shapes import Shape

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

WIDTH = 600
HEIGHT = 240
"""The area signed on, in its own units: x from the left, y down. Points are whole units."""
MOST_STROKES = 60
MOST_POINTS = 600
"""Of all strokes together: a hundred signatures of that length still fit a document."""


class Strokes(Shape):
    """A list of strokes, each a list of points ``[x, y]``."""

    def faults(self, value: object, path: str, known: object = None) -> "list[tuple[str, str]]":
        if not isinstance(value, list):
            return [(path, "A list is needed here.")]
        if value is known:
            return []
        if len(value) > MOST_STROKES:
            return [(path, _too_much(len(value), "strokes", MOST_STROKES))]
        points = sum([len(stroke) for stroke in value if isinstance(stroke, list)])
        if points > MOST_POINTS:
            return [(path, _too_much(points, "points", MOST_POINTS))]
        return [
            (f"{path}.{at}", words)
            for at, words in enumerate([_fault(stroke) for stroke in value])
            if words
        ]

    def schema(self) -> "dict[str, Any]":
        point = {
            "type": "array",
            "prefixItems": [_within(WIDTH), _within(HEIGHT)],
            "minItems": 2,
            "maxItems": 2,
        }
        stroke = {"type": "array", "items": point, "minItems": 1, "maxItems": MOST_POINTS}
        return {"type": "array", "items": stroke, "maxItems": MOST_STROKES}


def _too_much(count: int, what: str, most: int) -> str:
    return f"{count} {what}: a signature holds {most} at most. Clear it and sign again, shorter."


def _within(most: int) -> "dict[str, Any]":
    return {"type": "integer", "minimum": 0, "maximum": most}


def _fault(stroke: object) -> str:
    if not isinstance(stroke, list) or not stroke:
        return "A list of points is needed here."
    if [point for point in stroke if not _is_point(point)]:
        return f"A point is two whole numbers, up to {WIDTH} and up to {HEIGHT}."
    return ""


def _is_point(point: object) -> bool:
    if not isinstance(point, list) or len(point) != 2:
        return False
    return _is_whole(point[0], WIDTH) and _is_whole(point[1], HEIGHT)


def _is_whole(value: object, most: int) -> bool:
    if isinstance(value, bool) or not isinstance(value, (int, float)):
        return False
    return 0 <= value <= most and value == int(value)
