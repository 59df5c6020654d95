"""What there is to ask for: the person's own list first, then what yards commonly carry."""

from ...lumber.board_feet import board_feet
from ...lumber.common import common_labels
from ...lumber.labels import claimed, same_sizes
from ...lumber.listed import Listed, listed
from ...reading import quoted
from ...refusal import Refusal

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ..yard_list import Seen

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
        self.sizes = sizes
        self.nominal = (sizes[0], sizes[1] if len(sizes) > 1 else None)
        self.standard = standard
        self.seen = seen
        thickness = seen.thickness if seen is not None else standard[0]
        self.thickness = thickness or 0.0
        width = seen.width if seen is not None and seen.width is not None else standard[1]
        self.guessed = width is None
        self.width = wide if width is None else width

    def billed_feet(self, length: float) -> float:
        """Return the board feet that the yard counts in `length` inches of it."""
        thickness, width = self.nominal
        return board_feet(thickness, self.width if width is None else width, length)

    def origin(self) -> str:
        """Return where its size comes from."""
        return "standard" if self.seen is None else self.seen.origin()

    @property
    def own_length(self) -> "float | None":
        """The one length it is sold in, where the list has its price by the piece; inches."""
        if self.seen is None or self.seen.per != "each":
            return None
        return self.seen.length


def offers_of(
    family: str, condition: str, seen: "list[Seen]", wide: float, label: str
) -> "list[Offer]":
    """Return the list's rows and then the common labels that are not on it.

    Parameters
    ----------
    seen : list of Seen
        The rows of the person's list for this kind of stock.
    wide : float
        Inches to count on where boards come in random widths.
    label : str
        The one label to offer; empty for all.

    Raises
    ------
    Refusal
        On `use`: a label that can't be read, or that neither list nor table has.
    """
    seen = _latest(seen)
    offers = [Offer(row.label, row.sizes, _standard(row, condition), row, wide) for row in seen]
    labels = common_labels(family) if label == "" else [label]
    for each in labels:
        sizes = claimed(family, each, "use")
        if not [row for row in seen if same_sizes(row.sizes, sizes)]:
            table = _by_table(family, each, condition, label != "")
            if table[0] is not None:
                offers.append(Offer(each, sizes, table, None, wide))
    if label == "":
        return offers
    wanted = claimed(family, label, "use")
    return _some([offer for offer in offers if same_sizes(offer.sizes, wanted)], label)


def _some(offers: "list[Offer]", label: str) -> "list[Offer]":
    if not offers:
        raise Refusal("use", f"Nothing says what {quoted(label)} measures: put it on your list.")
    return offers


def _by_table(family: str, label: str, condition: str, asked_for: bool) -> "Sizes":
    try:
        return _sizes(listed(family, label, condition))
    except Refusal as refusal:
        if asked_for:
            raise Refusal("use", refusal.errors[0].message)
        raise


def _latest(seen: "list[Seen]") -> "list[Seen]":
    """Leave out rows that a later one of the same yard, label and length has overtaken."""
    kept: list[Seen] = []
    for at, row in enumerate(seen):
        later = [
            other
            for other in seen[at + 1 :]
            if other.place == row.place
            and other.length == row.length
            and same_sizes(other.sizes, row.sizes)
        ]
        if not later:
            kept.append(row)
    return kept


def _standard(row: "Seen", condition: str) -> "Sizes":
    try:
        return _sizes(listed(row.family, row.label, condition))
    except Refusal:
        return (None, None)


def _sizes(found: Listed) -> "Sizes":
    return (found.thickness, found.width)
