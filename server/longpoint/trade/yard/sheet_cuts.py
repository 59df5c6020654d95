"""A plan in inches: every sheet with its parts, offcuts and cuts in order, each piece named."""

from ..guillotine.steps import Piece, Steps

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..guillotine.tree import Plan
    from ..lengths import Scale
    from .sheet_stock import Order, Stock

    Box = tuple[float, float, float, float]

RUNS = ("across the sheet", "along the sheet")
"""How a cut runs on axis 0, measured along the sheet, and on axis 1."""


class CutSheet:
    """One sheet cut up, and how many are cut alike.

    Attributes
    ----------
    parts : list of pair
        The row of each part, and its piece.
    offcuts, waste : list of Piece
        Rests worth keeping, and those that are not.
    names : dict
        Of each piece by its `id`, as the cut list calls it.
    """

    def __init__(self, order: "Order", kind: int, steps: Steps) -> None:
        self.order = order
        self.stock: Stock = order.stock[min(kind, len(order.stock) - 1)]
        self.kind = kind
        self.steps = steps
        self.times = 1
        self.numbers: list[int] = []
        self.parts: list[tuple[int, Piece]] = []
        solid = [rest for rest in steps.rests if self.sides(rest)[0] * self.sides(rest)[1] > 0]
        self.offcuts = [rest for rest in solid if min(self.sides(rest)) >= order.keep]
        self.waste = [rest for rest in solid if min(self.sides(rest)) < order.keep]

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

    def take_rows(self, rows_of: "list[list[int]]") -> None:
        """Give each part its row; those taken are removed from `rows_of`."""
        for piece in self.steps.parts:
            self.parts.append((rows_of[piece.part or 0].pop(0), piece))

    def row_of(self, piece: Piece) -> "int | None":
        """Return the row of a piece that is a finished part."""
        found = [row for row, part in self.parts if part is piece]
        return found[0] if found else None

    def cut_rows(self, scale: "Scale") -> "list[list[str]]":
        """Return the cut list: number, piece, way, measure, what comes off, what is left."""
        rows, names = [], {id(self.steps.steps[0].piece): "sheet"} if self.steps.steps else {}
        if self.order.trim:
            trim, (long, wide) = scale.length(self.order.trim), self.stock.usable
            left = f"sheet {scale.length(long)} x {scale.length(wide)}"
            rows.append(["trim", "sheet", "every edge", trim, left, ""])
        for index, step in enumerate(self.steps.steps):
            number = str(index + 1)
            taken = names[id(step.piece)]
            names[id(step.first)] = number + "a"
            names[id(step.second)] = number + "b"
            at = self.order.inches(step.at - self.order.kerf_units)
            way = RUNS[step.axis]
            off, left = (
                self._called(step.first, names, scale),
                self._called(step.second, names, scale),
            )
            rows.append([number, taken, way, scale.length(at), off, left])
        return rows

    def _called(self, piece: Piece, names: "dict[int, str]", scale: "Scale") -> str:
        """Return a piece's name and size."""
        long, wide = self.sides(piece)
        size = f"{scale.length(long)} x {scale.length(wide)}"
        row = self.row_of(piece)
        if row is not None:
            return f"part {self.order.parts[row].tag}: {size}"
        if not piece.is_rest:
            return f"{names[id(piece)]}: {size}"
        if not long or not wide:
            return "dust"
        return ("offcut: " if piece in self.offcuts else "waste: ") + size


def cut_sheets(order: "Order", plan: "Plan") -> "list[CutSheet]":
    """Return the sheets of a plan, the fullest first, those cut alike as one.

    Of a spare sheet, which is not there, only the parts mean anything.
    """
    problem = order.problem
    rows_of = [list(rows) for rows in order.rows_of]
    sheets = [CutSheet(order, kind, Steps(root, problem.rooms[kind])) for kind, root in plan.sheets]
    ranked = sorted([(_emptiness(sheet), sheet.pattern(), at) for at, sheet in enumerate(sheets)])
    cut: list[CutSheet] = []
    for _, pattern, at in ranked:
        sheet = sheets[at]
        before = cut[-1] if cut else None
        sheet.take_rows(rows_of)
        rows = sorted([row for row, _ in sheet.parts])
        if before and before.pattern() == pattern and sorted([r for r, _ in before.parts]) == rows:
            before.times += 1
        else:
            cut.append(sheet)
    number = 1
    for sheet in cut:
        sheet.numbers = list(range(number, number + sheet.times))
        number += sheet.times
    return cut


def _emptiness(sheet: CutSheet) -> int:
    used = sum([piece.wide * piece.high for piece in sheet.steps.parts])
    wide, high = sheet.order.problem.rooms[sheet.kind]
    return wide * high - used
