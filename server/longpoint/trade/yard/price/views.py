"""The price as a bar: what of it pays for what."""

from ...lengths import show_money
from ...money.exact import dollars
from ...tool import Drawing

_LONG, _HIGH, _PITCH = 10.0, 1.0, 1.5
_NAMES = ("Direct cost", "Overhead", "Contingency", "Profit", "Tax")
_ROLES = ("stock", "panel", "panel", "clearance", "waste")


def bar(parts: "list[int]", price: int) -> Drawing:
    """Draw the parts of a price, in cents, each beginning where the one above it ends.

    The last one is the tax that it holds; it is only said where there is one.
    """
    said = parts if parts[-1] else parts[:-1]
    words = [f"{_NAMES[at]} {show_money(dollars(part))}" for at, part in enumerate(said)]
    view = Drawing("The price", ", ".join(words) + f": {show_money(dollars(price))} in all.")
    begin, row = 0, 0
    for at, part in enumerate(said):
        if part == 0:
            continue
        top, end = row * _PITCH, begin + part
        view.box(_ROLES[at], _LONG * begin / price, top, _LONG * end / price, top + _HIGH)
        view.text((_LONG * 0.02, top + _HIGH / 2), words[at], anchor="start")
        begin, row = end, row + 1
    return view
