"""Integer programs of cutting stock, solved by HiGHS through scipy."""

import math
from collections.abc import Iterator

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp
from scipy.sparse import csr_matrix

from longpoint.trade.cutting.problem import Cutting

MOST_PATTERNS = 500
SECONDS = 5


class TooMany(Exception):
    """More patterns than an integer program is quick with."""


def maximal_patterns(sizes: list[int], wanted: list[int], room: int) -> list[tuple[int, ...]]:
    """List every pattern of a stick that no further piece fits beside, recursively."""

    def fill(at: int, left: int) -> Iterator[tuple[int, ...]]:
        if at == len(sizes):
            yield ()
            return
        for number in range(min(wanted[at], left // sizes[at]), -1, -1):
            for rest in fill(at + 1, left - number * sizes[at]):
                yield (number, *rest)

    found = []
    for pattern in fill(0, room):
        left = room - sum(n * size for n, size in zip(pattern, sizes, strict=True))
        more = [size for n, size, most in zip(pattern, sizes, wanted, strict=True) if n < most]
        if any(pattern) and (not more or min(more) > left):
            found.append(pattern)
        if len(found) > MOST_PATTERNS:
            raise TooMany
    return found


def least_weight(problem: Cutting) -> int | None:
    """Return the least weight of a plan by an integer program over all maximal patterns.

    None where HiGHS ran out of time.
    """
    columns, kinds = [], []
    for kind, room in enumerate(problem.rooms):
        for pattern in maximal_patterns(problem.sizes, problem.wanted, room):
            columns.append(pattern)
            kinds.append(kind)
    covered = csr_matrix(np.array(columns, float).T)
    sticks = np.array([[float(at == kind) for at in kinds] for kind in problem.kinds])
    solved = milp(
        np.array([problem.weights[kind] for kind in kinds], float),
        constraints=[
            LinearConstraint(covered, lb=problem.wanted),
            LinearConstraint(sticks, ub=problem.limits),
        ],
        integrality=np.ones(len(kinds)),
        bounds=Bounds(0, np.inf),
        options={"mip_rel_gap": 0, "time_limit": SECONDS},
    )
    return round(solved.fun) if solved.status == 0 else None


def sticks_at_least(sizes: list[int], room: int) -> int:
    """Return how many equal sticks are needed at least: arc flow, relaxed, rounded up.

    Carvalho's model: a stick is a path from 0 to `room` whose arcs carry pieces, longest first;
    what is left over is an arc straight to the end.
    """
    different = sorted(set(sizes), reverse=True)
    arcs = _arcs(different, sizes, room)
    rows, columns, data = [], [], []
    for at, (start, end, size) in enumerate(arcs):
        ends = [(node, sign) for node, sign in ((start, -1.0), (end, 1.0)) if 0 < node < room]
        rows += [node for node, _ in ends] + ([room + different.index(size)] if size else [])
        columns += [at] * (len(ends) + (size > 0))
        data += [sign for _, sign in ends] + ([1.0] if size else [])
    wanted = [sizes.count(size) for size in different]
    flow = csr_matrix((data, (rows, columns)), shape=(room + len(different), len(arcs)))
    solved = milp(
        np.array([float(start == 0) for start, _, _ in arcs]),
        constraints=LinearConstraint(
            flow, [0.0] * room + wanted, [0.0] * room + [np.inf] * len(different)
        ),
        bounds=Bounds(0, np.inf),
    )
    assert solved.status == 0, solved.message
    return math.ceil(solved.fun - 1e-6)


def _arcs(different: list[int], sizes: tuple[int, ...], room: int) -> list[tuple[int, int, int]]:
    """Return arcs as start, end and size (0 for what is left over at the end)."""
    reached = {0}
    arcs = set()
    for size in different:
        for start in sorted(reached):
            for _ in range(sizes.count(size)):
                if start + size > room:
                    break
                arcs.add((start, start + size, size))
                start += size
                reached.add(start)
    arcs |= {(node, room, 0) for node in reached if 0 < node < room}
    return sorted(arcs)
