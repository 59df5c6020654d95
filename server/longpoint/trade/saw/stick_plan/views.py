"""How a stick plan is shown: ways to cut a stick drawn to scale, and their cuts in tables.

As many ways are drawn and marked cut by cut as a phone shows well; the others stand in one list.
"""

from ...tool import Answer, Drawing
from .layouts import HAIR, Layout
from .order import StickOrder

PER_VIEW = 5
MOST_SHAPES = 300
"""Shapes in all drawings together."""
MOST_CUTS = 120
"""Cuts marked one by one, in all tables together."""
MOST_TAGGED = 30
"""Pieces of a stick whose balloons still find room; of more, a run of one row is drawn as one."""
_HIGH = 1 / 13  # Of the longest stick: room for a balloon on a phone.
_PITCH = 2.0


def draw(answer: Answer, layouts: "list[Layout]") -> int:
    """Draw the ways to cut a stick below each other, some to a view; return how many are drawn."""
    shapes, number = 0, 0
    for layout in layouts:
        shapes += 4 + 3 * _boxes(layout)
        if number and shapes > MOST_SHAPES:
            break
        number += 1
    firsts = range(0, number, PER_VIEW)
    answer.draw(lambda: [_view(answer, layouts[at : min(at + PER_VIEW, number)]) for at in firsts])
    return number


def _boxes(layout: Layout) -> int:
    return layout.pieces if layout.pieces <= MOST_TAGGED else len(layout.runs)


def _view(answer: Answer, layouts: "list[Layout]") -> Drawing:
    longest = max([layout.stick.length for layout in layouts])
    first, last = layouts[0].first, layouts[-1].last
    names = f"Stick {first}" if first == last else f"Sticks {first} to {last}"
    pieces = sum([layout.pieces * layout.times for layout in layouts])
    view = Drawing(
        names,
        f"{names} with {pieces} pieces, cut from the left; the longest stick is "
        f"{answer.scale.length(longest)}.",
    )
    high = longest * _HIGH
    for at, layout in enumerate(layouts):
        _stick(view, answer, layout, at * _PITCH * high, high)
    return view


def _stick(view: Drawing, answer: Answer, layout: Layout, top: float, high: float) -> None:
    order, length, low = layout.order, layout.stick.length, top + high
    view.box("waste", 0, top, length, low)
    if layout.pieces <= MOST_TAGGED:
        _draw_pieces(view, layout, top, low)
    else:
        _draw_runs(view, layout, top, low)
    if layout.kept:
        start = length - order.trim - layout.offcut
        view.box("panel", start, top, start + layout.offcut, low)
    numbers = f"{layout.first}" if layout.times == 1 else f"{layout.first} to {layout.last}"
    words = f"{numbers}: {answer.scale.length(length)}"
    if layout.offcut > 0:
        left = answer.scale.length(layout.offcut)
        words += f", {left} left" + (" to keep" if layout.kept else "")
    view.text((0, top - high * 0.48), words, anchor="start")


def _draw_pieces(view: Drawing, layout: Layout, top: float, low: float) -> None:
    places = layout.places()
    reach = (low - top) / 8
    for index, (row, start, end) in enumerate(places):
        view.box("stock", start, top, end, low)
        if index < len(places) - 1 or layout.last_cut:
            view.line("cut", (end, top - reach), (end, low + reach))
        view.tag(((start + end) / 2, (top + low) / 2), layout.order.rows[row].tag)


def _draw_runs(view: Drawing, layout: Layout, top: float, low: float) -> None:
    """Draw pieces of one row that lie side by side as one, with their number."""
    order, at = layout.order, layout.order.trim
    for row, number in layout.runs:
        end = at + number * (order.rows[row].length + order.kerf) - order.kerf
        view.box("stock", at, top, end, low)
        if len(layout.runs) <= MOST_TAGGED:
            tag = order.rows[row].tag
            view.tag(((at + end) / 2, (top + low) / 2), f"{tag} x {number}" if number > 1 else tag)
        at = end + order.kerf


def add_tables(answer: Answer, order: StickOrder, layouts: "list[Layout]") -> int:
    """Add what sticks to take and how each is cut; return how many ways are marked cut by cut."""
    _stock_table(answer, order, layouts)
    cuts, number = 0, 0
    for layout in layouts:
        cuts += layout.pieces
        if cuts > MOST_CUTS:
            break
        number += 1
        length = answer.scale.length(layout.stick.length)
        columns = ["Cut", "Piece", "Length", "Mark at", "Left"]
        answer.table(f"{_alike(layout)}, {length}", columns, _cuts(answer, layout))
    if number < len(layouts):
        _short_table(answer, layouts[number:], "The other sticks" if number else "The sticks")
    return number


def _alike(layout: Layout) -> str:
    return layout.sticks() + (", cut alike" if layout.times > 1 else "")


def _stock_table(answer: Answer, order: StickOrder, layouts: "list[Layout]") -> None:
    rows = []
    for kind, stick in enumerate(order.sticks):
        used = sum([layout.times for layout in layouts if layout.kind == kind])
        there = "as needed" if stick.count is None else str(stick.count)
        rows.append([answer.scale.length(stick.length), str(used), there])
    answer.table("Sticks to take", ["Length", "Take", "There are"], rows)


def _short_table(answer: Answer, layouts: "list[Layout]", name: str) -> None:
    """Add one line for each way: its pieces in the order they are cut, and what is left."""
    rows = []
    for layout in layouts:
        pieces = []
        for row, number in layout.runs:
            tag = layout.order.rows[row].tag
            pieces.append(f"{tag} x {number}" if number > 1 else tag)
        sticks = str(layout.first) if layout.times == 1 else f"{layout.first} to {layout.last}"
        length, left = layout.stick.length, layout.offcut
        rows.append(
            [sticks, answer.scale.length(length), ", ".join(pieces), answer.scale.length(left)]
        )
    answer.table(name, ["Stick", "Length", "Pieces, in the order they are cut", "Left"], rows)


def _cuts(answer: Answer, layout: Layout) -> "list[list[str]]":
    """Return each cut of a stick: its number, the piece it frees, where to mark, what is left."""
    scale, order, rows = answer.scale, layout.order, []
    good = layout.stick.length - order.trim
    if order.trim:
        trim = scale.length(order.trim)
        rows.append(["1", "end", trim, trim, scale.length(good - order.trim)])
    first, places = len(rows) + 1, layout.places()
    for index, (row, _, end) in enumerate(places):
        is_cut = index < len(places) - 1 or layout.last_cut
        left = good - end - order.kerf
        rows.append(
            [
                str(first + index) if is_cut else "as it is",
                order.rows[row].tag,
                scale.length(order.rows[row].length),
                scale.length(end),
                scale.length(left if left > HAIR else 0.0),
            ]
        )
    return rows
