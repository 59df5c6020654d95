"""The buy list: a line for each stock, each thing, with what it costs and how that is known.

What is on hand is used first and counted apart from what is bought.
"""

from ..lengths import Scale
from .boards import board_line
from .pieces import Cut
from .plans import sheet_plans, stick_plans
from .stock_sizes import Sizes
from .ticks import Ticks

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

    from .working import Done


class Shop:
    """What the buy list is made from beside the pieces.

    Parameters
    ----------
    document : dict
        A checked job.
    done : dict
        Its questions worked out, by id.
    offcuts : list of dict
        The shop's own list of what finished jobs left: `title` and `sold` of the stock, `length`,
        `width`, `count`, `where`.
    """

    def __init__(
        self, document: "dict[str, Any]", done: "dict[str, Done]", offcuts: "list[dict[str, Any]]"
    ) -> None:
        self.document = document
        self.done = done
        self.offcuts = offcuts
        self.stocks = document.get("stock") or []
        self.things = document.get("things") or []
        self.sizes = Sizes(str(document.get("units") or "in"))
        self.counts = {item["id"]: int(item.get("count") or 1) for item in document["items"]}

    def offered(self, stock: "dict[str, Any]", cuts: "list[Cut]") -> "list[int]":
        """Return the places of the shop's offcuts that a piece of this stock comes out of."""
        return [
            at
            for at, each in enumerate(self.offcuts)
            if _is_same(each, stock) and [cut for cut in cuts if self._holds(each, cut, stock)]
        ]

    def _holds(self, each: "dict[str, Any]", cut: Cut, stock: "dict[str, Any]") -> bool:
        length, width = cut.piece["length"], cut.piece["width"] or 0.0
        if stock["sold"] == "board":
            _, width, length = self.sizes.rough(cut.piece, stock)
        wide = self.sizes.read(each.get("width"))
        is_wide = stock["sold"] == "stick" or wide >= width
        return self.sizes.read(each.get("length")) >= length and is_wide


def _is_same(each: "dict[str, Any]", stock: "dict[str, Any]") -> bool:
    titles = [str(one.get("title") or "").strip().lower() for one in (each, stock)]
    return titles[0] == titles[1] and each.get("sold") == stock["sold"]


def buy_lines(
    shop: Shop, cuts: "list[Cut]", ticks: Ticks, scale: Scale
) -> "Iterator[tuple[list[dict[str, Any]], bool] | None]":
    """Give the whole buy list, ever better, and whether it is the last; None while looking on.

    The first has a quick plan of every stock, so that the list is there soon; it is the last where
    all were planned before.
    """
    searches = [_Search(stock, shop, cuts, ticks, scale) for stock in shop.stocks]
    for search in searches:
        while not search.line and not search.is_over:
            if not search.is_better():
                yield None
        # Only another look tells whether there is more to find.
        search.is_better()
    things = [_ticked(_thing(thing, shop), thing["id"], ticks) for thing in shop.things]
    left = [search for search in searches if not search.is_over]
    yield [search.line for search in searches] + things, not left
    for search in left:
        while not search.is_over:
            is_news = search.is_better()
            yield ([each.line for each in searches] + things, False) if is_news else None
    if left:
        yield [search.line for search in searches] + things, True


class _Search:
    """The line of one stock, as good as it was found so far."""

    def __init__(
        self, stock: "dict[str, Any]", shop: Shop, cuts: "list[Cut]", ticks: Ticks, scale: Scale
    ) -> None:
        mine = _with_spoiled([cut for cut in cuts if cut.stock == stock["id"]], ticks)
        self.line: dict[str, Any] = {}
        self.is_over = False
        self.stock = stock
        self.ticks = ticks
        self.offered = shop.offered(stock, mine)
        self.lines = _line(stock, mine, shop.sizes, scale)

    def is_better(self) -> bool:
        """Look on for a moment, and tell whether the line is a better one now."""
        try:
            line = next(self.lines)
        except StopIteration:
            self.is_over = True
            return False
        if line is None:
            return False
        line["offered"] = self.offered
        self.line = _ticked(line, self.stock["id"], self.ticks)
        return True


def _with_spoiled(cuts: "list[Cut]", ticks: Ticks) -> "list[Cut]":
    """Return the pieces to buy for: a spoiled one is needed once more."""
    return [cut for cut in cuts for _ in range(1 + ticks.spoiled(cut.of))]


def _ticked(line: "dict[str, Any]", of: str, ticks: Ticks) -> "dict[str, Any]":
    line["of"], line["state"], line["paid"] = of, ticks.state(of), ticks.paid(of)
    return line


def _line(
    stock: "dict[str, Any]", cuts: "list[Cut]", sizes: Sizes, scale: Scale
) -> "Iterator[dict[str, Any] | None]":
    sold = stock["sold"]
    if not cuts:
        yield _plain(stock, 0, "")
    elif sold == "board":
        yield dict(_plain(stock, 0, "bd ft"), **board_line(stock, cuts, sizes, scale))
    elif sold == "stick":
        for plan in stick_plans(stock, cuts, sizes, scale):
            yield plan and dict(_plain(stock, 0, "sticks"), **plan)
    elif sold == "sheet":
        for plan in sheet_plans(stock, cuts, sizes, scale):
            yield plan and dict(_plain(stock, 0, "sheets"), **plan)
    else:
        yield _plain(stock, len(cuts), "each" if sold == "each" else "")


def _plain(stock: "dict[str, Any]", amount: float, unit: str) -> "dict[str, Any]":
    """Return a line without a plan: sticks and sheets have no cost before one."""
    price = None if unit in ("sticks", "sheets") else stock.get("price")
    return {
        "stock": stock["id"],
        "title": stock["title"],
        "sold": stock["sold"],
        "amount": amount,
        "unit": unit,
        "from_hand": 0,
        "taken": [],
        "offered": [],
        "cost": None if price is None else price * amount,
        "proved": None,
        "words": "",
        "layout": [],
    }


def _thing(thing: "dict[str, Any]", shop: Shop) -> "dict[str, Any]":
    """Return the line of something bought by count: as said, or as a question gives it."""
    said = thing.get("count")
    ties = [thing[name] for name in ("from", "times") if thing.get(name)]
    count, words = float(said or 0), ""
    if said is None and ties:
        numbers = [_number(tie, shop.done) for tie in ties]
        found = [number for number in numbers if number is not None]
        count = float(shop.counts.get(thing.get("item") or "", 1))
        for number in found:
            count *= number
        if len(found) < len(numbers):
            count, words = 0.0, "Counted once its question is answered."
    line = _plain(dict(thing, sold="each"), count, "each")
    line["stock"], line["words"] = thing["id"], words
    return line


def _number(tie: "dict[str, Any]", done: "dict[str, Done]") -> "float | None":
    """Return the number that a tie of a thing names; None where it is not known."""
    made = done.get(tie.get("entry") or "")
    if made is None:
        return None
    name = tie.get("figure") or tie.get("input") or ""
    known = (made.figures if tie.get("figure") else made.values).get(name)
    if known is None or known[0] not in ("count", "number", "choice"):
        return None
    digits = str(known[1])
    # A choice such as the leaves of a door is a number in digits.
    return float(digits) if digits.replace(".", "").isdigit() else None
