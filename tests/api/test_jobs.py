"""POST /api/jobs works a job out and keeps nothing; faults are named at their place."""

from typing import Any

from flask.testing import FlaskClient

from longpoint.api.replies.job import Patterns

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
