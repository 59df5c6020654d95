"""A browser killed while a job is ticked and typed; `python -m tests.phone.kills 60` for many."""

from tests.phone.kills import TICKS, lost_in

KILLS = 3


def test_nothing_acknowledged_is_lost(browser_path: str) -> None:
    assert lost_in(KILLS) == ([], KILLS * TICKS)
