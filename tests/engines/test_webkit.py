"""The app in WebKit: Debian's, for GTK, in a window as large as a phone's screen."""

import shutil
import subprocess
from collections.abc import Iterator

import pytest

from tests.engines.every import EveryEngine, require
from tests.engines.webkit import DEBIANS_PYTHON, WINDOW, WebKit

PACKAGES = "webkit2gtk-driver xvfb python3-gi gir1.2-webkit2-4.1"


@pytest.fixture(scope="module")
def engine(tmp_path_factory: pytest.TempPathFactory) -> Iterator[WebKit]:
    require(is_here(), f"WebKit is not installed: apt install {PACKAGES}")
    engine = WebKit(tmp_path_factory.mktemp("webkit"))
    try:
        engine.start()
        yield engine
    finally:
        engine.end()


def is_here() -> bool:
    """Whether driver, screen and window can be started."""
    bindings = [DEBIANS_PYTHON, str(WINDOW), "--check"]
    programs = ("WebKitWebDriver", "Xvfb", DEBIANS_PYTHON)
    if not all(shutil.which(each) for each in programs):
        return False
    return subprocess.run(bindings, capture_output=True).returncode == 0


class TestWebKit(EveryEngine):
    """The same for every engine."""
