"""What the tests of several folders share."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings

from tests.serving import served

# A busy machine is slow, and that is no fault. The check tries the same examples each time and so
# fails for what was changed, nothing else; `--hypothesis-profile hunt` looks for new ones.
_SLOW = [HealthCheck.too_slow]
settings.register_profile("hunt", deadline=None, suppress_health_check=_SLOW, print_blob=True)
settings.register_profile("check", settings.get_profile("hunt"), derandomize=True)
settings.load_profile("check")

LONGEST_FIRST = [
    "tests/engines",
    "tests/test_setup.py",
    "tests/api/test_wheel.py",
    "tests/trade/test_references.py",
    "tests/phone",
    "tests/shop",
    "tests/api",
    "tests/trade",
    "",
]
"""Where tests lie, those first that one worker has longest with: the last ones are quick."""


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Sort files so that at the end no worker is alone with a long one."""

    def turn(item: pytest.Item) -> int:
        return next(at for at, name in enumerate(LONGEST_FIRST) if item.nodeid.startswith(name))

    items.sort(key=turn)


def pytest_ignore_collect(collection_path: Path) -> bool | None:
    """Examples to run stand in the server's modules: what tests share is read with its tests."""
    is_shared = collection_path.suffix == ".py" and not collection_path.name.startswith("test_")
    return is_shared or None


@pytest.fixture(scope="session", autouse=True)
def own_database(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """Commands that keep something keep it in a folder of the tests."""
    folder = tmp_path_factory.mktemp("kept")
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("LONGPOINT_DATABASE", f"sqlite:///{folder / 'shop.db'}")
        yield


@pytest.fixture(scope="session")
def address() -> Iterator[str]:
    """The address of a running `longpoint serve`."""
    with served() as address:
        yield address
