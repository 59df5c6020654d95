"""A job asked through the core's door, to its end."""

import json
from typing import Any

from longpoint.trade.calls import call


def ask(**request: Any) -> Any:
    """Ask the core; the reply must be one that it can give."""
    reply = json.loads(call(json.dumps(request)))
    assert reply["ok"], reply
    return reply


def refused(**request: Any) -> list[str]:
    """Ask what the core refuses; return its sentences."""
    reply = json.loads(call(json.dumps(request)))
    assert not reply["ok"], reply
    return [error["message"] for error in reply["errors"]]


def worked(document: dict[str, Any], **rest: Any) -> Any:
    """Return a job as it is worked out, step by step to its end."""
    reply = ask(do="job", job=document, **rest)
    while reply["work"]:
        reply = ask(do="continue job", work=reply["work"])
    return reply["job"]


def blank(**rest: Any) -> dict[str, Any]:
    """Return a job without items."""
    job = {"longpoint": "job", "schema": 1, "id": "j", "title": "Porch", "units": "in", "items": []}
    return job | rest


def entries_of(reply: Any) -> dict[str, Any]:
    """Return the questions of a job that is worked out, by id."""
    return {each["id"]: each for item in reply["items"] for each in item["entries"]}


def figures_of(entry: Any) -> dict[str, Any]:
    """Return the figures of one question, by name."""
    return {each["name"]: each["value"] for each in entry["figures"]}
