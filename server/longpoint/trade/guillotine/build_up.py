"""Few parts, all ways: rectangles built up from smaller ones side by side.

After Wang, Two algorithms for constrained two-dimensional cutting stock problems, Operations
Research 31, 1983 (from memory): what guillotine cuts take apart can be built up of two
rectangles side by side, again and again. Every set of parts keeps the rectangles it makes that
no other one of it beats on both sides; those with more waste than a better plan could have are
dropped. So what is not found is not there.
"""

from .tree import CUT, PART, SheetPlan

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..planning.work import Work
    from .problem import Sheets
    from .tree import Node

    # Sides, then axis and the two smaller ones as (set, place); axis -1 is a single part.
    Shape = tuple[int, int, int, int, int, int, int]

MOST_SETS = 1000


class BuildUp:
    """All rectangles of all sets of the parts, and the plan of least weight they make.

    Parameters
    ----------
    problem : Sheets
    weight : int
        Only plans that weigh less are looked for.
    work : Work

    Attributes
    ----------
    found : SheetPlan or None
        A plan that weighs less, and least of all; None where there is none, or where it takes
        more sheets than there are.
    least : int
        No plan weighs less than this, once the search is over.
    """

    def __init__(self, problem: "Sheets", weight: int, work: "Work") -> None:
        self.problem = problem
        self.weight = weight
        self.work = work
        self.least = 0
        self.found: SheetPlan | None = None
        self.sets: list[int] = []
        self.counts: list[list[int]] = []
        self.places: dict[int, int] = {}
        self.shapes: list[list[Shape]] = []

    @staticmethod
    def is_small(problem: "Sheets") -> bool:
        """Tell whether there are few enough sets to look at them all."""
        sets = 1
        for number in problem.wanted:
            sets *= number + 1
        return sets <= MOST_SETS

    def run(self) -> "Iterator[None]":
        """Look at every set, the smaller ones first, with a pause after each."""
        self._list_sets()
        spare = self._waste_allowed()
        areas = self.problem.areas
        self.shapes = [[] for _ in self.sets]
        for at in range(1, len(self.sets)):
            area = sum([n * a for n, a in zip(self.counts[at], areas)])
            yield from self._shapes_of(at, area + spare)
        yield from self._cover()

    def _list_sets(self) -> None:
        """Number the sets: a field of bits for each part, a bit between them kept free.

        With that bit set in the larger one, a difference of two sets shows in it whether every
        field was large enough: so one subtraction tells whether a set lies in another.
        """
        self.sets, self.counts, self.guard, shift = [0], [[]], 0, 0
        for number in self.problem.wanted:
            grown = [
                (code + (n << shift), taken + [n])
                for n in range(number + 1)
                for code, taken in zip(self.sets, self.counts)
            ]
            self.sets, self.counts = [one for one, _ in grown], [taken for _, taken in grown]
            bits = 1
            while number >> bits:
                bits += 1
            shift += bits + 1
            self.guard |= 1 << (shift - 1)
        self.places = {code: at for at, code in enumerate(self.sets)}

    def _waste_allowed(self) -> int:
        """Return the most waste that a plan lighter than `weight` can have, in one sheet or all."""
        problem = self.problem
        cost, sheets = divmod(self.weight - 1, problem.per_cost)
        largest = max([problem.room_area(kind) for kind in problem.kinds])
        if len(set(problem.costs)) == 1:
            return min(largest, sheets * largest - problem.total)
        bought = 0
        for kind in problem.kinds:
            if not problem.costs[kind]:
                return largest
            area = problem.room_area(kind)
            # Less cost, or as much cost with fewer sheets: either way no more area than this.
            bought = max(bought, cost * area // problem.costs[kind])
        return min(largest, bought - problem.total)

    def _shapes_of(self, at: int, most: int) -> "Iterator[None]":
        """Find the rectangles of one set, of at most so much area."""
        code, guard = self.sets[at], self.guard
        shapes: list[Shape] = []
        if sum(self.counts[at]) == 1:
            part = self.counts[at].index(1)
            for wide, high in self.problem.turns[part]:
                self._keep(shapes, (wide, high, -1, part, 0, 0, 0), most)
        for one in range(1, at):
            small = self.sets[one]
            if 2 * small > code:
                break
            self.work.add(1)
            if ((code | guard) - small) & guard != guard:
                continue
            other = self.places[code - small]
            if self.shapes[one] and self.shapes[other]:
                self._join(shapes, one, other, most)
                yield None
        self.shapes[at] = shapes
        yield None

    def _join(self, shapes: "list[Shape]", one: int, other: int, most: int) -> None:
        """Lay every two rectangles of two sets side by side, along x and along y."""
        for i, first in enumerate(self.shapes[one]):
            for j, second in enumerate(self.shapes[other]):
                self.work.add(20 + 4 * len(shapes))
                wide, high = first[0] + second[0], max(first[1], second[1])
                if wide * high <= most:
                    self._keep(shapes, (wide, high, 0, one, i, other, j), most)
                wide, high = max(first[0], second[0]), first[1] + second[1]
                if wide * high <= most:
                    self._keep(shapes, (wide, high, 1, one, i, other, j), most)

    def _keep(self, shapes: "list[Shape]", shape: "Shape", most: int) -> None:
        """Keep a rectangle that fits a sheet, unless another one of its set beats it."""
        wide, high = shape[0], shape[1]
        if wide * high > most or not self._kinds_for(wide, high):
            return
        for kept in shapes:
            if kept[0] <= wide and kept[1] <= high:
                return
        beaten = [at for at, k in enumerate(shapes) if k[0] >= wide and k[1] >= high]
        for at in reversed(beaten):
            shapes.pop(at)
        shapes.append(shape)

    def _kinds_for(self, wide: int, high: int) -> "list[int]":
        rooms = self.problem.rooms
        return [k for k in self.problem.kinds if rooms[k][0] >= wide and rooms[k][1] >= high]

    def _cover(self) -> "Iterator[None]":
        """Find the least weight of sheets that hold all parts together."""
        cheapest = [self._cheapest(at) for at in range(len(self.sets))]
        best = [(0, 0)]
        for at in range(1, len(self.sets)):
            best.append(self._lightest(at, cheapest, best))
            yield None
        self.least = min(self.weight, best[-1][0])
        if best[-1][0] < self.weight:
            self._make_plan(cheapest, best)

    def _cheapest(self, at: int) -> "tuple[int, int, int]":
        """Return weight, kind and rectangle of the cheapest sheet that holds a set."""
        options = [
            (self.problem.weights[kind], kind, place)
            for place, shape in enumerate(self.shapes[at])
            for kind in self._kinds_for(shape[0], shape[1])
        ]
        return min(options) if options else (self.weight, -1, 0)

    def _lightest(
        self, at: int, cheapest: "list[tuple[int, int, int]]", best: "list[tuple[int, int]]"
    ) -> "tuple[int, int]":
        """Return the least weight of sheets for a set, and the set that one of them holds."""
        code, guard = self.sets[at], self.guard
        lightest = (cheapest[at][0], at)
        for one in range(1, at):
            self.work.add(1)
            if cheapest[one][0] >= lightest[0]:
                continue
            if ((code | guard) - self.sets[one]) & guard != guard:
                continue
            weight = cheapest[one][0] + best[self.places[code - self.sets[one]]][0]
            if weight < lightest[0]:
                lightest = (weight, one)
        return lightest

    def _make_plan(
        self, cheapest: "list[tuple[int, int, int]]", best: "list[tuple[int, int]]"
    ) -> None:
        sheets = []
        at = len(self.sets) - 1
        while at:
            one = best[at][1]
            _, kind, place = cheapest[one]
            sheets.append((kind, self._tree(one, place)))
            at = self.places[self.sets[at] - self.sets[one]]
        plan = SheetPlan(self.problem, sheets)
        used = plan.used()
        if not [1 for kind in self.problem.kinds if used[kind] > self.problem.limits[kind]]:
            self.found = plan

    def _tree(self, at: int, place: int) -> "Node":
        """Return the tree of a rectangle, made from the root down."""
        root: Node = []
        waiting = [(root, at, place)]
        while waiting:
            node, at, place = waiting.pop()
            wide, high, axis, one, i, other, j = self.shapes[at][place]
            if axis < 0:
                node.extend([PART, one, wide, high])
                continue
            first: Node = []
            second: Node = []
            node.extend([CUT, axis, self.shapes[one][i][axis], first, second])
            waiting.append((first, one, i))
            waiting.append((second, other, j))
        return root
