"""A server of Longpoint's own, in a process of its own, for tests that need real HTTP."""

import os
import re
import subprocess
import sys
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from pathlib import Path

SHARED = (sys.executable, "-m", "longpoint.cli", "serve", "--port", "0")
COMMAND = (*SHARED, "--alone")


@contextmanager
def served(
    command: Sequence[str] = COMMAND,
    folder: Path | None = None,
    settings: Mapping[str, str] | None = None,
    until: str = r"http://\S+(?=/)",
) -> Iterator[str]:
    """Run a server in `folder`; give its address, without a slash at the end, as it prints it.

    `until` finds another address that it prints.
    """
    # Nobody reads what it says later: a log would fill the pipe.
    environment = {"LONGPOINT_LOG": "error"} | os.environ | {"PYTHONUNBUFFERED": "1"}
    environment |= settings or {}
    with subprocess.Popen(
        command,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        env=environment,
        cwd=folder,
    ) as process:
        assert process.stdout is not None
        found, said = None, []
        try:
            while not found and (line := process.stdout.readline()):
                said.append(line)
                found = re.search(until, line)
            assert found, f"no address in {said}"
            yield found[0]
        finally:
            process.terminate()
