"""The cut list: by stock, then by setting of the saw so that it is set once, longest first."""

from ..ends import End, ends_words, square
from .pieces import Cut
from .saying import again_words, rough_text
from .stock_sizes import Sizes
from .ticks import Ticks

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from ..lengths import Scale

SQUARE = "square"


def cut_list(
    document: "dict[str, Any]", cuts: "list[Cut]", ticks: Ticks, scale: "Scale"
) -> "list[dict[str, Any]]":
    """Return the groups of the cut list."""
    order = [stock["id"] for stock in document.get("stock") or []] + [""]
    stocks = {stock["id"]: stock for stock in document.get("stock") or []}
    sizes = Sizes(str(document.get("units") or "in"))
    groups: list[dict[str, Any]] = []
    for stock in order:
        mine = [cut for cut in cuts if (cut.stock if cut.stock in stocks else "") == stock]
        same: dict[str, list[Cut]] = {}
        for cut in mine:
            same.setdefault(setting_of(cut.piece), []).append(cut)
        for setting in sorted(same, key=_square_first):
            cut_from = stocks.get(stock, {})
            groups.append({
                "stock": stock,
                "title": cut_from.get("title", ""),
                "setting": setting,
                "cuts": [
                    _cut(cut, cut_from, ticks, sizes, scale)
                    for cut in _longest_first(same[setting])
                ],
            })  # fmt: skip
    return groups


def setting_of(piece: "dict[str, Any]") -> str:
    """Return how the saw is set for a piece: square, or what is cut on its ends.

    What an end meets is no setting: it stands with the piece.
    """
    ends = [End(end["joint"], end["saw"], end["bevel"], "") for end in piece["ends"]]
    words = ends_words(tuple(ends))
    return SQUARE if words in ("", ends_words((square(), square()))) else words


def _square_first(setting: str) -> "tuple[bool, str]":
    return (setting != SQUARE, setting)


def _longest_first(cuts: "list[Cut]") -> "list[Cut]":
    places = list(range(len(cuts)))
    places.sort(key=lambda at: (-cuts[at].piece["length"], at))
    return [cuts[at] for at in places]


def _cut(
    cut: Cut, stock: "dict[str, Any]", ticks: Ticks, sizes: Sizes, scale: "Scale"
) -> "dict[str, Any]":
    piece = cut.piece
    names = ("name", "length", "text", "short_text", "width", "thickness", "section_text", "ends",
             "ends_text", "tick", "per")  # fmt: skip
    said = {name: piece[name] for name in names}
    said["of"], said["tag"], said["item"], said["entry"] = cut.of, cut.tag, cut.item, cut.entry
    said["state"] = ticks.state(cut.of)
    said["rough_text"] = rough_text(piece, stock, sizes, scale)
    said["spoiled"] = ticks.spoiled(cut.of)
    said["again"] = again_words(piece, stock, sizes, scale) if said["spoiled"] else ""
    said["stale"] = ticks.stale(cut.of, piece["length"], scale)
    return said
