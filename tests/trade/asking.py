"""Ask the core as its callers do, and take an answer apart."""

import json
from typing import Any

from longpoint.trade.calls import call
from tests.cases import finished


def ask(tool: str, scale: dict[str, Any] | None = None, **inputs: Any) -> dict[str, Any]:
    """Return the core's reply to one question."""
    request = {"do": "answer", "tool": tool, "inputs": inputs} | (scale or {})
    reply: dict[str, Any] = finished(at_the_door, request)
    return reply


def at_the_door(request: dict[str, Any]) -> dict[str, Any]:
    """Return what the core's door says to one request."""
    reply: dict[str, Any] = json.loads(call(json.dumps(request)))
    return reply


def answer(tool: str, scale: dict[str, Any] | None = None, **inputs: Any) -> dict[str, Any]:
    """Return the answer; the question must not be refused."""
    reply = ask(tool, scale, **inputs)
    assert reply["ok"], reply
    found: dict[str, Any] = reply["answer"]
    return found


def figures(tool: str, **inputs: Any) -> dict[str, Any]:
    """Return the answer's figures, value by name."""
    return {figure["name"]: figure["value"] for figure in answer(tool, **inputs)["figures"]}


def refusals(tool: str, **inputs: Any) -> dict[str, str]:
    """Return the refusal's messages by field; the question must be refused."""
    reply = ask(tool, **inputs)
    assert not reply["ok"], reply
    return {error["field"]: error["message"] for error in reply["errors"]}
