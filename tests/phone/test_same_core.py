"""The phone's runtime against the server's: every check case, the same figures and words.

CPython is the reference; `core_worker.py` asks the phone's.
"""

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser

from longpoint.trade.shelf import PLACES, SHELF, slugs_at
from tests.cases import CASES_OF, Case, assert_same, finished, hold_each, judge
from tests.phone.core_worker import Phone, reference


@pytest.fixture(scope="module")
def phone(browser: Browser, address: str) -> Iterator[Phone]:
    page = browser.new_page(service_workers="block")
    page.goto(address)
    yield Phone(page.evaluate)
    page.close()


@pytest.mark.parametrize("tool", CASES_OF)
def test_cases(phone: Phone, tool: str) -> None:
    def hold(case: Case) -> None:
        reply = finished(phone.call, case.request)
        judge(case, reply)
        assert_same(finished(reference, case.request), reply)

    hold_each(CASES_OF[tool], hold)


@pytest.mark.parametrize("slug", [slug for place, _ in PLACES for slug in slugs_at(place)])
def test_declaration(phone: Phone, slug: str) -> None:
    request = {"do": "declare", "tool": slug}
    assert_same(reference(request), phone.call(request))


def test_shelf(phone: Phone) -> None:
    places = phone.call({"do": "shelf"})["places"]
    assert [slug for place in places for slug in place["tools"]] == [
        path.split("/")[1] for place, _ in PLACES for at, path in SHELF if at == place
    ]


@pytest.mark.parametrize("units", ["in", "mm"])
@pytest.mark.parametrize(
    "text",
    [
        "27 13/16", "27-13/16", "2' 3 13/16\"", "27½", "706 mm", "27 13/16 - 2 1/2", "3/0", "-5",
        "abc", "1" * 10_000, "1,5", "27 17/16", "", "..", "5'-6 1/2\"", "0.1", "12.345678901234",
    ],
)  # fmt: skip
def test_reading(phone: Phone, text: str, units: str) -> None:
    request = {"do": "read", "kind": "length", "text": text, "units": units, "step": 32}
    assert_same(reference(request), phone.call(request))
