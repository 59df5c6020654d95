"""From a tree to the order of the cuts, as one would make them at the saw.

Before a piece is cut up, what it does not need is cut off in one: so the offcut stays large.
Cuts side by side come one after the other, then each of the pieces they made.
"""

from .tree import CUT, PART, REST, Tree

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .tree import Node


class Piece:
    """A rectangle on its way through the saw, in units, kerf included; `at` is its tree node."""

    def __init__(self, x: int, y: int, wide: int, high: int, at: int) -> None:
        self.x = x
        self.y = y
        self.wide = wide
        self.high = high
        self.at = at
        self.part: int | None = None
        self.is_rest = at < 0

    def cut(self, axis: int, at: int, first: int, second: int) -> "tuple[Piece, Piece]":
        """Return the two pieces that a cut makes, the kerf belonging to the first."""
        if axis == 0:
            return (
                Piece(self.x, self.y, at, self.high, first),
                Piece(self.x + at, self.y, self.wide - at, self.high, second),
            )
        return (
            Piece(self.x, self.y, self.wide, at, first),
            Piece(self.x, self.y + at, self.wide, self.high - at, second),
        )


class Step:
    """One cut: `piece` is cut on `axis` at `at` units from its corner into `first` and `second`."""

    def __init__(self, piece: Piece, axis: int, at: int, pair: "tuple[Piece, Piece]") -> None:
        self.piece = piece
        self.axis = axis
        self.at = at
        self.first, self.second = pair


class Steps:
    """All cuts of one sheet in order.

    Attributes
    ----------
    steps : list of Step
    parts, rests : list of Piece
        What comes of it; a rest no wider than a kerf is dust.
    """

    def __init__(self, root: "Node", room: "tuple[int, int]") -> None:
        self.tree = Tree(root)
        self.steps: list[Step] = []
        self.parts: list[Piece] = []
        self.rests: list[Piece] = []
        whole = Piece(0, 0, room[0], room[1], 0)
        waiting = [] if self._is_done(whole) else [whole]
        while waiting:
            # The last one waiting is next, so that a strip is finished before the one beside it.
            made = self._in_a_row(waiting.pop())
            made.reverse()
            waiting.extend(made)

    def _in_a_row(self, piece: Piece) -> "list[Piece]":
        """Make all cuts of a piece that run side by side; return the pieces still to be cut."""
        made: list[Piece] = []
        todo = self._next(piece)
        axis = todo[0] if todo else 0
        while todo is not None and todo[0] == axis:
            _, at, first, second = todo
            step = Step(piece, axis, at, piece.cut(axis, at, first, second))
            self.steps.append(step)
            made.append(step.first)
            piece = step.second
            todo = None if piece.is_rest else self._next(piece)
        if piece.is_rest:
            self.rests.append(piece)
        else:
            made.append(piece)
        return [one for one in made if not self._is_done(one)]

    def _is_done(self, piece: Piece) -> bool:
        """Note a piece that is a part as it lies."""
        if piece.part is None and self._next(piece) is None:
            piece.part = self.tree.nodes[piece.at][1]
            self.parts.append(piece)
        return piece.part is not None

    def _next(self, piece: Piece) -> "tuple[int, int, int, int] | None":
        """Return axis, place and children of a piece's next cut; None for a finished part."""
        at = self._inner(piece.at)
        piece.at = at
        wide, high = self.tree.needs[at]
        over_x, over_y = piece.wide - wide, piece.high - high
        node = self.tree.nodes[at]
        if over_x and over_y:
            if over_x * piece.high >= over_y * piece.wide:
                return (0, wide, at, -1)
            return (1, high, at, -1)
        # What is over beyond a row of cuts is left by the last of them.
        if over_x and not (node[0] == CUT and node[1] == 0):
            return (0, wide, at, -1)
        if over_y and not (node[0] == CUT and node[1] == 1):
            return (1, high, at, -1)
        if node[0] == PART:
            return None
        return (node[1], node[2], self.tree.first[at], self.tree.second[at])

    def _inner(self, at: int) -> int:
        """Return the node that matters where a cut only frees a rest."""
        node = self.tree.nodes[at]
        while node[0] == CUT and not self.tree.needs[self.tree.second[at]][0]:
            at = self.tree.first[at]
            node = self.tree.nodes[at]
        assert node[0] != REST, "a cut's first side always holds a part"
        return at
