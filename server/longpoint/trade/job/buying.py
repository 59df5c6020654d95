"""The buy list: a line for each stock, each thing, with what it costs and how that is known.

Sticks and sheets go through the cutting plans, offcuts on hand first; boards are counted in board
feet with their waste.
"""

from ..lengths import Scale
from ..lumber.board_feet import board_feet
from ..refusal import Refusal
from ..shelf import tool_named
from .pieces import Cut
from .stock_sizes import Sizes
from .ticks import Ticks

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

MOST_STEPS = 200
"""Better plans that are waited for, a few milliseconds each."""

MOST_ROWS = 300


def buy_lines(
    document: "dict[str, Any]", cuts: "list[Cut]", ticks: Ticks, scale: Scale
) -> "Iterator[list[dict[str, Any]]]":
    """Give the lines of the buy list, one more each time or the last one better."""
    sizes = Sizes(str(document.get("units") or "in"))
    lines: list[dict[str, Any]] = []
    for stock in document.get("stock") or []:
        mine = [cut for cut in cuts if cut.stock == stock["id"]]
        for line in _line(stock, _with_spoiled(mine, ticks), sizes, scale):
            yield lines + [_ticked(line, stock["id"], ticks)]
        lines.append(_ticked(line, stock["id"], ticks))
    for thing in document.get("things") or []:
        lines.append(_ticked(_thing(thing), thing["id"], ticks))
    yield lines


def _with_spoiled(cuts: "list[Cut]", ticks: Ticks) -> "list[Cut]":
    """Return the pieces to buy for: a spoiled one is needed once more."""
    return [cut for cut in cuts for _ in range(1 + ticks.spoiled(cut.of))]


def _ticked(line: "dict[str, Any]", of: str, ticks: Ticks) -> "dict[str, Any]":
    line["of"], line["state"], line["paid"] = of, ticks.state(of), ticks.paid(of)
    return line


def _line(
    stock: "dict[str, Any]", cuts: "list[Cut]", sizes: Sizes, scale: Scale
) -> "Iterator[dict[str, Any]]":
    sold = stock["sold"]
    if not cuts:
        yield _plain(stock, 0, "")
    elif sold == "board":
        yield _boards(stock, cuts, sizes)
    elif sold == "stick":
        yield from _sticks(stock, cuts, sizes, scale)
    elif sold == "sheet":
        yield from _sheets(stock, cuts, sizes, scale)
    else:
        yield _plain(stock, len(cuts), "each" if sold == "each" else "")


def _plain(stock: "dict[str, Any]", amount: float, unit: str) -> "dict[str, Any]":
    price = stock.get("price")
    return {
        "stock": stock["id"],
        "title": stock["title"],
        "sold": stock["sold"],
        "amount": amount,
        "unit": unit,
        "cost": None if price is None else price * amount,
        "proved": None,
        "words": "",
        "layout": [],
    }


def _thing(thing: "dict[str, Any]") -> "dict[str, Any]":
    count = thing.get("count") or 0
    line = _plain({"id": thing["id"], "title": thing["title"], "sold": "each"}, count, "each")
    price = thing.get("price")
    line["cost"] = None if price is None else price * count
    return line


def _boards(stock: "dict[str, Any]", cuts: "list[Cut]", sizes: Sizes) -> "dict[str, Any]":
    """Count boards: each piece by its rough size, the waste on top."""
    rough = [sizes.rough(cut.piece, stock) for cut in cuts]
    net = sum([board_feet(*size) for size in rough])
    waste = float(stock.get("waste") or 0)
    line = _plain(stock, net * (1 + waste / 100), "bd ft")
    line["net"], line["waste"] = net, waste
    line["longest"] = max([length for _, _, length in rough])
    line["widest"] = max([width for _, width, _ in rough])
    if sizes.read(stock.get("thickness")) <= 0:
        line["words"] = "Say how thick the rough boards are: counted by the parts until then."
    return line


def _sticks(
    stock: "dict[str, Any]", cuts: "list[Cut]", sizes: Sizes, scale: Scale
) -> "Iterator[dict[str, Any]]":
    rows: list[dict[str, Any]] = []
    for cut in cuts:
        _count(rows, {"length": cut.piece["length"], "tag": cut.tag})
    hand = [(sizes.read(each.get("length")), each) for each in stock.get("on_hand") or []]
    sold = [(sizes.read(each.get("length")), each) for each in stock.get("lengths") or []]
    sticks = [
        {"length": length, "count": each.get("count") or 1, "price": 0.0}
        for length, each in hand
        if length > 0
    ] + [
        _priced({"length": length}, each.get("price"), length)
        for length, each in sold
        if length > 0
    ]
    inputs = {"pieces": rows, "sticks": sticks}
    _allow(inputs, "kerf", stock.get("kerf"), sizes)
    _allow(inputs, "end_trim", stock.get("trim"), sizes)
    has_prices = bool([each for _, each in sold if each.get("price") is not None])
    for answer in _plans("stick-plan", inputs, scale, "stick", len(rows)):
        yield _planned(stock, answer, "sticks", "sticks_used", len(hand), has_prices)


def _sheets(
    stock: "dict[str, Any]", cuts: "list[Cut]", sizes: Sizes, scale: Scale
) -> "Iterator[dict[str, Any]]":
    rows: list[dict[str, Any]] = []
    for cut in cuts:
        _count(rows, {
            "length": cut.piece["length"], "width": cut.piece["width"] or 0, "name": cut.tag
        })  # fmt: skip
    offered = [("on_hand", 0.0), ("sheets", None)]
    sheets = []
    for name, price in offered:
        for each in stock.get(name) or []:
            length, width = sizes.read(each.get("length")), sizes.read(each.get("width"))
            if length > 0 and width > 0:
                sheet: dict[str, Any] = {"length": length, "width": width}
                if name == "on_hand":
                    sheet["count"] = each.get("count") or 1
                sheets.append(_priced(sheet, each.get("price", price), length * width))
    inputs = {"parts": rows, "sheets": sheets}
    _allow(inputs, "kerf", stock.get("kerf"), sizes)
    _allow(inputs, "edge_trim", stock.get("trim"), sizes)
    prices = [each.get("price") for each in stock.get("sheets") or []]
    has_prices = bool([price for price in prices if price is not None])
    hand = len(stock.get("on_hand") or [])
    for answer in _plans("sheet-plan", inputs, scale, "sheet", len(rows)):
        yield _planned(stock, answer, "sheets", "sheets_used", hand, has_prices)


def _count(rows: "list[dict[str, Any]]", row: "dict[str, Any]") -> None:
    """Add a piece to its row, or begin one."""
    for known in rows:
        if not [name for name in row if known[name] != row[name]]:
            known["count"] += 1
            return
    row["count"] = 1
    rows.append(row)


def _priced(stick: "dict[str, Any]", price: "float | None", size: float) -> "dict[str, Any]":
    """Return a stick with its price; without one its size stands in, so that little is bought."""
    stick["price"] = size if price is None else price
    return stick


def _allow(inputs: "dict[str, Any]", name: str, raw: object, sizes: Sizes) -> None:
    if raw not in (None, ""):
        inputs[name] = sizes.read(raw)


def _plans(
    slug: str, inputs: "dict[str, Any]", scale: Scale, word: str, rows: int
) -> "Iterator[dict[str, Any]]":
    """Give ever better plans, or one that says in words why there is none."""
    if rows > MOST_ROWS:
        yield {"refused": f"{rows} different pieces: {MOST_ROWS} are planned at a time."}
        return
    tool = tool_named(slug)
    try:
        last: dict[str, Any] = {}
        for step, answer in enumerate(tool.answers(tool.read(inputs, scale), scale)):
            last = answer if "figures" in answer else last
            yield last
            if step >= MOST_STEPS:
                return
    except Refusal as refusal:
        yield {"refused": _plainly(refusal, word)}


def _plainly(refusal: Refusal, word: str) -> str:
    missing = [error for error in refusal.errors if error.missing]
    if missing:
        return f"Say which {word} sizes the yard sells, then it is planned."
    return refusal.errors[0].message


def _planned(
    stock: "dict[str, Any]",
    answer: "dict[str, Any]",
    unit: str,
    used: str,
    hand: int,
    has_prices: bool,
) -> "dict[str, Any]":
    line = _plain(stock, 0, unit)
    if "refused" in answer:
        line["words"] = answer["refused"]
        return line
    figures = {figure["name"]: figure["value"] for figure in answer["figures"]}
    line["amount"] = figures[used]
    line["cost"] = figures.get("cost") if has_prices else None
    line["proved"] = figures.get("proved") == "yes"
    line["words"] = answer["verdict"]
    line["layout"] = answer["tables"][:1]
    if hand:
        line["words"] = line["words"] or "offcuts on hand first"
    return line
