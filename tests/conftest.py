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


@pytest.fixture(scope="session")
def address() -> Iterator[str]:
    """The address of a running `longpoint serve`."""
    with served() as address:
        yield address
