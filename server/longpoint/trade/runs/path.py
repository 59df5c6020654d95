"""The walls of a run as a path seen from above, and whether a closed one comes back to its start.

Inches, x to the right, y downwards; a heading is in degrees from +x, clockwise on screen. The first
wall heads right with the room below it, so walls in clockwise order turn right at inside corners.
"""

import math

from .. import degrees
from ..lengths import show_angle
from ..tool import Scale
from .run import ENDING, Run, Wall

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..drawing import Point

ANGLE_MISS = 0.05
LENGTH_MISS = 1.0

UNSAID = (
    "These walls come around to where they began, so the last piece and piece 1 would both run "
    "square into the same corner and collide. If the trim goes all around, set Closed run to yes."
)
"""For a run that comes round and is not said to be closed."""


class Line:
    """Where a wall lies: its left corner and its heading."""

    def __init__(self, start: "Point", heading: float) -> None:
        self.start = start
        self.heading = heading
        self._cos, self._sin = degrees.cos(heading), degrees.sin(heading)

    def at(self, along: float, out: float = 0.0) -> "Point":
        """Return the point `along` the wall and `out` from it into the room."""
        return (
            self.start[0] + along * self._cos - out * self._sin,
            self.start[1] + along * self._sin + out * self._cos,
        )


def turned(wall: Wall) -> float:
    """Return how far the path turns right at a wall's right end; straight on past an opening."""
    if wall.turn in ENDING:
        return 0.0
    return 180 - wall.corner if wall.turn == "inside" else wall.corner - 180


def trace(walls: "list[Wall]", gap: float) -> "list[Line]":
    """Return where each wall lies, and after them where one more would; `gap` is an opening."""
    line = Line((0.0, 0.0), 0.0)
    lines = [line]
    for wall in walls:
        far = wall.length + (gap if wall.turn in ENDING else 0.0)
        line = Line(line.at(far), line.heading + turned(wall))
        lines.append(line)
    return lines


def gap_between(run: Run) -> float:
    """Return how wide an opening between two walls is drawn: what closes the run, else a guess."""
    broken = [index for index, wall in enumerate(run.walls) if wall.turn in ENDING]
    usual = max([wall.length for wall in run.walls]) / 4
    if not run.closed or len(broken) != 1:
        return usual
    lines = trace(run.walls, 0.0)
    heading, (x, y) = lines[broken[0]].heading, lines[-1].start
    left = -x * degrees.cos(heading) - y * degrees.sin(heading)
    return left if left > 0 else usual


def closing_notes(run: Run, scale: Scale) -> "list[str]":
    """Return what to say of a closed run whose corners or lengths don't come round."""
    if not run.closed:
        return []
    if [wall for wall in run.walls if wall.turn in ENDING]:
        return [
            "A wall ends at a casing or an open end, and nobody said how wide that opening is, so "
            "whether the run closes can't be checked. List the whole wall, and the door in it."
        ]
    return _angle_notes(run.walls) + _length_notes(run.walls, scale)


def closes_unsaid(run: Run) -> bool:
    """Tell whether an open run comes back to its start, so that its two ends share a corner."""
    if run.first_end != "wall" or run.walls[-1].turn != "inside":
        return False
    if run.is_bare(0, "left") or run.is_bare(len(run.walls) - 1, "right"):
        return False
    if [wall for wall in run.walls if wall.turn in ENDING]:
        return False
    turns = sum([turned(wall) for wall in run.walls])
    return abs(turns - 360) < ANGLE_MISS and _miss(run.walls) <= LENGTH_MISS


def _miss(walls: "list[Wall]") -> float:
    """Return how far the last wall ends from where the first one starts, inches."""
    x, y = trace(walls, 0.0)[-1].start
    return math.sqrt(x * x + y * y)


def _angle_notes(walls: "list[Wall]") -> "list[str]":
    """Hold the angles in the room against those of any closed figure.

    They make (n - 2) x 180 where the walls close around a room, (n + 2) x 180 around a column.
    """
    turns = sum([turned(wall) for wall in walls])
    got = 180.0 * len(walls) - turns
    wanted = (len(walls) + (2 if turns < 0 else -2)) * 180.0
    if abs(got - wanted) < ANGLE_MISS:
        return []
    words = "too much" if got > wanted else "too little"
    return [
        f"The corners of a closed run of {len(walls)} walls, taken in the room, add up to "
        f"{show_angle(wanted)}; these add up to {show_angle(got)}, "
        f"{show_angle(abs(got - wanted))} {words}: measure the corners again before you cut."
    ]


def _length_notes(walls: "list[Wall]", scale: Scale) -> "list[str]":
    miss = _miss(walls)
    if miss <= LENGTH_MISS:
        return []
    return [
        f"Drawn out with these lengths and corners, the last wall misses the first by "
        f"{scale.length(miss)}: a length or a corner is off."
    ]
