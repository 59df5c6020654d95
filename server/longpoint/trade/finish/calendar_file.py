"""A calendar file of events in local time: iCalendar, RFC 5545."""

from ..refusal import Refusal
from .dates import is_moment

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

LONGEST = 75
"""Bytes of a line, without its end: section 3.1."""


def calendar_file(title: str, events: "list[dict[str, Any]]", stamp: str) -> str:
    """Return the text of a calendar file.

    Parameters
    ----------
    events : list of dict
        `id`, `begins` and `ends` as local moments, `words`, `note`.
    stamp : str
        The moment of writing, in UTC: ``2026-11-30T07:45``.
    """
    lines = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Longpoint//Finish plan//EN"]
    for event in events:
        lines += [
            "BEGIN:VEVENT",
            "UID:" + escaped(event["id"]) + "@longpoint",
            "DTSTAMP:" + _compact(stamp) + "Z",
            "DTSTART:" + _compact(event["begins"]),
            "DTEND:" + _compact(event["ends"]),
            "SUMMARY:" + escaped(f"{title}: {event['words']}" if title else event["words"]),
        ]
        if event["note"]:
            lines.append("DESCRIPTION:" + escaped(event["note"]))
        lines.append("END:VEVENT")
    lines.append("END:VCALENDAR")
    return "".join([folded(line) + "\r\n" for line in lines])


def asked_for(request: "dict[str, Any]") -> str:
    """Return the calendar file that a request of the core's door asks for.

    Raises
    ------
    Refusal
        An event or the stamp has no moment.
    """
    names = ("id", "begins", "ends", "words", "note")
    events = [
        {name: str(each.get(name) or "") for name in names} for each in request.get("events") or []
    ]
    stamp = str(request.get("stamp") or "")
    moments = [stamp] + [each[name] for each in events for name in ("begins", "ends")]
    if not events or [moment for moment in moments if not is_moment(moment)]:
        raise Refusal("events", "A calendar needs moments: say on which day the work begins.")
    return calendar_file(str(request.get("title") or ""), events, stamp)


def escaped(text: str) -> str:
    """Return a text as a value: section 3.3.11.

    >>> print(escaped("Sand; turn, coat"))
    Sand\\; turn\\, coat
    """
    for char in ("\\", ";", ","):
        text = text.replace(char, "\\" + char)
    return text.replace("\r", "").replace("\n", "\\n")


def folded(line: str) -> str:
    """Return a line in parts of at most so many bytes, none of them a broken character."""
    parts, part, size = [], "", 0
    for char in line:
        wide = len(char.encode())
        if size + wide > LONGEST:
            parts.append(part)
            part, size = " ", 1
        part, size = part + char, size + wide
    return "\r\n".join(parts + [part])


def _compact(moment: str) -> str:
    """Return ``2026-11-30T07:45`` as ``20261130T074500``.

    Raises
    ------
    ValueError
        It is no moment.
    """
    if not is_moment(moment):
        raise ValueError("no moment: " + moment)
    return moment[:16].replace("-", "").replace(":", "") + "00"
