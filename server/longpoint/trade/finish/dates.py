"""Dates in the calendar now in use, without a clock: days counted, said and written.

A date is ``2026-11-30``, a moment ``2026-11-30T07:45``, both local; what follows (seconds, an
offset) is passed over. ISO 8601.
"""

from ..reading import DIGITS
from .week import DAY, SHORT, clock

MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")
_PATTERN = "0000-00-00T00:00"


def is_date(text: str) -> bool:
    """Tell whether a text begins with a date that there is.

    >>> is_date("2026-11-30"), is_date("2026-02-29"), is_date("tomorrow")
    (True, False, False)
    """
    if not _fits(text, 10):
        return False
    year, month, day = _parts(text)
    if not (1 <= month <= 12 and 1 <= day <= 31 and 1900 <= year <= 2200):
        return False
    return date_text(day_number(text)) == text[:10]


def is_moment(text: str) -> bool:
    """Tell whether a text begins with a moment that there is."""
    return is_date(text) and _fits(text, 16) and int(text[11:13]) < 24 and int(text[14:16]) < 60


def _fits(text: str, length: int) -> bool:
    shape = ["0" if char in DIGITS else char for char in text[:length]]
    return "".join(shape) == _PATTERN[:length]


def _parts(text: str) -> "tuple[int, int, int]":
    return int(text[:4]), int(text[5:7]), int(text[8:10])


def day_number(text: str) -> int:
    """Return the days from 1970-01-01 to a date.

    >>> day_number("1970-01-01"), day_number("2026-11-30")
    (0, 20787)
    """
    year, month, day = _parts(text)
    # Years that begin in March have their odd day last.
    year, month = (year, month - 3) if month > 2 else (year - 1, month + 9)
    leaps = year // 4 - year // 100 + year // 400
    return 365 * year + leaps + (153 * month + 2) // 5 + day - 719469


def date_text(number: int) -> str:
    """Return the date so many days after 1970-01-01.

    >>> date_text(20787)
    '2026-11-30'
    """
    days = number + 719468
    era, of_era = divmod(days, 146097)
    year = (of_era - of_era // 1460 + of_era // 36524 - of_era // 146096) // 365
    of_year = of_era - (365 * year + year // 4 - year // 100)
    month = (5 * of_year + 2) // 153
    day = of_year - (153 * month + 2) // 5 + 1
    year += 400 * era + (1 if month > 9 else 0)
    month = month + 3 if month < 10 else month - 9
    return f"{year}-{_two(month)}-{_two(day)}"


def weekday(number: int) -> int:
    """Return the day of the week, 0 for a Monday.

    >>> weekday(day_number("2026-11-30"))
    0
    """
    return (number + 3) % 7


def minutes_from(first: int, moment: str) -> int:
    """Return the minutes from the midnight that day `first` begins with to a moment."""
    days = day_number(moment) - first
    return days * DAY + int(moment[11:13]) * 60 + int(moment[14:16])


def moment_text(first: int, minutes: int) -> str:
    """Return the moment so many minutes after that midnight.

    >>> moment_text(20787, 1905)
    '2026-12-01T07:45'
    """
    day, rest = divmod(minutes, DAY)
    return f"{date_text(first + day)}T{_two(rest // 60)}:{_two(rest % 60)}"


def said(first: int, minutes: int) -> str:
    """Return the same as it is said.

    >>> said(20787, 1905)
    'Tue Dec 1, 7:45 am'
    """
    number = first + minutes // DAY
    _, month, day = _parts(date_text(number))
    return f"{SHORT[weekday(number)]} {MONTHS[month - 1]} {day}, {clock(minutes)}"


def _two(number: int) -> str:
    return str(100 + number)[1:]
