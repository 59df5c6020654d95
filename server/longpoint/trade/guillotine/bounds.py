"""What no plan can do without: parts weighed so that no sheet holds more than a sheet weighs.

The sides are weighed so that whatever fits side by side into a length weighs at most as much as
that length. A part that may be turned counts with its lighter way. The bound holds for any cuts,
guillotine or not.
"""

from ..planning.weighing import ways_to_weigh, weighed

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..planning.work import Work
    from .problem import Sheets

MOST_CUTOFFS = 8


def fewest_sheets(problem: "Sheets", work: "Work") -> "Iterator[int]":
    """Give ever better lower bounds of the number of sheets."""
    wide = max([room[0] for room in problem.rooms])
    high = max([room[1] for room in problem.rooms])
    across = _weighings(problem, 0, wide)
    up = _weighings(problem, 1, high)
    best = 1
    for one, whole_one in across:
        for other, whole_other in up:
            heavy = 0
            for part, number in enumerate(problem.wanted):
                heavy += number * min([a * b for a, b in zip(one[part], other[part])])
            best = max(best, -(-heavy // (whole_one * whole_other)))
            work.add(3 * len(problem.wanted))
        yield best


def _weighings(problem: "Sheets", axis: int, length: int) -> "list[tuple[list[list[int]], int]]":
    """Return the sides along an axis weighed several ways, each with the weight of the length."""
    sides = [side[axis] for turns in problem.turns for side in turns]
    return [
        (
            [[weighed(side[axis], length, way) for side in turns] for turns in problem.turns],
            weighed(length, length, way),
        )
        for way in ways_to_weigh(sides, length, MOST_CUTOFFS)
    ]


def least_weight(problem: "Sheets", sheets: int) -> int:
    """Return what no plan of at least so many sheets and of all the parts' area weighs less than.

    Whole sheets by number, and area by the part of a sheet: whichever is more.
    """
    cheapest: list[tuple[int, int]] = sorted(
        [(problem.costs[kind], kind) for kind in problem.kinds]
    )
    by_area = _area_cost(problem)
    if cheapest[0][0] == cheapest[-1][0] > 0:
        # Where all cost alike, what they cost together is their number too.
        sheets = max(sheets, -(-by_area // cheapest[0][0]))
    cost, count = 0, 0
    for each, kind in cheapest:
        take = min(problem.limits[kind], sheets - count)
        cost, count = cost + each * take, count + take
    return max(cost, by_area) * problem.per_cost + sheets


def _area_cost(problem: "Sheets") -> int:
    """Return the least that sheets cost, by the part, which hold as much area as the parts."""
    worth = sorted([(problem.costs[k] / problem.room_area(k), k) for k in problem.kinds])
    left, cost = problem.total, 0
    for _, kind in worth:
        area = problem.room_area(kind)
        number = min(problem.limits[kind], left // area)
        left -= number * area
        cost += number * problem.costs[kind]
        if number < problem.limits[kind]:
            return cost + -(-left * problem.costs[kind] // area)
    return cost
