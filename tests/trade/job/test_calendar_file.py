"""The finish plan as a calendar file, read by a program of other hands."""

from datetime import datetime

import icalendar

from .asking import ask, refused


def event(at: int, words: str, note: str = "") -> dict[str, str]:
    return {"id": f"plan/{at}", "begins": f"2026-11-30T{8 + at:02}:00",
            "ends": f"2026-11-30T{9 + at:02}:00", "words": words, "note": note}  # fmt: skip


def test_the_calendar_file_is_read_by_another_program() -> None:
    note = "from Mon, 8:00 am; look for wrinkles\nand prints, ⅛ in and a good deal more " * 4
    events = [event(0, "Primer"), event(1, "Turn it, enamel; second face \\ both", note)]
    request = {"title": "Doors, finish", "events": events, "stamp": "2026-11-26T16:30"}
    text = ask(do="calendar", **request)["file"]
    assert all(len(line.encode()) <= 75 for line in text.split("\r\n"))
    assert "\n" not in text.replace("\r\n", "")
    calendar = icalendar.Calendar.from_ical(text)
    assert calendar.errors == []
    assert calendar["VERSION"] == "2.0"
    read = calendar.walk("VEVENT")
    said = [f"Doors, finish: {each['words']}" for each in events]
    assert [str(each["SUMMARY"]) for each in read] == said
    assert str(read[1]["DESCRIPTION"]) == note
    assert read[0]["DTSTART"].dt == datetime(2026, 11, 30, 8)
    assert read[0]["DTSTAMP"].dt.isoformat() == "2026-11-26T16:30:00+00:00"
    assert len({str(each["UID"]) for each in read}) == 2


def test_a_calendar_without_days_is_refused() -> None:
    events = [event(0, "Primer") | {"begins": ""}]
    assert refused(do="calendar", title="", events=events, stamp="2026-11-26T16:30") == [
        "A calendar needs moments: say on which day the work begins."
    ]
