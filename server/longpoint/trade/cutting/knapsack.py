"""The pattern of one stick that is worth most, in whole numbers."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..planning.work import Work
    from .problem import Pattern

PAUSE = 500
"""Steps between two looks at whether to pause."""


class Richest:
    """The most valuable pattern, found depth first, densest sizes first.

    Parameters
    ----------
    values, sizes, numbers : list of int
        Worth, size and most to take of each size; a size without worth is left out.
    room : int
        What the pattern must fit in.
    above : int
        Only patterns worth more than this are of interest.

    Attributes
    ----------
    pattern : tuple or None
        The best one found; None where none is worth more than `above`.
    worth : int
        Its worth; `above` where there is none.
    at_most : int
        No pattern is worth more than this; equals `worth` unless the search was given up.
    """

    def __init__(
        self,
        values: "list[int]",
        sizes: "list[int]",
        numbers: "list[int]",
        room: int,
        above: int,
    ) -> None:
        # Divisions of the same whole numbers give the same floats in both runtimes.
        order = sorted(
            [
                (-values[i] / sizes[i], i)
                for i in range(len(sizes))
                if values[i] > 0 and numbers[i] > 0 and sizes[i] <= room
            ]
        )
        self.order = [i for _, i in order]
        self.density = [-density for density, _ in order] + [0.0]
        self.value = [values[i] for i in self.order]
        self.size = [sizes[i] for i in self.order]
        self.number = [numbers[i] for i in self.order]
        self.room = room
        self.worth = above
        self.at_most = above
        self.take: list[int] = [0 for _ in self.order]
        self.pattern: Pattern | None = None

    def run(self, nodes: int, work: "Work") -> "Iterator[None]":
        """Search, pausing now and then; given up after so many nodes."""
        chosen: list[int] | None = None
        take, size, value, number = self.take, self.size, self.value, self.number
        density, last = self.density, len(self.order)
        at, room, worth, best, steps, seen = 0, self.room, 0, self.worth, 0, 0
        while True:
            # Worths are whole: what can't reach one more than the best is not looked at, with a
            # thousandth to spare for the float's last digits.
            while at < last and worth + room * density[at] > best + 0.999:
                count = min(room // size[at], number[at])
                take[at] = count
                room -= count * size[at]
                worth += count * value[at]
                at += 1
                steps += 1
            if worth > best:
                best, chosen = worth, take[:at] + [0] * (last - at)
            at -= 1
            while at >= 0 and take[at] == 0:
                at -= 1
            steps += 1
            if at < 0 or steps > nodes:
                break
            if steps > seen + PAUSE:
                work.add(2 * (steps - seen))
                seen = steps
                yield None
            take[at] -= 1
            room += size[at]
            worth -= value[at]
            at += 1
        work.add(2 * (steps - seen) + len(self.order))
        self.worth = best
        self.at_most = best if at < 0 else max(best, self._open(at))
        if chosen is not None:
            self.pattern = tuple(sorted([(i, n) for i, n in zip(self.order, chosen) if n]))

    def _open(self, at: int) -> int:
        """Return the most that the part not looked at, from level `at` up, can be worth."""
        most, room, worth = 0.0, self.room, 0
        for level in range(at + 1):
            count = self.take[level]
            if count:
                less = worth + (count - 1) * self.value[level]
                rest = room - (count - 1) * self.size[level]
                most = max(most, less + rest * self.density[level + 1])
            room -= count * self.size[level]
            worth += count * self.value[level]
        return int(most + 1)
