"""A sheet plan drawn, and its tables: one drawing and one cut list for each way a sheet is cut."""

from ..tool import Answer, Drawing

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..lengths import Scale
    from .sheet_cuts import CutSheet

MOST_NUMBERED = 24
"""Cuts whose numbers still find room in a drawing; the cut list has them all."""


def sheet_title(sheet: "CutSheet") -> str:
    """Return which sheets are cut this way: "Sheet 1", or "Sheets 1 to 3, cut alike"."""
    first, last = sheet.numbers[0], sheet.numbers[-1]
    if first == last:
        return f"Sheet {first}"
    return f"Sheets {first} to {last}, cut alike"


def draw(sheet: "CutSheet", scale: "Scale") -> Drawing:
    """Draw a sheet, its grain from left to right: parts with their numbers, offcuts, cuts."""
    stock = sheet.stock
    view = Drawing(
        sheet_title(sheet),
        f"{scale.length(stock.length)} x {scale.length(stock.width)}: {len(sheet.parts)} parts, "
        f"{len(sheet.steps.steps)} cuts, {len(sheet.offcuts)} offcuts.",
    )
    view.box("waste", 0, 0, stock.length, stock.width)
    for rest in sheet.offcuts:
        view.box("stock", *sheet.box(rest))
    for _, piece in sheet.parts:
        view.box("panel", *sheet.box(piece))
    _cut_lines(view, sheet)
    for row, piece in sheet.parts:
        left, top, right, bottom = sheet.box(piece)
        view.tag(((left + right) / 2, (top + bottom) / 2), sheet.order.parts[row].tag)
    view.dimension((0, 0), (stock.length, 0), scale.length(stock.length))
    view.dimension((0, stock.width), (0, 0), scale.length(stock.width))
    return view


def _cut_lines(view: Drawing, sheet: "CutSheet") -> None:
    order, steps = sheet.order, sheet.steps.steps
    for index, step in enumerate(steps):
        left, top, right, bottom = sheet.box(step.piece)
        at = order.inches(step.at) - order.kerf / 2
        if step.axis == 0:
            x = min(left + at, right)
            view.line("cut", (x, top), (x, bottom))
            spot = (x, top + (bottom - top) * 0.25)
        else:
            y = min(top + at, bottom)
            view.line("cut", (left, y), (right, y))
            spot = (left + (right - left) * 0.25, y)
        if len(steps) <= MOST_NUMBERED:
            view.text(spot, str(index + 1), "cut")


def add_tables(answer: Answer, sheets: "list[CutSheet]") -> None:
    """Add the parts, the offcuts and a cut list for every way a sheet is cut."""
    _parts_table(answer, sheets)
    _offcuts_table(answer, sheets)
    columns = ["Cut", "Take", "Runs", "At", "Comes off", "Is left"]
    for sheet in sheets:
        answer.table(sheet_title(sheet) + ": cuts", columns, sheet.cut_rows(answer.scale))


def _parts_table(answer: Answer, sheets: "list[CutSheet]") -> None:
    rows = []
    say = answer.scale.length
    for at, part in enumerate(sheets[0].order.parts):
        lies = [s.numbers for s in sheets if [1 for row, _ in s.parts if row == at]]
        where = ", ".join([str(number) for numbers in lies for number in numbers])
        size = f"{say(part.length)} x {say(part.width)}"
        rows.append([part.tag, part.name, str(part.count), size, where])
    answer.table("The parts", ["", "Part", "Count", "Length x width", "On sheet"], rows)


def _offcuts_table(answer: Answer, sheets: "list[CutSheet]") -> None:
    say = answer.scale.length
    found = []
    for at, sheet in enumerate(sheets):
        for index, rest in enumerate(sheet.offcuts):
            long, wide = sheet.sides(rest)
            found.append((-long * wide, at, index, f"{say(long)} x {say(wide)}"))
    rows = [
        [size, str(sheets[at].times), ", ".join([str(n) for n in sheets[at].numbers])]
        for _, at, _, size in sorted(found)
    ]
    if rows:
        answer.table("Offcuts to keep", ["Length x width", "Count", "From sheet"], rows)
