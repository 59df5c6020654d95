"""Every piece of a job, one by one: what is cut, out of which stock, with the tag on its wood."""

from collections import namedtuple

from ..refusal import Refusal
from .desk import Desk
from .document import MOST_PIECES, NOT_CUT

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from .working import Done

Cut = namedtuple("Cut", ("of", "tag", "piece", "stock", "entry", "item"))
"""One piece of wood. `of` is ``<entry>/<tag>#<copy>``, `tag` what is pencilled on it: letter and
number; `stock` the id of what it is cut from, empty where none was named."""


def all_cuts(document: "dict[str, Any]", done: "dict[str, Done]", desk: Desk) -> "list[list[Cut]]":
    """Return the pieces of each question in the order of the document; none for one unanswered.

    Raises
    ------
    Refusal
        More pieces than a job holds.
    """
    cuts: list[list[Cut]] = []
    number = 0
    for item in document["items"]:
        for entry in item["entries"]:
            if takes_pieces(entry):
                continue
            mine = _once(item, entry, done[entry["id"]], desk)
            number += len(mine)
            if number > MOST_PIECES:
                words = f"{number} pieces and more: a job holds {MOST_PIECES} at most."
                raise Refusal("items", words)
            cuts.append(mine)
    return cuts


def _once(item: "dict[str, Any]", entry: "dict[str, Any]", made: "Done", desk: Desk) -> "list[Cut]":
    sources = [made, item["id"], item.get("count")]
    cuts: list[Cut] = desk.made(
        ("cuts", entry["id"]), sources, lambda: cuts_of_entry(item, entry, made)
    )
    return cuts


def takes_pieces(entry: "dict[str, Any]") -> bool:
    """Tell whether a question is filled with pieces of the job, so that its own are the same."""
    return bool([tie for tie in (entry.get("ties") or {}).values() if tie.get("pieces")])


def cuts_of_entry(item: "dict[str, Any]", entry: "dict[str, Any]", made: "Done") -> "list[Cut]":
    """Return the pieces of one question, for each of the items alike."""
    pieces = made.answer["pieces"] if made.answer else []
    return [cut for piece in pieces for cut in _copies(item, entry, piece)]


def _copies(
    item: "dict[str, Any]", entry: "dict[str, Any]", piece: "dict[str, Any]"
) -> "list[Cut]":
    stocks = entry.get("stock") or {}
    stock = stocks.get(piece["role"]) or stocks.get("all") or ""
    if stock == NOT_CUT:
        return []
    tag = entry["letter"] + piece["tag"]
    of = entry["id"] + "/" + piece["tag"] + "#"
    number = int(piece["count"]) * int(item.get("count") or 1)
    return [
        Cut(of + str(copy + 1), tag, piece, stock, entry["id"], item["id"])
        for copy in range(number)
    ]
