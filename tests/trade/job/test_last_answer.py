"""The answer that a question's own screen got is not worked out again for the job."""

import json
from typing import Any

import pytest

from longpoint.trade.calls import call
from longpoint.trade.job import working
from longpoint.trade.job.desk import Desk
from longpoint.trade.job.memory import Memory
from longpoint.trade.job.work import WORK

FRAME = {"fit": "inside", "opening_width": "30", "opening_height": "40", "trim_width": "3"}


def ask(**request: Any) -> Any:
    reply = json.loads(call(json.dumps(request)))
    assert reply["ok"], reply
    return reply


def job(**inputs: str) -> Any:
    frame = {"id": "e1", "letter": "A", "tool": "mitered-frame", "inputs": FRAME | inputs}
    items = [{"id": "i1", "title": "Frame", "entries": [frame]}]
    return {"longpoint": "job", "schema": 1, "id": "j", "title": "", "units": "in", "items": items}


def lengths(reply: Any) -> list[float]:
    return [cut["length"] for group in reply["job"]["saw"]["groups"] for cut in group["cuts"]]


@pytest.fixture
def worked(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Which tools the job has worked out itself, with nothing remembered from before."""
    found: list[str] = []
    work = working._worked

    def noted(tool: Any, *rest: Any) -> Any:
        found.append(tool.slug)
        return work(tool, *rest)

    monkeypatch.setattr(working, "_worked", noted)
    monkeypatch.setattr(working, "_memory", Memory(10))
    monkeypatch.setattr(WORK, "desk", Desk())
    return found


def test_the_answer_of_its_own_screen_is_taken_over(worked: list[str]) -> None:
    # Hand work: inside a recess each piece is as long as its side.
    said = ask(do="form", tool="mitered-frame", inputs=FRAME | {"opening_width": "29"})
    assert said["answer"]
    first = ask(do="job", job=job(opening_width="29"))
    assert worked == []
    assert sorted(lengths(first)) == [29, 29, 40, 40]


@pytest.mark.parametrize(
    "other",
    [
        {"inputs": FRAME | {"opening_width": "29"}},
        {"inputs": FRAME, "typed_in": "mm"},
        {"inputs": FRAME, "units": "mm"},
        {"inputs": FRAME, "step": 64},
        {"inputs": FRAME, "carried": {"stand_off": {"value": 1, "from": "another"}}},
        {"inputs": FRAME, "answer": False},
        {"inputs": FRAME | {"opening_width": ""}},
    ],
)
def test_whatever_else_was_asked_is_not(worked: list[str], other: Any) -> None:
    ask(do="form", tool="mitered-frame", inputs=FRAME | {"opening_height": "50"})
    json.loads(call(json.dumps({"do": "form", "tool": "mitered-frame"} | other)))
    reply = ask(do="job", job=job())
    assert worked == ["mitered-frame"]
    assert sorted(lengths(reply)) == [30, 30, 40, 40]
