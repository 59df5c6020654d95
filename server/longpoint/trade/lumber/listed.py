"""What the published tables say about a label, one reader per family."""

from ..reading import quoted
from ..refusal import Refusal
from ..tables import hardwood, sheets, softwood
from .labels import board_words, claimed, index_of, nearest, parts_of, size_words

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    Offered = list[tuple[str, float]]


class Listed:
    """One label's rows in the tables; inches throughout.

    Attributes
    ----------
    name : str
        The label as the yard writes it.
    nominal : tuple
        Thickness and width that the label claims; the width is None where it claims none.
    thickness, width : float or None
        What the tables say; None where they say nothing.
    least, most : float or None
        What a sheet may measure, or the least of a kiln-dried board.
    row, width_row : int or None
        Where the sizes stand in the family's lists; None where they don't.
    thicker, wider : function
        Give all sizes sold like this one as (label, inches), smallest first. Their labels take
        longer to write than a size to look up, and are seldom asked for.
    shifted : bool
        The label was written width first.
    """

    def __init__(self, name: str, nominal: "tuple[float, float | None]") -> None:
        self.name = name
        self.nominal = nominal
        self.thickness: float | None = None
        self.width: float | None = None
        self.least: float | None = None
        self.most: float | None = None
        self.row: int | None = None
        self.width_row: int | None = None
        self.thicker: Callable[[], Offered] = list
        self.wider: Callable[[], Offered] = list
        self.shifted = False


def listed(family: str, label: str, condition: str) -> Listed:
    """Return what the tables say.

    Raises
    ------
    Refusal
        The label can't be read or stands in no table; the sentence names the nearest that do.
    """
    if family == "softwood":
        return _softwood(label, condition)
    return _hardwood(label, condition) if family == "hardwood" else _sheet(label, condition)


def unlisted(label: str, sizes: "list[float]") -> Listed:
    """Return a label that stands in no table, with the sizes it claims in inches."""
    return Listed(label, (sizes[0], sizes[1] if len(sizes) > 1 else None))


def _softwood(label: str, condition: str) -> Listed:
    sizes = claimed("softwood", label)
    thick = softwood.thicknesses()
    names = [size.nominal for size in thick]
    row = index_of(names, sizes[0])
    if row < 0:
        raise _unknown(label, "softwood", [board_words(n) for n in nearest(names, sizes[0])])
    across = softwood.widths(sizes[0])
    word = board_words(sizes[0])
    found = Listed(word, (sizes[0], sizes[1] if len(sizes) > 1 else None))
    found.row, found.shifted = row, sizes != parts_of(label, "softwood")[:2]
    found.thickness = _at(thick[row], condition)
    found.thicker = lambda: [(board_words(each.nominal), _at(each, condition)) for each in thick]
    found.wider = lambda: [
        (word + "x" + size_words(each.nominal), _at(each, condition)) for each in across
    ]
    if len(sizes) > 1:
        _softwood_width(found, label, across, condition)
    return found


def _softwood_width(
    found: Listed, label: str, across: "list[softwood.Size]", condition: str
) -> None:
    """Fill in the width, or refuse one that this thickness isn't sold in."""
    wanted, names = found.nominal[1] or 0.0, [size.nominal for size in across]
    row = index_of(names, wanted)
    if row < 0:
        near = [found.name + "x" + size_words(n) for n in nearest(names, wanted)]
        raise _unknown(label, "softwood", near)
    found.width_row = row
    found.name += "x" + size_words(across[row].nominal)
    found.width = _at(across[row], condition)


def _at(size: "softwood.Size", condition: str) -> float:
    return float(size.dry if condition == "dry" else size.green)


def _hardwood(label: str, condition: str) -> Listed:
    thickness = claimed("hardwood", label)[0]
    names = [float(quarter.rough) for quarter in hardwood.QUARTERS]
    row = index_of(names, thickness)
    if row < 0:
        near = [hardwood.QUARTERS[index_of(names, n)].name for n in nearest(names, thickness)]
        raise _unknown(label, "hardwood", near)
    quarter = hardwood.QUARTERS[row]
    found = Listed(quarter.name, (thickness, None))
    found.row = row
    found.thickness = _surfaced(quarter, condition)
    found.least = hardwood.kiln_dried(thickness) if condition == "rough" else None
    found.thicker = lambda: _quarters(condition)
    return found


def _quarters(condition: str) -> "Offered":
    sizes = [(other.name, _surfaced(other, condition)) for other in hardwood.QUARTERS]
    return [(name, size) for name, size in sizes if size is not None]


def _surfaced(quarter: "hardwood.Quarter", condition: str) -> "float | None":
    size = {"rough": quarter.rough, "s1s": quarter.s1s, "s2s": quarter.s2s}[condition]
    return None if size is None else float(size)


def _sheet(label: str, condition: str) -> Listed:
    thickness = claimed("sheet", label)[0]
    rows = sheets.sheets(condition)
    names = [float(sheet.label) for sheet in rows]
    row = index_of(names, thickness)
    if row < 0:
        raise _unknown(label, "sheets sold so", [size_words(n) for n in nearest(names, thickness)])
    found = Listed(size_words(thickness), (thickness, None))
    found.row = row
    found.thickness, found.least, found.most = rows[row].usual, rows[row].least, rows[row].most
    found.thicker = lambda: [(size_words(sheet.label), sheet.usual) for sheet in rows]
    return found


def _unknown(label: str, family: str, near: "list[str]") -> Refusal:
    nearest_words = " and ".join(near)
    verb = "are" if len(near) > 1 else "is"
    return Refusal(
        "label",
        f"{quoted(label)} is not in the table for {family}: nearest {verb} {nearest_words}. "
        "Measure the piece if it carries that label all the same.",
    )
