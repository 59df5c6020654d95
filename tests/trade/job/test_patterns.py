"""Each pattern from the tape's and the catalog's numbers alone to its sheets, held to hand work."""

import json
from collections import Counter
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest

from longpoint.trade.job.patterns import PATTERNS, pattern_named

from .asking import ask, blank, figures_of, worked

FOLDER = Path(__file__).parents[3] / "fixtures/job/patterns"
FILES = sorted(FOLDER.glob("*.json"))
EXACT = 1e-9


def number(text: str) -> float:
    return float(sum(Fraction(part) for part in text.split()))


def begun(fixture: dict[str, Any]) -> Any:
    """Return an item of the pattern with the fixture's numbers typed in."""
    job = ask(do="begin item", job=blank(), pattern=fixture["pattern"], id="item")["document"]
    keys = [question.key for question in pattern_named(fixture["pattern"]).questions]
    for key, entry in zip(keys, job["items"][0]["entries"], strict=True):
        entry["inputs"] |= fixture["inputs"].get(key, {})
    for stock in job.get("stock", []):
        stock |= fixture["stock"].get(stock["title"], {})
    return job


def test_every_pattern_has_its_fixture() -> None:
    assert {path.stem for path in FILES} == {pattern.slug for pattern in PATTERNS}


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_a_pattern_goes_from_opening_to_sheets(path: Path) -> None:
    fixture = json.loads(path.read_text(encoding="utf-8"))
    pattern = pattern_named(fixture["pattern"])
    for question in pattern.questions:
        assert set(fixture["inputs"].get(question.key, {})) <= set(question.asks)
    reply = worked(begun(fixture))
    (item,) = reply["items"]
    entries = dict(zip([q.key for q in pattern.questions], item["entries"], strict=True))
    assert {key: each["errors"] for key, each in entries.items() if each["errors"]} == {}
    assert reply["warnings"] == []
    near = fixture.get("tolerance", EXACT)
    hold_figures(entries, fixture["figures"], near)
    hold_cuts(reply, fixture["cuts"])
    hold_lines(reply, fixture["buy"])
    hold_marks(reply, entries, fixture["marks"])


def hold_figures(entries: dict[str, Any], figures: list[dict[str, str]], near: float) -> None:
    for hand in figures:
        found = figures_of(entries[hand["question"]])[hand["name"]]
        assert found == pytest.approx(number(hand["value"]), abs=near), hand["name"]


def hold_cuts(reply: Any, cuts: list[dict[str, Any]]) -> None:
    found = [cut for group in reply["saw"]["groups"] for cut in group["cuts"]]
    assert Counter((cut["tag"], round(cut["length"], 6)) for cut in found) == Counter(
        {(hand["tag"], round(number(hand["length"]), 6)): hand["count"] for hand in cuts}
    )


def hold_lines(reply: Any, lines: list[dict[str, Any]]) -> None:
    found = {line["title"]: line for line in reply["yard"]["lines"]}
    for hand in lines:
        for name in ("amount", "cost"):
            if name in hand:
                assert found[hand["title"]][name] == pytest.approx(hand[name]), hand["title"]


def hold_marks(reply: Any, entries: dict[str, Any], marks: list[dict[str, str]]) -> None:
    (item,) = reply["site"]["items"]
    for hand in marks:
        own = entries[hand["question"]]["id"]
        found = [
            mark["value"]
            for mark in item["marks"]
            if (mark["entry"], mark["label"], mark["from"]) == (own, hand["label"], hand["from"])
        ]
        assert found == [pytest.approx(number(hand["value"]), abs=EXACT)], hand["label"]
