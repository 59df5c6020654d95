"""Asking a tool through the API, and taking the reply for the core's own."""

import json
from typing import Any

from flask.testing import FlaskClient
from werkzeug.test import TestResponse

from longpoint.trade.calls import call
from tests.cases import finished


def post(client: FlaskClient, tool: str, inputs: Any, **query: Any) -> TestResponse:
    """Post inputs to a tool; what JSON has no word for goes out as Python writes it."""
    return client.post(
        f"/api/tools/{tool}",
        data=json.dumps(inputs),
        content_type="application/json",
        query_string=query,
    )


def as_door_reply(response: TestResponse) -> dict[str, Any]:
    """Return an answer or a refusal of the API in the shape of the core's door."""
    assert response.status_code in (200, 422), response.get_data(as_text=True)
    if response.status_code == 200:
        return {"ok": True, "answer": response.json}
    return {"ok": False, "errors": flat(response.json["errors"]["json"])}


def flat(errors: dict[str, Any], path: str = "") -> list[dict[str, str]]:
    """Return nested errors as a list of fields with their messages."""
    listed = []
    for name, below in errors.items():
        if isinstance(below, dict):
            listed += flat(below, f"{path}{name}.")
        else:
            listed += [{"field": path + name, "message": message} for message in below]
    return listed


def core_reply(tool: str, inputs: Any, units: str = "in", step: int = 16) -> dict[str, Any]:
    """Return what the core's door says to the same question, as the phone gets it."""
    request = {"do": "answer", "tool": tool, "inputs": inputs, "units": units, "step": step}
    return finished(lambda asked: json.loads(call(json.dumps(asked))), request)


def words(errors: list[dict[str, Any]]) -> set[tuple[str, str]]:
    """Return which sentence stands under which field; order is the form's business."""
    return {(error["field"], error["message"]) for error in errors}
