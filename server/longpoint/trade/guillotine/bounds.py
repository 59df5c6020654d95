"""What no plan can do without: parts weighed so that no sheet holds more than a sheet weighs.

The sides are weighed by dual feasible functions (Fekete and Schepers, Mathematics of Operations
Research 29, 2004; from memory): whatever fits side by side into a length weighs at most as much
as that length. A part that may be turned counts with its lighter way. The bound holds for any
cuts, guillotine or not.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from .problem import Sheets

MOST_SHARES = 6
MOST_CUTOFFS = 8


def fewest_sheets(problem: "Sheets") -> "Iterator[int]":
    """Give ever better lower bounds of the number of sheets, some milliseconds apart."""
    wide = max([room[0] for room in problem.rooms])
    high = max([room[1] for room in problem.rooms])
    best = 1
    across = weighings([[w for w, _ in ways] for ways in problem.turns], wide)
    up = weighings([[h for _, h in ways] for ways in problem.turns], high)
    for one, whole_one in across:
        for other, whole_other in up:
            heavy = 0
            for part, number in enumerate(problem.wanted):
                heavy += number * min([a * b for a, b in zip(one[part], other[part])])
            best = max(best, -(-heavy // (whole_one * whole_other)))
        yield best


def weighings(sides: "list[list[int]]", length: int) -> "list[tuple[list[list[int]], int]]":
    """Return sides weighed several ways, each with the weight of the whole length.

    >>> weighings([[25], [60]], 100)[2]
    ([[0], [100]], 200)
    """
    ways = [(sides, length)]
    for share in range(1, MOST_SHARES + 1):
        weighed = [[_shared(side, length, share) for side in turns] for turns in sides]
        ways.append((weighed, length * share))
    for cutoff in _cutoffs(sides, length):
        ways.append(
            ([[_cut_off(side, length, cutoff) for side in turns] for turns in sides], length)
        )
    return ways


def _shared(side: int, length: int, share: int) -> int:
    """Return the weight of a side where the whole length weighs ``length * share``.

    A side weighs its whole number of parts in (share + 1) of the length; where that is
    exact, its own share.
    """
    whole, over = divmod((share + 1) * side, length)
    return whole * length if over else side * share


def _cutoffs(sides: "list[list[int]]", length: int) -> "list[int]":
    halves = sorted({side for turns in sides for side in turns if 2 * side <= length})
    return halves[-MOST_CUTOFFS:]


def _cut_off(side: int, length: int, cutoff: int) -> int:
    """Return all for a side that leaves less than the cutoff, nothing for one shorter than it."""
    if side > length - cutoff:
        return length
    return side if side >= cutoff else 0


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
