"""The finish plans of a job as a calendar file: iCalendar, RFC 5545, written by `icalendar`."""

from datetime import datetime
from typing import Any

from icalendar import Calendar, Event

MEDIA_TYPE = "text/calendar"
NO_DAY = "A calendar needs moments: say on which day the work begins, in the job's finish.starts."


def calendar_of(title: str, plans: list[dict[str, Any]], stamp: datetime) -> bytes | None:
    """Return the file with an event for each step of the plans that have their days.

    Parameters
    ----------
    title : str
        Of the job.
    plans : list of dict
        As `FinishPlan` declares them.
    stamp : datetime
        The moment of writing, in UTC.

    Returns
    -------
    bytes or None
        None where no plan has its days. Times are local, of no time zone, as the shop's clock is.
    """
    dated = [plan for plan in plans if plan["begins"]]
    if not dated:
        return None
    calendar = Calendar()
    calendar.add("version", "2.0")
    calendar.add("prodid", "-//Longpoint//Finish plan//EN")
    for plan in dated:
        called = ", ".join(part for part in (title, plan["item"]) if part)
        for step in plan["steps"]:
            calendar.add_component(_event(called, step, stamp))
    file: bytes = calendar.to_ical()
    return file


def _event(called: str, step: dict[str, Any], stamp: datetime) -> Event:
    event = Event()
    event.add("uid", step["of"] + "@longpoint")
    event.add("dtstamp", stamp)
    event.add("dtstart", datetime.fromisoformat(step["begins"]))
    event.add("dtend", datetime.fromisoformat(step["ends"]))
    event.add("summary", f"{called}: {step['words']}" if called else step["words"])
    if step["window"]:
        event.add("description", step["window"])
    return event
