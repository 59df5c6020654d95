"""What the tests of several folders share."""

from collections.abc import Iterator

import pytest

from tests.serving import served


@pytest.fixture(scope="session")
def address() -> Iterator[str]:
    """The address of a running `longpoint serve`."""
    with served() as address:
        yield address
