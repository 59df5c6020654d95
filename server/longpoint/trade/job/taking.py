"""Rows filled with pieces of the job: those of a stock, of one question or of an item.

A tie ``{"pieces": id}`` names which; it is live, so a piece that changes changes in the plan too.
"""

from ..lumber.board_feet import board_feet
from ..rows import Rows
from .pieces import cuts_of_entry, takes_pieces
from .raised_panels import words_of
from .stock_sizes import Sizes
from .surfaces import surfaces_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from ..inputs import Input
    from .pieces import Cut
    from .working import Done


WHOLE = "job"
"""Stands instead of an id: all pieces of the job."""


class Sources:
    """Where pieces of a job are found by id: its stocks, questions and items.

    Parameters
    ----------
    document : dict
        A checked job.
    """

    def __init__(self, document: "dict[str, Any]") -> None:
        self.document = document
        self.stocks = {stock["id"]: stock for stock in document.get("stock") or []}
        entries = [entry for item in document["items"] for entry in item["entries"]]
        self.places = {entry["id"]: entry for entry in entries}
        """The questions by id."""
        self.spoiled: dict[str, int] = {}
        for tick in document.get("ticks") or []:
            if tick["state"] == "spoiled":
                self.spoiled[tick["of"]] = self.spoiled.get(tick["of"], 0) + 1

    def called(self, own: str) -> str:
        """Return what pieces of an id are called; empty where nothing has that id."""
        if own in self.stocks:
            return str(self.stocks[own]["title"])
        if own == WHOLE:
            return "The whole job"
        for item in self.document["items"]:
            if item["id"] == own:
                return str(item["title"])
        entry = self.places.get(own)
        return str(entry.get("title") or "question " + entry["letter"]) if entry else ""

    def entries(self, own: str) -> "list[tuple[dict[str, Any], dict[str, Any]]]":
        """Return the questions, with their items, that pieces of an id come from.

        A question that is itself filled with pieces makes none of its own. Of the whole job those
        are left out that follow in their item on one filled from it: they may take its numbers.
        """
        found = []
        for item in self.document["items"]:
            if own == WHOLE:
                found += [(item, entry) for entry in _before_filled(item)]
            for entry in item["entries"]:
                cut_from = list((entry.get("stock") or {}).values())
                if own in (item["id"], entry["id"]) or own in cut_from:
                    found.append((item, entry))
        return [(item, entry) for item, entry in found if not takes_pieces(entry)]

    def of_pieces(self, own: str) -> "list[Any]":
        """Return what the pieces of an id are made of beside the questions that they come from."""
        counts = [item.get("count") for item, _ in self.entries(own)]
        return counts + [self.called(own), self.document.get("stock"), self.document.get("ticks")]

    def thickness(self, cut: "Cut") -> "float | None":
        """Return how thick a piece is: its own, else its stock's where that comes surfaced."""
        thick: float | None = cut.piece["thickness"]
        stock = self.stocks.get(cut.stock) or {}
        if thick is None and stock.get("sold") != "board":
            # Rough boards are planed to what nobody said.
            sizes = Sizes(str(self.document.get("units") or "in"))
            thick = sizes.read(stock.get("thickness")) or None
        return thick

    def cuts(self, own: str, done: "dict[str, Done]") -> "list[Cut]":
        """Return the pieces that an id names; of a stock those that were spoiled once more."""
        cuts = []
        for item, entry in self.entries(own):
            made = done.get(entry["id"])
            for cut in cuts_of_entry(item, entry, made) if made else []:
                if own not in self.stocks:
                    cuts.append(cut)
                elif cut.stock == own:
                    cuts.extend([cut] * (1 + self.spoiled.get(cut.of, 0)))
        return cuts

    def open_questions(self, own: str, done: "dict[str, Done]") -> int:
        """Return how many of the questions that pieces come from have no answer yet."""
        asked = [done.get(entry["id"]) for _, entry in self.entries(own)]
        return len([made for made in asked if made is None or made.answer is None])


def _before_filled(item: "dict[str, Any]") -> "list[dict[str, Any]]":
    """Return an item's questions before the first that is filled from the whole job."""
    before = []
    for entry in item["entries"]:
        if [tie for tie in (entry.get("ties") or {}).values() if tie.get("pieces") == WHOLE]:
            break
        before.append(entry)
    return before


def taken(
    asked: "Input", tie: "dict[str, Any]", sources: Sources, done: "dict[str, Done]"
) -> "tuple[Any, str, str]":
    """Return what an input takes of the job: its raw value, from where, and what is wrong.

    The value is None where something is wrong.
    """
    own = tie["pieces"]
    title = sources.called(own)
    if not title:
        return None, "", "The pieces that this was filled with are not on the job."
    if not asked.takes:
        return None, "", f"{asked.label} takes no pieces."
    cuts = sources.cuts(own, done)
    if not cuts:
        return None, "", f"{title} has no pieces yet."
    left = sources.open_questions(own, done)
    word = "question is" if left == 1 else "questions are"
    said = title + (f"; {left} {word} still open" if left else "")
    if isinstance(asked, Rows) and asked.surfaces:
        return _surfaces(own, said, sources, done)
    if isinstance(asked, Rows):
        return rows_of(asked, cuts, sources), said, ""
    return feet_of(cuts, sources), said, ""


def _surfaces(
    own: str, said: str, sources: Sources, done: "dict[str, Done]"
) -> "tuple[Any, str, str]":
    rows, left = surfaces_of(own, sources, done)
    if not rows:
        return None, "", f"{sources.called(own)} has no surfaces of a known size yet."
    word = "piece" if left == 1 else "pieces"
    notes = [f"{left} {word} without a width left out"] if left else []
    how = words_of(rows)
    return rows, "; ".join([said] + notes + ([how] if how else [])), ""


def rows_of(asked: Rows, cuts: "list[Cut]", sources: Sources) -> "list[dict[str, Any]]":
    """Return pieces as the rows of an input, alike ones counted together."""
    rows: list[dict[str, Any]] = []
    for cut in cuts:
        known = _known(cut, sources)
        row = {
            column: known[name]
            for column, name in asked.pieces
            if name != "count" and known.get(name) is not None
        }
        _count(rows, row, [column for column, name in asked.pieces if name == "count"])
    return rows


def _known(cut: "Cut", sources: Sources) -> "dict[str, Any]":
    """Return what is known of a piece, by the names that `Rows` maps to columns."""
    stock = sources.stocks.get(cut.stock) or {}
    return {
        "length": cut.piece["length"],
        "width": cut.piece["width"],
        "thickness": sources.thickness(cut),
        "tag": cut.tag,
        "made_of": stock.get("made_of"),
        "species": stock.get("species"),
    }


def _count(rows: "list[dict[str, Any]]", row: "dict[str, Any]", columns: "list[str]") -> None:
    for known in rows:
        if not [name for name in row if known.get(name) != row[name]]:
            for column in columns:
                known[column] += 1
            return
    for column in columns:
        row[column] = 1
    rows.append(row)


def feet_of(cuts: "list[Cut]", sources: Sources) -> float:
    """Return the board feet of pieces by their rough sizes, without waste."""
    sizes = Sizes(str(sources.document.get("units") or "in"))
    feet = 0.0
    for cut in cuts:
        stock = sources.stocks.get(cut.stock) or {}
        feet += board_feet(*sizes.rough(cut.piece, stock))
    return feet
