"""What the tests of several folders share."""

from collections.abc import Iterator

import pytest
from hypothesis import HealthCheck, settings

from tests.serving import served

# A busy machine is slow, and that is no fault. The check tries the same examples each time and so
# fails for what was changed, nothing else; `--hypothesis-profile hunt` looks for new ones.
_SLOW = [HealthCheck.too_slow]
settings.register_profile("hunt", deadline=None, suppress_health_check=_SLOW, print_blob=True)
settings.register_profile("check", settings.get_profile("hunt"), derandomize=True)
settings.load_profile("check")


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
