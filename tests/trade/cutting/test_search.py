"""Plans against HiGHS: never below the bound, never a piece lost, nearly always the best."""

import random

import pytest

from longpoint.trade.cutting.problem import Cutting
from longpoint.trade.cutting.search import MOST, StickSearch
from tests.trade.cutting.oracle import TooMany, least_weight, sticks_at_least
from tests.trade.cutting.published import PUBLISHED, T120_01, Published, listed

RANDOM = 150
SLACK = 100000
"""Steps that a search may overrun its limit by: those between two looks at it."""
LENGTHS = [72, 84, 96, 120, 144, 168, 192]


def planned(problem: Cutting) -> StickSearch:
    """Return a search carried to its end, its plan checked piece by piece and stick by stick."""
    search = StickSearch(problem)
    bounds = [search.bound]
    for _ in search.run():
        assert 0 < search.progress < 1
        bounds.append(search.bound)
    assert bounds == sorted(bounds), "what is proved stays proved"
    assert search.progress == 1
    cut = [0] * len(problem.sizes)
    for kind, pattern, times in search.plan.rows:
        assert sum(problem.sizes[size] * n for size, n in pattern) <= problem.rooms[kind]
        for size, number in pattern:
            cut[size] += number * times
    assert cut == problem.wanted
    for used, limit in zip(search.plan.used(), problem.limits, strict=True):
        assert used <= limit
    return search


def of_one_stick(published: Published) -> Cutting:
    sizes = sorted({piece + published.kerf for piece in published.pieces}, reverse=True)
    wanted = [published.pieces.count(size - published.kerf) for size in sizes]
    return Cutting(sizes, wanted, [published.room + published.kerf], [1], [None])


@pytest.mark.parametrize("published", PUBLISHED, ids=lambda published: published.name)
def test_published_problems_are_solved_to_their_proved_optimum(published: Published) -> None:
    search = planned(of_one_stick(published))
    assert sum(search.plan.used()) == published.fewest
    assert search.proved


@pytest.mark.parametrize("published", PUBLISHED, ids=lambda published: published.name)
def test_fewer_sticks_than_published_are_impossible(published: Published) -> None:
    """HiGHS on another model than ours says so: all these round up from their relaxation."""
    pieces = [piece + published.kerf for piece in published.pieces]
    assert sticks_at_least(pieces, published.room + published.kerf) == published.fewest


def test_triplets_too_many_to_solve_end_with_a_true_bound() -> None:
    """t120_01: 120 pieces fill 40 sticks without waste (published)."""
    search = planned(of_one_stick(Published("t120_01", 1000, 0, listed(T120_01), 40)))
    assert search.bound % search.problem.per_cost == 40
    assert 40 <= sum(search.plan.used()) <= 41
    assert search.proved == (sum(search.plan.used()) == 40)
    assert search.work.done <= MOST + SLACK


def made_up(seed: int) -> Cutting:
    """Make up a joiner's list in sixteenths: one to three lengths to buy, maybe offcuts."""
    chance = random.Random(seed)
    bought = chance.sample(LENGTHS, chance.choice([1, 1, 1, 2, 3]))
    kerf = chance.choice([0, 1, 2])
    longest = min(max(bought), 96) * 16
    shortest = chance.choice([12, 16, 20]) * 16
    pieces = chance.sample(range(shortest, longest), chance.randint(3, 12))
    if chance.random() < 0.6:
        pieces = [piece // 8 * 8 for piece in pieces]
    sizes = sorted({piece + kerf for piece in pieces}, reverse=True)
    wanted = [1] * len(sizes)
    for _ in range(chance.randint(0, 60 - len(sizes))):
        wanted[chance.randrange(len(sizes))] += 1
    rooms = [length * 16 + kerf for length in bought]
    costs = [length // 12 for length in bought]
    if chance.random() < 0.5:
        costs = [int(length * chance.uniform(9, 13)) for length in bought]
    limits: list[int | None] = [None] * len(bought)
    for _ in range(chance.randint(1, 3) if chance.random() < 0.35 else 0):
        rooms.append(chance.randint(16, 80) * 16 + kerf)
        costs.append(0)
        limits.append(chance.randint(1, 3))
    return Cutting(sizes, wanted, rooms, costs, limits)


def test_random_problems_against_highs() -> None:
    compared, best, seed = 0, 0, 0
    while compared < RANDOM:
        seed += 1
        problem = made_up(seed)
        try:
            least = least_weight(problem)
        except TooMany:
            continue
        if least is None:
            continue
        search = planned(problem)
        compared += 1
        best += search.plan.weight == least
        assert search.bound <= least <= search.plan.weight, f"seed {seed}"
        assert not search.proved or search.plan.weight == least, f"seed {seed}"
        dearest = max(problem.costs[kind] for kind in problem.kinds)
        assert search.plan.weight - least <= dearest * problem.per_cost + 1, f"seed {seed}"
    assert best >= 0.98 * compared, f"{best} of {compared} are the best plan"


def test_pieces_that_only_a_scarce_stick_holds() -> None:
    """By hand: the one stick of 20 must take the 15, the 8s go into tens."""
    problem = Cutting([15, 8], [1, 3], [10, 20, 20], [1, 2, 1000], [None, 1, None])
    assert planned(problem).plan.used() == [3, 1, 0]


def test_the_longest_rest_is_gathered_in_one_stick() -> None:
    """By hand: 12 units over in four sticks of 20; 17 + 3, 17 + 3, 14 + 6 leave 12 in one."""
    problem = Cutting([17, 14, 8, 6, 3], [2, 1, 1, 1, 2], [20], [1], [None])
    search = planned(problem)
    assert (sum(search.plan.used()), search.plan.longest_rest()) == (4, 12)
