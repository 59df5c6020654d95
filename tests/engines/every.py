"""What must hold in each engine."""

import os

import pytest

from tests.cases import all_cases
from tests.engines.engine import Engine
from tests.engines.journey import Journey
from tests.engines.widths import too_wide
from tests.phone.core_worker import NEEDS, Phone, expect_alike
from tests.serving import served

STRETCHES = 6
"""How far a search is followed here; Chromium's phone follows it further."""


class EveryEngine:
    def test_every_check_case_in_its_own_interpreter(self, engine: Engine, address: str) -> None:
        engine.open(f"{address}/")
        phone = Phone(engine.run)
        phone.take_all(*NEEDS)  # a worker of its own for each tool is what Chromium tries
        faults: dict[str, str] = {}
        for case in all_cases():
            try:
                expect_alike(phone, case, STRETCHES)
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
