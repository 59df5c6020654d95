"""Generate the patterns that the linear program wants, and the bound that its prices prove.

Gilmore and Gomory's way: the prices of the pieces say which new pattern would save most.
"""

from .knapsack import Richest
from .master import SLACK, Master

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..planning.work import Work
    from .problem import Cutting, Pattern

NODES = 1500
"""Steps after which one search for a pattern is given up."""
PROOF_NODES = 12000
"""The same where the bound depends on it."""
STICK_WORTH = 1 << 26
"""Whole-number prices are this fine, as parts of the dearest stick."""


class Columns:
    """The linear program of a problem, solved by generating its patterns.

    Attributes
    ----------
    master : Master
        The program as solved so far.
    bound : int
        No plan weighs less; 0 until `prove` has run.
    """

    def __init__(self, problem: "Cutting", pool: "list[tuple[int, Pattern]]", work: "Work") -> None:
        self.problem = problem
        self.pool = pool
        self.work = work
        self.bound = 0
        self.found: tuple[int, Pattern] | None = None
        self.dearest = max(problem.weights)
        self.fine = max(1, STICK_WORTH // self.dearest)
        self.master = Master(problem, self._seeds())

    def _seeds(self) -> "list[tuple[int, Pattern]]":
        """Return for each size wanted a pattern of it alone, on a kind there is no end of."""
        problem = self.problem
        seeds: list[tuple[int, Pattern]] = []
        for size, number in enumerate(problem.wanted):
            if number:
                best = None
                for kind in problem.kinds:
                    count = min(number, problem.rooms[kind] // problem.sizes[size])
                    if count and problem.unlimited[kind]:
                        key = (problem.weights[kind] / count, kind, count)
                        best = key if best is None or key < best else best
                assert best is not None, "every size fits a kind of stick there is no end of"
                seeds.append((best[1], ((size, best[2]),)))
        return seeds

    def solve(self) -> "Iterator[None]":
        """Solve step by step; then `master` says what was found."""
        rows = len(self.master.prices)
        for _ in range(60 + 25 * rows):
            for _ in range(rows):
                if not self.master.settle():
                    break
                self.work.add(rows * rows)
                yield None
            self.found = self._from_pool()
            for nodes in (NODES, PROOF_NODES):
                if self.found is None:
                    yield from self._price_out(nodes)
            if self.found is None or not self.master.enter(self.found[0], self.found[1]):
                break
            self.work.add(rows * rows)
            yield None

    def _from_pool(self) -> "tuple[int, Pattern] | None":
        """Return the pattern known already that saves most, if any does."""
        prices, rows = self.master.prices, self.master.row_of_size
        best, least = None, self.dearest * 1e-7
        for kind, pattern in self.pool:
            saved = -self.problem.weights[kind] - self.master.price_of_stick(kind)
            for size, number in pattern:
                saved += prices[rows[size]] * number
            if saved > least:
                best, least = (kind, pattern), saved
        self.work.add(4 * len(self.pool))
        return best

    def _price_out(self, nodes: int) -> "Iterator[None]":
        """Find a new pattern that saves most, if any does, and keep it in the pool."""
        values = self._whole_prices()
        best, most = None, STICK_WORTH // 10**6
        for kind in self.problem.kinds:
            stick = self.problem.weights[kind] + self.master.price_of_stick(kind)
            worth = int(stick * self.fine)
            richest = self._richest(values, kind, worth + most)
            yield from richest.run(nodes, self.work)
            if richest.pattern is not None:
                best, most = (kind, richest.pattern), richest.worth - worth
        if best is not None:
            self.pool.append(best)
        self.found = best

    def _whole_prices(self) -> "list[int]":
        values = [0 for _ in self.problem.sizes]
        for row, size in enumerate(self.master.sizes):
            values[size] = max(0, int(self.master.prices[row] * self.fine))
        return values

    def _richest(self, values: "list[int]", kind: int, above: int) -> Richest:
        problem = self.problem
        return Richest(values, problem.sizes, problem.wanted, problem.rooms[kind], above)

    def prove(self) -> "Iterator[None]":
        """Find the least weight that the prices prove, in whole numbers only.

        With any prices p not below 0 and V the worth of the best pattern of a kind, a plan costs
        at least the sum of p over all pieces, less (V - weight) for each stick whose pattern may
        be worth more than it weighs. Prices are lowered until that holds for no kind there is no
        end of; V is found exactly, or overestimated.
        """
        problem, values = self.problem, self._whole_prices()
        excess = []
        for kind in problem.kinds:
            weight = problem.weights[kind] * self.fine
            if problem.limits[kind]:
                richest = self._richest(values, kind, weight)
                yield from richest.run(PROOF_NODES, self.work)
                excess.append((kind, weight, richest.at_most))
        for kind, weight, worth in excess:
            if problem.unlimited[kind] and worth > weight:
                values = [value * weight // worth for value in values]
                excess = [(k, w, v * weight // worth + 1) for k, w, v in excess]
        proved = sum([value * number for value, number in zip(values, problem.wanted)])
        for kind, weight, worth in excess:
            if not problem.unlimited[kind]:
                proved -= max(0, worth - weight) * problem.limits[kind]
        self.bound = -(-proved // self.fine)

    def fractions(self) -> "list[tuple[int, Pattern, float]]":
        """Return kind, pattern and amount of every pattern that is cut at all."""
        return [
            (kind, pattern, amount)
            for (kind, pattern), amount in zip(self.master.columns, self.master.amounts)
            if kind != SLACK and amount > 1e-7
        ]
