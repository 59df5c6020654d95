"""Softwood lumber: the least size it may have, dressed, under each nominal size.

Source: NIST PS 20-20, American Softwood Lumber Standard, tables of nominal and minimum-dressed
sizes for boards, dimension and timbers, seen as reprinted in engineering tables. Dry means at
most 19 % moisture content. Inches throughout.
"""

from collections import namedtuple

Size = namedtuple("Size", ("nominal", "dry", "green"))
"""A nominal size and what it must at least measure, dry and green; inches."""

Off = namedtuple("Off", ("least", "most", "dry", "green"))
"""A run of nominal sizes in whole inches, and what dressing takes off them; inches."""

BOARD_THICKNESSES = (
    Size(3 / 8, 5 / 16, 11 / 32),
    Size(1 / 2, 7 / 16, 15 / 32),
    Size(5 / 8, 9 / 16, 19 / 32),
    Size(3 / 4, 5 / 8, 11 / 16),
    Size(1, 3 / 4, 25 / 32),
    Size(1 + 1 / 4, 1, 1 + 1 / 32),
    Size(1 + 1 / 2, 1 + 1 / 4, 1 + 9 / 32),
)

BOARD_WIDTHS = (
    Size(2, 1 + 1 / 2, 1 + 9 / 16),
    Size(3, 2 + 1 / 2, 2 + 9 / 16),
    Size(4, 3 + 1 / 2, 3 + 9 / 16),
    Size(5, 4 + 1 / 2, 4 + 5 / 8),
    Size(6, 5 + 1 / 2, 5 + 5 / 8),
    Size(7, 6 + 1 / 2, 6 + 5 / 8),
    Size(8, 7 + 1 / 4, 7 + 1 / 2),
    Size(9, 8 + 1 / 4, 8 + 1 / 2),
    Size(10, 9 + 1 / 4, 9 + 1 / 2),
    Size(11, 10 + 1 / 4, 10 + 1 / 2),
    Size(12, 11 + 1 / 4, 11 + 1 / 2),
    Size(14, 13 + 1 / 4, 13 + 1 / 2),
    Size(16, 15 + 1 / 4, 15 + 1 / 2),
)

DIMENSION_THICKNESSES = (
    Size(2, 1 + 1 / 2, 1 + 9 / 16),
    Size(2 + 1 / 2, 2, 2 + 1 / 16),
    Size(3, 2 + 1 / 2, 2 + 9 / 16),
    Size(3 + 1 / 2, 3, 3 + 1 / 16),
    Size(4, 3 + 1 / 2, 3 + 9 / 16),
    Size(4 + 1 / 2, 4, 4 + 1 / 16),
)

DIMENSION_WIDTHS = (
    Size(2, 1 + 1 / 2, 1 + 9 / 16),
    Size(2 + 1 / 2, 2, 2 + 1 / 16),
    Size(3, 2 + 1 / 2, 2 + 9 / 16),
    Size(3 + 1 / 2, 3, 3 + 1 / 16),
    Size(4, 3 + 1 / 2, 3 + 9 / 16),
    Size(4 + 1 / 2, 4, 4 + 1 / 16),
    Size(5, 4 + 1 / 2, 4 + 5 / 8),
    Size(6, 5 + 1 / 2, 5 + 5 / 8),
    Size(8, 7 + 1 / 4, 7 + 1 / 2),
    Size(10, 9 + 1 / 4, 9 + 1 / 2),
    Size(12, 11 + 1 / 4, 11 + 1 / 2),
    Size(14, 13 + 1 / 4, 13 + 1 / 2),
    Size(16, 15 + 1 / 4, 15 + 1 / 2),
)

# The standard's last row reads "16 and up"; longer lists than this only slow the phone.
TIMBER_OFF = (Off(5, 6, 1 / 2, 1 / 2), Off(7, 15, 3 / 4, 1 / 2), Off(16, 36, 1, 1 / 2))

CLASSES = ("boards", "dimension", "timbers")


def class_of(thickness: float) -> str:
    """Return the class of a nominal thickness: boards, dimension from 2, timbers from 5 inches.

    >>> class_of(1.25), class_of(2), class_of(6)
    ('boards', 'dimension', 'timbers')
    """
    if thickness < 2:
        return "boards"
    return "dimension" if thickness < 5 else "timbers"


def timbers() -> "list[Size]":
    """Return the timber sizes, which hold for thickness and width alike.

    >>> timbers()[1]
    Size(nominal=6, dry=5.5, green=5.5)
    """
    return [
        Size(nominal, nominal - off.dry, nominal - off.green)
        for off in TIMBER_OFF
        for nominal in range(off.least, off.most + 1)
    ]


def thicknesses() -> "list[Size]":
    """Return every thickness, thinnest first."""
    return list(BOARD_THICKNESSES) + list(DIMENSION_THICKNESSES) + timbers()


def widths(thickness: float) -> "list[Size]":
    """Return the widths that stock of a nominal thickness comes in, narrowest first."""
    kind = class_of(thickness)
    if kind == "timbers":
        return timbers()
    return list(BOARD_WIDTHS if kind == "boards" else DIMENSION_WIDTHS)
