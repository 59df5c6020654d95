"""The demo job against the hand work in its fixture: what is carried, cut, bought and marked."""

import json
from collections import Counter
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest

from longpoint.api.replies.job import Job
from longpoint.trade.job.document import check

from .asking import entries_of, figures_of, worked

DEMO: dict[str, Any] = json.loads(
    (Path(__file__).parents[3] / "fixtures/job/demo.json").read_text(encoding="utf-8")
)
JOB, HAND = DEMO["job"], DEMO["by_hand"]


@pytest.fixture(scope="module")
def reply() -> Any:
    return worked(JOB)


def inches(text: str) -> float:
    return float(sum(Fraction(part) for part in text.split()))


def test_it_is_a_job(reply: Any) -> None:
    check(JOB)
    assert Job().validate(reply) == {}


def test_every_question_is_answered_and_every_piece_has_its_stock(reply: Any) -> None:
    assert {own: each["errors"] for own, each in entries_of(reply).items() if each["errors"]} == {}
    assert reply["warnings"] == []


@pytest.mark.parametrize(
    "hand", HAND["carried"], ids=lambda hand: f"{hand['entry']}.{hand['input']}"
)
def test_a_number_said_once_is_carried(reply: Any, hand: dict[str, str]) -> None:
    (taken,) = [
        each for each in entries_of(reply)[hand["entry"]]["carried"]
        if each["input"] == hand["input"]
    ]  # fmt: skip
    assert taken["value"] == pytest.approx(inches(hand["value"]), abs=1e-9)
    assert taken["from"] == hand["from"]


@pytest.mark.parametrize(
    "hand", HAND["figures"], ids=lambda hand: f"{hand['entry']}.{hand['name']}"
)
def test_a_figure_is_as_by_hand(reply: Any, hand: dict[str, str]) -> None:
    found = figures_of(entries_of(reply)[hand["entry"]])[hand["name"]]
    assert found == pytest.approx(inches(hand["value"]), abs=1e-9)


def test_the_cut_list_is_as_by_hand(reply: Any) -> None:
    cuts = [cut for group in reply["saw"]["groups"] for cut in group["cuts"]]
    assert Counter((cut["tag"], round(cut["length"], 9)) for cut in cuts) == Counter(
        {(hand["tag"], inches(hand["length"])): hand["count"] for hand in HAND["cuts"]}
    )


def test_the_buy_list_is_as_by_hand(reply: Any) -> None:
    lines = reply["yard"]["lines"]
    assert [line["title"] for line in lines] == [hand["title"] for hand in HAND["buy"]]
    for line, hand in zip(lines, HAND["buy"], strict=True):
        for name in ("amount", "from_hand", "cost"):
            assert line[name] == pytest.approx(hand[name], abs=1e-6), (line["title"], name)
    assert reply["yard"]["cost"] == pytest.approx(HAND["cost"]["value"], abs=1e-6)


@pytest.mark.parametrize("hand", HAND["marks"], ids=lambda hand: hand["label"])
def test_a_mark_is_as_by_hand(reply: Any, hand: dict[str, str]) -> None:
    marks = [mark for item in reply["site"]["items"] for mark in item["marks"]]
    found = [
        mark["value"] for mark in marks
        if mark["entry"] == hand["entry"] and mark["label"] == hand["label"]
    ]  # fmt: skip
    assert inches(hand["value"]) in [pytest.approx(value, abs=1e-9) for value in found]


def test_the_finish_plan_is_as_by_hand(reply: Any) -> None:
    (plan,) = reply["finish"]
    assert [[step["begins"], step["words"]] for step in plan["steps"]] == HAND["plan"]["steps"]


def test_the_quote_is_as_by_hand() -> None:
    hand = HAND["quote"]
    items = [item | {"hours": hand["hours"][item["id"]]} for item in JOB["items"]]
    unpaid = JOB | {"ticks": []}
    quote = worked(unpaid | {"items": items, "quote": {"rates": hand["rates"]}})["quote"]
    assert {line["id"]: line["material_text"] for line in quote["lines"]} == hand["material"]
    assert {row["name"]: row["text"] for row in quote["build"]} == hand["build"]
    counted = {each["operation"]: each["count"] for each in quote["lines"][0]["operations"]}
    assert {name: counted[name] for name in hand["operations"]} == hand["operations"]
