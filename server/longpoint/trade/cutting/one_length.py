"""Pieces that are all alike, out of sticks sold in a few lengths: the least length bought, exactly.

One length of piece needs no search: a table says for each number of pieces what they take.
"""

import math

_HAIR = 1e-9  # Of a piece: float noise must not lose one that fills a stick exactly.
_FINE = 1000000  # Parts of an inch in which lengths are compared.


class Sticks:
    """Sticks of one length that are cut alike.

    Attributes
    ----------
    length : float
        Of a stick, inches.
    count, each : int
        How many sticks, and how many pieces come out of one.
    """

    def __init__(self, length: float, count: int, each: int) -> None:
        self.length = length
        self.count = count
        self.each = each


def pieces_in(stick: float, piece: float, kerf: float) -> int:
    """Return how many pieces come out of a stick; the last one may need no cut.

    >>> pieces_in(96, 24, 0.125), pieces_in(96, 23.875, 0.125)
    (3, 4)
    """
    return int(math.floor((stick + kerf) / (piece + kerf) + _HAIR))


class OneLength:
    """A piece, and the sticks sold for it.

    Parameters
    ----------
    piece, kerf : float
        Inches.
    sold : list of float
        Lengths in which sticks are sold; those too short for a piece are left out.

    >>> plan = OneLength(44, 0.125, [96, 144])
    >>> [(s.length, s.count, s.each) for s in plan.sticks(14)]
    [(96, 1, 2), (144, 4, 3)]
    >>> [(s.length, s.count, s.each) for s in OneLength(44, 0.125, [96]).sticks(14)]
    [(96, 7, 2)]
    """

    def __init__(self, piece: float, kerf: float, sold: "list[float]") -> None:
        kinds = [(pieces_in(length, piece, kerf), length) for length in sorted(set(sold))]
        self.kinds = [(each, length) for each, length in kinds if each]
        self._least: list[int] = [0]
        self._last: list[int] = [0]

    def sticks(self, count: int) -> "list[Sticks]":
        """Return the sticks that give `count` pieces: least length in all, then fewest sticks.

        There must be a length that gives one. Shortest sticks first.
        """
        bulk, planned = self._bulk(count)
        self._fill(planned)
        used = [0 for _ in self.kinds]
        if bulk:
            used[self._best()] = bulk
        while planned > 0:
            kind = self._last[planned]
            used[kind] += 1
            planned -= self.kinds[kind][0]
        sticks = zip(self.kinds, used)
        return [Sticks(length, number, each) for (each, length), number in sticks if number]

    def _best(self) -> int:
        """Return the kind that takes least length for a piece, the longest of equals."""
        return -min([(length / each, -at) for at, (each, length) in enumerate(self.kinds)])[1]

    def _bulk(self, count: int) -> "tuple[int, int]":
        """Return how many sticks are certainly of the best kind, and the pieces left to plan.

        Of any `each` sticks of other kinds some hold a multiple of `each` pieces, which as many of
        the best kind hold in no more length: so fewer than `each` of them are ever needed.
        """
        each = self.kinds[self._best()][0]
        most = max([held for held, _ in self.kinds])
        spare = count - each * most
        bulk = max(0, spare // each)
        return bulk, count - bulk * each

    def _fill(self, count: int) -> None:
        """Fill the table up to a number of pieces."""
        worth = [int(length * _FINE + 0.5) * _FINE + 1 for _, length in self.kinds]
        for number in range(len(self._least), count + 1):
            ways = [
                (self._least[max(0, number - each)] + worth[at], at)
                for at, (each, _) in enumerate(self.kinds)
            ]
            least, last = min(ways)
            self._least.append(least)
            self._last.append(last)
