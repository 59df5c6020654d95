"""A sheet plan drawn, and its tables: one drawing and one cut list for each way a sheet is cut.

As many ways are drawn as a phone shows well; the cut lists have them all.
"""

from ...tables.weights import panel_density
from ...tool import Answer, Drawing
from .layouts import CutList

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ...lengths import Scale
    from .layouts import SheetLayout
    from .order import SheetOrder

MOST_NUMBERED = 24
"""Cuts whose numbers still find room in a drawing; the cut list has them all."""
MOST_SHAPES = 400
"""Shapes in all drawings together; the first is drawn whatever it holds."""
_CUBIC_INCHES = 1728.0  # In a cubic foot.


def sheet_title(layout: "SheetLayout") -> str:
    """Return which sheets are cut this way: "Sheet 1", or "Sheets 1 to 3, cut alike"."""
    if layout.times == 1:
        return f"Sheet {layout.first}"
    return f"Sheets {layout.numbers()}, cut alike"


def draw(answer: Answer, layouts: "list[SheetLayout]") -> int:
    """Draw the ways to cut a sheet; return how many are drawn."""
    shapes, number = 0, 0
    for layout in layouts:
        shapes += 3 + 2 * len(layout.parts) + len(layout.offcuts) + 2 * len(layout.steps.steps)
        if number and shapes > MOST_SHAPES:
            break
        number += 1
    answer.draw(lambda: [_view(layout, answer.scale) for layout in layouts[:number]])
    return number


def _view(layout: "SheetLayout", scale: "Scale") -> Drawing:
    """Draw a sheet, its grain from left to right: parts with their numbers, offcuts, cuts."""
    sheet = layout.sheet
    view = Drawing(
        sheet_title(layout),
        f"{scale.length(sheet.length)} x {scale.length(sheet.width)}: {len(layout.parts)} parts, "
        f"{len(layout.steps.steps)} cuts, {len(layout.offcuts)} offcuts.",
    )
    view.box("waste", 0, 0, sheet.length, sheet.width)
    for rest in layout.offcuts:
        view.box("stock", *layout.box(rest))
    for _, piece in layout.parts:
        view.box("panel", *layout.box(piece))
    _cut_lines(view, layout)
    for row, piece in layout.parts:
        left, top, right, bottom = layout.box(piece)
        view.tag(((left + right) / 2, (top + bottom) / 2), layout.order.parts[row].tag)
    view.dimension((0, 0), (sheet.length, 0), scale.length(sheet.length))
    view.dimension((0, sheet.width), (0, 0), scale.length(sheet.width))
    return view


def _cut_lines(view: Drawing, layout: "SheetLayout") -> None:
    order, steps = layout.order, layout.steps.steps
    for index, step in enumerate(steps):
        left, top, right, bottom = layout.box(step.piece)
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


def add_tables(
    answer: Answer, order: "SheetOrder", layouts: "list[SheetLayout]", pounds: "list[float]"
) -> None:
    """Add the parts, the offcuts and a cut list for every way a sheet is cut.

    Parameters
    ----------
    pounds : list of float
        What a part of each row weighs; empty where that is not known.
    """
    _sheets_table(answer, order, layouts)
    _parts_table(answer, order, layouts, pounds)
    _offcuts_table(answer, layouts)
    columns = ["Cut", "Take", "Runs", "At", "Comes off", "Is left"]
    said: dict[float, str] = {}
    for layout in layouts:
        rows = CutList(layout, answer.scale, said).rows()
        answer.table(sheet_title(layout) + ": cuts", columns, rows)


def sheets_of_rows(order: "SheetOrder", layouts: "list[SheetLayout]") -> "list[str]":
    """Return for each row of parts the numbers of its sheets."""
    where: list[list[str]] = [[] for _ in order.parts]
    for layout in layouts:
        for row in sorted({row for row, _ in layout.parts}):
            where[row].append(layout.numbers())
    return [", ".join(numbers) for numbers in where]


def _sheets_table(answer: Answer, order: "SheetOrder", layouts: "list[SheetLayout]") -> None:
    rows, say = [], answer.scale.length
    for kind, sheet in enumerate(order.sheets):
        used = sum([layout.times for layout in layouts if layout.kind == kind])
        there = "as needed" if sheet.count is None else str(sheet.count)
        rows.append([f"{say(sheet.length)} x {say(sheet.width)}", str(used), there])
    answer.table("Sheets to take", ["Length x width", "Take", "There are"], rows)


def _parts_table(
    answer: Answer, order: "SheetOrder", layouts: "list[SheetLayout]", pounds: "list[float]"
) -> None:
    where = sheets_of_rows(order, layouts)
    columns = ["", "Part", "Count", "Length x width", "On sheet"]
    banded = sum(order.parts[at].banded for at in range(len(order.parts))) > 0
    columns += (["Edge band each"] if banded else []) + (["Weight each"] if pounds else [])
    rows, say = [], answer.scale.length
    for at, part in enumerate(order.parts):
        size = f"{say(part.length)} x {say(part.width)}"
        row = [part.tag, part.name, str(part.count), size, where[at]]
        if banded:
            row.append(say(part.banded) if part.banded else "")
        if pounds:
            row.append(answer.weight_words(pounds[at])[0])
        rows.append(row)
    answer.table("The parts", columns, rows)


def weights(order: "SheetOrder", made_of: str, thickness: float) -> "list[float]":
    """Return what one part of each row weighs, in pounds."""
    per_area = panel_density(made_of) * thickness / _CUBIC_INCHES
    return [part.area * per_area for part in order.parts]


def sheet_weight(order: "SheetOrder", made_of: str, thickness: float) -> float:
    """Return what the largest sheet weighs, in pounds."""
    largest = max([sheet.area for sheet in order.sheets])
    return largest * thickness * panel_density(made_of) / _CUBIC_INCHES


def _offcuts_table(answer: Answer, layouts: "list[SheetLayout]") -> None:
    say = answer.scale.length
    found = []
    for at, layout in enumerate(layouts):
        for index, rest in enumerate(layout.offcuts):
            long, wide = layout.sides(rest)
            found.append((-long * wide, at, index, f"{say(long)} x {say(wide)}"))
    rows = [
        [size, str(layouts[at].times), layouts[at].numbers()] for _, at, _, size in sorted(found)
    ]
    if rows:
        answer.table("Offcuts to keep", ["Length x width", "Count", "From sheet"], rows)
