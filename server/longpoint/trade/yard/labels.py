"""Read a label as the yard writes it, and write a size back as a label."""

from ..lengths import Scale, read_length
from ..reading import Unreadable, quoted
from ..tool import Refusal

_CROSSES = ("×", "✕", "*", "by", "X")
_MOST_PARTS = 3  # Thickness, width and the length that some labels carry.
_SAME = 1e-6  # Inches: far below any step between two sizes.


def parts_of(label: str, like: str) -> "list[float]":
    """Return the sizes that a label names, in inches, as they stand in it.

    Parameters
    ----------
    label : str
        As ``2x4``, ``5/4 x 6``, ``1-1/4x6``, ``2 by 4`` or ``23/32"``; a third size is a length.
    like : str
        Labels that would do, for the sentence.

    Raises
    ------
    Refusal
        On the field `label`.

    >>> parts_of("5/4 × 6", "2x4"), parts_of('23/32"', "3/4")
    ([1.25, 6.0], [0.71875])
    """
    plain = label
    for cross in _CROSSES:
        plain = plain.replace(cross, "x")
    try:
        sizes = [read_length(part) for part in plain.split("x")]
    except Unreadable:
        sizes = []
    if not sizes or len(sizes) > _MOST_PARTS or min(sizes) <= 0:
        raise Refusal(
            "label", f"{quoted(label)} is not a label that can be read: write it like {like}."
        )
    return sizes


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
