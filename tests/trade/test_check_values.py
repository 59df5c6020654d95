"""Every check value of finishing and quoting runs where the list says so, or it says why not."""

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
    place = each.get("runs", "")
    assert place in CASES or is_test(place) or each.get("why_not", "").endswith(".")


def is_test(place: str) -> bool:
    """Tell whether a place names a test that is there: a file, a colon, its name."""
    path, _, name = place.partition(": ")
    if not path.endswith(".py"):
        return False
    tree = ast.parse((FIXTURES.parent / path).read_text(encoding="utf-8"))
    return name in {node.name for node in ast.walk(tree) if isinstance(node, ast.FunctionDef)}
