"""What no plan can do without: the pieces weighed so that no stick holds more than it weighs."""

from ..planning.weighing import ways_to_weigh, weighed

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..planning.work import Work
    from .problem import Cutting

MOST_CUTOFFS = 100


def material_bound(problem: "Cutting") -> int:
    """Return the least weight whose rooms add up to all pieces, sticks divisible at will."""
    return least_weight(problem, problem.rooms, problem.total)


def least_weight(problem: "Cutting", holds: "list[int]", total: int) -> int:
    """Return the least weight of sticks that hold so much each and `total` together.

    Parameters
    ----------
    holds : list of int
        What a stick of each kind holds at most, above 0, by whatever measure `total` is in.
    """
    order = sorted([(problem.weights[k] / holds[k], k) for k in problem.kinds])
    weight = 0
    for _, kind in order:
        each = problem.weights[kind]
        if holds[kind] * problem.limits[kind] >= total:
            weight += -(-total * each // holds[kind])
            break
        total -= holds[kind] * problem.limits[kind]
        weight += each * problem.limits[kind]
    return -(-weight // problem.weight_step) * problem.weight_step


def weighed_bounds(problem: "Cutting", work: "Work") -> "Iterator[int]":
    """Give lower bounds of a plan's weight, one for each way to weigh the pieces.

    They are weighed against the longest stick: what fits into a shorter one weighs at most what
    that one does, since weights of parts never add up to more than that of the whole.
    """
    length = max(problem.rooms)
    for way in ways_to_weigh(problem.sizes, length, MOST_CUTOFFS):
        holds = [weighed(room, length, way) for room in problem.rooms]
        bound = 0
        if min(holds) > 0:
            heavy = [weighed(size, length, way) for size in problem.sizes]
            total = sum([weight * number for weight, number in zip(heavy, problem.wanted)])
            bound = least_weight(problem, holds, total)
            work.add(2 * len(problem.sizes))
        work.add(10 * len(holds))
        yield bound
