"""The buy list's sticks and sheets: planned by the cutting plans, what is on hand first."""

import math

from ..lengths import Scale
from ..reading import INCH as MM
from ..refusal import Refusal
from ..shelf import tool_named
from .memory import Memory, key_of
from .stock_sizes import Sizes

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

    from .pieces import Cut

MOST_STEPS = {"stick-plan": 800, "sheet-plan": 150}
"""Pauses of a search that are waited for, a few milliseconds each; of sheets, some more."""

MOST_ROWS = 300
MOST_REMEMBERED = 60
MOST_LOOKED_FOR = 6
LONGEST_NAME = 60
INCHES_A_FOOT = 12
HAIR = 1e-6
MOST_LEFT = 12
"""Sizes of offcuts that are proposed for keeping."""

_memory = Memory(MOST_REMEMBERED)
_looked_for: "list[str]" = []


def stick_plans(
    stock: "dict[str, Any]", cuts: "list[Cut]", sizes: Sizes, scale: Scale
) -> "Iterator[dict[str, Any] | None]":
    """Give ever better plans of a stock sold by the stick, None in between; see `_planned`."""
    rows: list[dict[str, Any]] = []
    for cut in cuts:
        _count(rows, {"length": cut.piece["length"], "tag": cut.tag})
    hand = [each for each in stock.get("on_hand") or [] if sizes.read(each.get("length")) > 0]
    sold = [each for each in stock.get("lengths") or [] if sizes.read(each.get("length")) > 0]
    offered = [{"length": sizes.read(each.get("length"))} for each in hand + sold]
    per_foot = stock.get("price")
    inputs = {"pieces": rows, "sticks": _supplied(offered, hand, sold, per_foot)}
    _allow(inputs, "kerf", stock.get("kerf"), sizes)
    _allow(inputs, "end_trim", stock.get("trim"), sizes)
    for answer in _plans("stick-plan", inputs, scale, "stick", len(rows)):
        yield _planned(answer, hand, sold, scale, per_foot) if answer else None


def sheet_plans(
    stock: "dict[str, Any]", cuts: "list[Cut]", sizes: Sizes, scale: Scale
) -> "Iterator[dict[str, Any] | None]":
    """Give ever better plans of a stock sold by the sheet, None in between; see `_planned`."""
    rows: list[dict[str, Any]] = []
    names: list[list[str]] = []
    for cut in cuts:
        row = {"length": cut.piece["length"], "width": cut.piece["width"] or 0}
        at = _count(rows, row)
        names = names + [[]] if at == len(names) else names
        if cut.tag not in names[at]:
            names[at].append(cut.tag)
    for row, tags in zip(rows, names):
        row["name"] = " ".join(tags)[:LONGEST_NAME]
    hand = [each for each in stock.get("on_hand") or [] if _is_sheet(each, sizes)]
    sold = [each for each in stock.get("sheets") or [] if _is_sheet(each, sizes)]
    offered = [
        {"length": sizes.read(each.get("length")), "width": sizes.read(each.get("width"))}
        for each in hand + sold
    ]
    inputs = {"parts": rows, "sheets": _supplied(offered, hand, sold)}
    _allow(inputs, "kerf", stock.get("kerf"), sizes)
    _allow(inputs, "edge_trim", stock.get("trim"), sizes)
    for answer in _plans("sheet-plan", inputs, scale, "sheet", len(rows)):
        yield _planned(answer, hand, sold, scale) if answer else None


def _is_sheet(each: "dict[str, Any]", sizes: Sizes) -> bool:
    return sizes.read(each.get("length")) > 0 and sizes.read(each.get("width")) > 0


def _supplied(
    offered: "list[dict[str, Any]]",
    hand: "list[dict[str, Any]]",
    sold: "list[dict[str, Any]]",
    per_foot: "float | None" = None,
) -> "list[dict[str, Any]]":
    """Return what is cut from: what lies there is counted and costs nothing more.

    Prices decide only where all that is sold has one; else the least is bought.
    """
    priced = has_prices(sold, per_foot)
    for at, each in enumerate(offered):
        if at < len(hand):
            each["count"] = hand[at].get("count") or 1
        elif priced:
            each["price"] = price_of(sold[at - len(hand)], each["length"], per_foot)
    return offered


def has_prices(sold: "list[dict[str, Any]]", per_foot: "float | None" = None) -> bool:
    """Tell whether all that is sold has a price, of its own or by the lineal foot."""
    bare = [each for each in sold if each.get("price") is None]
    return bool(sold) and (per_foot is not None or not bare)


def price_of(sold: "dict[str, Any]", length: float, per_foot: "float | None") -> float:
    """Return what one stick or sheet costs; `length` in inches."""
    if sold.get("price") is not None:
        return float(sold["price"])
    return (per_foot or 0.0) * length / INCHES_A_FOOT


def _count(rows: "list[dict[str, Any]]", row: "dict[str, Any]") -> int:
    """Add a piece to its row, or begin one; return the row's place."""
    for at, known in enumerate(rows):
        if not [name for name in row if known[name] != row[name]]:
            known["count"] += 1
            return at
    row["count"] = 1
    rows.append(row)
    return len(rows) - 1


def _allow(inputs: "dict[str, Any]", name: str, raw: object, sizes: Sizes) -> None:
    if raw not in (None, ""):
        inputs[name] = sizes.read(raw)


def _plans(
    slug: str, inputs: "dict[str, Any]", scale: Scale, word: str, rows: int
) -> "Iterator[dict[str, Any] | None]":
    """Give ever better plans, None in between; or one that says in words why there is none."""
    if rows > MOST_ROWS:
        yield {"refused": f"{rows} different pieces: {MOST_ROWS} are planned at a time."}
        return
    key = key_of([slug, inputs, scale.units, scale.step])
    plan = _memory.get(key) or _Plan(slug, inputs, scale, word)
    _keep(key, plan)
    seen: dict[str, Any] = {}
    if plan.last:
        seen = plan.last
        yield seen
    while not plan.is_over:
        plan.look_on()
        news = plan.last if plan.last is not seen else None
        seen = plan.last
        yield news


class _Plan:
    """A plan as good as it was found so far; looking on goes on where it stopped.

    A job is worked out anew at every change, and most of its stocks have not changed. On a server
    two requests may look for one plan at once: then they take turns.
    """

    def __init__(self, slug: str, inputs: "dict[str, Any]", scale: Scale, word: str) -> None:
        self.last: dict[str, Any] = {}
        self.search: Iterator[dict[str, Any] | None] | None = _searched(slug, inputs, scale, word)
        self.turns = [True]

    @property
    def is_over(self) -> bool:
        return self.search is None

    def look_on(self) -> None:
        """Look on for a moment, unless somebody else is at it."""
        try:
            # Taking from a list is one step, whoever else takes from it.
            turn = self.turns.pop()
        except IndexError:
            return
        try:
            if self.search is not None:
                found = next(self.search)
                self.last = found or self.last
        except StopIteration:
            self.search = None
        finally:
            self.turns.append(turn)


def _keep(key: str, plan: _Plan) -> None:
    """Remember a plan; of those still looked for only the latest, since a search takes room."""
    _memory.put(key, plan)
    if key in _looked_for:
        _looked_for.remove(key)
    _looked_for.append(key)
    while len(_looked_for) > MOST_LOOKED_FOR:
        old = _looked_for.pop(0)
        known = _memory.get(old)
        if known is not None and not known.is_over:
            del _memory.known[old]


def _searched(
    slug: str, inputs: "dict[str, Any]", scale: Scale, word: str
) -> "Iterator[dict[str, Any] | None]":
    tool = tool_named(slug)
    last: dict[str, Any] = {}
    try:
        fields = tool.read(inputs, scale)
        for step, answer in enumerate(tool.answers(fields, scale, is_drawn=False)):
            news = answer if "figures" in answer else None
            last = news or last
            yield news
            if last and step >= MOST_STEPS[slug]:
                return
    except Refusal as refusal:
        yield {"refused": _plainly(refusal, word)}


def _plainly(refusal: Refusal, word: str) -> str:
    missing = [error for error in refusal.errors if error.missing]
    if missing:
        return f"Say which {word} sizes the yard sells, then it is planned."
    return refusal.errors[0].message


def _planned(
    answer: "dict[str, Any]",
    hand: "list[dict[str, Any]]",
    sold: "list[dict[str, Any]]",
    scale: Scale,
    per_foot: "float | None" = None,
) -> "dict[str, Any]":
    """Return what a plan says for its line.

    That is `amount` to buy, `from_hand` and by place in `hand` how many are `taken`, `cost` or
    None, `proved`, `words`, the tables of the `layout`, and what it `leaves`.
    """
    if "refused" in answer:
        return {"words": answer["refused"]}
    figures = {figure["name"]: figure["value"] for figure in answer["figures"]}
    # The first table counts what to take, in the order it was offered in: what is on hand first.
    counts = [int(row[1]) for row in answer["tables"][0]["rows"]]
    taken = counts[: len(hand)]
    return {
        "amount": sum(counts[len(hand) :]),
        "from_hand": sum(taken),
        "taken": taken,
        "cost": figures.get("cost", 0.0) if has_prices(sold, per_foot) or not sold else None,
        "proved": figures.get("proved") == "yes",
        "words": answer["verdict"],
        "layout": answer["tables"],
        "leaves": _leaves(answer["offcuts"], scale),
    }


def _leaves(offcuts: "list[dict[str, Any]]", scale: Scale) -> "list[dict[str, Any]]":
    """Return the offcuts worth keeping, the largest first, as they would be typed.

    Sizes are rounded down: an offcut is never longer than it is said to be.
    """
    sized = [(each["length"] * (each["width"] or 1.0), at) for at, each in enumerate(offcuts)]
    sized.sort(key=lambda each: (-each[0], each[1]))
    left = []
    for _, at in sized[:MOST_LEFT]:
        each = offcuts[at]
        wide = each["width"]
        size = {"length": typed_down(each["length"], scale), "count": each["count"]}
        size["width"] = "" if wide is None else typed_down(wide, scale)
        left.append(size)
    return left


def typed_down(inches: float, scale: Scale) -> str:
    """Return a length rounded down to the step, with its mark.

    >>> typed_down(33.99, Scale("in", 16)), typed_down(33.99, Scale("mm", 16))
    ('33 15/16"', '863 mm')
    """
    if scale.units == "mm":
        return scale.length(math.floor(inches * MM + HAIR) / MM)
    step = min(scale.step, 64)
    return scale.length(math.floor(inches * step + HAIR) / step) + '"'
