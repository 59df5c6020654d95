"""Whole numbers from the linear program: cut what is sure, solve the rest again.

Each time the patterns that are wanted at least once are cut that often; where there are none,
the one nearest to once is. What remains is finished greedily as well, for a plan at every step.
"""

from .columns import Columns
from .greedy import Filling, better
from .problem import times_in

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..planning.work import Work
    from .plans import Row, StickPlan
    from .problem import Cutting, Pattern


class Dive:
    """One way down from the linear program to whole sticks.

    Parameters
    ----------
    problem : Cutting
    solved : Columns
        Its linear program.
    best : StickPlan
        The best plan so far; afterwards maybe a better one.
    turn : int
        Which fraction is rounded up first: 0 the largest, 1 the next, and so on.
    work : Work
    """

    def __init__(
        self, problem: "Cutting", solved: Columns, best: "StickPlan", turn: int, work: "Work"
    ) -> None:
        self.problem = problem
        self.solved = solved
        self.best = best
        self.turn = turn
        self.work = work
        self.rows: list[Row] = []
        self.left = list(problem.wanted)
        self.sticks = list(problem.limits)

    def run(self, enough: int) -> "Iterator[None]":
        """Go down step by step; stop early at a plan that weighs no more than `enough`."""
        current = self.solved
        while self.best.weight > enough:
            self._cut(current)
            yield from self._finish()
            if not [number for number in self.left if number]:
                break
            rest = self.problem.part(self.problem.sizes, list(self.left), self.sticks)
            current = Columns(rest, self._usable(), self.work)
            yield from current.solve()

    def _usable(self) -> "list[tuple[int, Pattern]]":
        self.work.add(4 * len(self.solved.pool))
        return [
            (kind, pattern)
            for kind, pattern in self.solved.pool
            if times_in(pattern, self.left) and self.sticks[kind]
        ]

    def _cut(self, current: Columns) -> None:
        """Cut every pattern as often as it is wanted in whole, or one of them once."""
        wanted = current.fractions()
        sure = [(kind, pattern, int(amount + 1e-6)) for kind, pattern, amount in wanted]
        sure = [row for row in sure if row[2]]
        if self.turn or not sure:
            ranked = sorted([(-(amount % 1.0), at) for at, (_, _, amount) in enumerate(wanted)])
            if self.turn and sure:
                ranked = [row for row in ranked if row[0] < -1e-6] or ranked
            kind, pattern, _ = wanted[ranked[self.turn % len(ranked)][1]]
            sure = sure + [(kind, pattern, 1)]
            self.turn = 0
        for kind, pattern, times in sure:
            times = min(times, times_in(pattern, self.left), self.sticks[kind])
            if times:
                self.sticks[kind] -= times
                for size, number in pattern:
                    self.left[size] -= number * times
                self.rows.append((kind, pattern, times))

    def _finish(self) -> "Iterator[None]":
        """Complete what is cut so far, and keep the plan if it is the best."""
        for fuller in (False, True):
            filling = Filling(self.problem, self.left, self.sticks, self.work)
            kinds = self.problem.by_worth
            yield from filling.run((kinds, fuller, True, len(kinds)))
            if not filling.ran_out:
                self.best = better(self.best, self.rows + filling.rows, self.problem)
                self.work.add(10 * len(self.best.rows))
                yield None
