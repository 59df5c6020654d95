"""Coats by the rows of a plan: a row that stands for a paint is each coat of it, by one label."""

from .schedule import LABEL_HOURS, Coat

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

ONE = "one"
"""What a row stands for that is one coat."""
PAINTS = ("primer", "topcoat")
"""What a row else stands for: all coats of that paint."""


def number_name(paint: str) -> str:
    """Return the input that says how many coats of a paint there are.

    >>> number_name("primer")
    'primer_coats'
    """
    return paint + "_coats"


def film_name(paint: str) -> str:
    """Return the input that says how thick a coat of a paint dries.

    >>> film_name("topcoat")
    'topcoat_film'
    """
    return paint + "_film"


def stands_for(row: "dict[str, Any]") -> str:
    """Return what a row stands for; one coat where it doesn't say."""
    return row.get("paint") or ONE


def coats_of(rows: "list[dict[str, Any]]", numbers: "dict[str, int]") -> "list[Coat]":
    """Return the coats of a plan's rows in order.

    Parameters
    ----------
    rows : list of dict
        As read: `name`, `paint`, `minutes`, `sanding` and the label's hours.
    numbers : dict
        By paint: how many coats of it are put on.
    """
    coats: list[Coat] = []
    for row in rows:
        paint = stands_for(row)
        number = 1 if paint == ONE else numbers[paint]
        name = row["name"] or ("" if paint == ONE else paint[0].upper() + paint[1:])
        for at in range(number):
            each = f"{name} {at + 1}" if number > 1 else name
            coats.append(_coat(row, each or f"Coat {len(coats) + 1}"))
    return coats


def films_of(
    rows: "list[dict[str, Any]]", numbers: "dict[str, int]", films: "dict[str, float | None]"
) -> "list[tuple[str, int, float | None]]":
    """Return name, number of coats and mils dry of one of each row; None where nobody said.

    `films` are mils by what rows stand for.

    >>> films_of([{"name": "", "paint": "primer"}], {"primer": 2}, {"primer": 1.5})
    [('primer', 2, 1.5)]
    """
    found: list[tuple[str, int, float | None]] = []
    for row in rows:
        paint = stands_for(row)
        name = row["name"] or ("coat" if paint == ONE else paint)
        number = 1 if paint == ONE else numbers[paint]
        found.append((name, number, films.get(paint)))
    return found


def _coat(row: "dict[str, Any]", name: str) -> Coat:
    coat = Coat(name, int(row["minutes"] + 0.5), int(row["sanding"] + 0.5))
    return coat.by_label({hours: row[hours] for hours in LABEL_HOURS})
