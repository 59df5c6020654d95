"""What there is to ask for: the person's own list first, then what yards commonly carry."""

from ..lumber.common import common_labels
from ..lumber.labels import claimed, same_sizes
from ..lumber.listed import Listed, listed
from ..tool import Given, Refusal
from .yard_list import Seen, seen_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    Sizes = tuple[float | None, float | None]


class Offer:
    """Stock that can be asked for; inches.

    Attributes
    ----------
    label : str
        What to ask for.
    nominal : tuple
        Thickness and width that the bill counts; the width is None where the board's own counts.
    thickness, width : float
        What it really measures.
    standard : tuple
        Thickness and width by the standard, None where it says nothing.
    seen : Seen or None
        The row of the person's list, if it comes from there.
    guessed : bool
        Nothing says how wide it is: `width` is the one the person counts on.
    """

    def __init__(
        self, label: str, sizes: "list[float]", standard: "Sizes", seen: "Seen | None", wide: float
    ) -> None:
        self.label = label
        self.nominal = (sizes[0], sizes[1] if len(sizes) > 1 else None)
        self.standard = standard
        self.seen = seen
        thickness = seen.thickness if seen is not None else standard[0]
        self.thickness = thickness or 0.0
        width = seen.width if seen is not None and seen.width is not None else standard[1]
        self.guessed = width is None
        self.width = wide if width is None else width

    def billed_feet(self, length: float) -> float:
        """Return the board feet that the yard counts in a board of `length` inches."""
        thickness, width = self.nominal
        across = self.width if width is None else width
        return max(thickness, 1.0) * across * length / 144

    def origin(self) -> str:
        """Return where its size comes from."""
        return "standard" if self.seen is None else self.seen.origin()


def offers_of(given: Given) -> "list[Offer]":
    """Return the list's rows and then the common labels that are not on it.

    Raises
    ------
    Refusal
        On a label of the list that can't be read.
    """
    family, condition = given.text("family"), given.text("condition")
    wide = given.number("board_width")
    seen = _latest(seen_of([row.values for row in given.rows("yard")], family))
    offers = [Offer(row.label, row.sizes, _standard(row, condition), row, wide) for row in seen]
    for label in common_labels(family):
        sizes = claimed(family, label)
        if not [row for row in seen if same_sizes(row.sizes, sizes)]:
            table = _sizes(listed(family, label, condition))
            if table[0] is not None:
                offers.append(Offer(label, sizes, table, None, wide))
    return offers


def _latest(seen: "list[Seen]") -> "list[Seen]":
    """Leave out rows that a later one of the same yard and label has overtaken."""
    kept: list[Seen] = []
    for at, row in enumerate(seen):
        later = [
            other
            for other in seen[at + 1 :]
            if other.place == row.place and same_sizes(other.sizes, row.sizes)
        ]
        if not later:
            kept.append(row)
    return kept


def _standard(row: Seen, condition: str) -> "Sizes":
    try:
        return _sizes(listed(row.family, row.label, condition))
    except Refusal:
        return (None, None)


def _sizes(found: Listed) -> "Sizes":
    return (found.thickness, found.width)
