"""Which blades, chippers and shims come nearest to a width?

Two outer blades are always in. Every reachable sum of the chippers and of the shims is listed
once, then each sum of chippers looks up the shims that fill the rest: the whole set is searched,
without trying each combination by itself.
"""

from collections import namedtuple

from ...lengths import Scale

MOST_SUMS = 2000
"""Different sums of one kind that are still searched: beyond it a phone would keep one waiting."""

# Widths are added up as whole numbers of this part of an inch: whole numbers are quick on a phone
# and compare exactly. What rounding adds up to stays below `_SAME`, far below any caliper.
_UNIT = 1e-7
_SAME = 20
_MANY = 256  # More parts than a form can hold: a sum and its number of parts in one whole number.

Stack = namedtuple("Stack", ("width", "chippers", "shims"))
"""A stack: its width in inches, how many of each row of chippers and of shims."""


class TooManySums(Exception):
    """The parts make more different sums than are searched."""


class _Sums:
    """Every different sum of parts up to `most` units, each from the fewest parts.

    `numbered` keeps equal sums of different numbers of parts apart. A sum goes by its key: the
    width in units, or that and the number of parts together.
    """

    def __init__(self, parts: "list[tuple[float, int]]", most: int, numbered: bool) -> None:
        self.scale = _MANY if numbered else 1
        self.steps = [
            _units(thickness) * self.scale + (1 if numbered else 0) for thickness, _ in parts
        ]
        self.many = {0: 0}
        self.picks: list[dict[int, int]] = []
        for step, (_, count) in zip(self.steps, parts):
            self._add(step, count, (most + _SAME + 1) * self.scale)

    def _add(self, step: int, count: int, end: int) -> None:
        """Add none, one, two ... more of one part to every sum, as far as `end`."""
        grown: dict[int, int] = {}
        picked: dict[int, int] = {}
        # In order of size, so that of equally good ways every runtime finds the same one.
        for start in sorted(self.many):
            key, many = start, self.many[start]
            for more in range(count + 1):
                if key >= end:
                    break
                if key not in grown or many < grown[key]:
                    grown[key], picked[key] = many, more
                key, many = key + step, many + 1
        if len(grown) > MOST_SUMS:
            raise TooManySums
        self.many = grown
        self.picks.append(picked)

    def counts(self, key: int) -> "tuple[int, ...]":
        """Return how many of each part make up the sum that goes by `key`."""
        counts = []
        for step, picked in zip(reversed(self.steps), reversed(self.picks)):
            counts.append(picked[key])
            key -= picked[key] * step
        return tuple(reversed(counts))


def nearest_stacks(
    goal: float,
    outer: float,
    chippers: "list[tuple[float, int]]",
    shims: "list[tuple[float, int]]",
    per_gap: float,
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
    per_gap : float
        Most shims, in inches, for each gap between two blades, on average: a gap wider than the
        teeth overlap leaves a rib uncut. There is one gap more than there are chippers.

    Returns
    -------
    above, below : Stack or None

    Raises
    ------
    TooManySums
        More than `MOST_SUMS` different sums of chippers, or of shims.

    >>> shims = [(0.005, 1), (0.02, 1)]
    >>> above, below = nearest_stacks(0.385, 0.125, [(0.125, 2)], shims, 0.03)
    >>> round(above.width, 3), above.chippers, above.shims, below.width
    (0.395, (1,), (0, 1), 0.38)
    """
    gap = _units(goal) - 2 * _units(outer)
    # The nearest stack falls below the goal with one of its shims left out, or, where it has
    # none, one of its chippers: nothing wider than the goal and one part has to be looked at.
    most = max(gap, 0) + max([_units(part[0]) for part in chippers + shims] or [0])
    middles = _Sums(chippers, most, True)
    packs = _Sums(shims, min(most, _most_shims(middles, shims, gap, _units(per_gap))), False)
    above, below = _ranked(middles, packs, gap, _units(per_gap))
    found = []
    for ranks, direction in ((above, 1), (below, -1)):
        best = min(ranks, key=lambda rank: (direction * rank[0], rank[1:])) if ranks else None
        counts = (middles.counts(best[3]), packs.counts(best[4])) if best else None
        found.append(_stack(outer, chippers, shims, counts) if counts else None)
    return found[0], found[1]


def _most_shims(middles: _Sums, shims: "list[tuple[float, int]]", gap: int, per_gap: int) -> int:
    """Return the widest sum of shims that any sum of chippers has use and room for."""
    one = max([_units(part[0]) for part in shims] or [0])
    return max(
        [min(per_gap * (key % _MANY + 1), max(0, gap - key // _MANY) + one) for key in middles.many]
    )


def _ranked(
    middles: _Sums, packs: _Sums, gap: int, per_gap: int
) -> "tuple[list[tuple[int, ...]], list[tuple[int, ...]]]":
    """Return, at or above and below the gap, the best filling for each sum of chippers.

    A filling is its width, its parts, the shims among them, and the keys of both sums.
    """
    widths = sorted(packs.many)
    above: list[tuple[int, ...]] = []
    below: list[tuple[int, ...]] = []
    for key in middles.many:
        width, many = key // _MANY, key % _MANY
        allowed = _before(widths, per_gap * (many + 1) + _SAME + 1)
        at = _before(widths, gap - width - _SAME)
        for place, ranks in ((at, above), (min(at, allowed) - 1, below)):
            if 0 <= place < allowed:
                shim = widths[place]
                shims = packs.many[shim]
                ranks.append((width + shim, many + shims, shims, key, shim))
    return above, below


def _before(widths: "list[int]", end: int) -> int:
    """Return how many of the widths, narrowest first, are narrower than `end`."""
    low, high = 0, len(widths)
    while low < high:
        middle = (low + high) // 2
        if widths[middle] < end:
            low = middle + 1
        else:
            high = middle
    return low


def _units(inches: float) -> int:
    return int(inches / _UNIT + 0.5)


def _stack(
    outer: float,
    chippers: "list[tuple[float, int]]",
    shims: "list[tuple[float, int]]",
    counts: "tuple[tuple[int, ...], tuple[int, ...]]",
) -> Stack:
    used = list(zip(chippers + shims, counts[0] + counts[1]))
    width = 2 * outer + sum([part[0] * count for part, count in used])
    return Stack(width, counts[0], counts[1])


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
        f"{count} {noun}{'s' if count > 1 else ''} {engraved(thickness, scale)}"
        for (thickness, _), count in zip(parts, counts)
        if count
    ]


def engraved(thickness: float, scale: Scale) -> str:
    """Return a thickness as it is engraved on the part: a fraction where it is one."""
    if scale.units == "in" and scale.step != 1000 and thickness * 64 == int(thickness * 64):
        return Scale("in", 64).bare(thickness)
    return scale.decimal(thickness)
