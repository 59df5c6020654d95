"""The buy list's sticks and sheets: planned by the cutting plans, what is on hand first."""

import json

from ..lengths import Scale
from ..refusal import Refusal
from ..shelf import tool_named
from .stock_sizes import Sizes

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

    from .pieces import Cut

MOST_STEPS = 800
"""Pauses of a search that are waited for, a few milliseconds each."""

MOST_ROWS = 300
MOST_REMEMBERED = 60
LONGEST_NAME = 60

_memory: "dict[str, dict[str, Any]]" = {}
"""The last plan of each question that was asked: a job is worked out anew at every change, and
most of its stocks have not changed."""


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
    inputs = {"pieces": rows, "sticks": _supplied(offered, hand, sold)}
    _allow(inputs, "kerf", stock.get("kerf"), sizes)
    _allow(inputs, "end_trim", stock.get("trim"), sizes)
    for answer in _plans("stick-plan", inputs, scale, "stick", len(rows)):
        yield _planned(answer, hand, sold) if answer else None


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
        yield _planned(answer, hand, sold) if answer else None


def _is_sheet(each: "dict[str, Any]", sizes: Sizes) -> bool:
    return sizes.read(each.get("length")) > 0 and sizes.read(each.get("width")) > 0


def _supplied(
    offered: "list[dict[str, Any]]", hand: "list[dict[str, Any]]", sold: "list[dict[str, Any]]"
) -> "list[dict[str, Any]]":
    """Return what is cut from: what lies there is counted and costs nothing more.

    Prices decide only where all that is sold has one; else the least is bought.
    """
    priced = has_prices(sold)
    for at, each in enumerate(offered):
        if at < len(hand):
            each["count"] = hand[at].get("count") or 1
        elif priced:
            each["price"] = sold[at - len(hand)]["price"]
    return offered


def has_prices(sold: "list[dict[str, Any]]") -> bool:
    """Tell whether all that is sold has a price."""
    return bool(sold) and not [each for each in sold if each.get("price") is None]


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
    key = json.dumps([slug, _in_order(inputs), scale.units, scale.step])
    if key in _memory:
        yield _memory[key]
        return
    last: dict[str, Any] = {}
    for answer in _searched(slug, inputs, scale, word):
        last = answer or last
        yield answer
    if len(_memory) >= MOST_REMEMBERED:
        _memory.clear()
    _memory[key] = last


def _in_order(value: "Any") -> "Any":
    """Return a value as lists: an object's names have no order of their own on the phone."""
    if isinstance(value, dict):
        return [[name, _in_order(value[name])] for name in sorted(value)]
    return [_in_order(each) for each in value] if isinstance(value, list) else value


def _searched(
    slug: str, inputs: "dict[str, Any]", scale: Scale, word: str
) -> "Iterator[dict[str, Any] | None]":
    tool = tool_named(slug)
    last: dict[str, Any] = {}
    try:
        for step, answer in enumerate(tool.answers(tool.read(inputs, scale), scale)):
            news = answer if "figures" in answer else None
            last = news or last
            yield news
            if last and step >= MOST_STEPS:
                return
    except Refusal as refusal:
        yield {"refused": _plainly(refusal, word)}


def _plainly(refusal: Refusal, word: str) -> str:
    missing = [error for error in refusal.errors if error.missing]
    if missing:
        return f"Say which {word} sizes the yard sells, then it is planned."
    return refusal.errors[0].message


def _planned(
    answer: "dict[str, Any]", hand: "list[dict[str, Any]]", sold: "list[dict[str, Any]]"
) -> "dict[str, Any]":
    """Return what a plan says for its line.

    That is `amount` to buy, `from_hand` and by place in `hand` how many are `taken`, `cost` or
    None, `proved`, `words`, and the tables of the `layout`.
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
        "cost": figures.get("cost", 0.0) if has_prices(sold) or not sold else None,
        "proved": figures.get("proved") == "yes",
        "words": answer["verdict"],
        "layout": answer["tables"],
    }
