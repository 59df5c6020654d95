"""The core's one door: what it lets in, and a search that is carried on or given up."""

import json
from collections.abc import Iterator
from typing import Any

import pytest

from longpoint.trade import calls
from longpoint.trade.tool import Answer, Count, Given, Scale, Tool


def ask(**request: Any) -> dict[str, Any]:
    reply: dict[str, Any] = json.loads(calls.call(json.dumps(request)))
    return reply


def count_up(given: Given, scale: Scale) -> Iterator[Answer]:
    """Search for the number asked for, one by one."""
    wanted = given.count("wanted")
    for number in range(1, wanted + 1):
        answer = Answer(scale)
        answer.count("found", number)
        answer.progress = number / wanted
        yield answer


@pytest.fixture(autouse=True)
def searching_tool(monkeypatch: pytest.MonkeyPatch) -> Tool:
    tool = Tool(
        slug="search", place="saw", title="", question="", inputs=[Count("wanted", "Wanted")],
        search=count_up, example={}, cautions=[], sources=[],
    )  # fmt: skip
    monkeypatch.setattr(calls, "tool_named", lambda slug: tool)
    return tool


def found(reply: dict[str, Any]) -> int:
    return int(reply["answer"]["figures"][0]["value"])


def test_a_search_gives_its_first_answer_at_once_and_goes_on_when_asked() -> None:
    first = ask(do="answer", tool="search", inputs={"wanted": 3})
    assert (found(first), first["answer"]["progress"]) == (1, pytest.approx(1 / 3))
    second = ask(do="continue", search=first["search"])
    last = ask(do="continue", search=second["search"])
    assert (found(last), last["answer"]["progress"], last["search"]) == (3, 1, None)


def test_a_new_question_ends_the_search_before_it() -> None:
    first = ask(do="answer", tool="search", inputs={"wanted": 3})
    ask(do="answer", tool="search", inputs={"wanted": 2})
    assert not ask(do="continue", search=first["search"])["ok"]


def test_a_finished_search_is_over() -> None:
    only = ask(do="answer", tool="search", inputs={"wanted": 1})
    assert only["search"] is None
    assert not ask(do="continue", search=None)["ok"]


def test_refused_inputs_start_no_search() -> None:
    assert not ask(do="answer", tool="search", inputs={"wanted": 0})["ok"]
    assert not ask(do="continue", search=None)["ok"]


def test_outside_the_door_a_tool_searches_to_the_end(searching_tool: Tool) -> None:
    answer = searching_tool.answer({"wanted": 5}, Scale())
    assert answer["figures"][0]["value"] == 5


@pytest.mark.parametrize("request_", [{}, {"do": "dance"}, {"do": "read", "kind": "color"}])
def test_what_is_no_request_is_refused_with_a_sentence(request_: dict[str, Any]) -> None:
    (error,) = ask(**request_)["errors"]
    assert error["message"]


def test_sizes_of_stock_are_read_or_refused_in_words() -> None:
    texts = {"thickness": "5/4", "length": "8 ft", "width": "wide", "kerf": "0"}
    sizes = ask(do="read sizes", texts=texts)["sizes"]
    assert sizes["thickness"] == {"text": "1 1/4"}
    assert sizes["length"] == {"text": "96"}
    assert "wide" in sizes["width"]["message"]
    assert "above 0" in sizes["kerf"]["message"]
