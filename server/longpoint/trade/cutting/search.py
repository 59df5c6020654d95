"""Look for the best plan step by step: at once a good one, then better ones and their proof.

Steps are counted, never timed, so that every runtime walks the same way to the same plan.
"""

from .columns import Columns
from .combos import combos, material_bound
from .dive import Dive
from .greedy import quick_plan
from .offcut import gathered_rest
from .packing import Packing
from .plans import Plan, gathered
from .recut import Recut

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from .problem import Cutting

SHARE = 6000
"""Steps between two pauses, some milliseconds; more where there are many pieces to show again."""
MOST_DIVING = 300000
"""Steps after which no further dive is begun."""
PACKING_WORK = 40
"""Steps that one node of a packing counts for."""
DIVES = 3
PACKING_NODES = 5000
MOST_COMBOS = 6
DONE_AT = (0.1, 0.4, 0.6, 0.8, 0.95)
"""Progress after the quick plan, the linear program, the dives, the recuts, the packings."""


class Search:
    """A search for the plan that costs least, then uses fewest sticks.

    Attributes
    ----------
    plan : Plan
        The best so far.
    bound : int
        No plan weighs less.
    proved : bool
        The plan weighs no more than it must.
    progress : float
        How far the search has come; 1 at the end.
    """

    def __init__(self, problem: "Cutting") -> None:
        self.problem = problem
        self.bound = material_bound(problem)
        self.progress = DONE_AT[0]
        self.share = SHARE * (1 + problem.pieces // 100)
        plan = quick_plan(problem)
        assert plan is not None, "a kind of stick there is no end of holds every size"
        self.plan = plan
        self._raise(self.bound)

    @property
    def proved(self) -> bool:
        """Tell whether no plan can weigh less."""
        return self.bound >= self.plan.weight

    def run(self) -> "Iterator[None]":
        """Better the plan, with a pause each few milliseconds; the first is right away."""
        yield None
        for stage in (self._columns_and_dives, self._recuts, self._packings):
            if not self.proved:
                for _ in stage():
                    yield None
        self.plan = gathered_rest(self.plan)
        self.progress = 1.0

    def _columns_and_dives(self) -> "Iterator[None]":
        solved = Columns(self.problem, [(kind, pattern) for kind, pattern, _ in self.plan.rows])
        spent = 0
        for _ in solved.solve():
            if solved.work - spent > self.share:
                spent = solved.work
                self._nearer(DONE_AT[1])
                yield None
        self._raise(solved.proved())
        yield None
        diving = 0
        for turn in range(DIVES):
            dive = Dive(self.problem, solved, self.plan, turn)
            spent = 0
            for _ in dive.run(self.bound):
                if dive.work - spent > self.share:
                    spent = dive.work
                    self._keep(dive.best)
                    self._nearer(DONE_AT[2])
                    yield None
            self._keep(dive.best)
            diving += dive.work
            if self.proved or diving > MOST_DIVING:
                break

    def _recuts(self) -> "Iterator[None]":
        recut = Recut(self.plan)
        spent = 0
        for _ in recut.run(self.bound):
            if recut.work - spent > self.share:
                spent = recut.work
                self._keep(recut.plan)
                self._nearer(DONE_AT[3])
                yield None
        self._keep(recut.plan)
        self._raise(self.bound)

    def _packings(self) -> "Iterator[None]":
        """Try the sticks that would still be better, one set after the other."""
        tried = combos(self.problem, self.bound, self.plan.weight)
        still_open = 0
        pause = self.share // PACKING_WORK
        for weight, counts in (tried or [])[:MOST_COMBOS]:
            packing = Packing(self.problem, counts)
            spent = 0
            for _ in packing.run(PACKING_NODES):
                if packing.nodes - spent >= pause:
                    spent = packing.nodes
                    self._nearer(DONE_AT[4])
                    yield None
            if packing.found is not None:
                self._keep(Plan(self.problem, gathered(self.problem, packing.found)))
                break
            if not packing.refuted:
                still_open = still_open or weight
            elif not still_open:
                self._raise(weight)
        self._raise(self.bound)

    def _raise(self, bound: int) -> None:
        """Raise the bound, and on to the least weight that sticks can add up to."""
        self.bound = max(self.bound, bound)
        possible = combos(self.problem, self.bound, self.plan.weight)
        if possible is not None:
            self.bound = possible[0][0] if possible else self.plan.weight

    def _keep(self, plan: Plan) -> None:
        if plan.rank() < self.plan.rank():
            self.plan = plan

    def _nearer(self, goal: float) -> None:
        """Come nearer to a goal without ever reaching it: nobody knows the steps ahead."""
        self.progress += (goal - self.progress) * 0.1
