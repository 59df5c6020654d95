"""What is still wanted of each size, so kept that the longest piece that fits is found at once."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from .problem import Pattern


class Wanted:
    """Numbers of each size that are still to be cut.

    Parameters
    ----------
    sizes : list of int
        Longest first.
    left : list of int
        How many of each.

    Attributes
    ----------
    steps : int
        Turns of inner loops so far, for whoever counts the work.

    >>> wanted = Wanted([5, 4, 3], [1, 0, 2])
    >>> wanted.longest_first(9)
    ((0, 1), (2, 1))
    """

    def __init__(self, sizes: "list[int]", left: "list[int]") -> None:
        self.sizes = sizes
        self.left = left
        self.end = len(sizes)
        self.shortest = sizes[-1] if sizes else 0
        # From a size that is used up onward to the next one that may not be.
        self.onward = list(range(self.end + 1))
        self.steps = 0

    def first(self, at: int = 0) -> int:
        """Return the longest size still wanted from `at` on; `end` where there is none."""
        start, onward, left = at, self.onward, self.left
        while at < self.end and not left[at]:
            onward[at] = max(onward[at], at + 1)
            at = onward[at]
            self.steps += 2
        if at != start:
            onward[start] = at
        return at

    def fitting(self, room: int, at: int) -> int:
        """Return the longest size from `at` on that fits a room, wanted or not."""
        low, high, sizes = at, self.end, self.sizes
        while low < high:
            middle = (low + high) // 2
            self.steps += 3
            if sizes[middle] > room:
                low = middle + 1
            else:
                high = middle
        return low

    def longest_first(self, room: int) -> "Pattern":
        """Return a stick filled with the longest pieces first, as many of each as fit."""
        pattern = []
        at = self.first()
        while at < self.end and room >= self.shortest:
            self.steps += 12
            size = self.sizes[at]
            if size > room:
                at = self.first(self.fitting(room, at + 1))
                continue
            number = min(self.left[at], room // size)
            pattern.append((at, number))
            room -= number * size
            at = self.first(at + 1)
        return tuple(pattern)

    def take(self, pattern: "Pattern", times: int) -> None:
        """Take the pieces of a pattern out, as often as it is cut."""
        for size, number in pattern:
            self.left[size] -= number * times
