"""Read a label as the yard writes it, and write a size back as a label."""

from ..lengths import Scale, read_length
from ..reading import Unreadable, quoted
from ..refusal import Refusal

_CROSSES = ("×", "✕", "*", "by", "X")
_MOST_PARTS = 3  # Thickness, width and the length that some labels carry.
_SAME = 1e-6  # Inches: far below any step between two sizes.
_LIKE = {
    "softwood": "2x4, 1x6, 5/4x6 or 6x6",
    "hardwood": "4/4, 5/4 or 8/4",
    "sheet": "3/4, 23/32 or 1/2",
}


def parts_of(label: str, family: str, field: str = "label") -> "list[float]":
    """Return the sizes that a label names, in inches, as they stand in it.

    Parameters
    ----------
    label : str
        As ``2x4``, ``5/4 x 6``, ``1-1/4x6``, ``2 by 4`` or ``23/32"``; a third size is a length.
    family : str
        softwood, hardwood or sheet.

    Raises
    ------
    Refusal
        On `field`.

    >>> parts_of("5/4 × 6", "softwood"), parts_of('23/32"', "sheet")
    ([1.25, 6.0], [0.71875])
    """
    plain = label
    for cross in _CROSSES:
        plain = plain.replace(cross, "x")
    try:
        sizes = [read_length(part, over_one=True) for part in plain.split("x")]
    except Unreadable:
        sizes = []
    if not sizes or len(sizes) > _MOST_PARTS or min(sizes) <= 0:
        raise Refusal(
            field,
            f"{quoted(label)} is not a label that can be read: write it like {_LIKE[family]}.",
        )
    return sizes


def claimed(family: str, label: str, field: str = "label") -> "list[float]":
    """Return the sizes that a label claims for its stock: thickness, and width where it counts.

    Hardwood comes in random widths, and a sheet's label may carry the sheet's own size before or
    after its thickness: 3/4x4x8, 4x8x3/4.

    >>> claimed("softwood", "4x2x8"), claimed("hardwood", "8/4"), claimed("sheet", "4x8x3/4")
    ([2.0, 4.0], [2.0], [0.75])
    """
    parts = parts_of(label, family, field)
    if family == "softwood":
        return sorted(parts[:2])
    return parts[:1] if family == "hardwood" else [min(parts)]


def same_sizes(sizes: "list[float]", others: "list[float]") -> bool:
    """Tell whether two labels claim the same sizes."""
    if len(sizes) != len(others):
        return False
    return all(abs(size - other) < _SAME for size, other in zip(sizes, others))


def size_words(inches: float) -> str:
    """Return a nominal size as it stands in a label.

    >>> size_words(2.5), size_words(23 / 32), size_words(4)
    ('2-1/2', '23/32', '4')
    """
    return Scale("in", 64).bare(inches).replace(" ", "-")


def board_words(inches: float) -> str:
    """Return a softwood thickness as the yard says it: five-quarter and six-quarter boards.

    >>> board_words(1.25), board_words(1)
    ('5/4', '1')
    """
    return size_words(inches * 4) + "/4" if inches in (1.25, 1.5) else size_words(inches)


def index_of(sizes: "list[float]", wanted: float) -> int:
    """Return where a nominal size stands in a list, or -1."""
    for index, size in enumerate(sizes):
        if abs(size - wanted) < _SAME:
            return index
    return -1


def nearest(sizes: "list[float]", wanted: float) -> "list[float]":
    """Return the sizes just below and just above `wanted`, one of them where it lies outside.

    >>> nearest([1, 2, 4], 3), nearest([1, 2, 4], 9)
    ([2, 4], [4])
    """
    below = [size for size in sizes if size < wanted]
    above = [size for size in sizes if size > wanted]
    return ([max(below)] if below else []) + ([min(above)] if above else [])
