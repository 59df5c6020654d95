"""A server of Longpoint's own, in a process of its own, for tests that need real HTTP."""

import os
import re
import subprocess
import sys
from collections.abc import Iterator, Sequence
from contextlib import contextmanager

COMMAND = (sys.executable, "-m", "longpoint.cli", "serve", "--port", "0")


@contextmanager
def served(command: Sequence[str] = COMMAND) -> Iterator[str]:
    """Run the server and give its address, without a slash at the end, as it prints it itself."""
    environment = os.environ | {"PYTHONUNBUFFERED": "1"}
    with subprocess.Popen(
        command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, env=environment
    ) as process:
        assert process.stdout is not None
        first = process.stdout.readline()
        found = re.search(r"http://\S+(?=/)", first)
        try:
            assert found, f"no address in {first!r}: {process.stdout.read() if not found else ''}"
            yield found[0]
        finally:
            process.terminate()
