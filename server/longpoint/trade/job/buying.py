"""The buy list: a line for each stock, each thing, with what it costs and how that is known.

What is on hand is used first and counted apart from what is bought.
"""

from ..lengths import Scale
from .boards import board_line
from .carrying import name_now
from .desk import Desk
from .pieces import Cut
from .plans import sheet_plans, stick_plans
from .saying import said_line
from .stock_sizes import Sizes
from .ticks import Ticks

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

    from .working import Done


FINISH = "finish-amount"
TALLY = "board-tally"


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

    def tallies(self, stock: str) -> "list[Done]":
        """Return the tallies at the stack that count against what a stock's pieces need."""
        entries = [entry for item in self.document["items"] for entry in item["entries"]]
        found = [self.done[entry["id"]] for entry in entries if entry["tool"] == TALLY]
        return [made for made in found if _counts_for(made.entry, stock)]

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


def _counts_for(entry: "dict[str, Any]", stock: str) -> bool:
    ties = [tie.get("pieces") for tie in (entry.get("ties") or {}).values()]
    return stock in ties or stock in (entry.get("stock") or {}).values()


def _is_same(each: "dict[str, Any]", stock: "dict[str, Any]") -> bool:
    titles = [str(one.get("title") or "").strip().lower() for one in (each, stock)]
    return titles[0] == titles[1] and each.get("sold") == stock["sold"]


def buy_lines(
    shop: Shop, cuts: "list[list[Cut]]", ticks: Ticks, scale: Scale, desk: Desk
) -> "Iterator[tuple[list[dict[str, Any]], bool] | None]":
    """Give the whole buy list, ever better, and whether it is the last; None while looking on.

    The first has a quick plan of every stock, so that the list is there soon; it is the last where
    all were planned before. `cuts` are the pieces question by question.
    """
    by_stock = _by_stock(cuts, ticks)
    searches = []
    for stock in shop.stocks:
        search = _search(stock, by_stock.get(stock["id"]) or [], shop, scale, desk)
        searches.append(search)
        while not search.plan and not search.is_over:
            search.is_better()
            yield None
    things = [_thing_once(thing, shop, desk) for thing in shop.things]

    def lines() -> "list[dict[str, Any]]":
        planned = [(search.plan, search.stock) for search in searches if search.plan]
        planned += [(thing, {}) for thing in things]
        return [_said(plan, stock, shop, ticks, scale, desk) for plan, stock in planned]

    left = [search for search in searches if not search.is_over]
    yield lines(), not left
    for search in left:
        while not search.is_over:
            is_news = search.is_better()
            yield (lines(), False) if is_news else None
    if left:
        yield lines(), True


def _thing_once(thing: "dict[str, Any]", shop: Shop, desk: Desk) -> "dict[str, Any]":
    ties = [thing.get(name) or {} for name in ("from", "times")]
    made = [shop.done.get(tie.get("entry") or "") for tie in ties]
    sources = [thing, shop.counts.get(thing.get("item") or ""), made]
    line: dict[str, Any] = desk.made(("thing", thing["id"]), sources, lambda: _thing(thing, shop))
    return line


def _by_stock(cuts: "list[list[Cut]]", ticks: Ticks) -> "dict[str, list[Cut]]":
    """Return the pieces to buy for by their stock: a spoiled one is needed once more."""
    found: dict[str, list[Cut]] = {}
    for cut in [cut for mine in cuts for cut in mine]:
        needed = found.setdefault(cut.stock, [])
        for _ in range(1 + ticks.spoiled(cut.of)):
            needed.append(cut)
    return found


def _search(
    stock: "dict[str, Any]", cuts: "list[Cut]", shop: Shop, scale: Scale, desk: Desk
) -> "_Search":
    tallies = shop.tallies(stock["id"])

    def make() -> "_Search":
        rows = [row for made in tallies for row in made.values.get("boards", ("", []))[1]]
        return _Search(
            stock, shop.offered(stock, cuts), _line(stock, cuts, shop.sizes, scale, rows)
        )

    search: _Search = desk.made(("plan", stock["id"]), [stock, cuts, shop.offcuts, tallies], make)
    return search


class _Search:
    """The plan of one stock, as good as it was found so far; empty before the first."""

    def __init__(
        self,
        stock: "dict[str, Any]",
        offered: "list[int]",
        plans: "Iterator[dict[str, Any] | None]",
    ) -> None:
        self.plan: dict[str, Any] = {}
        self.is_over = False
        self.stock = stock
        self.offered = offered
        self.plans = plans

    def is_better(self) -> bool:
        """Look on for a moment, and tell whether the plan is a better one now."""
        try:
            plan = next(self.plans)
        except StopIteration:
            self.is_over = True
            return False
        if plan is None:
            return False
        plan["offered"] = self.offered
        self.plan = plan
        return True


def _said(
    plan: "dict[str, Any]",
    stock: "dict[str, Any]",
    shop: Shop,
    ticks: Ticks,
    scale: Scale,
    desk: Desk,
) -> "dict[str, Any]":
    """Return a plan as a line of the list, with what is ticked of it."""
    of = plan["stock"]

    def make() -> "dict[str, Any]":
        line = dict(plan)
        line["of"], line["state"], line["paid"] = of, ticks.state(of), ticks.paid(of)
        said_line(line, stock, shop.sizes, scale)
        return line

    line: dict[str, Any] = desk.made(("line", of), [plan, stock, ticks.under(of)], make)
    return line


def _line(
    stock: "dict[str, Any]",
    cuts: "list[Cut]",
    sizes: Sizes,
    scale: Scale,
    tallied: "list[dict[str, Any]]",
) -> "Iterator[dict[str, Any] | None]":
    sold = stock["sold"]
    if not cuts:
        yield _plain(stock, 0, "")
    elif sold == "board":
        yield dict(_plain(stock, 0, "bf"), **board_line(stock, cuts, sizes, scale, tallied))
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
        "leaves": [],
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
    made = shop.done.get((thing.get("from") or {}).get("entry") or "")
    if said is None and made is not None and made.entry["tool"] == FINISH:
        _in_cans(line, made)
    return line


def _in_cans(line: "dict[str, Any]", made: "Done") -> None:
    """Say of a finish how much of it is in how many cans, and what it costs as told there."""
    line["unit"] = "cans"
    line["words"] = made.answer["verdict"] if made.answer else line["words"]
    if line["cost"] is None and "cost" in made.figures:
        line["cost"] = float(made.figures["cost"][1])


def _number(tie: "dict[str, Any]", done: "dict[str, Done]") -> "float | None":
    """Return the number that a tie of a thing names; None where it is not known."""
    made = done.get(tie.get("entry") or "")
    if made is None:
        return None
    name = name_now(tie, made)
    known = (made.figures if tie.get("figure") else made.values).get(name)
    if known is None or known[0] not in ("count", "number", "choice"):
        return None
    digits = str(known[1])
    # A choice such as the leaves of a door is a number in digits.
    return float(digits) if digits.replace(".", "").isdigit() else None
