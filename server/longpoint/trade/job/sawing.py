"""The cut list: by stock, then by setting of the saw so that it is set once, longest first."""

from ..ends import End, ends_words, square
from .desk import Desk
from .pieces import Cut
from .saying import again_words, rough_text
from .stock_sizes import Sizes
from .ticks import Ticks

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from ..lengths import Scale

    Said = dict[str, Any]
    Sawn = tuple[Said, str, str]
    """A piece as the list shows it, the saw's setting, and what is done to the wood after it."""

SQUARE = "square"
SQUARE_ENDS = ends_words((square(), square()))
NAMES = ("name", "length", "text", "short_text", "width", "thickness", "section_text", "ends",
         "ends_text", "tick", "per")  # fmt: skip


MILLS, GLUES = "milling-passes", "glue-up"
"""What is done to the wood before it is crosscut, in the order of the work."""
FIRST = {MILLS: "before it is milled", GLUES: "to be glued up"}
"""What is cut for that, in words behind the setting: it comes before all other cuts."""


def cut_list(
    document: "dict[str, Any]",
    cuts: "list[list[Cut]]",
    ticks: Ticks,
    scale: "Scale",
    desk: Desk,
) -> "list[dict[str, Any]]":
    """Return the groups of the cut list; `cuts` are the pieces question by question.

    A piece of which nothing has changed is the same object as the last time.
    """
    stock = document.get("stock") or []
    saw = _Saw(stock, ticks, Sizes(str(document.get("units") or "in")), scale)
    by_stock: dict[str, list[list[Sawn]]] = {}
    tools = {each["id"]: each["tool"] for item in document["items"] for each in item["entries"]}
    for mine in cuts:
        first = FIRST.get(tools[mine[0].entry], "") if mine else ""
        for own, sawn in _sawn(mine, first, saw, desk):
            by_stock.setdefault(own, []).append(sawn)
    groups: list[dict[str, Any]] = []
    for own in saw.order:
        pieces = by_stock.get(own) or []
        title = saw.stocks.get(own, {}).get("title", "")
        groups += desk.made(("groups", own), [title, pieces], lambda: _groups(own, title, pieces))  # noqa: B023 called at once
    ahead = [group for group in groups if group["first"]]
    return ahead + [group for group in groups if not group["first"]]


def _sawn(mine: "list[Cut]", first: str, saw: "_Saw", desk: Desk) -> "list[tuple[str, list[Sawn]]]":
    """Return the pieces of one question as the list shows them, by their stock."""
    if not mine:
        return []
    name = ("sawn", mine[0].entry)
    sources = [mine, first, saw.stock, saw.ticks.under(mine[0].entry)]
    known: list[tuple[str, list[Sawn]]] | None = desk.known(name, sources)
    if known is not None:
        return known
    before = {said["of"]: said for _, sawn in desk.last(name) or [] for said, _, _ in sawn}
    by_stock: dict[str, list[Sawn]] = {}
    for cut, (said, setting) in zip(mine, saw.sawn(mine)):
        old = before.get(said["of"])
        said = old if old == said and old is not None else said
        by_stock.setdefault(saw.stock_of(cut), []).append((said, setting, first))
    kept: list[tuple[str, list[Sawn]]] = desk.keep(name, sources, list(by_stock.items()))
    return kept


def _groups(stock: str, title: str, pieces: "list[list[Sawn]]") -> "list[dict[str, Any]]":
    same: dict[tuple[str, str], list[Said]] = {}
    for said, setting, first in [each for sawn in pieces for each in sawn]:
        same.setdefault((first, setting), []).append(said)
    return [
        {
            "stock": stock,
            "title": title,
            "setting": setting + (", " + first if first else ""),
            "first": bool(first),
            "cuts": _longest_first(same[(first, setting)]),
        }
        for first, setting in sorted(same, key=_square_first)
    ]


def setting_of(piece: "dict[str, Any]") -> str:
    """Return how the saw is set for a piece: square, or what is cut on its ends.

    What an end meets is no setting: it stands with the piece.
    """
    ends = [End(end["joint"], end["saw"], end["bevel"], "") for end in piece["ends"]]
    words = ends_words(tuple(ends))
    return SQUARE if words in ("", SQUARE_ENDS) else words


def _square_first(each: "tuple[str, str]") -> "tuple[str, bool, str]":
    first, setting = each
    return (first, setting != SQUARE, setting)


def _longest_first(cuts: "list[Said]") -> "list[Said]":
    places = list(range(len(cuts)))
    places.sort(key=lambda at: (-cuts[at]["length"], at))
    return [cuts[at] for at in places]


class _Saw:
    """Says pieces as the cut list shows them."""

    def __init__(
        self, stock: "list[dict[str, Any]]", ticks: Ticks, sizes: Sizes, scale: "Scale"
    ) -> None:
        self.stock = stock
        self.order = [each["id"] for each in stock] + [""]
        self.stocks = {each["id"]: each for each in stock}
        self.ticks = ticks
        self.sizes = sizes
        self.scale = scale

    def stock_of(self, cut: Cut) -> str:
        """Return the id of a piece's stock; empty where it has none."""
        return cut.stock if cut.stock in self.stocks else ""

    def sawn(self, cuts: "list[Cut]") -> "list[tuple[Said, str]]":
        """Return pieces in words, each with its setting; copies of one piece are alike."""
        sawn = []
        piece: dict[str, Any] = {}
        alike: Said = {}
        setting = ""
        for cut in cuts:
            if cut.piece is not piece:
                piece, alike, setting = cut.piece, self._alike(cut), setting_of(cut.piece)
            sawn.append((self._own(alike, cut), setting))
        return sawn

    def _alike(self, cut: Cut) -> "Said":
        said = {name: cut.piece[name] for name in NAMES}
        said["tag"], said["item"], said["entry"] = cut.tag, cut.item, cut.entry
        said["rough_text"] = rough_text(cut.piece, self._from(cut), self.sizes, self.scale)
        return said

    def _own(self, alike: "Said", cut: Cut) -> "Said":
        said = dict(alike)
        said["of"], said["state"] = cut.of, self.ticks.state(cut.of)
        said["spoiled"], said["again"] = self.ticks.spoiled(cut.of), ""
        if said["spoiled"]:
            said["again"] = again_words(cut.piece, self._from(cut), self.sizes, self.scale)
        said["stale"] = self.ticks.stale(cut.of, cut.piece, self.scale)
        return said

    def _from(self, cut: Cut) -> "dict[str, Any]":
        return self.stocks.get(cut.stock) or {}
