"""A browser killed while a job is ticked and typed; `python -m tests.phone.kills 60` for many."""

import pytest
from playwright.sync_api import Playwright

from tests.phone.kills import TICKS, lost_in

KILLS = 3


@pytest.mark.usefixtures("browser_path")
def test_nothing_acknowledged_is_lost(playwright: Playwright) -> None:
    assert lost_in(playwright, KILLS) == ([], KILLS * TICKS)
