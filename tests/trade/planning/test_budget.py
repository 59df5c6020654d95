"""Searches keep to their budget, whatever is asked within the limits, counted in steps."""

from collections.abc import Iterator
from itertools import islice
from typing import Any

import pytest

from longpoint.trade.cutting.search import StickSearch
from longpoint.trade.guillotine.search import SheetSearch
from longpoint.trade.planning.better import MOST_WITHOUT
from longpoint.trade.planning.weighing import ways_to_weigh, weighed
from longpoint.trade.planning.work import SHARE
from tests.bench.searches import cases
from tests.cases import replies
from tests.trade.asking import at_the_door

FIRST = 75000
"""Steps before the first answer: at a microsecond each, 75 ms of the phone's interpreter, and 300
on one four times as slow."""
OVER = 25000
"""Steps by which a share may be overrun: those of the longest stretch without a look."""
LISTS = [pytest.param(tool, inputs, id=title) for title, tool, inputs in cases()]


class Watched:
    """Notes how much work each search of a kind had done at every pause."""

    def __init__(self, kind: Any, monkeypatch: pytest.MonkeyPatch) -> None:
        self.done: list[int] = []
        self.most = 0
        run = kind.run

        def watched(search: Any) -> Iterator[None]:
            self.most = search.work.most
            for _ in run(search):
                self.done.append(search.work.done)
                yield None
            self.done.append(search.work.done)

        monkeypatch.setattr(kind, "run", watched)


@pytest.mark.parametrize(("tool", "inputs"), LISTS)
def test_an_answer_comes_at_once_and_the_rest_in_small_slices_to_a_stated_end(
    tool: str, inputs: dict[str, Any], monkeypatch: pytest.MonkeyPatch
) -> None:
    """250 rows of 12 priced sticks once gave no answer in 3 s and 2 GB on a phone."""
    kind: Any = StickSearch if tool == "stick-plan" else SheetSearch
    watched = Watched(kind, monkeypatch)
    request = {"do": "answer", "tool": tool, "inputs": inputs}
    answers = list(replies(at_the_door, request))
    assert watched.done[0] <= FIRST
    last = answers[-1]
    if not last["ok"]:
        assert watched.done[-1] <= MOST_WITHOUT + SHARE + OVER
        return
    for before, after in zip(watched.done, watched.done[1:], strict=False):
        assert after - before <= SHARE + OVER
    assert watched.done[-1] <= watched.most + OVER
    figures = {each["name"]: each["text"] for each in last["answer"]["figures"]}
    assert (figures["proved"] == "yes") == ("could_save" not in figures)
    assert figures.get("could_save", "proven optimal") in last["answer"]["verdict"]


def test_parts_never_weigh_more_than_the_whole() -> None:
    """What every bound rests on (dual feasible functions), tried on all lengths up to 30."""
    for length in range(2, 31):
        for way in ways_to_weigh(list(range(1, length + 1)), length, length):
            weights = [weighed(side, length, way) for side in range(length + 1)]
            assert weights == sorted(weights)
            for one in range(1, length):
                for other in range(1, length - one + 1):
                    assert weights[one] + weights[other] <= weights[one + other]


def rows(number: int) -> list[dict[str, Any]]:
    return [{"length": f"{20 + at * 7 % 61} {1 + at % 15}/16"} for at in range(number)]


def parts(number: int) -> list[dict[str, Any]]:
    return [{"length": 9 + at, "width": 5 + at % 9, "count": number // 20} for at in range(20)]


@pytest.mark.parametrize(
    ("tool", "inputs"),
    [
        ("stick-plan", {"pieces": rows(70), "sticks": [{"length": "96"}]}),
        ("sheet-plan", {"parts": parts(60), "sheets": [{}]}),
    ],
    ids=["sticks", "sheets"],
)
def test_a_form_of_a_long_list_is_answered_in_brief_first(
    tool: str, inputs: dict[str, Any]
) -> None:
    first, second = list(
        islice(replies(at_the_door, {"do": "form", "tool": tool, "inputs": inputs}), 2)
    )
    brief, whole = first["answer"], second["answer"]
    assert (brief["is_brief"], brief["pieces"], brief["tables"], brief["drawing"]) == (
        True,
        [],
        [],
        None,
    )
    assert (whole["is_brief"], whole["verdict"], whole["figures"]) == (
        False,
        brief["verdict"],
        brief["figures"],
    )
    assert len(whole["pieces"]) == len(inputs["pieces" if tool == "stick-plan" else "parts"])
    assert whole["drawing"]
    # The fields, as long, come with the whole.
    rows_said = [len(field["rows"]) for field in second["fields"] if "rows" in field]
    assert ("fields" in first, max(rows_said)) == (False, len(whole["pieces"]))
    assert whole["tables"]


def test_who_asks_for_an_answer_alone_gets_no_brief_one() -> None:
    request = {
        "do": "answer",
        "tool": "stick-plan",
        "inputs": {"pieces": rows(70), "sticks": [{"length": "96"}]},
    }
    said = [each["answer"] for each in replies(at_the_door, request) if each["answer"]]
    assert [each["is_brief"] for each in said] == [False] * len(said)


def test_a_short_list_is_answered_whole_at_once() -> None:
    request = {
        "do": "form",
        "tool": "stick-plan",
        "inputs": {"pieces": rows(20), "sticks": [{"length": "96"}]},
    }
    first = next(iter(replies(at_the_door, request)))
    assert not first["answer"]["is_brief"]
    assert len(first["answer"]["pieces"]) == 20
