"""Every check case of the fixtures, asked of the core under CPython."""

import json

import pytest

from longpoint.trade.calls import call
from longpoint.trade.shelf import SHELF
from tests.cases import CASES_OF, FIXTURES, Case, finished, hold_each, judge


@pytest.mark.parametrize("tool", CASES_OF)
def test_cases(tool: str) -> None:
    def hold(case: Case) -> None:
        assert case.source, "a case names who says so"
        judge(case, finished(lambda request: json.loads(call(json.dumps(request))), case.request))

    hold_each(CASES_OF[tool], hold)


@pytest.mark.parametrize("path", [path for _, path in SHELF])
def test_every_tool_has_cases_beside_its_name(path: str) -> None:
    assert (FIXTURES / f"{path}.json").exists()
