"""A plan in inches: every way to cut a sheet with its parts, offcuts and cuts in order."""

from ...guillotine.steps import Piece, Steps

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...guillotine.tree import SheetPlan
    from ...lengths import Scale
    from .order import SheetOrder

    Box = tuple[float, float, float, float]

RUNS = ("across the sheet", "along the sheet")
"""How a cut runs on axis 0, measured along the sheet, and on axis 1."""


class SheetLayout:
    """One way to cut a sheet, and how many are cut so.

    Attributes
    ----------
    first, times : int
        Sheets are numbered from 1; these are `times` from `first` on.
    parts : list of pair
        The row of each part, and its piece.
    offcuts, waste : list of Piece
        Rests worth keeping, and those that are not.
    """

    def __init__(self, order: "SheetOrder", kind: int, steps: Steps) -> None:
        self.order = order
        self.sheet = order.sheets[min(kind, len(order.sheets) - 1)]
        self.kind = kind
        self.steps = steps
        self.first = 1
        self.times = 1
        self.parts: list[tuple[int, Piece]] = []
        self.row_of: dict[int, int] = {}
        solid = [rest for rest in steps.rests if self.sides(rest)[0] * self.sides(rest)[1] > 0]
        self.offcuts = [rest for rest in solid if min(self.sides(rest)) >= order.keep]
        self.waste = [rest for rest in solid if min(self.sides(rest)) < order.keep]

    @property
    def last(self) -> int:
        """Return the number of the last sheet cut so."""
        return self.first + self.times - 1

    def numbers(self) -> str:
        """Return which sheets are cut so: "3", or "3 to 5"."""
        return str(self.first) if self.times == 1 else f"{self.first} to {self.last}"

    def sides(self, piece: Piece) -> "tuple[float, float]":
        """Return a piece's real sides along and across the sheet, in inches; none below 0."""
        kerf = self.order.kerf_units
        return (
            self.order.inches(max(0, piece.wide - kerf)),
            self.order.inches(max(0, piece.high - kerf)),
        )

    def box(self, piece: Piece) -> "Box":
        """Return where a piece lies on the sheet: left, top, right, bottom; inches."""
        wide, high = self.sides(piece)
        left = self.order.trim + self.order.inches(piece.x)
        top = self.order.trim + self.order.inches(piece.y)
        return (left, top, left + wide, top + high)

    def pattern(self) -> "list[tuple[int, int, int, int, int]]":
        """Return what tells sheets that are cut alike: kind, and each part where it lies."""
        placed = [(self.kind, p.part or 0, p.x, p.y, p.wide) for p in self.steps.parts]
        return sorted(placed)

    def take_rows(self, left: "list[list[int]]") -> None:
        """Give each part its row; what is taken is removed from `left`, row by row."""
        for piece in self.steps.parts:
            rows = self.order.rows_of[piece.part or 0]
            counts = left[piece.part or 0]
            at = next(index for index, count in enumerate(counts) if count)
            counts[at] -= 1
            self.parts.append((rows[at], piece))
            self.row_of[id(piece)] = rows[at]


class CutList:
    """The cuts of one layout in words; sizes are said once and kept, since they come again."""

    def __init__(self, layout: SheetLayout, scale: "Scale", said: "dict[float, str]") -> None:
        self.layout = layout
        self.scale = scale
        self.said = said
        steps = layout.steps.steps
        self.names = {id(steps[0].piece): "sheet"} if steps else {}

    def rows(self) -> "list[list[str]]":
        """Return of each cut: number, piece, way, measure, what comes off, what is left."""
        layout, order, rows = self.layout, self.layout.order, []
        if order.trim:
            left = "sheet " + self._size(layout.sheet.usable)
            rows.append(["trim", "sheet", "every edge", self._say(order.trim), left, ""])
        for index, step in enumerate(layout.steps.steps):
            number = str(index + 1)
            taken = self.names[id(step.piece)]
            self.names[id(step.first)] = number + "a"
            self.names[id(step.second)] = number + "b"
            at = self._say(order.inches(step.at - order.kerf_units))
            off, left = self._called(step.first), self._called(step.second)
            rows.append([number, taken, RUNS[step.axis], at, off, left])
        return rows

    def _say(self, inches: float) -> str:
        if inches not in self.said:
            self.said[inches] = self.scale.length(inches)
        return self.said[inches]

    def _size(self, sides: "tuple[float, float]") -> str:
        return f"{self._say(sides[0])} x {self._say(sides[1])}"

    def _called(self, piece: Piece) -> str:
        """Return a piece's name and size."""
        layout, sides = self.layout, self.layout.sides(piece)
        row = layout.row_of.get(id(piece))
        if row is not None:
            return f"part {layout.order.parts[row].tag}: {self._size(sides)}"
        if not piece.is_rest:
            return f"{self.names[id(piece)]}: {self._size(sides)}"
        if not sides[0] or not sides[1]:
            return "dust"
        kept = min(sides) >= layout.order.keep
        return ("offcut: " if kept else "waste: ") + self._size(sides)


def layouts_of(order: "SheetOrder", plan: "SheetPlan") -> "list[SheetLayout]":
    """Return the ways to cut of a plan, the fullest first, sheets cut alike as one.

    Of a spare sheet, which is not there, only the parts mean anything.
    """
    rooms = order.problem.rooms
    single = [SheetLayout(order, kind, Steps(root, rooms[kind])) for kind, root in plan.sheets]
    ranked = sorted([(_emptiness(one), one.pattern(), at) for at, one in enumerate(single)])
    left = [[order.parts[row].count for row in rows] for rows in order.rows_of]
    layouts: list[SheetLayout] = []
    before: list[tuple[int, int, int, int, int]] = []
    for _, pattern, at in ranked:
        layout = single[at]
        layout.take_rows(left)
        alike = layouts and before == pattern and _rows(layouts[-1]) == _rows(layout)
        if alike:
            layouts[-1].times += 1
        else:
            layouts.append(layout)
        before = pattern
    number = 1
    for layout in layouts:
        layout.first = number
        number += layout.times
    return layouts


def _rows(layout: SheetLayout) -> "list[int]":
    return sorted([row for row, _ in layout.parts])


def _emptiness(layout: SheetLayout) -> int:
    used = sum([piece.wide * piece.high for piece in layout.steps.parts])
    wide, high = layout.order.problem.rooms[layout.kind]
    return wide * high - used
