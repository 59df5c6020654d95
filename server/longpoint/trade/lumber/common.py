"""What yards commonly carry under each kind of stock, as they label it.

Common practice, no source: the standards' tables list many sizes that no yard keeps.
"""

_ROWS = (
    ("softwood", ("1x2", "1x3", "1x4", "1x6", "1x8", "1x10", "1x12", "5/4x4", "5/4x6", "6/4x6")),
    ("softwood", ("2x2", "2x4", "2x6", "2x8", "2x10", "2x12", "4x4", "4x6", "6x6", "6x8", "8x8")),
    ("hardwood", ("4/4", "5/4", "6/4", "8/4", "10/4", "12/4", "16/4", "3/4", "1/2")),
    ("sheet", ("1/4", "3/8", "15/32", "1/2", "19/32", "5/8", "23/32", "3/4", "1", "1-1/8")),
)

COMMON = tuple([(family, label) for family, labels in _ROWS for label in labels])
"""Pairs of kind of stock and label."""


def common_labels(family: str) -> "list[str]":
    """Return the labels of one kind of stock.

    >>> common_labels("hardwood")[:3]
    ['4/4', '5/4', '6/4']
    """
    return [label for kind, label in COMMON if kind == family]
