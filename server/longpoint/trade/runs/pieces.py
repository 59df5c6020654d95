"""Which piece of trim runs through at a corner, and how long each piece is.

Pieces go up in the order of the walls, so at an inside corner the piece that is already there
runs through to the wall and the next dies into its face with its left end. Where a closed run
comes round to an inside corner, its first piece is already there: it runs through at its left end
too, and the last piece dies in at its right end as well.
"""

from .ends import TrimEnd
from .run import HAIR, Run
from .scarf import piece_length, pieces_needed

_HELD = ("cope", "butt", "miter", "through", "wall", "casing")
_LETTERS = "abcdefghijklmnopqrstuvwxyz"


class Stretch:
    """Part of a wall without an opening: where it begins and ends, inches from the left corner.

    `wall` counts from 0; `opening` is the place in the form of the opening that bounds it, left
    before right, None for a whole wall.
    """

    def __init__(
        self,
        tag: str,
        wall: int,
        limits: "tuple[float, float]",
        ends: "tuple[TrimEnd, TrimEnd]",
        opening: "int | None",
    ) -> None:
        self.tag = tag
        self.wall = wall
        self.start, self.end = limits
        self.left, self.right = ends
        self.opening = opening

    def spans(self, left: TrimEnd, right: TrimEnd, thickness: float) -> "tuple[float, float]":
        """Return where the back of a piece with such ends begins and ends."""
        return self.start + left.inset(thickness), self.end - right.inset(thickness)

    def stands(self, thickness: float) -> bool:
        """Tell whether stock of some thickness leaves a back and a face to its piece."""
        left, right = self.left.standing(), self.right.standing()
        start, end = self.spans(left, right, thickness)
        back = end - start
        return back > 0 and back + left.reach(thickness) + right.reach(thickness) > 0


class Piece:
    """One piece: where its back lies along its wall, in inches from the left corner, and its ends.

    `meets` names the pieces at its left and right end, "" for none.
    """

    def __init__(
        self,
        tag: str,
        stretch: Stretch,
        span: "tuple[float, float]",
        left: TrimEnd,
        right: TrimEnd,
    ) -> None:
        self.tag = tag
        self.stretch = stretch
        self.wall = stretch.wall
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


def right_end(run: Run, index: int) -> TrimEnd:
    """Return how a wall's trim ends at its right corner."""
    wall = run.walls[index]
    last = index + 1 == len(run.walls)
    alone = not run.meets(index) and not (last and not run.closed)
    if wall.turn != "inside":
        return TrimEnd("open" if alone and wall.turn == "outside" else wall.turn, wall.corner)
    if alone or (last and not run.closed):
        return TrimEnd("through", wall.corner)
    if run.inside == "miter" or last:
        return TrimEnd(run.inside, wall.corner)
    return TrimEnd("through", wall.corner)


def left_end(run: Run, index: int) -> TrimEnd:
    """Return how a wall's trim ends at its left corner; past an opening as the last one ended."""
    if index == 0 and not run.closed:
        return TrimEnd(run.first_end)
    before = run.walls[index - 1]
    alone = not run.follows(index)
    if before.turn != "inside":
        return TrimEnd("open" if alone and before.turn == "outside" else before.turn, before.corner)
    if alone or (index == 0 and run.inside != "miter"):
        return TrimEnd("through", before.corner)
    return TrimEnd(run.inside, before.corner)


def stretches(run: Run, index: int) -> "list[Stretch]":
    """Return the parts of a wall that get trim, left to right, tagged by their place on it.

    A part that an opening leaves no room for keeps its number: tags stay while sizes change.
    """
    length, inside = run.walls[index].length, run.openings[index]
    starts = [0.0] + [each.end for each in inside]
    ends = [each.start for each in inside] + [length]
    stops = [TrimEnd(each.stop) for each in inside]
    lefts, rights = [left_end(run, index)] + stops, stops + [right_end(run, index)]
    places = [each.place for each in inside]
    found = []
    for at, (start, end) in enumerate(zip(starts, ends)):
        tag = f"{index + 1}.{at + 1}" if inside else str(index + 1)
        bound = places[max(at - 1, 0)] if inside else None
        if not inside or end - start > HAIR:
            found.append(Stretch(tag, index, (start, end), (lefts[at], rights[at]), bound))
    return found


def whole_piece(run: Run, stretch: Stretch) -> Piece:
    """Return a stretch's trim as if no stick were too short."""
    left, right = stretch.left, stretch.right
    span = stretch.spans(left, right, run.thickness)
    whole = Piece(stretch.tag, stretch, span, left, right)
    whole.end += run.spring if sprung(whole) else 0.0
    return whole


def sprung(piece: Piece) -> bool:
    """Tell whether a piece is bowed into place: coped, and held at both ends."""
    kinds = (piece.left.kind, piece.right.kind)
    return "cope" in kinds and not [kind for kind in kinds if kind not in _HELD]


def split(run: Run, whole: Piece) -> "list[Piece]":
    """Return the pieces, left to right, that a stretch's trim is made of.

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
    under, over = TrimEnd("under", run.scarf), TrimEnd("over", run.scarf)
    return [
        Piece(
            whole.tag + _LETTERS[i],
            whole.stretch,
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
        for at, piece in enumerate(pieces):
            meets_left = at > 0 and pieces[at - 1].stretch is piece.stretch
            meets_right = at + 1 < len(pieces) and pieces[at + 1].stretch is piece.stretch
            left = pieces[at - 1].tag if meets_left else (before if at == 0 else "")
            right = pieces[at + 1].tag if meets_right else ""
            piece.meets = (left, right or (after if at + 1 == len(pieces) else ""))
