"""Gather what is left over in one stick: one long offcut is worth more than many short ones."""

from .fill import fullest
from .plans import Plan, gathered
from .problem import filled

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .problem import Cutting, Pattern

    Sticks = list[tuple[int, Pattern]]

MOST_TARGETS = 2
MOST_ROUNDS = 2
MOST_FILLS = 40


def gathered_rest(plan: Plan) -> Plan:
    """Return the plan, or one as good whose longest rest is longer."""
    sticks = plan.single()
    order = sorted([(-plan.rest(kind, pattern), at) for at, (kind, pattern) in enumerate(sticks)])
    best = plan
    for target in _different(sticks, [at for _, at in order]):
        emptied = _emptied(plan.problem, list(sticks), target)
        other = Plan(plan.problem, gathered(plan.problem, emptied))
        if other.rank() < best.rank():
            best = other
    return best


def _different(sticks: "Sticks", order: "list[int]") -> "list[int]":
    """Return a few sticks that are not cut alike, in the order given."""
    chosen: list[int] = []
    for at in order:
        if not [one for one in chosen if sticks[one] == sticks[at]]:
            chosen.append(at)
    return chosen[:MOST_TARGETS]


def _emptied(problem: "Cutting", sticks: "Sticks", target: int) -> "Sticks":
    """Return the sticks with as much as goes moved from one into the others."""
    fills = 0
    for _ in range(MOST_ROUNDS):
        moved = False
        for at, (kind, pattern) in enumerate(sticks):
            room = problem.rooms[kind]
            if at == target or filled(problem.sizes, pattern) == room or fills == MOST_FILLS:
                continue
            fills += 1
            both = _together(problem, pattern, sticks[target][1])
            fuller = fullest(problem.sizes, both, room)
            rest = _without(both, fuller)
            if filled(problem.sizes, fuller) <= filled(problem.sizes, pattern):
                continue
            if filled(problem.sizes, rest) > problem.rooms[sticks[target][0]]:
                continue
            sticks[at], sticks[target] = (kind, fuller), (sticks[target][0], rest)
            moved = True
            if not rest:
                return sticks[:target] + sticks[target + 1 :]
        if not moved:
            break
    return sticks


def _together(problem: "Cutting", one: "Pattern", other: "Pattern") -> "list[int]":
    both = [0 for _ in problem.sizes]
    for size, number in one + other:
        both[size] += number
    return both


def _without(both: "list[int]", pattern: "Pattern") -> "Pattern":
    for size, number in pattern:
        both[size] -= number
    return tuple([(size, number) for size, number in enumerate(both) if number])
