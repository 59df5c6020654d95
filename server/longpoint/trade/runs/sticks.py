"""Pieces of molding out of sticks of one length: which out of which."""

from ..cutting.problem import Cutting
from ..cutting.search import StickSearch
from ..planning.units import whole_units

MOST = 60000
"""Steps of work after which the best plan has to do."""


def fewest_sticks(
    lengths: "list[float]", stick: float, kerf: float
) -> "tuple[list[list[int]], bool]":
    """Return which pieces come out of each stick, and whether no fewer sticks can do.

    Parameters
    ----------
    lengths : list of float
        Of the pieces from point to point, inches; none longer than a stick.
    stick, kerf : float
        Inches.

    Returns
    -------
    sticks : list of list of int
        For each stick the places of its pieces in `lengths`, longest first.
    proved : bool

    >>> fewest_sticks([50, 90, 40], 144, 0.125)
    ([[1, 0], [2]], True)
    """
    units, _ = whole_units(lengths + [stick, kerf])
    cut = units[-1]
    sizes = sorted(set(units[: len(lengths)]), reverse=True)
    places = [[at for at in range(len(lengths)) if units[at] == size] for size in sizes]
    problem = Cutting(
        [size + cut for size in sizes],
        [len(each) for each in places],
        [units[-2] + cut],
        [1],
        [None],
    )
    found = StickSearch(problem, MOST)
    for _ in found.run():
        pass
    sticks = [_taken(places, pattern) for _, pattern in found.plan.single()]
    return sticks, found.proved


def _taken(places: "list[list[int]]", pattern: "tuple[tuple[int, int], ...]") -> "list[int]":
    """Take the pieces of one stick off what is left, by size."""
    taken = []
    for size, number in pattern:
        taken += [places[size].pop(0) for _ in range(number)]
    return taken
