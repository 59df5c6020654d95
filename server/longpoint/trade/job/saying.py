"""The sizes and amounts of the sheets in words: what is bought, on hand, and first cut rough."""

from ..lengths import Scale, show_money, show_number
from .stock_sizes import Sizes

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

_ONE = {"sticks": "stick", "sheets": "sheet", "cans": "can"}


def said_line(line: "dict[str, Any]", stock: "dict[str, Any]", sizes: Sizes, scale: Scale) -> None:
    """Add to a line of the buy list its amount, its cost and its sizes as texts."""
    line["amount_text"] = amount_text(line["amount"], line["unit"])
    line["cost_text"] = "" if line["cost"] is None else show_money(line["cost"])
    line["on_hand"] = [_hand(each, sizes, scale) for each in stock.get("on_hand") or []]
    if line.get("net") is not None:
        line["words"] = line["words"] or _boards(line, scale)


def amount_text(amount: float, unit: str) -> str:
    """Return an amount with its unit; things counted one by one need none.

    >>> amount_text(22.44, "bf"), amount_text(1, "sticks"), amount_text(8, "each")
    ('22.4 bf', '1 stick', '8')
    """
    number = show_number(amount, 1)
    if unit in ("", "each"):
        return number
    return number + " " + (_ONE.get(unit, unit) if amount == 1 else unit)


def _boards(line: "dict[str, Any]", scale: Scale) -> str:
    longest, widest = scale.length(line["longest"]), scale.length(line["widest"])
    net, waste = show_number(line["net"], 1), show_number(line["waste"], 1)
    return f"Longest {longest}, widest {widest}; {net} and {waste} % waste"


def _hand(each: "dict[str, Any]", sizes: Sizes, scale: Scale) -> str:
    given = [sizes.read(each.get(name)) for name in ("length", "width")]
    size = " x ".join([scale.length(length) for length in given if length > 0])
    count, where = each.get("count") or 1, each.get("where") or ""
    return f"{show_number(count)} of {size}" + (f", {where}" if where else "")


def rough_text(piece: "dict[str, Any]", stock: "dict[str, Any]", sizes: Sizes, scale: Scale) -> str:
    """Return the size a piece is first cut to; empty where nothing is left on."""
    more_long, more_wide = (
        sizes.read(stock.get("extra_length")),
        sizes.read(stock.get("extra_width")),
    )
    if not more_long and not more_wide:
        return ""
    long = scale.length(piece["length"] + more_long)
    if piece["width"] is None:
        return long
    return long + " x " + scale.length(piece["width"] + more_wide)


def again_words(
    piece: "dict[str, Any]", stock: "dict[str, Any]", sizes: Sizes, scale: Scale
) -> str:
    """Return the smallest offcut on hand that a spoiled piece comes out of; empty for none."""
    _, wide, long = sizes.rough(piece, stock)
    is_stick = stock.get("sold") == "stick"
    found = []
    for at, each in enumerate(stock.get("on_hand") or []):
        length, width = sizes.read(each.get("length")), sizes.read(each.get("width"))
        if length >= long and (is_stick or width >= wide):
            found.append((length * (1 if is_stick else width), at, each))
    if not found:
        return ""
    smallest = min([(size, at) for size, at, _ in found])
    chosen = next(each for size, at, each in found if (size, at) == smallest)
    return "On hand: " + _hand(chosen, sizes, scale)
