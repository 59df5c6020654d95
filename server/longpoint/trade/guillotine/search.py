"""Look for the best plan step by step: at once a good one, then better ones and their proof.

Steps are counted, never timed, so that every runtime walks the same way to the same plan.
"""

from .bounds import fewest_sheets, least_weight
from .build_up import BuildUp
from .greedy import FITS, SPLITS, better, filled, quick_plan, rankings, usual_kinds
from .tree import Plan, Tree

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from .problem import Sheets
    from .tree import Node

SHARE = 2000
"""Steps between two looks at the clock: some milliseconds."""
QUICK = 100
"""Parts placed before the first answer, about."""
TRIES = 120000
"""Rests looked at in all before the search gives up."""
BUILT = 700000
"""Pairs looked at in building up before that is given up."""
POLISH = 20
"""Tries for a larger offcut once the plan is shown to weigh least."""
DONE_AT = (0.1, 0.2, 0.5, 0.95)
"""Progress after the quick plan, the bounds, the building up, the tries."""


class Search:
    """A search for the plan that costs least, then uses fewest sheets.

    Attributes
    ----------
    plan : Plan
        The best so far. It may use the spare kind.
    bound : int
        No plan weighs less.
    progress : float
        How far the search has come; 1 at the end.
    """

    def __init__(self, problem: "Sheets") -> None:
        self.problem = problem
        self.plan = quick_plan(problem, max(2, QUICK // problem.parts))
        largest = max([problem.room_area(kind) for kind in problem.kinds])
        self.bound = least_weight(problem, -(-problem.total // largest))
        self.progress = DONE_AT[0]
        self.ranked = rankings(problem)
        self.chance = _Chance()

    @property
    def proved(self) -> bool:
        """Tell whether no plan can weigh less."""
        return self.bound >= self.plan.weight

    def run(self) -> "Iterator[None]":
        """Better the plan, with a pause each few milliseconds; the first is right away."""
        yield None
        for stage in (self._bounds, self._build_up, self._tries):
            for _ in stage():
                yield None
        self.progress = 1.0

    def _bounds(self) -> "Iterator[None]":
        for sheets in fewest_sheets(self.problem):
            self.bound = max(self.bound, least_weight(self.problem, sheets))
            if self.proved:
                break
            self._nearer(DONE_AT[1])
            yield None

    def _build_up(self) -> "Iterator[None]":
        if self.proved or not BuildUp.is_small(self.problem):
            return
        build = BuildUp(self.problem, self.plan.weight)
        spent = 0
        for _ in build.run():
            if build.work > BUILT:
                return
            if build.work - spent > SHARE:
                spent = build.work
                self._nearer(DONE_AT[2])
                yield None
        self.bound = max(self.bound, build.least)
        if build.found is not None:
            self.plan = build.found

    def _tries(self) -> "Iterator[None]":
        """Fill a few sheets of the plan anew, or all, in ways that chance picks."""
        self.walk = self.plan
        spent, work, tried = 0, 0, 0
        while work < TRIES and not (self.proved and tried >= POLISH):
            work += self._try(tried)
            tried += 1
            if work - spent > SHARE:
                spent = work
                self._nearer(DONE_AT[3])
                yield None

    def _try(self, tried: int) -> int:
        """Make one try; return the work it was."""
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
        order = self._shuffled([part for _, root in fresh for part in Tree(root).parts()])
        way = (FITS[self.chance.below(len(FITS))], SPLITS[self.chance.below(len(SPLITS))])
        filling = filled(self.problem, order, way, self._kinds(), left)
        self._keep(Plan(self.problem, sheets + filling.sheets))
        return filling.work + len(order)

    def _shuffled(self, parts: "list[int]") -> "list[int]":
        """Return parts sorted one of a few ways, some of them moved by chance."""
        places = [0 for _ in self.problem.turns]
        ranked = self.ranked[self.chance.below(len(self.ranked))]
        for place, part in enumerate(ranked):
            places[part] = place
        stir = self.chance.below(4) * (len(ranked) + 2) // 4
        keyed = [(places[part] + self.chance.below(stir + 1), part) for part in parts]
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

    def _keep(self, plan: Plan) -> None:
        """Keep the better plan; walk on from one that is as good and more crowded."""
        self.plan = better(self.plan, plan)
        if plan.weight > self.walk.weight:
            return
        if plan.weight < self.walk.weight or plan.crowding() >= self.walk.crowding():
            self.walk = plan

    def _nearer(self, goal: float) -> None:
        """Come nearer to a goal without ever reaching it: nobody knows the steps ahead."""
        self.progress += (goal - self.progress) * 0.1


class _Chance:
    """Numbers without rhyme that are the same in every run and runtime."""

    def __init__(self) -> None:
        self.state = 12345

    def below(self, limit: int) -> int:
        """Return the next number, 0 or more and less than `limit`."""
        self.state = (self.state * 171 + 11213) % 53125
        return self.state * limit // 53125
