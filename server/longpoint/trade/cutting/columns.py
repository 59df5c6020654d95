"""Generate the patterns that the linear program wants, and the bound that its prices prove.

Gilmore and Gomory's way: the prices of the pieces say which new pattern would save most.
"""

from .knapsack import Richest
from .master import SLACK, Master

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

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
    work : int
        Steps taken, for whoever shares out the time.
    """

    def __init__(self, problem: "Cutting", pool: "list[tuple[int, Pattern]]") -> None:
        self.problem = problem
        self.pool = pool
        self.work = 0
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
            self.work += (1 + self.master.settle(rows)) * rows * rows // 4
            found = self._from_pool() or self._priced_out(NODES) or self._priced_out(PROOF_NODES)
            if found is None or not self.master.enter(found[0], found[1]):
                break
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
        self.work += len(self.pool)
        return best

    def _priced_out(self, nodes: int) -> "tuple[int, Pattern] | None":
        """Return a new pattern that saves most, if any does, and keep it in the pool."""
        values = self._whole_prices()
        best, most = None, STICK_WORTH // 10**6
        for kind in self.problem.kinds:
            stick = self.problem.weights[kind] + self.master.price_of_stick(kind)
            worth = int(stick * self.fine)
            richest = self._richest(values, kind, worth + most, nodes)
            if richest.pattern is not None:
                best, most = (kind, richest.pattern), richest.worth - worth
        if best is not None:
            self.pool.append(best)
        return best

    def _whole_prices(self) -> "list[int]":
        values = [0 for _ in self.problem.sizes]
        for row, size in enumerate(self.master.sizes):
            values[size] = max(0, int(self.master.prices[row] * self.fine))
        return values

    def _richest(self, values: "list[int]", kind: int, above: int, nodes: int) -> Richest:
        problem = self.problem
        room = problem.rooms[kind]
        richest = Richest(values, problem.sizes, problem.wanted, room, above, nodes)
        self.work += richest.nodes + 5 + len(richest.order)
        return richest

    def proved(self) -> int:
        """Return the least weight that the prices prove, in whole numbers only.

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
                richest = self._richest(values, kind, weight, PROOF_NODES)
                excess.append((kind, weight, richest.at_most))
        for kind, weight, worth in excess:
            if problem.unlimited[kind] and worth > weight:
                values = [value * weight // worth for value in values]
                excess = [(k, w, v * weight // worth + 1) for k, w, v in excess]
        proved = sum([value * number for value, number in zip(values, problem.wanted)])
        for kind, weight, worth in excess:
            if not problem.unlimited[kind]:
                proved -= max(0, worth - weight) * problem.limits[kind]
        return -(-proved // self.fine)

    def fractions(self) -> "list[tuple[int, Pattern, float]]":
        """Return kind, pattern and amount of every pattern that is cut at all."""
        return [
            (kind, pattern, amount)
            for (kind, pattern), amount in zip(self.master.columns, self.master.amounts)
            if kind != SLACK and amount > 1e-7
        ]
