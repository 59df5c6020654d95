"""Every check value of finishing and quoting has its case or test, or it says why not.

That the places are there is held here; what they must come to stands in them.
"""

import ast
import json
from typing import Any

import pytest

from tests.cases import FIXTURES, all_cases

CHECKS = json.loads((FIXTURES / "finish-and-price.json").read_text(encoding="utf-8"))["checks"]
CASES = {f"{case.tool}: {case.title}" for case in all_cases()}


def test_all_are_listed_once() -> None:
    assert [each["check"] for each in CHECKS] == list(range(1, 97))


@pytest.mark.parametrize("each", CHECKS, ids=lambda each: str(each["check"]))
def test_each_runs_or_says_why_not(each: dict[str, Any]) -> None:
    assert ("runs" in each) != ("why_not" in each)
    if "why_not" in each:
        assert each["why_not"].endswith(".")
        return
    places = [each["runs"]] if isinstance(each["runs"], str) else each["runs"]
    assert places
    assert [place for place in places if place not in CASES and not is_test(place)] == []


def is_test(place: str) -> bool:
    """Tell whether a place names a test that is there: a file, a colon, its name."""
    path, _, name = place.partition(": ")
    if not path.endswith(".py") or not name.startswith("test_"):
        return False
    tree = ast.parse((FIXTURES.parent / path).read_text(encoding="utf-8"))
    return name in {node.name for node in ast.walk(tree) if isinstance(node, ast.FunctionDef)}
