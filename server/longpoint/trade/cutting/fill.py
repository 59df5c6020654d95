"""Fill one stick: greedily, or as full as the sizes at hand allow.

The sums that sizes can make are kept as the bits of one whole number: a shift adds a piece to
every sum at once.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .problem import Pattern

MOST_BITS = 16384
"""Longer rooms are filled on a coarser scale, sizes rounded up: never too full."""


def largest_first(sizes: "list[int]", left: "list[int]", room: int) -> "Pattern":
    """Return a stick filled with the longest pieces first, as many of each as fit."""
    pattern = []
    for index, size in enumerate(sizes):
        number = min(left[index], room // size)
        if number:
            pattern.append((index, number))
            room -= number * size
    return tuple(pattern)


def fullest(sizes: "list[int]", left: "list[int]", room: int) -> "Pattern":
    """Return the longest piece that fits with whatever fills the stick best beside it.

    Where several ways fill it equally, longer pieces go first.
    """
    first = 0
    while first < len(sizes) and (left[first] == 0 or sizes[first] > room):
        first += 1
    if first == len(sizes):
        return ()
    grain = room // MOST_BITS + 1
    coarse = [-(-size // grain) for size in sizes]
    room = room // grain - coarse[first]
    if room < 0:
        return ((first, 1),)
    numbers = list(left)
    numbers[first] -= 1
    numbers = [min(number, room // size) for number, size in zip(numbers, coarse)]
    sums = sums_from(coarse, numbers, first, room)
    best = highest(sums[0], room)
    counts = taken(coarse, numbers, first, sums, best)
    counts[0] += 1
    return tuple([(first + at, number) for at, number in enumerate(counts) if number])


def sums_from(sizes: "list[int]", numbers: "list[int]", first: int, room: int) -> "list[int]":
    """Return for each size from `first` on the sums that it and the shorter ones can make.

    Each is a whole number whose bit s tells that the sum s can be made, for s up to `room`;
    a last one, for no sizes at all, is 1.

    >>> bin(sums_from([3, 2], [1, 2], 0, 7)[0])
    '0b10111101'
    """
    mask = (1 << (room + 1)) - 1
    sums = [1]
    made = 1
    for index in range(len(sizes) - 1, first - 1, -1):
        number, step = numbers[index], 1
        while number > 0:
            step = min(step, number)
            made |= (made << (sizes[index] * step)) & mask
            number -= step
            step *= 2
        sums.append(made)
    sums.reverse()
    return sums


def highest(made: int, room: int) -> int:
    """Return the largest sum up to `room` that can be made."""
    while not (made >> room) & 1:
        room -= 1
    return room


def taken(
    sizes: "list[int]", numbers: "list[int]", first: int, sums: "list[int]", best: int
) -> "list[int]":
    """Return how many of each size from `first` on make the sum `best`, longer ones first."""
    counts = []
    for index in range(first, len(sizes)):
        size, number = sizes[index], min(numbers[index], best // sizes[index])
        shorter = sums[index - first + 1]
        while not (shorter >> (best - number * size)) & 1:
            number -= 1
        counts.append(number)
        best -= number * size
    return counts
