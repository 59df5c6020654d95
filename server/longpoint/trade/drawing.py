"""The drawing vocabulary: plain shapes with roles, to scale, in inches, y downwards.

A tool draws what it means (stock, a cut, a mark); the renderer decides how that looks.
"""

import math

from . import degrees

ROLES = ("stock", "panel", "wall", "metal", "cut", "waste", "mark", "clearance")

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    Point = tuple[float, float]


class Drawing:
    """One view, drawn to scale; its box grows with what is drawn.

    Parameters
    ----------
    title : str
        What is seen, for the caption and for who can't see it.
    description : str
        The same in a sentence, with the numbers that matter.
    full_size : bool
        Worth a print at its true size: a template laid on the work.

    >>> view = Drawing("Corner", "A square corner.").line("cut", (0, 0), (3, 4))
    >>> view.to_json()["box"]
    [0.0, 0.0, 3.0, 4.0]
    """

    def __init__(self, title: str, description: str, *, full_size: bool = False) -> None:
        self.title = title
        self.description = description
        self.full_size = full_size
        self.shapes: list[dict[str, Any]] = []
        self._seen: list[Point] = []

    def area(self, role: str, points: "list[Point]") -> "Drawing":
        """Draw a closed polygon through `points`."""
        return self._add("area", role, points, {"points": [_pair(point) for point in points]})

    def box(self, role: str, x0: float, y0: float, x1: float, y1: float) -> "Drawing":
        """Draw an upright rectangle by two opposite corners."""
        return self.area(role, [(x0, y0), (x1, y0), (x1, y1), (x0, y1)])

    def line(self, role: str, start: "Point", end: "Point") -> "Drawing":
        """Draw a straight line."""
        return self._add("line", role, [start, end], {"from": _pair(start), "to": _pair(end)})

    def arc(
        self, role: str, center: "Point", radius: float, start: float, sweep: float
    ) -> "Drawing":
        """Draw an arc: degrees from +x, a positive sweep runs clockwise on screen.

        >>> Drawing("Swing", "A quarter.").arc("mark", (0, 0), 2, 0, 90).to_json()["box"]
        [0.0, 0.0, 2.0, 2.0]
        """
        shape = {"center": _pair(center), "radius": float(radius)}
        shape["start"], shape["sweep"] = float(start), float(sweep)
        return self._add("arc", role, _along_arc(center, radius, start, sweep), shape)

    def circle(self, role: str, center: "Point", radius: float) -> "Drawing":
        """Draw a full circle."""
        shape = {"center": _pair(center), "radius": float(radius)}
        return self._add("circle", role, _round_about(center, radius), shape)

    def dimension(self, start: "Point", end: "Point", text: str, lane: int = 1) -> "Drawing":
        """Draw a dimension between two points.

        `lane` counts lanes to the left of the way from `start` to `end` (above, going right);
        negative lanes lie to the right, lane 0 on the line itself.
        """
        shape = {"from": _pair(start), "to": _pair(end), "lane": lane, "text": text}
        return self._add("dimension", "mark", [start, end], shape)

    def tag(self, at: "Point", text: str) -> "Drawing":
        """Draw a numbered balloon."""
        return self._add("tag", "mark", [at], {"at": _pair(at), "text": text})

    def text(self, at: "Point", text: str, role: str = "mark", anchor: str = "middle") -> "Drawing":
        """Write words; `anchor` is start, middle or end."""
        return self._add("text", role, [at], {"at": _pair(at), "text": text, "anchor": anchor})

    def to_json(self) -> "dict[str, Any]":
        """Return the drawing as the contract's JSON object."""
        across = [point[0] for point in self._seen]
        down = [point[1] for point in self._seen]
        box = [float(side) for side in (min(across), min(down), max(across), max(down))]
        return {
            "title": self.title,
            "description": self.description,
            "box": box,
            "shapes": self.shapes,
            "full_size": self.full_size,
        }

    def _add(
        self, shape: str, role: str, points: "list[Point]", parts: "dict[str, Any]"
    ) -> "Drawing":
        if role not in ROLES:
            raise ValueError("no such role: " + role)
        self._seen.extend(points)
        parts["shape"], parts["role"] = shape, role
        self.shapes.append(parts)
        return self


def _pair(point: "Point") -> "list[float]":
    return [float(point[0]), float(point[1])]


def _along_arc(center: "Point", radius: float, start: float, sweep: float) -> "list[Point]":
    """Return the ends of an arc, and where it passes straight right, down, left or up."""
    low, high = min(start, start + sweep), max(start, start + sweep)
    quarters = range(int(math.ceil(low / 90)), int(math.floor(high / 90)) + 1)
    turns = [low, high] + [90 * quarter for quarter in quarters]
    x, y = center
    return [(x + radius * degrees.cos(turn), y + radius * degrees.sin(turn)) for turn in turns]


def _round_about(center: "Point", radius: float) -> "list[Point]":
    x, y = center
    return [(x - radius, y - radius), (x + radius, y + radius)]
