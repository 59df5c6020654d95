"""A cutting problem in whole units, so that "fits exactly" is exact."""

from ..planning.units import divisor

TYPE_CHECKING = False
if TYPE_CHECKING:
    Pattern = tuple[tuple[int, int], ...]


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
        self.weight_step = divisor(self.weights)
        """What every plan weighs is a multiple of this."""
        # Those that give most room for their weight come first.
        by_worth = sorted([(self.weights[kind] / rooms[kind], kind) for kind in self.kinds])
        self.by_worth = [kind for _, kind in by_worth]

    def part(self, sizes: "list[int]", wanted: "list[int]", limits: "list[int]") -> "Cutting":
        """Return the problem of some of the sizes and sticks, weighed as in this one."""
        part = Cutting(sizes, wanted, self.rooms, self.costs, [None for _ in self.kinds])
        part.per_cost, part.weights, part.by_worth = self.per_cost, self.weights, self.by_worth
        part.weight_step = self.weight_step
        part.unlimited = self.unlimited
        part.limits = [min(limit, part.pieces) for limit in limits]
        return part


def filled(sizes: "list[int]", pattern: "Pattern") -> int:
    """Return how much of a stick's room a pattern takes."""
    room = 0
    for size, number in pattern:
        room += sizes[size] * number
    return room


def times_in(pattern: "Pattern", left: "list[int]") -> int:
    """Return how many times a pattern can be cut from what is still wanted."""
    return min([left[size] // number for size, number in pattern])
