"""The app in Firefox: Debian's long-term release for the desktop, its screen a phone's."""

import io
import shutil
from collections.abc import Iterator

import pdfplumber
import pytest

from tests.cases import inches
from tests.engines.every import EveryEngine, require
from tests.engines.firefox import Firefox
from tests.engines.journey import Journey
from tests.phone.test_print import HINGES, outline, sheets


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
    """The same for every engine, and what Firefox gives the printer."""

    def test_a_template_is_printed_at_its_true_size(self, engine: Firefox, address: str) -> None:
        """The mortise's size stands in the fixture."""
        Journey(engine, address).printed_at_full_size()
        (page,) = sheets(pdfplumber.open(io.BytesIO(engine.pdf())), "Mortise outline")
        wide, high = (inches(HINGES.figures[each]) for each in ("mortise_width", "mortise_length"))
        assert (wide, high) == (1.125, 3.5)
        outline(page, wide, high)
