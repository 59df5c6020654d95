"""Better a plan piecemeal: cut a few of its sticks anew, from sticks that weigh less together."""

from .bounds import material_bound
from .combos import Combos
from .packing import Packing
from .plans import StickPlan, of_single
from .problem import Cutting

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..planning.work import Work
    from .problem import Pattern

    Sticks = list[tuple[int, Pattern]]

GROUPS = (2, 3, 4)
MOST_GROUPS = 800
MOST_COMBOS = 6
COMBO_STEPS = 1000
NODES = 60


class Recut:
    """Groups of sticks taken out of a plan and cut again.

    Attributes
    ----------
    plan : StickPlan
        The best so far.
    """

    def __init__(self, plan: StickPlan, work: "Work") -> None:
        self.problem = plan.problem
        self.plan = plan
        self.work = work

    def run(self, enough: int) -> "Iterator[None]":
        """Go through the groups until none gets better, or the plan weighs `enough`."""
        tried = 0
        again = True
        while again and self.plan.weight > enough:
            again = False
            sticks = self._most_wasteful_first()
            used = self.plan.used()
            for group in groups(sticks):
                tried += 1
                if tried > MOST_GROUPS:
                    return
                few = Few(self.problem, [sticks[at] for at in group], used)
                yield from few.cut_again(self.work)
                yield None
                if few.found is not None:
                    rest = [stick for at, stick in enumerate(sticks) if at not in group]
                    self.plan = of_single(self.problem, rest + few.found)
                    again = True
                    break

    def _most_wasteful_first(self) -> "Sticks":
        sticks = self.plan.single()
        order = sorted(
            [(-self.plan.rest(kind, pattern), at) for at, (kind, pattern) in enumerate(sticks)]
        )
        self.work.add(10 * len(sticks))
        return [sticks[at] for _, at in order]


class Few:
    """The problem of cutting the pieces of a few sticks from what the others leave.

    Attributes
    ----------
    found : list or None
        Sticks that weigh less, if some were found quickly.
    """

    def __init__(self, problem: Cutting, taken: "Sticks", used: "list[int]") -> None:
        self.taken = taken
        # Only the sizes at hand, so that the work is as small as the group.
        self.sizes = sorted({size for _, pattern in taken for size, _ in pattern})
        place = {size: at for at, size in enumerate(self.sizes)}
        wanted = [0 for _ in self.sizes]
        limits = [limit - number for limit, number in zip(problem.limits, used)]
        for kind, pattern in taken:
            limits[kind] += 1
            for size, number in pattern:
                wanted[place[size]] += number
        lengths = [problem.sizes[size] for size in self.sizes]
        self.problem = problem.part(lengths, wanted, limits)
        self.found: Sticks | None = None

    def cut_again(self, work: "Work") -> "Iterator[None]":
        """Try the lightest sticks that could hold the pieces."""
        problem = self.problem
        weight = sum([problem.weights[kind] for kind, _ in self.taken])
        least = material_bound(problem)
        work.add(200 + 20 * len(self.sizes))
        if least >= weight:
            return
        lighter = Combos(problem, least, weight, MOST_COMBOS)
        yield from lighter.run(COMBO_STEPS, work)
        for _, counts in lighter.found[:MOST_COMBOS]:
            packing = Packing(problem, counts, work)
            yield from packing.run(NODES)
            if packing.found is not None:
                self.found = [(kind, self._as_before(pattern)) for kind, pattern in packing.found]
                return

    def _as_before(self, pattern: "Pattern") -> "Pattern":
        return tuple([(self.sizes[at], number) for at, number in pattern])


def groups(sticks: "Sticks") -> "Iterator[list[int]]":
    """Give groups of sticks by their places, the first ones before the last, no two alike.

    >>> list(groups([(0, ()), (0, ()), (1, ())]))[:3]
    [[0, 1], [0, 2], [0, 1, 2]]
    """
    alike: dict[tuple[int, Pattern], int] = {}
    for stick in sticks:
        alike[stick] = alike.get(stick, len(alike))
    numbers = [alike[stick] for stick in sticks]
    seen: dict[tuple[int, ...], bool] = {}
    for number in GROUPS:
        if number > len(sticks):
            return
        places = list(range(number))
        while True:
            key = tuple([numbers[at] for at in places])
            if key not in seen:
                seen[key] = True
                yield list(places)
            # The odometer's next: the first place that can move up without meeting the next one.
            at = 0
            while at < number - 1 and places[at] + 1 == places[at + 1]:
                at += 1
            if places[at] + 1 == len(sticks):
                break
            places = list(range(at)) + [places[at] + 1] + places[at + 1 :]
