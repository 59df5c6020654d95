"""The check cases of ``fixtures/``: load them, ask them, and judge a reply.

Core, API and phone are all judged by the same lines, so that they can't drift apart.
"""

import json
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field
from fractions import Fraction
from functools import cache
from pathlib import Path
from typing import Any

FIXTURES = Path(__file__).parent.parent / "fixtures"
KEPT = FIXTURES / "kept"
"""Databases and files as older versions left them: no check cases."""
JOBS = FIXTURES / "job"
"""Whole jobs with hand work: no check cases of one tool."""
EXACT = 1e-9


@dataclass(frozen=True)
class Case:
    """One check case: what is asked, what must come back, and who says so."""

    tool: str
    title: str
    source: str
    inputs: dict[str, Any]
    units: str = "in"
    step: int = 16
    figures: dict[str, Any] = field(default_factory=dict)
    pieces: list[dict[str, Any]] = field(default_factory=list)
    marks: list[dict[str, Any]] = field(default_factory=list)
    verdict: str = ""
    notes: list[str] = field(default_factory=list)
    refused: dict[str, str] = field(default_factory=dict)
    tolerance: float = EXACT

    @property
    def request(self) -> dict[str, Any]:
        """The request that asks this case through the core's door."""
        return {
            "do": "answer",
            "tool": self.tool,
            "inputs": self.inputs,
            "units": self.units,
            "step": self.step,
        }


@cache
def all_cases() -> tuple[Case, ...]:
    """Return every case of every fixture file, in the order of the files."""
    cases = []
    others = {*KEPT.glob("*.json"), *JOBS.glob("*.json")}
    for path in sorted(set(FIXTURES.glob("*/*.json")) - others):
        content = json.loads(path.read_text(encoding="utf-8"))
        cases += [Case(tool=content["tool"], **case) for case in content["cases"]]
    return tuple(cases)


CASES_OF = {
    tool: [case for case in all_cases() if case.tool == tool]
    for tool in dict.fromkeys(case.tool for case in all_cases())
}
"""The cases by their tool: a test of each costs more than most cases do."""


def hold_each(cases: Iterable[Case], hold: Callable[[Case], None]) -> None:
    """Hold each case to what `hold` demands; a fault tells which case it is of."""
    for case in cases:
        try:
            hold(case)
        except Exception as fault:
            fault.add_note(f"The check case: {case.tool}: {case.title}")
            raise


Call = Callable[[dict[str, Any]], dict[str, Any]]


def replies(call: Call, request: dict[str, Any]) -> Iterator[dict[str, Any]]:
    """Give the reply to a request and, where a search goes on, those to its end, each whole."""
    reply = call(request)
    yield reply
    while reply.get("search"):
        answer = reply["answer"]
        reply = call({"do": "continue", "search": reply["search"]})
        if reply["ok"] and reply["answer"] is None:
            reply["answer"] = answer | {"progress": reply["progress"]}
        yield reply


def finished(call: Call, request: dict[str, Any]) -> Any:
    """Return the reply to a request, a search carried on to its end."""
    *_, last = replies(call, request)
    return last


def judge(case: Case, reply: dict[str, Any]) -> None:
    """Assert that a reply of the core's door is what the case demands."""
    if case.refused:
        assert not reply["ok"], f"answered what must be refused: {case.title}"
        said = {error["field"]: error["message"] for error in reply["errors"]}
        for name, words in case.refused.items():
            assert words in said.get(name, ""), said
        return
    assert reply["ok"], reply
    answer = reply["answer"]
    shown = {figure["name"]: figure for figure in answer["figures"]}
    for name, wanted in case.figures.items():
        if wanted is None:
            assert name not in shown, f"{name} must not be there"
        else:
            assert name in shown, f"no figure {name}"
            _same(name, shown[name]["value"], wanted, case.tolerance)
    _each("piece", answer["pieces"], case.pieces, case.tolerance)
    _each("mark", answer["marks"], case.marks, case.tolerance)
    assert case.verdict in answer["verdict"], answer["verdict"]
    for words in case.notes:
        assert any(words in note for note in answer["notes"]), answer["notes"]


def assert_same(one: Any, other: Any, path: str = "answer") -> None:
    """Assert that two replies are the same: words exactly, numbers to 1e-9."""
    if isinstance(one, dict) and isinstance(other, dict):
        assert one.keys() == other.keys(), path
        for name, value in one.items():
            assert_same(value, other[name], f"{path}.{name}")
    elif isinstance(one, list) and isinstance(other, list):
        assert len(one) == len(other), path
        for index, value in enumerate(one):
            assert_same(value, other[index], f"{path}.{index}")
    elif isinstance(one, (int, float)) and not isinstance(one, bool):
        assert abs(one - other) <= EXACT * max(1, abs(one)), path
    else:
        assert one == other, path


def _each(
    kind: str, got: list[dict[str, Any]], wanted: list[dict[str, Any]], tolerance: float
) -> None:
    """Compare the fields that the case names; a case that names some must name all in order."""
    if not wanted:
        return
    assert len(got) == len(wanted), f"{len(got)} {kind}s instead of {len(wanted)}"
    for one, other in zip(got, wanted, strict=True):
        for name, value in other.items():
            _same(f"{kind} {other.get('tag', '')} {name}", one[name], value, tolerance)


def _same(name: str, got: Any, wanted: Any, tolerance: float) -> None:
    number = inches(wanted)
    if number is None or isinstance(got, str):
        assert got == wanted, f"{name} is {got}, not {wanted}"
    else:
        assert abs(got - number) <= tolerance, f"{name} is {got}, not {wanted}"


def inches(value: Any) -> float | None:
    """Return a number as a fixture writes it: 27.8125, or "27 13/16"; None for other things."""
    if isinstance(value, bool) or not isinstance(value, (int, float, str)):
        return None
    if isinstance(value, (int, float)):
        return float(value)
    try:
        return float(sum(Fraction(part) for part in value.split()))
    except (ValueError, ZeroDivisionError):
        return None
