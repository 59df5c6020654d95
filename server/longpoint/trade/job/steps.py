"""What is done at the saw before the crosscuts: boards milled, strips glued up."""

from ..lengths import Scale, show_number
from .pieces import Cut
from .sawing import GLUES, MILLS
from .stock_sizes import Sizes
from .ticks import Ticks

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .working import Done

HAIR = 1 / 128
"""Inches of thickness that are no reason to mill."""


def first_steps(
    document: "dict[str, Any]",
    done: "dict[str, Done]",
    cuts: "list[list[Cut]]",
    ticks: Ticks,
    scale: Scale,
) -> "list[dict[str, Any]]":
    """Return the steps in the order of the work, each with what a tick of it names.

    Rough boards are milled to each thickness that their pieces have; then come the questions of
    the job about milling, then those about gluing up.
    """
    sizes = Sizes(str(document.get("units") or "in"))
    steps = []
    for stock in document.get("stock") or []:
        if stock["sold"] == "board":
            mine = [cut for each in cuts for cut in each if cut.stock == stock["id"]]
            steps += _milled(stock, mine, sizes, scale)
    for tool in (MILLS, GLUES):
        steps += [
            _asked(made, tool) for made in _in_order(document, done) if made.entry["tool"] == tool
        ]
    for step in steps:
        step["state"] = ticks.state(step["of"])
    return steps


def _milled(
    stock: "dict[str, Any]", cuts: "list[Cut]", sizes: Sizes, scale: Scale
) -> "list[dict[str, Any]]":
    rough = sizes.read(stock.get("thickness"))
    tags: dict[float, list[str]] = {}
    for cut in cuts:
        thick = cut.piece["thickness"]
        if thick is not None and thick < rough - HAIR:
            mine = tags.setdefault(thick, [])
            if cut.tag not in mine:
                mine.append(cut.tag)
    return [
        {
            "of": f"{stock['id']}/mill {show_number(thick, 3)}",
            "entry": "",
            "title": f"Mill {stock['title']} to {scale.length(thick)}",
            "words": f"From {scale.length(rough)}, for {', '.join(tags[thick])}",
        }
        for thick in sorted(tags, key=lambda each: -each)
    ]


def _asked(made: "Done", tool: str) -> "dict[str, Any]":
    answer = made.answer
    return {
        "of": f"{made.entry['id']}/{'mill' if tool == MILLS else 'glue up'}",
        "entry": made.entry["id"],
        "title": made.title,
        "words": answer["verdict"] if answer else "Its question is not answered yet",
    }


def _in_order(document: "dict[str, Any]", done: "dict[str, Done]") -> "list[Done]":
    return [done[entry["id"]] for item in document["items"] for entry in item["entries"]]
