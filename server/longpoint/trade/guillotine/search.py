"""Look for the best plan step by step: at once a good one, then better ones and their proof.

Steps are counted, never timed, so that every runtime walks the same way to the same plan.
"""

from ..planning.work import Work
from .bounds import fewest_sheets, least_weight
from .build_up import BuildUp
from .greedy import FITS, SPLITS, Filling, better, quick_ways, rankings, usual_kinds
from .tree import SheetPlan, parts_in

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from .problem import Sheets
    from .tree import Node

QUICK = 5000
"""Steps until the first answer, unless there is no plan yet."""
MOST = 4000000
"""Steps after which the search stops, best plan and bound as they are then."""
BUILT = 0.7
"""Part of the work after which building up is given up."""
POLISH = 20
"""Tries for a larger offcut once the plan is shown to weigh least."""
PLAN_STEPS = 25
"""Steps that a plan made of sheets takes for each part, to be weighed and compared."""


class SheetSearch:
    """A search for the plan that costs least, then uses fewest sheets.

    Attributes
    ----------
    plan : SheetPlan
        The best so far; there is one from the first pause on. It may use the spare kind.
    bound : int
        No plan weighs less.
    progress : float
        Which part of the work is done; 1 at the end.
    is_quick : bool
        Sheets have been filled a few ways, and nothing else was tried yet.
    """

    def __init__(self, problem: "Sheets", most: int = MOST) -> None:
        self.problem = problem
        self.work = Work(most, QUICK)
        largest = max([problem.room_area(kind) for kind in problem.kinds])
        self.bound = least_weight(problem, -(-problem.total // largest))
        self.progress = 0.0
        self.is_quick = True
        self.ranked = rankings(problem)
        self.chance = _Chance()
        self._best: SheetPlan | None = None

    @property
    def plan(self) -> SheetPlan:
        """Return the best plan so far."""
        assert self._best is not None, "the spare kind or one there is no end of holds every part"
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
        yield from self._bounds()
        yield from self._build_up()
        yield from self._tries()

    def _quick_plans(self) -> "Iterator[None]":
        kinds = usual_kinds(self.problem)
        for order, way in quick_ways(self.problem):
            filling = Filling(self.problem, way, kinds, list(self.problem.limits), self.work)
            yield from filling.run(order)
            self._best = better(self._best, self._plan_of(filling.sheets))
            yield None

    def _plan_of(self, sheets: "list[tuple[int, Node]]") -> SheetPlan:
        self.work.add(PLAN_STEPS * self.problem.parts)
        return SheetPlan(self.problem, sheets)

    def _bounds(self) -> "Iterator[None]":
        for sheets in fewest_sheets(self.problem, self.work):
            self.bound = max(self.bound, least_weight(self.problem, sheets))
            if self.proved:
                break
            yield None

    def _build_up(self) -> "Iterator[None]":
        if self.proved or not BuildUp.is_small(self.problem):
            return
        build = BuildUp(self.problem, self.plan.weight, self.work)
        for _ in build.run():
            if self.work.done > BUILT * self.work.most:
                return
            yield None
        self.bound = max(self.bound, build.least)
        if build.found is not None:
            self._best = build.found

    def _tries(self) -> "Iterator[None]":
        """Fill a few sheets of the plan anew, or all, in ways that chance picks."""
        self.walk = self.plan
        tried = 0
        while not (self.proved and tried >= POLISH):
            yield from self._try(tried)
            tried += 1

    def _try(self, tried: int) -> "Iterator[None]":
        sheets = list(self.walk.sheets)
        fresh: list[tuple[int, Node]] = []
        if len(sheets) <= 2 or tried % 3 == 0:
            fresh, sheets = sheets, []
        else:
            number = min(len(sheets), 2 + self.chance.below(2))
            for _ in range(number):
                fresh.append(sheets.pop(self.chance.below(len(sheets))))
        left = list(self.problem.limits)
        for kind, _ in sheets:
            left[kind] -= 1
        order = self._shuffled([part for _, root in fresh for part in parts_in(root)])
        way = (FITS[self.chance.below(len(FITS))], SPLITS[self.chance.below(len(SPLITS))])
        filling = Filling(self.problem, way, self._kinds(), left, self.work)
        yield from filling.run(order)
        self._keep(self._plan_of(sheets + filling.sheets))

    def _shuffled(self, parts: "list[int]") -> "list[int]":
        """Return parts sorted one of a few ways, some of them moved by chance."""
        places = [0 for _ in self.problem.turns]
        ranked = self.ranked[self.chance.below(len(self.ranked))]
        for place, part in enumerate(ranked):
            places[part] = place
        stir = self.chance.below(4) * (len(ranked) + 2) // 4
        keyed = [(places[part] + self.chance.below(stir + 1), part) for part in parts]
        self.work.add(5 * len(parts))
        return [part for _, part in sorted(keyed)]

    def _kinds(self) -> "list[int]":
        """Return the kinds of sheet, now and then another one first; the spare always last."""
        kinds = usual_kinds(self.problem)
        if len(kinds) > 1 and self.chance.below(2):
            kinds.insert(0, kinds.pop(self.chance.below(len(kinds))))
        if self.problem.spare is not None:
            kinds.remove(self.problem.spare)
            kinds.append(self.problem.spare)
        return kinds

    def _keep(self, plan: SheetPlan) -> None:
        """Keep the better plan; walk on from one that is as good and more crowded."""
        self._best = better(self._best, plan)
        if plan.weight > self.walk.weight:
            return
        if plan.weight < self.walk.weight or plan.crowding() >= self.walk.crowding():
            self.walk = plan


class _Chance:
    """Numbers without rhyme that are the same in every run and runtime."""

    def __init__(self) -> None:
        self.state = 12345

    def below(self, limit: int) -> int:
        """Return the next number, 0 or more and less than `limit`."""
        self.state = (self.state * 171 + 11213) % 53125
        return self.state * limit // 53125
