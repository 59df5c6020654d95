"""Quick plans: fill one stick after another, each as well as it goes."""

from .fill import fullest, largest_first
from .plans import Plan, downsized, gathered
from .problem import filled, times_in

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    from .problem import Cutting, Pattern

    Row = tuple[int, Pattern, int]
    Filler = Callable[[list[int], list[int], int], Pattern]

FILLERS = (largest_first, fullest)
MOST_ALONE = 6
"""Kinds of stick that are tried as the only one bought."""


def quick_plan(problem: "Cutting") -> "Plan | None":
    """Return the best of a few plans made in one go; None where none holds all pieces."""
    best = None
    for kinds in menus(problem):
        for filler in FILLERS:
            for longest in (False, True):
                rows = finish(
                    problem, list(problem.wanted), list(problem.limits), kinds, filler, longest
                )
                best = better(best, rows, problem)
    return best


def better(best: "Plan | None", rows: "list[Row] | None", problem: "Cutting") -> "Plan | None":
    """Return the better one of a plan and new rows, these moved to smaller sticks first."""
    if not rows:
        return best
    plan = downsized(Plan(problem, gathered_rows(problem, rows)))
    return plan if best is None or plan.rank() < best.rank() else best


def gathered_rows(problem: "Cutting", rows: "list[Row]") -> "list[Row]":
    """Return rows with those alike made one."""
    return gathered(problem, [(kind, pattern) for kind, pattern, n in rows for _ in range(n)])


def menus(problem: "Cutting") -> "list[list[int]]":
    """Return choices of kinds to cut from: all, and the limited ones with one other each."""
    kinds = list(problem.kinds)
    alone = [kind for kind in kinds if problem.unlimited[kind]]
    limited = [kind for kind in kinds if not problem.unlimited[kind]]
    if len(alone) < 2:
        return [kinds]
    return [kinds] + [limited + [kind] for kind in alone[:MOST_ALONE]]


def finish(
    problem: "Cutting",
    left: "list[int]",
    sticks: "list[int]",
    kinds: "list[int]",
    filler: "Filler",
    longest: bool,
) -> "list[Row] | None":
    """Cut all that is left, each time from the stick that costs least for what it yields.

    `left` and `sticks`, what is still wanted and still there, are used up. With `longest`, only
    sticks are looked at that hold the longest piece still wanted. None where sticks run out.
    """
    rows: list[Row] = []
    while [number for number in left if number]:
        found = _cheapest(problem, left, sticks, kinds, filler, longest)
        if found is None:
            return None
        kind, pattern = found
        times = min(times_in(pattern, left), sticks[kind])
        sticks[kind] -= times
        for size, number in pattern:
            left[size] -= number * times
        rows.append((kind, pattern, times))
    return rows


def _cheapest(
    problem: "Cutting",
    left: "list[int]",
    sticks: "list[int]",
    kinds: "list[int]",
    filler: "Filler",
    longest: bool,
) -> "tuple[int, Pattern] | None":
    first = 0
    while left[first] == 0:
        first += 1
    need = problem.sizes[first] if longest else 0
    best, best_weight, best_yield = None, 0, 1
    for kind in kinds:
        if sticks[kind] == 0 or problem.rooms[kind] < need:
            continue
        pattern = filler(problem.sizes, left, problem.rooms[kind])
        got = filled(problem.sizes, pattern)
        weight = problem.weights[kind]
        if pattern and (best is None or weight * best_yield < best_weight * got):
            best, best_weight, best_yield = (kind, pattern), weight, got
    return best
