"""The app in Firefox: Debian's long-term release for the desktop, its screen a phone's."""

import shutil
from collections.abc import Iterator

import pytest

from tests.engines.every import EveryEngine, require
from tests.engines.firefox import Firefox


@pytest.fixture(scope="module")
def engine(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Firefox]:
    command = shutil.which("firefox-esr") or ""
    require(command != "", "Firefox is not installed: apt install firefox-esr")
    engine = Firefox(tmp_path_factory.mktemp("firefox"), command)
    try:
        engine.start()
        yield engine
    finally:
        engine.end()


class TestFirefox(EveryEngine):
    """The same for every engine."""
