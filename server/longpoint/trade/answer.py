"""What a tool answers: figures, pieces, marks, tables, drawings and words, in display order."""

from .amounts import amount_words
from .drawing import Drawing
from .ends import End, end_json, ends_words
from .lengths import Scale, show_angle, show_money, show_number
from .steps import FINEST

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

MOST_VERDICT = 90
"""Characters of a verdict: what is read at a glance."""

FEET_FROM = 100.0
"""Inches above which a length is said in feet too."""


class Answer:
    """An answer in the making; numbers that are not finite are refused as a bug.

    Parameters
    ----------
    scale : Scale
        How lengths are shown.

    `progress` is 1 unless a search goes on behind this answer; then how much of it is done. Of a
    brief one pieces, tables and drawings come with the next answer.
    A figure's label and short label are those its tool declares in `gives`; `label` and `short`
    say otherwise where they depend on what was given.
    """

    def __init__(self, scale: Scale) -> None:
        self.scale = scale
        self.decision = ""
        self.figures: list[dict[str, Any]] = []
        self.pieces: list[dict[str, Any]] = []
        self.marks: list[dict[str, Any]] = []
        self.tables: list[dict[str, Any]] = []
        self.drawings: list[Drawing | Callable[[], Drawing | list[Drawing]]] = []
        self.notes: list[str] = []
        self.cautions: list[str] = []
        self.keeps: list[dict[str, Any]] = []
        self.offcuts: list[dict[str, Any]] = []
        self.progress, self.is_brief = 1.0, False

    def verdict(self, *ways: str) -> None:
        """Set the one sentence that decides, with every assumption that changes wood.

        `ways` say the same ever shorter; the first of at most `MOST_VERDICT` characters is taken.
        """
        fitting = [words for words in ways if len(words) <= MOST_VERDICT]
        self.decision = fitting[0] if fitting else ways[-1]

    def length(
        self,
        name: str,
        inches: float,
        *,
        label: str = "",
        short: str = "",
        lead: bool = False,
        fine: bool = False,
    ) -> None:
        """Add a length; a `fine` one is shown at least to 1/64 and as a decimal too.

        A fine one too small for a tick is shown as the decimal alone. A long one says its feet too.
        """
        scale = self.scale.finer() if fine else self.scale
        if fine and inches and scale.tick(inches) == 0:
            scale = scale.finer(FINEST)
        figure = self._figure(name, "length", inches, scale.length(inches), label, short, lead)
        figure["tick"], figure["per"] = scale.tick(inches), scale.per()
        if fine and inches and scale.units == "in" and scale.step != FINEST:
            figure["also"] = scale.decimal(inches)
        elif scale.units == "in" and abs(inches) > FEET_FROM:
            figure["also"] = scale.feet(inches)

    def angle(
        self, name: str, degrees: float, *, label: str = "", short: str = "", lead: bool = False
    ) -> None:
        """Add an angle in degrees."""
        self._figure(name, "angle", degrees, show_angle(degrees), label, short, lead)

    def count(
        self, name: str, number: int, *, label: str = "", short: str = "", lead: bool = False
    ) -> None:
        """Add a whole number."""
        self._figure(name, "count", number, str(number), label, short, lead)

    def number(
        self,
        name: str,
        value: float,
        unit: str = "",
        *,
        label: str = "",
        short: str = "",
        places: int = 2,
        lead: bool = False,
    ) -> None:
        """Add a plain number with its unit."""
        text = show_number(value, places) + (" " + unit if unit else "")
        self._figure(name, "number", value, text, label, short, lead)

    def amount(
        self,
        name: str,
        value: float,
        measure: str,
        *,
        label: str = "",
        short: str = "",
        lead: bool = False,
        places: "int | None" = None,
    ) -> None:
        """Add an amount of one of `amounts.MEASURES`, in the units in force and in the others."""
        text, also = self.both_ways(value, measure, places)
        self._figure(name, "number", value, text, label, short, lead)["also"] = also

    def both_ways(
        self, value: float, measure: str, places: "int | None" = None
    ) -> "tuple[str, str]":
        """Return an amount in the units in force, and in the other ones."""
        other = "mm" if self.scale.units == "in" else "in"
        here = amount_words(value, measure, self.scale.units, places)
        return here, amount_words(value, measure, other, places)

    def weight(
        self, name: str, pounds: float, *, label: str = "", short: str = "", lead: bool = False
    ) -> None:
        """Add a weight, in kilograms where millimeters are in force, and the other way too."""
        self.amount(name, pounds, "weight", label=label, short=short, lead=lead)

    def weight_words(self, pounds: float) -> "tuple[str, str]":
        """Return a weight in the units in force, and in the other ones."""
        return self.both_ways(pounds, "weight")

    def money(
        self, name: str, dollars: float, *, label: str = "", short: str = "", lead: bool = False
    ) -> None:
        """Add an amount of money."""
        self._figure(name, "money", dollars, show_money(dollars), label, short, lead)

    def words(
        self, name: str, text: str, *, label: str = "", short: str = "", lead: bool = False
    ) -> None:
        """Add a figure that is a word."""
        self._figure(name, "text", text, text, label, short, lead)

    def piece(
        self,
        tag: str,
        name: str,
        length: float,
        ends: "tuple[End, ...]" = (),
        *,
        short_point: "float | None" = None,
        width: "float | None" = None,
        thickness: "float | None" = None,
        count: int = 1,
        stock: str = "",
        role: str = "",
    ) -> None:
        """Add a piece to cut, by the length that is marked on the tape.

        `role` tells the stocks of one question apart, such as frame and panel.
        """
        _finite(length)
        self.pieces.append(
            {
                "tag": tag,
                "name": name,
                "count": count,
                "thickness": thickness,
                "width": width,
                "length": length,
                "short_point": short_point,
                "text": self.scale.length(length),
                "short_text": "" if short_point is None else self.scale.length(short_point),
                "section_text": self._section(width, thickness),
                "tick": self.scale.tick(length),
                "per": self.scale.per(),
                "ends": [end_json(end) for end in ends],
                "ends_text": ends_words(ends),
                "stock": stock,
                "role": role,
            }
        )

    def _section(self, width: "float | None", thickness: "float | None") -> str:
        """Return width and thickness as far as they are known: ``5/8 x 3 1/2``."""
        if thickness is None:
            return "" if width is None else self.scale.length(width) + " wide"
        if width is None:
            return self.scale.length(thickness) + " thick"
        return self.scale.length(thickness) + " x " + self.scale.length(width)

    def mark(self, tag: str, label: str, start: str, inches: float, *, fine: bool = False) -> None:
        """Add a pencil mark at a distance from the datum `start`, a `fine` one to 1/64 at least."""
        _finite(inches)
        scale = self.scale.finer() if fine else self.scale
        self.marks.append(
            {
                "tag": tag,
                "label": label,
                "from": start,
                "value": inches,
                "text": scale.length(inches),
                "tick": scale.tick(inches),
                "per": scale.per(),
            }
        )

    def table(
        self,
        name: str,
        columns: "list[str]",
        rows: "list[list[str]]",
        pick: "int | None" = None,
    ) -> None:
        """Add a table of texts; `pick` is the row that the answer used."""
        self.tables.append({"name": name, "columns": columns, "rows": rows, "pick": pick})

    def draw(self, drawing: "Drawing | Callable[[], Drawing | list[Drawing]]") -> None:
        """Add a drawing; the first is the main one, the others are details.

        A function makes its drawing, or several, once they are wanted: a job has no use for them.
        """
        self.drawings.append(drawing)

    def note(self, text: str) -> None:
        """Add a sentence worth knowing."""
        self.notes.append(text)

    def caution(self, text: str) -> None:
        """Add a caution that this answer calls for, before the tool's own."""
        self.cautions.append(text)

    def keep(self, rows: str, words: str, row: "dict[str, Any]") -> None:
        """Offer to put a row on a list of the person's own, with one tap.

        Parameters
        ----------
        rows : str
            The input with rows that the phone keeps, as `Rows.kept` says.
        words : str
            What is kept: ``2x4, 1 3/4 x 3 1/2``.
        row : dict
            Raw values of its columns: inches, dollars, texts.
        """
        self.keeps.append({"input": rows, "words": words, "row": row})

    def offcut(self, length: float, width: "float | None" = None, count: int = 1) -> None:
        """Add what a plan leaves that is worth keeping; inches."""
        self.offcuts.append({"length": length, "width": width, "count": count})

    def to_json(self, is_drawn: bool = True) -> "dict[str, Any]":
        """Return the answer's own part of the contract's JSON object, perhaps without drawings."""
        drawings = [view.to_json() for view in self._views()] if is_drawn else []
        return {
            "units": self.scale.units,
            "step": self.scale.step,
            "verdict": self.decision,
            "figures": self.figures,
            "pieces": self.pieces,
            "marks": self.marks,
            "tables": self.tables,
            "drawing": drawings[0] if drawings else None,
            "details": drawings[1:],
            "notes": self.notes,
            "cautions": self.cautions,
            "keeps": self.keeps,
            "offcuts": self.offcuts,
            "progress": self.progress,
            "is_brief": self.is_brief,
        }

    def _views(self) -> "list[Drawing]":
        made = [each if isinstance(each, Drawing) else each() for each in self.drawings]
        return [view for each in made for view in (each if isinstance(each, list) else [each])]

    def _figure(
        self, name: str, kind: str, value: "Any", text: str, label: str, short: str, lead: bool
    ) -> "dict[str, Any]":
        if kind != "text":
            _finite(value)
        figure: dict[str, Any] = {"name": name, "label": label, "short": short, "kind": kind}
        figure["value"], figure["text"], figure["lead"] = value, text, lead
        figure["also"], figure["tick"], figure["per"] = "", None, None
        self.figures.append(figure)
        return figure


def _finite(value: float) -> None:
    if not -1e15 < value < 1e15:
        raise ValueError("a figure is not a finite number")
