"""Weigh lengths so that whatever fits into a length weighs at most as much as that length.

Dual feasible functions (Fekete and Schepers, Mathematics of Operations Research 29, 2004; from
memory). A way to weigh is a number: above 0 the length is shared into that many parts and one
more; otherwise it is a cutoff, negated, below which a length weighs nothing.
"""

MOST_SHARES = 6
PLAIN = 0
"""The way in which every length weighs itself."""


def ways_to_weigh(sides: "list[int]", length: int, most_cutoffs: int) -> "list[int]":
    """Return the ways worth trying for sides that are cut from a length.

    >>> ways_to_weigh([25, 60, 40], 100, 1)
    [0, 1, 2, 3, 4, 5, 6, -40]
    """
    halves = sorted({side for side in sides if 2 * side <= length})
    cutoffs = [-side for side in halves[-most_cutoffs:]]
    return [PLAIN] + list(range(1, MOST_SHARES + 1)) + cutoffs


def weighed(side: int, length: int, way: int) -> int:
    """Return what a side weighs where the whole length weighs ``weighed(length, length, way)``.

    >>> [weighed(side, 100, 1) for side in (50, 51, 49, 100)]
    [50, 100, 0, 100]
    >>> [weighed(side, 100, -40) for side in (61, 60, 40, 39)]
    [100, 60, 40, 0]
    """
    if way > 0:
        whole, over = divmod((way + 1) * side, length)
        return whole * length if over else side * way
    if side > length + way:
        return length
    return side if side >= -way else 0
