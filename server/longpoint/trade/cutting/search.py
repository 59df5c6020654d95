"""Look for the best plan step by step: at once a good one, then better ones and their proof.

Steps are counted, never timed, so that every runtime walks the same way to the same plan.
"""

from ..planning.work import Work
from .bounds import material_bound, weighed_bounds
from .columns import Columns
from .combos import Combos
from .dive import Dive
from .greedy import Greedy
from .grouped import grouped
from .offcut import Gathering
from .packing import Packing
from .plans import StickPlan, of_single
from .recut import Recut

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from .problem import Cutting

QUICK = 20000
"""Steps until the first answer, unless there is no plan yet."""
MOST = 6000000
"""Steps after which the search stops, best plan and bound as they are then."""
MOST_ROWS = 100
"""Sizes and scarce sticks of the largest linear program that is solved."""
GROUPED_FROM = 0.02
"""Part of a plan's weight that is open, from which a bound for groups of sizes may be better."""
DIVES = 3
PACKING_NODES = (300, 5000, 100000)
MOST_PACKED = 150
"""Pieces from which more patience is of no use: there are too many ways."""
MOST_COMBOS = 400
COMBO_STEPS = 100000
RAISE_STEPS = 2000


class StickSearch:
    """A search for the plan that costs least, then uses fewest sticks.

    Attributes
    ----------
    plan : StickPlan
        The best so far; there is one from the first pause on.
    bound : int
        No plan weighs less.
    progress : float
        Which part of the work is done; 1 at the end.
    is_quick : bool
        Sticks have been filled one after another, and nothing else was tried yet.
    """

    def __init__(self, problem: "Cutting", most: int = MOST) -> None:
        self.problem = problem
        self.work = Work(most, QUICK)
        self.bound = material_bound(problem)
        self.progress = 0.0
        self.is_quick = True
        self.greedy = Greedy(problem, self.work)
        self._best: StickPlan | None = None

    @property
    def plan(self) -> StickPlan:
        """Return the best plan so far."""
        assert self._best is not None, "a kind of stick there is no end of holds every size"
        return self._best

    @property
    def proved(self) -> bool:
        """Tell whether no plan can weigh less."""
        return self._best is not None and self.bound >= self._best.weight

    def run(self) -> "Iterator[None]":
        """Better the plan until it is proved or all work is done, with a pause at each share."""
        for _ in self._stages():
            if self._best is not None and self.work.pauses():
                self.progress = self.work.part()
                yield None
            if self.work.is_over():
                break
        self.progress = 1.0

    def _stages(self) -> "Iterator[None]":
        yield from self._quick_plans()
        self.is_quick = False
        for stage in (self._weigh, self._columns_and_dives, self._recuts, self._packings):
            if not self.proved:
                yield from stage()
        gathering = Gathering(self.plan, self.work)
        yield from gathering.run()
        self._best = gathering.best

    def _quick_plans(self) -> "Iterator[None]":
        for _ in self.greedy.run():
            self._best = self.greedy.best
            yield None
            if self.proved:
                return

    def _weigh(self) -> "Iterator[None]":
        for bound in weighed_bounds(self.problem, self.work):
            self.bound = max(self.bound, bound)
            yield None
        self._raise(self.bound)

    def _columns_and_dives(self) -> "Iterator[None]":
        if len(self.problem.sizes) + self.problem.unlimited.count(False) > MOST_ROWS:
            yield from self._grouped_columns()
            return
        pool = [(kind, pattern) for kind, pattern, _ in self.plan.rows]
        solved = Columns(self.problem, pool, self.work)
        yield from solved.solve()
        yield from solved.prove()
        self._raise(solved.bound)
        for turn in range(DIVES):
            dive = Dive(self.problem, solved, self.plan, turn, self.work)
            for _ in dive.run(self.bound):
                self._keep(dive.best)
                yield None
            if self.proved:
                return

    def _grouped_columns(self) -> "Iterator[None]":
        """Raise the bound by the linear program of fewer sizes, where much is open."""
        if self.plan.weight - self.bound < GROUPED_FROM * self.plan.weight:
            return
        solved = Columns(grouped(self.problem), [], self.work)
        yield from solved.solve()
        yield from solved.prove()
        self._raise(solved.bound)

    def _recuts(self) -> "Iterator[None]":
        recut = Recut(self.plan, self.work)
        for _ in recut.run(self.bound):
            self._keep(recut.plan)
            yield None
        self._raise(self.bound)

    def _packings(self) -> "Iterator[None]":
        """Try the sticks that would still be better, each time more patiently."""
        patience = PACKING_NODES[: 1 if self.problem.pieces > MOST_PACKED else None]
        for nodes in patience:
            before = (0, 0)
            while before != (self.plan.weight, self.bound) and not self.proved:
                before = (self.plan.weight, self.bound)
                yield from self._lighter_sets(nodes)

    def _lighter_sets(self, nodes: int) -> "Iterator[None]":
        """Pack one set of sticks after the other, until one of them holds all pieces."""
        combos = Combos(self.problem, self.bound, self.plan.weight, MOST_COMBOS)
        yield from combos.run(COMBO_STEPS, self.work)
        all_refuted = combos.is_whole
        for weight, counts in combos.found:
            if all_refuted:
                self.bound = max(self.bound, weight)
            packing = Packing(self.problem, counts, self.work)
            yield from packing.run(nodes)
            if packing.found is not None:
                self._keep(of_single(self.problem, packing.found))
                return
            all_refuted = all_refuted and packing.refuted
        if all_refuted:
            self.bound = max(self.bound, combos.below)

    def _raise(self, bound: int) -> None:
        """Raise the bound, and on to the least weight that sticks can add up to."""
        self.bound = max(self.bound, bound)
        combos = Combos(self.problem, self.bound, self.plan.weight, 1)
        for _ in combos.run(RAISE_STEPS, self.work):
            pass
        if combos.is_whole:
            self.bound = combos.found[0][0] if combos.found else self.plan.weight

    def _keep(self, plan: StickPlan) -> None:
        if plan.rank < self.plan.rank:
            self._best = plan
