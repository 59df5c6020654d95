"""Do all pieces go into just these sticks? Looked into depth first, or shown that they don't."""

from .fill import sums_from
from .problem import filled

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from .problem import Cutting, Pattern

MOST_ROOM = 1 << 17
MOST_SEEN = 4000
MOST_STEPS = 1000
"""Steps after which one stick's ways to be filled are no longer looked for."""


class Packing:
    """A search that packs every piece into given numbers of sticks of each kind.

    The longest piece still unpacked goes into one of the sticks now, so every step fills a stick
    around it; what the sticks may lose in all is known, so a stick may lose no more than that.

    Attributes
    ----------
    found : list or None
        The sticks as ``(kind, pattern)``.
    refuted : bool
        There is no such packing.
    nodes : int
        Sticks filled so far.
    """

    def __init__(self, problem: "Cutting", counts: "list[int]") -> None:
        self.problem = problem
        self.left = list(problem.wanted)
        self.counts = list(counts)
        rooms = sum([n * room for n, room in zip(counts, problem.rooms)])
        self.spare = rooms - problem.total
        self.found: list[tuple[int, Pattern]] | None = None
        self.refuted = self.spare < 0
        self.nodes = 0
        self.skipped = False
        self.seen: dict[tuple[int, ...], bool] = {}

    def run(self, nodes: int) -> "Iterator[None]":
        """Search, pausing at every stick; given up after `nodes` of them."""
        chosen: list[tuple[int, Pattern]] = []
        open_choices = [self._choices()]
        while open_choices and self.nodes < nodes:
            self.nodes += 1
            choice = next(open_choices[-1], None)
            if choice is None:
                open_choices.pop()
                if chosen:
                    self._remember()
                    self._take(chosen.pop(), -1)
                continue
            if not choice[1]:
                self.skipped = True
                continue
            chosen.append(choice)
            self._take(choice, 1)
            if not [number for number in self.left if number]:
                self.found = chosen
                return
            if self._state() in self.seen:
                self._take(chosen.pop(), -1)
                continue
            open_choices.append(self._choices())
            yield None
        self.refuted = not open_choices and not self.skipped

    def _take(self, choice: "tuple[int, Pattern]", sign: int) -> None:
        kind, pattern = choice
        self.counts[kind] -= sign
        self.spare -= sign * (self.problem.rooms[kind] - filled(self.problem.sizes, pattern))
        for size, number in pattern:
            self.left[size] -= sign * number

    def _state(self) -> "tuple[int, ...]":
        return tuple(self.left + self.counts)

    def _remember(self) -> None:
        if len(self.seen) < MOST_SEEN:
            self.seen[self._state()] = True

    def _choices(self) -> "Iterator[tuple[int, Pattern]]":
        """Give every way to fill a stick around the longest piece left."""
        first = 0
        while self.left[first] == 0:
            first += 1
        rooms = self.problem.rooms
        kinds = sorted([(rooms[kind], kind) for kind in self.problem.kinds])
        for room, kind in kinds:
            if self.counts[kind] and room >= self.problem.sizes[first]:
                for pattern in maximal(self.problem.sizes, self.left, first, room, self.spare):
                    yield kind, pattern


def maximal(
    sizes: "list[int]", left: "list[int]", first: int, room: int, spare: int
) -> "Iterator[Pattern]":
    """Give the patterns with a piece of size `first` that leave at most `spare` of a room.

    Only those that no further piece fits beside; longer pieces first. The last one is empty where
    the steps did not suffice to look at all.

    >>> list(maximal([5, 4, 3], [1, 1, 2], 0, 10, 2))
    [((0, 1), (1, 1)), ((0, 1), (2, 1))]
    """
    at_hand = [i for i in range(first, len(sizes)) if left[i] and sizes[i] <= room]
    size = [sizes[i] for i in at_hand]
    number = [left[i] for i in at_hand]
    take = [0 for _ in at_hand]
    sums = sums_from(size, number, 0, room) if room <= MOST_ROOM else []
    at, last, steps = 0, len(at_hand), 0
    while True:
        while at < last and (not sums or _reaches(sums[at], room, spare)):
            take[at] = min(room // size[at], number[at])
            room -= take[at] * size[at]
            at += 1
            steps += 1
        if at == last and room <= spare and _nothing_fits(size, number, take, room):
            yield tuple([(i, n) for i, n in zip(at_hand, take) if n])
            steps = 0
        if steps > MOST_STEPS:
            yield ()
            return
        at -= 1
        while at >= 0 and take[at] == (1 if at == 0 else 0):
            room += take[at] * size[at]
            at -= 1
        if at < 0:
            return
        take[at] -= 1
        room += size[at]
        at += 1


def _reaches(made: int, room: int, spare: int) -> bool:
    """Tell whether some sum lies between `room` less `spare` and `room`."""
    low = max(0, room - spare)
    return bool((made >> low) & ((1 << (room - low + 1)) - 1))


def _nothing_fits(size: "list[int]", number: "list[int]", take: "list[int]", room: int) -> bool:
    for at in range(len(size) - 1, -1, -1):
        if size[at] > room:
            return True
        if take[at] < number[at]:
            return False
    return True
