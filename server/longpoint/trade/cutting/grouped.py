"""A smaller problem for a bound: like sizes made one, each as short as the shortest of them."""

from .problem import Cutting

GROUPS = 40


def grouped(problem: Cutting, groups: int = GROUPS) -> Cutting:
    """Return a problem of at most so many sizes whose best plan weighs no more.

    Pieces are grouped longest first, as many in each. What holds a piece holds the shortest of its
    group, too.

    >>> small = grouped(Cutting([9, 8, 7], [1, 2, 1], [20], [1], [None]), 2)
    >>> small.sizes, small.wanted
    ([8, 7], [2, 2])
    """
    pieces = [size for size, number in zip(problem.sizes, problem.wanted) for _ in range(number)]
    ends = [(at + 1) * len(pieces) // groups for at in range(groups)]
    sizes: list[int] = []
    wanted: list[int] = []
    begin = 0
    for end in ends:
        if end > begin and sizes and sizes[-1] == pieces[end - 1]:
            wanted[-1] += end - begin
        elif end > begin:
            sizes.append(pieces[end - 1])
            wanted.append(end - begin)
        begin = end
    return problem.part(sizes, wanted, problem.limits)
