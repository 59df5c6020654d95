"""The person's own list: what the tape said at the yard under each label, and what it costs."""

from ..lengths import Scale, show_money
from ..lumber.labels import claimed, same_sizes
from ..reading import quoted
from ..tool import Answer, Choice, Length, Number, Refusal, Rows, Text
from .sizes import sizes_words

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

KEPT = "yard-sizes"
"""Name under which the phone keeps the list, once for all tools that ask for it."""

MOST = 200

_LARGEST = 60  # Inches: more than any stock is sawn thick or wide; guards the sums of the bill.

UNITS = (("board-foot", "board foot"), ("lineal-foot", "lineal foot"), ("each", "piece"))
"""What a price on the list may be for, and how it is said."""


def yard_input() -> Rows:
    """Return the input `yard`: the list as any tool asks for it."""
    return Rows(
        "yard",
        "Your yard's sizes",
        [
            Text("label", "Label", help="As the yard writes it: 2x4, 5/4x6, 8/4 or 23/32."),
            Length("thickness", "Thickness", most=60, help="By the tape."),
            Length("width", "Width", optional=True, default_text="not said", most=120),
            Choice(
                "family",
                "Kind of stock",
                [("softwood", "softwood"), ("hardwood", "hardwood"), ("sheet", "sheet")],
                default="softwood",
            ),
            Number(
                "price",
                "Price",
                unit="$",
                optional=True,
                default_text="not said",
                above=0,
                most=10000,
            ),
            Choice(
                "per",
                "Price per",
                list(UNITS),
                default="board-foot",
            ),
            Length(
                "length",
                "Length of a piece",
                optional=True,
                default_text="not said",
                only_when=("per", "each"),
            ),
            Text("yard_name", "Yard", optional=True, default_text="not said"),
            Text("date", "Date", optional=True, default_text="not said"),
        ],
        row="size",
        least=0,
        most=MOST,
        kept=KEPT,
        help="What your tape said there. It goes before the table.",
    )


class Seen:
    """One row of the list as read; lengths in inches, None where the list doesn't say.

    Attributes
    ----------
    label : str
        As the yard writes it.
    sizes : list
        The sizes that the label claims, as `labels.claimed` returns them.
    thickness, width, length : float or None
        What the tape said; `length` is that of a piece sold by the piece.
    price : float or None
        Dollars `per` board-foot, lineal-foot or each.
    """

    def __init__(self, row: "dict[str, Any]", index: int) -> None:
        self.family: str = row["family"]
        self.label: str = row["label"]
        self.sizes = _claimed(self.family, self.label, f"yard.{index}.label")
        self.thickness: float = row["thickness"]
        self.width: float | None = row["width"]
        self.price: float | None = row["price"]
        self.per: str = row["per"]
        self.length: float | None = row["length"]
        self.place: str = row["yard_name"] or ""
        self.date: str = row["date"] or ""

    def origin(self) -> str:
        """Return where the size comes from: ``your list, Miller's, May 3``."""
        return ", ".join([word for word in ("your list", self.place, self.date) if word])

    def price_words(self) -> str:
        """Return the price: ``$4.50 a board foot``; "" where it isn't known."""
        return "" if self.price is None else f"{show_money(self.price)} a {dict(UNITS)[self.per]}"

    def size_words(self, say: "Callable[[float], str]") -> str:
        """Return the real size: ``1 3/4 x 3 1/2``."""
        return say(self.thickness) + ("" if self.width is None else " x " + say(self.width))


def _claimed(family: str, label: str, field: str) -> "list[float]":
    """Return what a label claims; no board or sheet claims more than `_LARGEST`."""
    sizes = claimed(family, label, field)
    if max(sizes) > _LARGEST:
        raise Refusal(
            field, f"{quoted(label)} claims more than {_LARGEST} inches: is it a label of stock?"
        )
    return sizes


def seen_of(rows: "list[dict[str, Any]]", family: str) -> "list[Seen]":
    """Return the list's rows of one family, in the list's order.

    Parameters
    ----------
    rows : list of dict
        Values by column, as read.

    Raises
    ------
    Refusal
        On the label of a row, where it can't be read.
    """
    return [Seen(row, at) for at, row in enumerate(rows) if row["family"] == family]


def find(seen: "list[Seen]", family: str, label: str) -> "list[Seen]":
    """Return the rows under a label however it is written; the last one is the latest kept.

    Raises
    ------
    Refusal
        On `label`, where it can't be read.
    """
    sizes = claimed(family, label)
    return [row for row in seen if same_sizes(row.sizes, sizes)]


def keep_size(
    answer: Answer,
    label: str,
    family: str,
    thickness: float,
    width: "float | None",
    price: "float | None" = None,
    per: str = "board-foot",
) -> None:
    """Offer to put a real size on the list; inches, and dollars `per` unit where known."""
    row: dict[str, Any] = {"label": label, "thickness": thickness, "family": family}
    if width is not None:
        row["width"] = width
    if price is not None:
        row["price"], row["per"] = price, per
    words = f"{label}: {sizes_words(thickness, width, answer.scale)}"
    if price is not None:
        words += f", {show_money(price)} a {dict(UNITS)[per]}"
    answer.keep("yard", words, row)


def show_seen(answer: Answer, seen: "list[Seen]") -> None:
    """Add the list's rows under one label to an answer; the last of them is what it used."""
    say = answer.scale.finer().length
    rows = [
        [row.label, row.size_words(say), row.price_words(), row.place, row.date] for row in seen
    ]
    columns = ["Label", "Your tape", "Price", "Yard", "Date"]
    answer.table("On your list", columns, rows, len(rows) - 1)


def beside_note(seen: Seen, table: "tuple[float | None, float | None]", scale: Scale) -> str:
    """Return what the list says and, beside it, the standard; thickness and width in inches."""
    say = scale.finer().length
    note = f"By {seen.origin()}: {seen.label} is {seen.size_words(say)}"
    standard = [say(size) for size in table if size is not None]
    if not standard:
        return note + "; no table lists it."
    return note + f"; by the standard {' x '.join(standard)}. Your list goes before the table."
