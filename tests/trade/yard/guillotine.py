"""Guillotine cutting worked out another way: from the whole sheet down, cut by cut."""

from functools import cache

import numpy as np

Parts = tuple[tuple[int, int], ...]


@cache
def fits(parts: Parts, wide: int, high: int, kerf: int, turn: bool) -> bool:
    """Tell whether whole-number cuts get all the parts out of one sheet: tries every cut."""
    if not parts:
        return True
    if wide <= 0 or high <= 0 or sum(w * h for w, h in parts) > wide * high:
        return False
    if len(parts) == 1:
        w, h = parts[0]
        return (w <= wide and h <= high) or (turn and h <= wide and w <= high)
    rest, first = parts[1:], parts[0]
    for chosen in range(2 ** len(rest) - 1):
        ones = (first, *(part for bit, part in enumerate(rest) if chosen >> bit & 1))
        others = tuple(part for bit, part in enumerate(rest) if not chosen >> bit & 1)
        for at in range(1, wide):
            if fits(ones, at, high, kerf, turn) and fits(
                others, wide - at - kerf, high, kerf, turn
            ):
                return True
        for at in range(1, high):
            if fits(ones, wide, at, kerf, turn) and fits(
                others, wide, high - at - kerf, kerf, turn
            ):
                return True
    return False


def fewest_sheets(parts: Parts, wide: int, high: int, kerf: int, turn: bool) -> int:
    """Return the fewest equal sheets that hold the parts: the first one in every possible set."""
    if not parts:
        return 0
    rest, first = parts[1:], parts[0]
    best = len(parts)
    for chosen in range(2 ** len(rest)):
        ones = (first, *(part for bit, part in enumerate(rest) if chosen >> bit & 1))
        others = tuple(part for bit, part in enumerate(rest) if not chosen >> bit & 1)
        if fits(ones, wide, high, kerf, turn):
            best = min(best, 1 + fewest_sheets(others, wide, high, kerf, turn))
    return best


def fullest_sheet(sizes: list[tuple[int, int]], wide: int, high: int) -> tuple[int, list[int]]:
    """Return the most area that any number of copies can fill, and how many of each do it.

    The classic recursion over all sheets up to this one: a part, or the best of all cuts in two.
    """
    value = np.zeros((wide + 1, high + 1), dtype=np.int64)
    choice: dict[tuple[int, int], tuple[str, int]] = {}
    for x in range(1, wide + 1):
        for y in range(1, high + 1):
            options = [(0, "", 0)]
            options += [(w * h, "part", i) for i, (w, h) in enumerate(sizes) if w <= x and h <= y]
            across = value[1 : x // 2 + 1, y] + value[x - 1 : x - x // 2 - 1 : -1, y]
            up = value[x, 1 : y // 2 + 1] + value[x, y - 1 : y - y // 2 - 1 : -1]
            if len(across):
                options.append((int(across.max()), "x", int(across.argmax()) + 1))
            if len(up):
                options.append((int(up.max()), "y", int(up.argmax()) + 1))
            value[x, y], *choice[x, y] = max(options, key=lambda option: option[0])  # type: ignore[misc]
    counts = [0] * len(sizes)
    waiting = [(wide, high)]
    while waiting:
        x, y = waiting.pop()
        if not x or not y:
            continue
        what, at = choice[x, y]
        if what == "part":
            counts[at] += 1
        elif what == "x":
            waiting += [(at, y), (x - at, y)]
        elif what == "y":
            waiting += [(x, at), (x, y - at)]
    return int(value[wide, high]), counts
