"""Board feet, board by board: as the tape says, or rounded as the grading rules round.

Sources: NHLA Rules for the Measurement and Inspection of Hardwood and Cypress, as the American
Hardwood Export Council's guide and dealers' pages explain them: surface measure is width in
inches times length in feet over 12 to the nearest whole, times the thickness; part-feet of length
are dropped; stock thinner than an inch counts as an inch; surfaced stock counts by its size
before surfacing. A surface measure of exactly a half goes up and down alternately: from memory.
"""

import math
from collections import namedtuple

from ...lengths import read_length
from ...lumber.board_feet import board_feet, counted_thickness
from ...lumber.labels import size_words
from ...reading import DIGITS, Unreadable, quoted
from ...refusal import FieldError, Refusal

Line = namedtuple("Line", ("thickness", "width", "feet", "count"))
"""A line of the tally as said: thickness as a text, width in inches, length in feet; an empty
thickness and a length of None are those of the line above."""

ENOUGH = 1e-9
"""Board feet: float noise is no reason to go back to the stack."""

THICKEST = 6.0  # 24/4, where the rules' list of thicknesses ends.
_HAIR = 1e-9  # Float noise must not turn a whole foot or an exact half.
_CAN_BE_QUARTERS = 3  # From here a bare whole number may mean quarters or inches.


class Board:
    """One line of the tally; `count` boards alike.

    Attributes
    ----------
    thickness, width : float
        Inches; the thickness is the quarter it is sold as.
    feet : float
        Length of one board.
    counted_feet : float
        The length that the rule counts.
    surface : int
        Surface measure of all of them, by the grading rules; 0 under the exact rule.
    board_feet : float
        Of all of them, by the rule in force.
    """

    def __init__(self, thickness: float, width: float, feet: float, count: int) -> None:
        self.thickness = thickness
        self.width = width
        self.feet = feet
        self.count = count
        self.counted_feet = feet
        self.surface = 0
        self.board_feet = self.exact()

    def exact(self) -> float:
        """Return the board feet of all of them, nothing rounded."""
        return self.count * board_feet(self.thickness, self.width, self.feet * 12)

    def most_each(self, graded: bool) -> float:
        """Return the board feet that one of them stands for at most, by the rule in force."""
        if not graded:
            return self.board_feet / self.count
        measure = self.width * self.counted_feet / 12
        return int(math.floor(measure + 0.5 + _HAIR)) * counted_thickness(self.thickness)

    def lineal_feet(self) -> float:
        """Return the length of all of them end to end, in feet, as measured."""
        return self.count * self.feet


class Halves:
    """Rounds surface measures; exact halves go up and down alternately, the first one up."""

    def __init__(self) -> None:
        self.met = 0

    def rounded(self, measure: float, count: int) -> int:
        """Return the surface measure of `count` boards that each measure `measure`.

        >>> halves = Halves()
        >>> halves.rounded(4.5, 1), halves.rounded(4.5, 1), halves.rounded(10 + 10 / 12, 2)
        (5, 4, 22)
        """
        whole = int(math.floor(measure + _HAIR))
        if abs(measure - whole - 0.5) > _HAIR:
            return count * int(math.floor(measure + 0.5))
        ups = (count + 1 - self.met % 2) // 2
        self.met += count
        return count * whole + ups


class Tally:
    """All boards in order, counted by one rule.

    Parameters
    ----------
    lines : list of Line
    graded : bool
        Round as the grading rules do.

    Raises
    ------
    Refusal
        On the thickness or the length of a board.
    """

    def __init__(self, lines: "list[Line]", graded: bool) -> None:
        self.graded = graded
        self.halves = Halves()
        self.boards: list[Board] = []
        errors: list[FieldError] = []
        thickness, feet = "", None
        for at, line in enumerate(lines):
            thickness = line.thickness or thickness
            feet = feet if line.feet is None else line.feet
            self._take(at, line, thickness, feet, errors)
        if errors:
            raise Refusal.of(errors)

    def count(self) -> int:
        """Return how many boards there are."""
        return sum([board.count for board in self.boards])

    def board_feet(self) -> float:
        """Return the board feet of the whole tally."""
        return sum([board.board_feet for board in self.boards])

    def exact(self) -> float:
        """Return the board feet of the whole tally, nothing rounded."""
        return sum([board.exact() for board in self.boards])

    def lineal_feet(self) -> float:
        """Return the length of all boards end to end, in feet."""
        return sum([board.lineal_feet() for board in self.boards])

    def _take(
        self, at: int, line: Line, said: str, feet: "float | None", errors: "list[FieldError]"
    ) -> None:
        """Add a board, or what is wrong with it."""
        field = f"boards.{at}."
        if said == "":
            errors.append(FieldError(field + "thickness", _first("thickness"), True))
        if feet is None:
            errors.append(FieldError(field + "length", _first("length"), True))
        if said == "" or feet is None:
            return
        try:
            thickness = thickness_of(said, self.graded)
        except Unreadable as unreadable:
            errors.append(FieldError(field + "thickness", str(unreadable)))
            return
        board = Board(thickness, line.width, feet, line.count)
        self.boards.append(board)
        if self.graded and not self._grade(board):
            errors.append(FieldError(field + "length", _SHORT))

    def _grade(self, board: Board) -> bool:
        """Count a board by the grading rules; false where it is too short to be counted."""
        board.counted_feet = math.floor(board.feet + _HAIR)
        measure = board.width * board.counted_feet / 12
        board.surface = self.halves.rounded(measure, board.count)
        board.board_feet = board.surface * counted_thickness(board.thickness)
        return board.counted_feet > 0


def going_back(boards: "list[Board]", over: float, graded: bool) -> "list[tuple[int, int]]":
    """Return which boards the job can spare, the largest first, as line from 1 and how many.

    `over` is what is there beyond the job, in board feet.
    """
    each = [(-board.most_each(graded), at) for at, board in enumerate(boards)]
    back = []
    for negative, at in sorted(each):
        feet, many = -negative, boards[at].count
        if feet > 0:
            many = min(many, int(math.floor((over + ENOUGH) / feet)))
        if many:
            back.append((at + 1, many))
            over -= feet * many
    return back


_SHORT = (
    "Less than a foot is no length at all by the grading rules: leave the piece out, or count "
    "exactly."
)


def _first(what: str) -> str:
    return f"The first board's {what} is needed: a board below may leave it out and repeat it."


def thickness_of(text: str, graded: bool) -> float:
    """Return the thickness in inches that ``4/4``, ``5/4``, ``2`` or ``3/8`` says.

    Raises
    ------
    Unreadable
        No thickness, one that may mean two things, or in graded lumber one that is no quarter.

    >>> thickness_of("5/4", True), thickness_of("8/4", True)
    (1.25, 2.0)
    """
    bare = text.strip()
    if bare and not [c for c in bare if c not in DIGITS] and int(bare) >= _CAN_BE_QUARTERS:
        raise Unreadable(
            f"{quoted(bare)} may be quarters or inches: write {bare}/4, or {int(bare) * 4}/4 if "
            f"it is {bare} inches thick."
        )
    try:
        inches = read_length(bare, over_one=True)
    except Unreadable:
        inches = 0.0
    if inches <= 0:
        raise Unreadable(f"{quoted(bare)} is not a thickness: write it like 4/4, 5/4 or 8/4.")
    if inches > THICKEST:
        raise Unreadable(f"{quoted(bare)} is thicker than 24/4, or 6 inches: count by the quarter.")
    if graded:
        _demand_quarter(inches)
    return inches


def _demand_quarter(inches: float) -> None:
    quarters = inches * 4
    if inches < 1 or abs(quarters - math.floor(quarters + 0.5)) < 1e-6:
        return
    raise Unreadable(
        f"{size_words(inches)} is no quarter: graded lumber counts by what it was before "
        f"surfacing, {int(math.ceil(quarters))}/4 if it was surfaced from that."
    )


def thickness_words(inches: float) -> str:
    """Return a thickness as the tally says it.

    >>> thickness_words(1.25), thickness_words(2), thickness_words(0.5)
    ('5/4', '8/4', '1/2')
    """
    quarters = inches * 4
    if inches < 1 or quarters != int(quarters):
        return size_words(inches)
    return f"{int(quarters)}/4"
