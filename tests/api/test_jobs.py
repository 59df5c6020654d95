"""POST /api/jobs works a job out and keeps nothing; faults are named at their place."""

import json
from typing import Any

import icalendar
from flask.testing import FlaskClient

from longpoint.api.replies.job import Patterns
from longpoint.trade.calls import call

JOB: dict[str, Any] = {
    "longpoint": "job",
    "schema": 1,
    "id": "job-1",
    "title": "Porch",
    "items": [
        {
            "id": "item-1",
            "title": "Rail",
            "entries": [
                {
                    "id": "entry-1",
                    "letter": "A",
                    "tool": "corner-joint",
                    "inputs": {"corner": "90", "width_a": "3"},
                }
            ],
        }
    ],
}


def test_a_job_is_worked_out(client: FlaskClient) -> None:
    """Two pieces as wide at a square corner: both saws at 45."""
    reply = client.post("/api/jobs", json=JOB).get_json()
    (entry,) = reply["items"][0]["entries"]
    assert {each["name"]: each["value"] for each in entry["figures"]}["saw_a"] == 45
    assert reply["progress"] == 1


def test_a_fault_of_the_document_is_named_at_its_place(client: FlaskClient) -> None:
    wrong = JOB | {
        "items": [JOB["items"][0] | {"entries": [{"id": "e", "letter": "A", "tool": 7}]}]
    }
    reply = client.post("/api/jobs", json=wrong)
    assert reply.status_code == 422
    said = reply.get_json()["errors"]["json"]
    assert set(said) == {"items.0.entries.0.tool", "items.0.entries.0.inputs"}


def test_an_entry_s_own_errors_never_stop_the_job(client: FlaskClient) -> None:
    entry = JOB["items"][0]["entries"][0] | {"inputs": {"corner": "360", "width_a": "3"}}
    job = JOB | {"items": [JOB["items"][0] | {"entries": [entry]}]}
    reply = client.post("/api/jobs", json=job)
    assert reply.status_code == 200
    errors = reply.get_json()["items"][0]["entries"][0]["errors"]
    assert [error["field"] for error in errors] == ["corner"]


def test_its_schema_is_served(client: FlaskClient) -> None:
    schema = client.get("/api/job.schema.json").get_json()
    assert schema["$schema"] == "https://json-schema.org/draft/2020-12/schema"
    assert schema["required"] == ["longpoint", "schema", "id", "title", "items"]


def test_its_patterns_are_served(client: FlaskClient) -> None:
    reply = client.get("/api/patterns").get_json()
    assert Patterns().validate(reply) == {}
    titles = [pattern["title"] for pattern in reply["patterns"]]
    assert "New cased door" in titles


def finished(begins: str) -> dict[str, Any]:
    """Return a job that is finished in two coats, from a day on."""
    coats = [
        {"name": "Primer; thinned, \\ 5 %", "minutes": 60, "recoat_from": 4, "recoat_until": 24},
        {"name": "Enamel", "minutes": 60, "recoat_from": 16, "sanding": 0},
    ]
    inputs = {
        "air_temperature": 70, "humidity": 50, "coats": coats, "faces": "2", "start_day": "mon",
        "day_from": "8 am", "day_to": "5 pm", "working_days": "5", "hang_after": 24,
    }  # fmt: skip
    entry = {"id": "plan", "letter": "A", "tool": "finish-plan", "inputs": inputs}
    item = {"id": "i", "title": "Doors of the long hall that leads to the boot room and its bench"}
    starts = [{"id": "plan", "begins": begins}] if begins else []
    items = [JOB["items"][0], item | {"entries": [entry]}]
    return JOB | {"items": items, "finish": {"starts": starts}}


def events_of(file: str | bytes) -> list[dict[str, Any]]:
    """Return a calendar file's events without the moment of writing."""
    calendar = icalendar.Calendar.from_ical(file)
    assert (calendar.errors, calendar["VERSION"]) == ([], "2.0")
    return [
        {name: each.decoded(name) for name in each if name != "DTSTAMP"}
        for each in calendar.walk("VEVENT")
    ]


def test_its_finish_plan_is_a_calendar_file_as_the_phone_s_own(client: FlaskClient) -> None:
    """By hand: primer Monday from 8, turned after 4 h, at 1 pm; enamel 4 h after that face: 6 pm
    is after work, so Tuesday 8 am; turned after 16 h, Wednesday 8 to 9; hung Thursday 9 am."""
    job = finished("2026-11-30")
    reply = client.post("/api/jobs/calendar", json=job)
    assert (reply.status_code, reply.mimetype) == (200, "text/calendar")
    events = events_of(reply.data)
    assert [each["DTSTART"].isoformat() for each in events] == [
        "2026-11-30T08:00:00", "2026-11-30T13:00:00", "2026-12-01T08:00:00", "2026-12-02T08:00:00",
        "2026-12-03T09:00:00",
    ]  # fmt: skip

    (plan,) = client.post("/api/jobs", json=job).get_json()["finish"]
    steps = [
        {"id": each["of"], "note": each["window"]}
        | {name: each[name] for name in ("begins", "ends", "words")}
        for each in plan["steps"]
    ]
    said = {"title": f"{job['title']}, {plan['item']}", "stamp": "2026-11-26T16:30"}
    own = json.loads(call(json.dumps({"do": "calendar", "events": steps} | said)))["file"]
    assert events == events_of(own)
    assert len({each["UID"] for each in events}) == 5


def test_a_calendar_needs_a_day_and_a_job(client: FlaskClient) -> None:
    for job, place in ((finished(""), "finish"), (JOB, "finish"), (JOB | {"items": 7}, "items")):
        reply = client.post("/api/jobs/calendar", json=job)
        assert reply.status_code == 422
        assert list(reply.get_json()["errors"]["json"]) == [place]
