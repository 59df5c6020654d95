"""Which piece of trim runs through at a corner, and how long each piece is.

Walls come in clockwise order seen from above: facing each from inside the room, its right end
meets the next one's left end. Pieces go up in that order, so at an inside corner the piece that is
already there runs through to the wall and the next dies into its face with its left end. Where a
closed run comes round to an inside corner, its first piece is already there: it runs through at
its left end too, and the last piece dies in at its right end as well.
"""

from ..tool import Given
from .scarf import lap, piece_length, pieces_needed
from .trim_joints import Joint

ENDING = ("casing", "open")
_HELD = ("cope", "butt", "miter", "through", "wall", "casing")
_LETTERS = "abcdefghijklmnopqrstuvwxyz"


class Wall:
    """One wall: length in inches along the trim, what comes at its right end, and the angle."""

    def __init__(self, length: float, turn: str, corner: float) -> None:
        self.length = length
        self.turn = turn
        self.corner = corner


class Run:
    """The run as asked for: walls in order, stock, and how its corners are joined.

    `first_end` is "" for a closed run; `stick` is None where any length can be had.
    """

    def __init__(self, given: Given) -> None:
        self.closed = given.flag("closed")
        self.first_end = given.text("first_end")
        self.inside = given.text("inside_joint")
        self.thickness = given.number("thickness")
        self.spring = given.maybe("spring") or 0.0
        self.stick = given.maybe("stick")
        self.scarf = given.number("scarf")
        self.walls = [
            Wall(row.number("length"), row.text("turn"), row.maybe("corner") or 90.0)
            for row in given.rows("walls")
        ]

    def meets(self, index: int) -> bool:
        """Tell whether a wall's right end meets the left end of another one that is listed."""
        listed = self.closed or index + 1 < len(self.walls)
        return listed and self.walls[index].turn not in ENDING

    def follows(self, index: int) -> bool:
        """Tell whether a wall's left end meets the right end of another one that is listed."""
        return (index > 0 or self.closed) and self.meets(index - 1)

    def lap(self) -> float:
        """Return what one scarf costs, in inches."""
        return lap(self.thickness, self.scarf)


class Piece:
    """One piece: where its back lies along its wall, in inches from the left corner, and its ends.

    `wall` counts from 0; `meets` names the pieces at its left and right end, "" for none.
    """

    def __init__(
        self, tag: str, wall: int, span: "tuple[float, float]", left: Joint, right: Joint
    ) -> None:
        self.tag = tag
        self.wall = wall
        self.start, self.end = span
        self.left = left
        self.right = right
        self.meets = ("", "")

    def back(self) -> float:
        """Return the length on the wall line."""
        return self.end - self.start

    def face(self, thickness: float) -> float:
        """Return the length on the face, as it comes off the saw."""
        return self.back() + self.left.reach(thickness) + self.right.reach(thickness)

    def over_all(self, thickness: float) -> float:
        """Return the length from outermost point to outermost point."""
        reaches = (self.left.reach(thickness), self.right.reach(thickness))
        return self.back() + sum([max(0.0, reach) for reach in reaches])

    def marked(self, thickness: float) -> float:
        """Return what is marked on the tape: the wall line, from a scarf's long point on."""
        over = self.left.reach(thickness) if self.left.kind == "over" else 0.0
        return self.back() + over


def right_joint(run: Run, index: int) -> Joint:
    """Return how a wall's trim ends on the right."""
    wall = run.walls[index]
    if wall.turn != "inside":
        return Joint(wall.turn, wall.corner)
    last = index + 1 == len(run.walls)
    if last and not run.closed:
        return Joint("through", wall.corner)
    if run.inside == "miter" or last:
        return Joint(run.inside, wall.corner)
    return Joint("through", wall.corner)


def left_joint(run: Run, index: int) -> Joint:
    """Return how a wall's trim ends on the left; past an opening it starts as the last ended."""
    if index == 0 and not run.closed:
        return Joint(run.first_end)
    before = run.walls[index - 1]
    if before.turn != "inside":
        return Joint(before.turn, before.corner)
    if index == 0 and run.inside != "miter":
        return Joint("through", before.corner)
    return Joint(run.inside, before.corner)


def whole_piece(run: Run, index: int) -> Piece:
    """Return a wall's trim as if no stick were too short."""
    left, right = left_joint(run, index), right_joint(run, index)
    length = run.walls[index].length
    span = (left.inset(run.thickness), length - right.inset(run.thickness))
    whole = Piece(str(index + 1), index, span, left, right)
    whole.end += run.spring if sprung(whole) else 0.0
    return whole


def sprung(piece: Piece) -> bool:
    """Tell whether a piece is bowed into place: coped, and held at both ends."""
    kinds = (piece.left.kind, piece.right.kind)
    return "cope" in kinds and not [kind for kind in kinds if kind not in _HELD]


def split(run: Run, whole: Piece) -> "list[Piece]":
    """Return the pieces, left to right, that a wall's trim is made of.

    All are as long from point to point, so that none is short. `run.stick` is more than a lap.
    """
    over_all, lost = whole.over_all(run.thickness), run.lap()
    number = 1 if run.stick is None else pieces_needed(over_all, run.stick, lost)
    if number == 1:
        return [whole]
    each = piece_length(over_all, number, lost)
    past = max(0.0, whole.left.reach(run.thickness))
    ends = [whole.start - past + each + i * (each - lost) for i in range(number - 1)]
    starts, ends = [whole.start] + ends, ends + [whole.end]
    under, over = Joint("under", run.scarf), Joint("over", run.scarf)
    return [
        Piece(
            whole.tag + _LETTERS[i],
            whole.wall,
            (starts[i], ends[i]),
            over if i else whole.left,
            under if i + 1 < number else whole.right,
        )
        for i in range(number)
    ]


def name_neighbors(run: Run, walls: "list[list[Piece]]") -> None:
    """Tell each piece, wall by wall, which piece it meets at either end."""
    for index, pieces in enumerate(walls):
        before = walls[index - 1][-1].tag if run.follows(index) else ""
        after = walls[(index + 1) % len(walls)][0].tag if run.meets(index) else ""
        tags = [before] + [piece.tag for piece in pieces] + [after]
        for at, piece in enumerate(pieces):
            piece.meets = (tags[at], tags[at + 2])
