"""What must hold in each engine."""

import os
from itertools import islice
from typing import Any

import pytest

from tests.cases import Case, all_cases, assert_same, judge, replies
from tests.engines.engine import Engine
from tests.engines.journey import Journey
from tests.engines.widths import too_wide
from tests.phone.core_worker import NEEDS, Phone, reference
from tests.serving import served

STRETCHES = 6
"""How far a search is followed here; Chromium's phone follows each to its end."""


class EveryEngine:
    def test_every_check_case_in_its_own_interpreter(self, engine: Engine, address: str) -> None:
        engine.open(f"{address}/")
        phone = Phone(engine.run)
        phone.take_all(*NEEDS)  # a worker of its own for each tool is what Chromium tries
        faults: dict[str, str] = {}
        for case in all_cases():
            try:
                expect_alike(phone, case)
            except AssertionError as fault:
                faults[f"{case.tool}: {case.title}"] = str(fault)
        assert faults == {}, faults

    def test_no_screen_scrolls_sideways(self, engine: Engine, address: str) -> None:
        found = too_wide(Journey(engine, address))
        assert found == [], found

    def test_the_journey(self, engine: Engine) -> None:
        with served() as address:
            way = Journey(engine, address)
            way.first_visit()
            way.a_frame_by_taps()
            way.millimeters_and_earlier_answers()
            way.rows()
            way.slide()
            way.search_and_stop()
            way.a_job_from_a_pattern()
            way.saved_and_restored()
        way.with_the_server_gone()
        way.restarted()
        errors = engine.errors()
        assert errors == [], errors


def require(is_here: bool, words: str) -> None:
    """Skip the engine's tests where it is not installed; where it is demanded they fail."""
    if is_here:
        return
    if os.environ.get("LONGPOINT_ENGINES") == "demanded":
        pytest.fail(words)
    pytest.skip(words)


def unnumbered(reply: dict[str, Any]) -> dict[str, Any]:
    """Return a reply whose search has no number: each runtime counts its own."""
    return reply | {"search": bool(reply.get("search"))}


def expect_alike(phone: Phone, case: Case) -> None:
    """Hold each reply to CPython's, and the last one to the case where it ends within STRETCHES."""
    both = zip(replies(phone.call, case.request), replies(reference, case.request), strict=True)
    for reply, wanted in islice(both, STRETCHES):
        assert_same(unnumbered(wanted), unnumbered(reply))
    if not reply.get("search"):
        judge(case, reply)
