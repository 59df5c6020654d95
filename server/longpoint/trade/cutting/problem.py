"""A cutting problem in whole numbers, so that "fits exactly" is exact."""

import math

TYPE_CHECKING = False
if TYPE_CHECKING:
    Pattern = tuple[tuple[int, int], ...]

PER_INCH = 3048000
"""Units to the inch that hold 1/64 in, 1/1000 in, thirds of an inch and 1/100 mm exactly."""


def whole_units(lengths: "list[float]") -> "tuple[list[int], int]":
    """Return lengths in inches as whole numbers of the largest unit that divides them all.

    Returns
    -------
    units : list of int
    per_inch : int
        `PER_INCH`, of which each unit is `step` parts: a length is ``unit * step / PER_INCH``.

    >>> whole_units([96.0, 27.8125, 254 / 25.4])
    ([1536, 445, 160], 190500)
    """
    fine = [int(math.floor(length * PER_INCH + 0.5)) for length in lengths]
    step = divisor(fine)
    return [length // step for length in fine], step


def divisor(numbers: "list[int]") -> int:
    """Return the greatest common divisor; 1 where all are 0.

    >>> divisor([96, 0, 36]), divisor([0])
    (12, 1)
    """
    found = 0
    for number in numbers:
        while number:
            found, number = number, found % number
    return found or 1


class Cutting:
    """Sizes to be cut out of sticks.

    A cut takes a kerf, but n pieces that fill a stick exactly take only n - 1: so the kerf is
    counted in each size and once in each stick's room, and a stick holds what adds up to its room.

    Parameters
    ----------
    sizes : list of int
        Different sizes, longest first, kerf included.
    wanted : list of int
        How many of each, 0 allowed.
    rooms : list of int
        Of each kind of stick: its length and a kerf.
    costs : list of int
        What a stick of each kind costs.
    limits : list
        How many there are of each kind; None for as many as needed.
    """

    def __init__(
        self,
        sizes: "list[int]",
        wanted: "list[int]",
        rooms: "list[int]",
        costs: "list[int]",
        limits: "list[int | None]",
    ) -> None:
        self.sizes = sizes
        self.wanted = wanted
        self.rooms = rooms
        self.kinds = range(len(rooms))
        self.pieces = sum(wanted)
        self.total = sum([size * number for size, number in zip(sizes, wanted)])
        self.costs = costs
        self.unlimited = [limit is None for limit in limits]
        self.limits = [self.pieces if limit is None else limit for limit in limits]
        # One number for "least cost, then fewest sticks": no plan has more sticks than pieces.
        self.per_cost = self.pieces + 1
        self.weights = [cost * self.per_cost + 1 for cost in costs]

    def rest(self, left: "list[int]") -> "Cutting":
        """Return the problem that remains when only `left` of each size is wanted."""
        limits = [None if open_ else limit for open_, limit in zip(self.unlimited, self.limits)]
        rest = Cutting(self.sizes, left, self.rooms, self.costs, limits)
        rest.per_cost, rest.weights = self.per_cost, self.weights
        return rest


def filled(sizes: "list[int]", pattern: "Pattern") -> int:
    """Return how much of a stick's room a pattern takes."""
    room = 0
    for size, number in pattern:
        room += sizes[size] * number
    return room


def times_in(pattern: "Pattern", left: "list[int]") -> int:
    """Return how many times a pattern can be cut from what is still wanted."""
    return min([left[size] // number for size, number in pattern])
