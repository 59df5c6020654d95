"""Which blades, chippers and shims come nearest to a width?

Two outer blades are always in. Every reachable sum of the chippers and of the shims is listed
once, then the two lists are walked against each other: the whole set is searched, without trying
each combination by itself.
"""

from collections import namedtuple

from ..lengths import Scale

MOST_SUMS = 2000
"""Different sums of one kind that are still searched: beyond it a phone would keep one waiting."""

_SAME = 1e-6  # Of an inch: far below what any caliper tells apart, far above float noise.

Sum = namedtuple("Sum", ("many", "width", "counts"))
"""Some parts of one kind side by side: how many, how wide, how many of each row."""

Stack = namedtuple("Stack", ("width", "chippers", "shims"))
"""A stack: its width in inches, how many of each row of chippers and of shims."""


class TooManySums(Exception):
    """The parts make more different sums than are searched."""


def nearest_stacks(
    goal: float,
    outer: float,
    chippers: "list[tuple[float, int]]",
    shims: "list[tuple[float, int]]",
) -> "tuple[Stack | None, Stack | None]":
    """Find the stacks nearest at or above and nearest below a width.

    Of equally wide stacks the one with the fewest parts is found, then the one with fewer shims.

    Parameters
    ----------
    goal : float
        The width wanted, in inches.
    outer : float
        Thickness of each of the two outer blades.
    chippers, shims : list of (float, int)
        Thickness and how many there are.

    Returns
    -------
    above, below : Stack or None

    Raises
    ------
    TooManySums
        More than `MOST_SUMS` different sums of chippers, or of shims.

    >>> above, below = nearest_stacks(0.385, 0.125, [(0.125, 2)], [(0.005, 1), (0.02, 1)])
    >>> round(above.width, 3), above.chippers, above.shims, below.width
    (0.395, (1,), (0, 1), 0.38)
    """
    gap = goal - 2 * outer
    # A stack worth having gets too narrow with any one of its parts left out.
    most = max(gap, 0.0) + max([part[0] for part in chippers + shims] or [0.0])
    middles, packs = _sums(chippers, most), _sums(shims, most)
    above, below = [], []
    at = len(packs)
    for middle in middles:
        while at > 0 and middle.width + packs[at - 1].width >= gap - _SAME:
            at -= 1
        if at < len(packs):
            above.append(_rank(middle, packs[at]))
        if at > 0:
            below.append(_rank(middle, packs[at - 1]))
    return _first(above, outer, 1), _first(below, outer, -1)


def _sums(parts: "list[tuple[float, int]]", most: float) -> "list[Sum]":
    """Return every different sum up to `most`, narrowest first, each from the fewest parts."""
    found = {0: Sum(0, 0.0, ())}
    for thickness, count in parts:
        grown: dict[int, Sum] = {}
        for start in found.values():
            _grow(grown, start, thickness, count, most)
        if len(grown) > MOST_SUMS:
            raise TooManySums
        found = grown
    return [found[key] for key in sorted(found)]


def _grow(grown: "dict[int, Sum]", start: Sum, thickness: float, count: int, most: float) -> None:
    """Add none, one, two ... more of one part to `start`, keeping the fewest parts per sum."""
    for more in range(count + 1):
        width = start.width + more * thickness
        if width > most + _SAME:
            return
        offered = Sum(start.many + more, width, start.counts + (more,))
        key = _key(width)
        kept = grown.get(key)
        if kept is None or (offered.many, offered.counts) < (kept.many, kept.counts):
            grown[key] = offered


def _key(width: float) -> int:
    return int(width / _SAME + 0.5)


def _rank(middle: Sum, pack: Sum) -> "tuple[int, int, int, Sum, Sum]":
    return _key(middle.width + pack.width), middle.many + pack.many, pack.many, middle, pack


def _first(
    ranked: "list[tuple[int, int, int, Sum, Sum]]", outer: float, direction: int
) -> "Stack | None":
    """Return the best stack: narrowest for direction 1, widest for -1; None if there is none."""
    if not ranked:
        return None
    best = min(ranked, key=lambda rank: (direction * rank[0], rank[1:3], rank[3:]))
    middle, pack = best[3], best[4]
    return Stack(2 * outer + middle.width + pack.width, middle.counts, pack.counts)


def stack_words(
    stack: Stack,
    chippers: "list[tuple[float, int]]",
    shims: "list[tuple[float, int]]",
    scale: Scale,
) -> str:
    """Return what goes between the outer blades, as one reads it off the box."""
    words = _rows_words(chippers, stack.chippers, "chipper", scale)
    words += _rows_words(shims, stack.shims, "shim", scale)
    return ", ".join(words) or "outer blades alone"


def _rows_words(
    parts: "list[tuple[float, int]]", counts: "tuple[int, ...]", noun: str, scale: Scale
) -> "list[str]":
    return [
        f"{count} {noun}{'s' if count > 1 else ''} {_engraved(thickness, scale)}"
        for (thickness, _), count in zip(parts, counts)
        if count
    ]


def _engraved(thickness: float, scale: Scale) -> str:
    """Return a thickness as it is engraved on the part: a fraction where it is one."""
    if scale.units == "in" and scale.step != 1000 and thickness * 64 == int(thickness * 64):
        return Scale("in", 64).bare(thickness)
    return scale.decimal(thickness)
