"""Bad input: a sentence under the field, the phone's own words, and never a crash."""

import json
import re
from typing import Any

import pytest
from flask.testing import FlaskClient

from longpoint.trade.shelf import SHELF, tool_named
from tests.api.asking import as_door_reply, core_reply, post, words

TOOLS = [path.split("/")[1] for _, path in SHELF]
JUNK = {
    "nothing over nothing": "3/0",
    "negative": "-5",
    "negative number": -5,
    "letters": "abc",
    "ten thousand digits": "9" * 10_000,
    "ten thousand digits as a number": float("9" * 10_000),
    "a thirty-digit number": 10**30,
    "not a number": float("nan"),
    "minus infinity": float("-inf"),
    "yes": True,
    "a list": [],
    "lists in lists": [[[[]]]],
    "an object": {"width": 3},
    "a row that is no row": [1],
    "NUL": "\0",
    "half a surrogate pair": "\ud800",
    "right to left": "\u202e12",
    "only spaces": "   ",
    "sign only": "-",
}
EVERY_INPUT = [(tool, asked.name) for tool in TOOLS for asked in tool_named(tool).inputs]


@pytest.mark.parametrize(("tool", "name"), EVERY_INPUT)
def test_junk_in_any_input(client: FlaskClient, tool: str, name: str) -> None:
    """API and phone say the same: an answer where the input takes it, else the same sentences."""
    said = {junk: _said_by_both(client, tool, {name: value}) for junk, value in JUNK.items()}
    assert {junk: both[0] for junk, both in said.items()} == {
        junk: both[1] for junk, both in said.items()
    }


def _said_by_both(client: FlaskClient, tool: str, junk: dict[str, Any]) -> list[Any]:
    inputs = tool_named(tool).example | junk
    both = as_door_reply(post(client, tool, inputs)), core_reply(tool, inputs)
    return [reply["ok"] or words(reply["errors"]) for reply in both]


MEASURED = [
    (tool, asked.name)
    for tool in TOOLS
    for asked in tool_named(tool).inputs
    if asked.kind in ("length", "angle", "number", "count") and asked.is_always_asked()
]


@pytest.mark.parametrize(("tool", "name"), MEASURED)
def test_junk_is_no_measure(client: FlaskClient, tool: str, name: str) -> None:
    """None of these is a length, an angle or a count: 422 (RFC 9110, 15.5.21), on that field."""
    for junk, value in JUNK.items():
        response = post(client, tool, tool_named(tool).example | {name: value})
        assert response.status_code == 422, junk
        (message,) = response.json["errors"]["json"][name]
        assert " " in message, f"{junk}: a sentence, not a code"
        assert message.endswith((".", "?")), junk
        assert len(message) < 300, f"{junk}: what was typed is quoted in short"


def test_trim_wider_than_its_recess(client: FlaskClient) -> None:
    """Two pieces 6 wide leave nothing of a recess 10 wide: plain subtraction."""
    response = post(
        client,
        "mitered-frame",
        {"fit": "inside", "opening_width": 10, "opening_height": 40, "trim_width": 6},
    )
    assert response.status_code == 422
    (message,) = response.json["errors"]["json"]["trim_width"]
    assert "10" in message
    assert "5" in message, "says what would do"


@pytest.mark.parametrize("corner", ["180", 180, "0", 0, "-90", "200"])
def test_a_corner_that_is_none(client: FlaskClient, corner: Any) -> None:
    """At 180 degrees the pieces run on in one line and at 0 they lie on each other: no joint."""
    response = post(client, "corner-joint", {"corner": corner, "width_a": 3})
    assert response.status_code == 422
    assert list(response.json["errors"]["json"]) == ["corner"]


def test_missing_and_unknown_fields_are_all_named(client: FlaskClient) -> None:
    response = post(
        client, "mitered-frame", {"opening_width": 30, "colour": "red", "a.b": 1, "a": 2}
    )
    errors = response.json["errors"]["json"]
    assert set(errors) == {"fit", "opening_height", "trim_width", "colour", "a.b", "a"}
    assert "colour" in errors["colour"][0]


@pytest.mark.parametrize("body", [[], "text", 5, True, None, [{"width": 30}]])
def test_a_body_that_is_no_object(client: FlaskClient, body: Any) -> None:
    response = post(client, "mitered-frame", body)
    assert response.status_code == 422
    assert "_schema" in response.json["errors"]["json"]


@pytest.mark.parametrize(
    "body",
    [b"", b"{", b"{'width': 30}", b"\xff\xfe", b"[" * 100_000, b'{"a":' * 20_000, b"width=30"],
    ids=["empty", "cut off", "not JSON", "not UTF-8", "deep lists", "deep objects", "a form"],
)
def test_a_body_that_is_no_json(client: FlaskClient, body: bytes) -> None:
    """RFC 8259 for JSON; RFC 9110, 15.5.1 for 400."""
    response = client.post("/api/tools/mitered-frame", data=body, content_type="application/json")
    assert response.status_code == 400
    assert response.json["message"]


@pytest.mark.parametrize(
    ("query", "name"),
    [
        ({"units": "furlong"}, "units"),
        ({"units": ""}, "units"),
        ({"step": "7"}, "step"),
        ({"step": "abc"}, "step"),
        ({"step": "9" * 5000}, "step"),
        ({"step": "016"}, "step"),
        ({"color": "red"}, "color"),
    ],
)
def test_a_query_that_makes_no_sense(client: FlaskClient, query: dict[str, str], name: str) -> None:
    given = {"fit": "inside", "opening_width": 30, "opening_height": 40, "trim_width": 2.5}
    response = post(client, "mitered-frame", given, **query)
    assert response.status_code == 422
    assert list(response.json["errors"]["query"]) == [name]


def test_the_first_infinity_json_can_spell(client: FlaskClient) -> None:
    """1e400 is JSON (RFC 8259, 6) and past every binary64 number (IEEE 754)."""
    body = b'{"fit": "inside", "opening_width": 1e400, "opening_height": 40, "trim_width": 2}'
    response = client.post("/api/tools/mitered-frame", data=body, content_type="application/json")
    assert response.status_code == 422
    assert list(response.json["errors"]["json"]) == ["opening_width"]


def test_a_fault_of_ours_is_json_too(client: FlaskClient, monkeypatch: pytest.MonkeyPatch) -> None:
    def break_down(*_: object) -> None:
        raise ArithmeticError("deliberate")

    monkeypatch.setattr(tool_named("mitered-frame"), "work", break_down)
    given = {"fit": "inside", "opening_width": 30, "opening_height": 40, "trim_width": 2.5}
    response = post(client, "mitered-frame", given)
    assert response.status_code == 500
    assert "deliberate" not in json.dumps(response.json)


def test_thousands_of_unknown_names_are_told_in_a_few_lines(client: FlaskClient) -> None:
    """18,000 of them came back as 824 KB."""
    body = {f"name {number}": 0 for number in range(9_000)} | {"x" * 100_000: 0}
    response = client.post("/api/tools/mitered-frame", json=body)
    assert response.status_code == 422
    assert len(response.data) < 10_000
    assert re.search(r"There are 9\d\d\d errors", response.json["message"])
