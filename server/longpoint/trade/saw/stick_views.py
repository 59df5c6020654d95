"""How a stick plan is shown: the sticks drawn to scale, and every cut in a table."""

from ..tool import Answer, Drawing
from .stick_cuts import CutStick
from .stick_stock import Order

PER_VIEW = 5
_HIGH = 1 / 13  # Of the longest stick: room for a balloon on a phone.
_PITCH = 2.0


def draw(answer: Answer, order: Order, sticks: "list[CutStick]") -> None:
    """Draw the sticks below each other, some to a view."""
    for first in range(0, len(sticks), PER_VIEW):
        answer.draw(_view(answer, order, sticks[first : first + PER_VIEW]))


def _view(answer: Answer, order: Order, sticks: "list[CutStick]") -> Drawing:
    longest = max([stick.stick.length for stick in sticks])
    names = f"Stick {sticks[0].number}"
    if len(sticks) > 1:
        names = f"Sticks {sticks[0].number} to {sticks[-1].number}"
    pieces = sum([len(stick.pieces) for stick in sticks])
    view = Drawing(
        names,
        f"{names} with {pieces} pieces, cut from the left; the longest stick is "
        f"{answer.scale.length(longest)}.",
    )
    high = longest * _HIGH
    for at, stick in enumerate(sticks):
        _stick(view, answer, stick, at * _PITCH * high, high)
    return view


def _stick(view: Drawing, answer: Answer, stick: CutStick, top: float, high: float) -> None:
    order, length = stick.order, stick.stick.length
    low = top + high
    view.box("waste", 0, top, length, low)
    for index in range(len(stick.pieces)):
        view.box("stock", stick.starts[index], top, stick.end(index), low)
    if stick.kept:
        start = length - order.trim - stick.offcut
        view.box("panel", start, top, start + stick.offcut, low)
    for index, place in enumerate(stick.pieces):
        if index < len(stick.pieces) - 1 or stick.last_cut:
            view.line("cut", (stick.end(index), top - high / 8), (stick.end(index), low + high / 8))
        middle = (stick.starts[index] + stick.end(index)) / 2
        view.tag((middle, top + high / 2), order.tags[place])
    words = f"{stick.number}: {answer.scale.length(length)}"
    if stick.offcut > 0:
        left = answer.scale.length(stick.offcut)
        words += f", {left} left" + (" to keep" if stick.kept else "")
    view.text((0, top - high * 0.3), words, anchor="start")


def tables(answer: Answer, order: Order, sticks: "list[CutStick]") -> None:
    """Add what sticks to take, and the cuts of each in sequence."""
    _stock_table(answer, order, sticks)
    for stick in sticks:
        rows = _cuts(answer, order, stick)
        name = f"Stick {stick.number}, {answer.scale.length(stick.stick.length)}"
        answer.table(name, ["Cut", "Piece", "Length", "Mark at", "Left"], rows)


def _stock_table(answer: Answer, order: Order, sticks: "list[CutStick]") -> None:
    rows = []
    for kind, stick in enumerate(order.sticks):
        used = len([one for one in sticks if one.kind == kind])
        there = "as needed" if stick.count is None else str(stick.count)
        rows.append([answer.scale.length(stick.length), str(used), there])
    answer.table("Sticks to take", ["Length", "Take", "There are"], rows)


def _cuts(answer: Answer, order: Order, stick: CutStick) -> "list[list[str]]":
    """Return each cut of a stick: its number, the piece it frees, where to mark, what is left."""
    scale, rows = answer.scale, []
    cut = 0
    good = stick.stick.length - order.trim
    if order.trim:
        cut += 1
        trim = scale.length(order.trim)
        rows.append([str(cut), "end", trim, trim, scale.length(good - order.trim)])
    for index, place in enumerate(stick.pieces):
        length, end = order.lengths[place], stick.end(index)
        is_cut = index < len(stick.pieces) - 1 or stick.last_cut
        cut += 1
        rows.append(
            [
                str(cut) if is_cut else "as it is",
                order.tags[place],
                scale.length(length),
                scale.length(end),
                scale.length(max(0.0, good - end - order.kerf)),
            ]
        )
    return rows
