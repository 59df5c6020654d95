"""Quick plans: put one part after another where it fits best, and cut the rest in two."""

from .tree import CUT, PART, REST, SheetPlan

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..planning.work import Work
    from .problem import Sheets
    from .tree import Node

    Way = tuple[int, int]

BY_SIDE, BY_LONG_SIDE, BY_AREA, FIRST = 0, 1, 2, 3
"""Which rest a part goes to: least left beside it, least left along it, smallest, first."""
SHORT, LONG, LARGEST, RIP, CROSS = 0, 1, 2, 3, 4
"""Which cut frees a part: along the shorter or longer left side, for the largest rest, always
the one along x, always the one along y."""
FITS = (BY_SIDE, BY_AREA, BY_LONG_SIDE, FIRST)
SPLITS = (LARGEST, SHORT, RIP, CROSS, LONG)


class Filling:
    """Sheets being filled part by part.

    Parameters
    ----------
    problem : Sheets
    way : pair
        One of `FITS` and one of `SPLITS`.
    kinds : list of int
        Kinds of sheet in the order in which a new one is taken.
    left : list of int
        How many sheets of each kind there are; used up.
    work : Work

    Attributes
    ----------
    sheets : list of pair
        Kind and tree of each sheet begun.
    """

    def __init__(
        self,
        problem: "Sheets",
        way: "Way",
        kinds: "list[int]",
        left: "list[int]",
        work: "Work",
    ) -> None:
        self.problem = problem
        self.fit, self.split = way
        self.kinds = kinds
        self.left = left
        self.sheets: list[tuple[int, Node]] = []
        self.rests: list[tuple[int, int, Node]] = []
        self.work = work
        # A part that found no place, and the number of rests that it needs no second look at.
        self.too_small = (-1, 0)
        self.least = min([min(w, h) for ways in problem.turns for w, h in ways])

    def run(self, order: "list[int]") -> "Iterator[None]":
        """Put all parts in this order, with a pause after each."""
        for part in order:
            self._put(part)
            yield None

    def _put(self, part: int) -> None:
        """Put a part into the rest it fits best, or into a new sheet."""
        found = self._best(part)
        if found is None:
            self._open(part)
            found = self._best(part)
        assert found is not None, "a new sheet holds the part"
        index, wide, high = found
        self._place(part, self.rests.pop(index), wide, high)

    def _best(self, part: int) -> "tuple[int, int, int] | None":
        """Return the place of the best rest and how the part lies in it."""
        found, best, fit, ways = None, -1, self.fit, self.problem.turns[part]
        start = self.too_small[1] if self.too_small[0] == part else 0
        rests = self.rests
        self.work.add(20 + (len(rests) - start) * len(ways))
        for index in range(start, len(rests)):
            wide, high, _ = rests[index]
            for w, h in ways:
                if wide < w or high < h:
                    continue
                over_x, over_y = wide - w, high - h
                if fit == BY_AREA:
                    score = wide * high
                elif (over_x < over_y) == (fit == BY_SIDE):
                    score = over_x
                else:
                    score = over_y
                if best < 0 or score < best:
                    found, best = (index, w, h), score
            if fit == FIRST and found is not None:
                break
        if found is None:
            self.too_small = (part, len(self.rests))
        return found

    def _open(self, part: int) -> None:
        """Begin a sheet that holds the part."""
        for kind in self.kinds:
            if self.left[kind] and self.problem.holds(kind, part):
                self.left[kind] -= 1
                root: Node = [REST]
                self.sheets.append((kind, root))
                wide, high = self.problem.rooms[kind]
                self.rests.append((wide, high, root))
                return

    def _place(self, part: int, rest: "tuple[int, int, Node]", wide: int, high: int) -> None:
        """Cut a part from the corner of a rest; what is over becomes one or two rests."""
        room_x, room_y, node = rest
        over_x, over_y = room_x - wide, room_y - high
        leaf: Node = [PART, part, wide, high]
        if self._rips(over_x, over_y, wide, high):
            leaf = self._freed(0, wide, leaf, over_x, high)
            leaf = self._freed(1, high, leaf, over_y, room_x)
        else:
            leaf = self._freed(1, high, leaf, over_y, wide)
            leaf = self._freed(0, wide, leaf, over_x, room_y)
        node[:] = leaf

    def _rips(self, over_x: int, over_y: int, wide: int, high: int) -> bool:
        """Tell whether the first cut runs along x, above the part."""
        if self.split == SHORT:
            return over_x < over_y
        if self.split == LONG:
            return over_x >= over_y
        if self.split == LARGEST:
            # Of the rests (over_x by room_y) and (room_x by over_y) the larger one stays whole.
            return (wide + over_x) * over_y >= over_x * (high + over_y)
        return self.split == RIP

    def _freed(self, axis: int, at: int, leaf: "Node", over: int, along: int) -> "Node":
        """Return the node that cuts off what is over; a rest too small for any part is let be."""
        if not over:
            return leaf
        rest: Node = [REST]
        if over >= self.least and along >= self.least:
            self.rests.append((over, along, rest) if axis == 0 else (along, over, rest))
        return [CUT, axis, at, leaf, rest]


def usual_kinds(problem: "Sheets") -> "list[int]":
    """Return the kinds of sheet, those that give most area for their cost first."""
    by_worth = [
        (kind == problem.spare, problem.costs[kind] / problem.room_area(kind), kind)
        for kind in problem.kinds
    ]
    return [kind for _, _, kind in sorted(by_worth)]


def rankings(problem: "Sheets") -> "list[list[int]]":
    """Return the different parts ranked a few ways, the unwieldy ones first."""
    keys = (_by_longest, _by_area, _by_shortest, _by_girth)
    parts = range(len(problem.turns))
    ranked = [sorted([(-key(problem, part), part) for part in parts]) for key in keys]
    return [[part for _, part in pairs] for pairs in ranked]


def quick_ways(problem: "Sheets") -> "list[tuple[list[int], Way]]":
    """Return orders of the parts, each with a way to fill sheets with them; none comes twice."""
    ranked = rankings(problem)[:3]
    orders = [
        [part for part in each for _ in range(problem.wanted[part])]
        for at, each in enumerate(ranked)
        if each not in ranked[:at]
    ]
    return [(order, (BY_SIDE, split)) for split in SPLITS[:4] for order in orders]


def better(best: "SheetPlan | None", plan: SheetPlan) -> SheetPlan:
    """Return the plan that weighs less; of two alike the one with the larger rest in one."""
    if best is None or plan.weight < best.weight:
        return plan
    if plan.weight > best.weight or plan.largest_rest() <= best.largest_rest():
        return best
    return plan


def _by_longest(problem: "Sheets", part: int) -> int:
    w, h = problem.turns[part][0]
    return max(w, h)


def _by_shortest(problem: "Sheets", part: int) -> int:
    w, h = problem.turns[part][0]
    return min(w, h)


def _by_area(problem: "Sheets", part: int) -> int:
    return problem.areas[part]


def _by_girth(problem: "Sheets", part: int) -> int:
    w, h = problem.turns[part][0]
    return w + h
