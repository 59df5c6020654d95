"""A run of trim as it is asked for: walls, what stands in them, the molding and its joints.

Walls come in clockwise order seen from above: facing each from inside the room, its right end
meets the next one's left end. A door or a gap in a wall parts its trim into stretches.
"""

from collections import namedtuple

from ..tool import FieldError, Refusal, Scale
from .scarf import lap

Opening = namedtuple("Opening", ("place", "wall", "start", "end", "stop"))
"""A door or a gap: its place in the form, the wall counted from 0, inches from its left corner.

`stop` is what the trim comes to on both sides: casing or open.
"""

Molding = namedtuple("Molding", ("thickness", "width", "stick"))
"""The trim in inches; `width` None where nobody said it, `stick` None where any length is had."""

Joining = namedtuple("Joining", ("inside", "spring", "scarf"))
"""How inside corners are joined (cope, miter, butt), the spring in inches, the scarf in degrees."""

ENDING = ("casing", "open")
HAIR = 1e-9
"""Inches: float noise must not leave a sliver of trim between a corner and a casing."""


class Wall:
    """One wall: inches along the trim, what comes at its right end, the corner there in degrees.

    `turn` is inside, outside, casing or open.
    """

    def __init__(self, length: float, turn: str, corner: float) -> None:
        self.length = length
        self.turn = turn
        self.corner = corner


class Run:
    """Walls and the openings in them, stock, and how its corners are joined.

    Parameters
    ----------
    walls : list of Wall
    openings : list of Opening
        In any order.
    ends : (bool, str)
        Whether the run is closed, and what its first wall's left end comes to: wall, casing or
        open; empty for a closed run.
    molding : Molding
    joining : Joining
    scale : Scale
        How refusals show lengths.

    Raises
    ------
    Refusal
        For openings that are on no wall, off their wall, or over each other.
    """

    def __init__(
        self,
        walls: "list[Wall]",
        openings: "list[Opening]",
        ends: "tuple[bool, str]",
        molding: Molding,
        joining: Joining,
        scale: Scale,
    ) -> None:
        self.walls = walls
        self.closed, self.first_end = ends
        self.thickness: float = molding.thickness
        self.width, self.stick = molding.width, molding.stick
        self.inside, self.spring, self.scarf = joining
        refuse_misplaced(walls, openings, scale)
        order = sorted([(each.start, each.place, each) for each in openings])
        self.openings: list[list[Opening]] = [
            [each for _, _, each in order if each.wall == index] for index in range(len(walls))
        ]

    def is_bare(self, index: int, side: str) -> bool:
        """Tell whether an opening takes a wall's left or right corner, so that no trim is there."""
        inside = self.openings[index]
        if not inside:
            return False
        if side == "left":
            return bool(inside[0].start <= HAIR)
        return bool(inside[-1].end >= self.walls[index].length - HAIR)

    def meets(self, index: int) -> bool:
        """Tell whether a wall's trim meets that of another one at the right end."""
        listed = self.closed or index + 1 < len(self.walls)
        if not listed or self.walls[index].turn in ENDING:
            return False
        after = (index + 1) % len(self.walls)
        return not self.is_bare(index, "right") and not self.is_bare(after, "left")

    def follows(self, index: int) -> bool:
        """Tell whether a wall's trim meets that of another one at the left end."""
        return (index > 0 or self.closed) and self.meets((index - 1) % len(self.walls))

    def lap(self) -> float:
        """Return what one scarf costs, in inches."""
        return lap(self.thickness, self.scarf)


def refuse_misplaced(walls: "list[Wall]", openings: "list[Opening]", scale: Scale) -> None:
    """Refuse openings that are on no wall, off their wall, or over each other."""
    errors = []
    for each in openings:
        path = f"openings.{each.place}."
        if each.wall >= len(walls):
            said = "1 is" if len(walls) == 1 else f"{len(walls)} are"
            words = f"There is no wall {each.wall + 1}: {said} listed."
            errors.append(FieldError(path + "wall", words))
            continue
        length = walls[each.wall].length
        if each.end > length + HAIR:
            words = (
                f"It ends {scale.length(each.end)} from the left corner, and wall {each.wall + 1} "
                f"is {scale.length(length)} long: measure again."
            )
            errors.append(FieldError(path + "width", words))
        for other in openings:
            if other.place < each.place and _overlap(each, other):
                words = f"It lies over opening {other.place + 1} of the same wall: measure again."
                errors.append(FieldError(path + "from_left", words))
    if errors:
        raise Refusal.of(errors)


def _overlap(one: Opening, other: Opening) -> bool:
    shared = min(one.end, other.end) - max(one.start, other.start)
    return bool(one.wall == other.wall and shared > HAIR)
