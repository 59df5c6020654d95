"""Do all pieces go into just these sticks? Looked into depth first, or shown that they don't."""

from .fill import BITS_A_STEP, sums_from
from .problem import filled

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator

    from ..planning.work import Work
    from .problem import Cutting, Pattern

MOST_SEEN = 1500
PRIME = 1000003
NONE_YET: "tuple[int, Pattern]" = (-1, ())
"""In place of a choice: there may be more, but this is a good time to pause."""
MOST_BITS = 1 << 17
"""Bits of all sums of a stick together: as many sticks as are open at a time keep theirs."""
MOST_STEPS = 2000
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
    """

    def __init__(self, problem: "Cutting", counts: "list[int]", work: "Work") -> None:
        self.problem = problem
        self.work = work
        self.left = list(problem.wanted)
        self.counts = list(counts)
        rooms = sum([n * room for n, room in zip(counts, problem.rooms)])
        self.spare = rooms - problem.total
        self.found: list[tuple[int, Pattern]] | None = None
        self.refuted = self.spare < 0
        self.skipped = False
        # What is left of sizes and sticks as one whole number, a field of bits for each: a key
        # that is quickly made and compared.
        self.places = _places(self.left + self.counts)
        self.state = sum([n * place for n, place in zip(self.left + self.counts, self.places)])
        self.seen: dict[tuple[int, int], bool] = {}

    def run(self, nodes: int) -> "Iterator[None]":
        """Search, pausing at every stick; given up after `nodes` of them."""
        chosen: list[tuple[int, Pattern]] = []
        open_choices = [self._choices()]
        while open_choices and nodes:
            yield None
            choice = next(open_choices[-1], None)
            if choice == NONE_YET:
                continue
            nodes -= 1
            self.work.add(40 + 2 * len(self.left))
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
            if self._key() in self.seen:
                self._take(chosen.pop(), -1)
                continue
            open_choices.append(self._choices())
        self.refuted = not open_choices and not self.skipped

    def _take(self, choice: "tuple[int, Pattern]", sign: int) -> None:
        kind, pattern = choice
        self.counts[kind] -= sign
        self.spare -= sign * (self.problem.rooms[kind] - filled(self.problem.sizes, pattern))
        self.state -= sign * self.places[len(self.left) + kind]
        for size, number in pattern:
            self.left[size] -= sign * number
            self.state -= sign * number * self.places[size]

    def _remember(self) -> None:
        if len(self.seen) < MOST_SEEN:
            self.seen[self._key()] = True

    def _key(self) -> "tuple[int, int]":
        # The phone's interpreter looks at the lowest bits alone to find a large number again, and
        # these are much alike: a remainder tells them apart.
        return (self.state % PRIME, self.state)

    def _choices(self) -> "Iterator[tuple[int, Pattern]]":
        """Give every way to fill a stick around the longest piece left."""
        first = 0
        while self.left[first] == 0:
            first += 1
        rooms = self.problem.rooms
        kinds = sorted([(rooms[kind], kind) for kind in self.problem.kinds])
        for room, kind in kinds:
            if self.counts[kind] and room >= self.problem.sizes[first]:
                filling = Maximal(self.problem.sizes, self.left, first, room, self.spare)
                for pattern in filling.run(self.work):
                    yield kind, pattern
                yield NONE_YET


class Maximal:
    """The patterns with a piece of one size that leave at most `spare` of a room.

    Only those that no further piece fits beside; longer pieces first.

    >>> from longpoint.trade.planning.work import Work
    >>> list(Maximal([5, 4, 3], [1, 1, 2], 0, 10, 2).run(Work(1000)))
    [((0, 1), (1, 1)), ((0, 1), (2, 1))]
    """

    def __init__(
        self, sizes: "list[int]", left: "list[int]", first: int, room: int, spare: int
    ) -> None:
        self.left = left
        self.at_hand = [i for i in range(first, len(sizes)) if left[i] and sizes[i] <= room]
        self.size = [sizes[i] for i in self.at_hand]
        self.number = [left[i] for i in self.at_hand]
        self.take = [0 for _ in self.at_hand]
        self.room = room
        self.spare = spare

    def run(self, work: "Work") -> "Iterator[Pattern]":
        """Give them; the last one is empty where the steps did not suffice to look at all."""
        work.add(len(self.left) + 4 * len(self.at_hand))
        size, number, take = self.size, self.number, self.take
        sums = self._sums(work)
        room, at, last, steps = self.room, 0, len(size), 0
        while True:
            while at < last and (not sums or _reaches(sums[at], room, self.spare)):
                take[at] = min(room // size[at], number[at])
                room -= take[at] * size[at]
                at += 1
                steps += 1
            if at == last and room <= self.spare:
                steps += last // 4
                if _nothing_fits(size, number, take, room):
                    work.add(4 * steps)
                    steps = 0
                    yield tuple([(i, n) for i, n in zip(self.at_hand, take) if n])
            if steps > MOST_STEPS:
                work.add(4 * steps)
                yield ()
                return
            at -= 1
            while at >= 0 and take[at] == (1 if at == 0 else 0):
                room += take[at] * size[at]
                at -= 1
                steps += 1
            if at < 0:
                work.add(4 * steps)
                return
            take[at] -= 1
            room += size[at]
            at += 1

    def _sums(self, work: "Work") -> "list[int]":
        """Return what sums the sizes at hand can make; nothing where that is too much to keep."""
        if self.room * len(self.size) > MOST_BITS:
            return []
        work.add(len(self.size) * (3 + 3 * self.room // BITS_A_STEP))
        return sums_from(self.size, self.number, self.room)


def _places(numbers: "list[int]") -> "list[int]":
    """Return for each number what one of it is worth, so that no two sums of them are alike."""
    places, place = [], 1
    for number in numbers:
        places.append(place)
        while number:
            number //= 2
            place *= 2
    return places


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
