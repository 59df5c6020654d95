"""Working hours: when work of so many minutes can begin; minutes from midnight of the first day."""

from ..reading import DIGITS

DAY = 1440
DAYS = (
    ("mon", "Monday"), ("tue", "Tuesday"), ("wed", "Wednesday"), ("thu", "Thursday"),
    ("fri", "Friday"), ("sat", "Saturday"), ("sun", "Sunday"),
)  # fmt: skip
SHORT = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")


def minutes_of(text: str) -> "int | None":
    """Return a time of day in minutes, or None for what is none.

    >>> minutes_of("7:30"), minutes_of("7"), minutes_of("1:15 pm"), minutes_of("12 am")
    (450, 420, 795, 0)
    >>> minutes_of("25:00"), minutes_of("half past")
    (None, None)
    """
    plain = text.strip().lower().replace(".", "")
    half = plain[-2:] if plain[-2:] in ("am", "pm") else ""
    hours, _, minutes = plain[: len(plain) - len(half)].strip().partition(":")
    if not _is_short(hours) or (minutes and not _is_short(minutes)):
        return None
    hour, minute = int(hours), int(minutes or "0")
    if half and not 1 <= hour <= 12:
        return None
    if half:
        hour = hour % 12 + (12 if half == "pm" else 0)
    whole = 60 * hour + minute
    return whole if minute < 60 and whole <= DAY else None


def _is_short(text: str) -> bool:
    return 1 <= len(text) <= 2 and not [c for c in text if c not in DIGITS]


def clock(minutes: int) -> str:
    """Return a time of day as it is said.

    >>> clock(450), clock(795), clock(0), clock(720)
    ('7:30 am', '1:15 pm', '12:00 am', '12:00 pm')
    """
    hour, minute = divmod(minutes % DAY, 60)
    shown = str(100 + minute)[1:]
    return f"{(hour + 11) % 12 + 1}:{shown} " + ("am" if hour < 12 else "pm")


def lasting(minutes: int) -> str:
    """Return a time that something lasts.

    >>> lasting(40), lasting(120), lasting(80)
    ('40 min', '2 h', '1 h 20 min')
    """
    hours, rest = divmod(minutes, 60)
    words = ([f"{hours} h"] if hours else []) + ([f"{rest} min"] if rest or not hours else [])
    return " ".join(words)


class Week:
    """When there is work: from and to on each working day.

    Parameters
    ----------
    first : int
        The first day, 0 for a Monday.
    working : int
        Days a week from Monday on: 5, 6 or 7.
    begin, end : int
        Minutes of a day.
    """

    def __init__(self, first: int, working: int, begin: int, end: int) -> None:
        self.first = first
        self.working = working
        self.begin = begin
        self.end = end

    def is_working(self, day: int) -> bool:
        """Tell whether there is work on a day, counted from the first."""
        return (self.first + day) % 7 < self.working

    def next(self, ready: int, takes: int) -> int:
        """Return when work that is ready and takes so long in one go can begin.

        >>> week = Week(4, 5, 420, 960)  # Friday, 7 to 4
        >>> week.next(900, 60), week.next(901, 60) == 3 * DAY + 420
        (900, True)
        """
        day = ready // DAY
        while True:
            begin = max(ready, day * DAY + self.begin)
            if self.is_working(day) and begin + takes <= day * DAY + self.end:
                return begin
            day += 1

    def said(self, at: int) -> str:
        """Return a moment in words, with its day counted where a week has passed.

        >>> Week(0, 5, 420, 960).said(450), Week(0, 5, 420, 960).said(7 * DAY + 450)
        ('Mon 7:30 am', 'Mon 7:30 am (day 8)')
        """
        day = at // DAY
        words = SHORT[(self.first + day) % 7] + " " + clock(at)
        return words + (f" (day {day + 1})" if day >= 7 else "")
