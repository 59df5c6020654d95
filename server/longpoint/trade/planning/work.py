"""Count the work of a search, so that it pauses and stops at the same place in every runtime.

Nothing is timed: a clock would make two phones answer differently. A step is one turn of an inner
loop, well under a microsecond on a server and up to a microsecond in the phone's interpreter;
`tests/bench` tells what a share of them takes.
"""

SHARE = 5000
"""Steps between two pauses: some milliseconds of the phone's interpreter."""


class Work:
    """The steps that one search may take and has taken.

    Parameters
    ----------
    most : int
        Steps after which the search stops.
    first : int
        Steps before the first pause.

    >>> work = Work(100, 10)
    >>> work.add(12)
    >>> work.pauses(), work.pauses(), work.is_over()
    (True, False, False)
    """

    def __init__(self, most: int, first: int = SHARE) -> None:
        self.most = most
        self.done = 0
        self.next_pause = first

    def add(self, steps: int) -> None:
        """Count steps just taken."""
        self.done += steps

    def pauses(self) -> bool:
        """Tell whether a share has been done since the last pause; then this is one."""
        if self.done < self.next_pause:
            return False
        self.next_pause = self.done + SHARE
        return True

    def is_over(self) -> bool:
        """Tell whether all steps there are have been taken."""
        return self.done >= self.most

    def part(self) -> float:
        """Return which part of the work is done, less than 1 however much it was."""
        return min(0.99, 0.01 + 0.98 * self.done / self.most)
