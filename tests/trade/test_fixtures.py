"""Every check case of the fixtures, asked of the core under CPython."""

import json

import pytest

from longpoint.trade.calls import call
from longpoint.trade.shelf import SHELF
from tests.cases import FIXTURES, Case, all_cases, finished, judge


@pytest.mark.parametrize("case", all_cases(), ids=lambda case: f"{case.tool}: {case.title}")
def test_case(case: Case) -> None:
    assert case.source, "a case names who says so"
    judge(case, finished(lambda request: json.loads(call(json.dumps(request))), case.request))


@pytest.mark.parametrize("path", [path for _, path in SHELF])
def test_every_tool_has_cases_beside_its_name(path: str) -> None:
    assert (FIXTURES / f"{path}.json").exists()
