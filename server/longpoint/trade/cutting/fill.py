"""Fill one stick as full as the sizes at hand allow.

The sums that sizes can make are kept as the bits of one whole number: a shift adds a piece to
every sum at once.
"""

from .wanted import Wanted

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .problem import Pattern

MOST_BITS = 16384
"""Longer rooms are filled on a coarser scale, sizes rounded up: never too full."""
MOST_ALL_BITS = 1 << 18
"""Bits of all sizes together, lest one fill take more than some 100 KB of memory."""
MOST_AT_HAND = 48
"""So many sizes fill a stick well enough: of more, every second or third is looked at."""
BITS_A_STEP = 1000
"""So many bits of a whole number are shifted in the time of a step or two."""


def fullest(wanted: Wanted, room: int) -> "Pattern":
    """Return the longest piece that fits with whatever fills the stick best beside it.

    Where several ways fill it equally, longer pieces go first.

    >>> fullest(Wanted([7, 6, 4, 3], [1, 1, 1, 1]), 14)
    ((0, 1), (2, 1), (3, 1))
    """
    at_hand = _at_hand(wanted, room)
    if not at_hand:
        return ()
    sizes = [wanted.sizes[at] for at in at_hand]
    most_bits = min(MOST_BITS, MOST_ALL_BITS // len(at_hand))
    grain = room // most_bits + 1
    coarse = [-(-size // grain) for size in sizes] if grain > 1 else sizes
    left = room // grain - coarse[0]
    if left < 0:
        return ((at_hand[0], 1),)
    numbers = [wanted.left[at] for at in at_hand]
    numbers[0] -= 1
    numbers = [min(number, left // size) for number, size in zip(numbers, coarse)]
    sums = sums_from(coarse, numbers, left)
    counts = taken(coarse, numbers, sums, highest(sums[0]))
    counts[0] += 1
    wanted.steps += len(at_hand) * (10 + 8 * left // BITS_A_STEP)
    return tuple([(at, number) for at, number in zip(at_hand, counts) if number])


def _at_hand(wanted: Wanted, room: int) -> "list[int]":
    """Return the longest size that fits a room and others that fit beside it, longest first."""
    at = wanted.first(wanted.fitting(room, 0))
    if at == wanted.end:
        return []
    found = [at]
    beside = room - wanted.sizes[at]
    at = wanted.first(max(at + 1, wanted.fitting(beside, at)))
    while at < wanted.end:
        found.append(at)
        at = wanted.first(at + 1)
    wanted.steps += 4 * len(found)
    apart = -(-len(found) // MOST_AT_HAND)
    return found[:1] + found[1::apart]


def sums_from(sizes: "list[int]", numbers: "list[int]", room: int) -> "list[int]":
    """Return for each size the sums that it and those after it can make.

    Each is a whole number whose bit s tells that the sum s can be made, for s up to `room`;
    a last one, for no sizes at all, is 1.

    >>> bin(sums_from([3, 2], [1, 2], 7)[0])
    '0b10111101'
    """
    mask = (1 << (room + 1)) - 1
    sums = [1]
    made = 1
    for index in range(len(sizes) - 1, -1, -1):
        number, step = numbers[index], 1
        while number > 0:
            step = min(step, number)
            made |= (made << (sizes[index] * step)) & mask
            number -= step
            step *= 2
        sums.append(made)
    sums.reverse()
    return sums


def highest(made: int) -> int:
    """Return the largest sum among the bits of a whole number above 0.

    >>> highest(1), highest(0b101101)
    (0, 5)
    """
    step = 1
    while made >> step:
        step *= 2
    place = 0
    while step:
        if made >> (place + step):
            place += step
        step //= 2
    return place


def taken(sizes: "list[int]", numbers: "list[int]", sums: "list[int]", best: int) -> "list[int]":
    """Return how many of each size make the sum `best`, longer ones first."""
    counts = []
    for index, size in enumerate(sizes):
        number = min(numbers[index], best // size)
        shorter = sums[index + 1]
        while not (shorter >> (best - number * size)) & 1:
            number -= 1
        counts.append(number)
        best -= number * size
    return counts
